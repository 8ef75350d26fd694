import type { Reach } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { WideTable } from '../ballast/WideTable.tsx';
import { jointRows } from './joint-words.ts';

/** What the drawing shows, in numbers, and what play and coats make of it. */
export function SwingTable({ reach }: { readonly reach: Reach }) {
  const rows = jointRows(reach, useAmounts());
  return (
    <WideTable label="How far each joint swings">
      <thead>
        <tr>
          <th scope="col">Joint</th>
          <th scope="col">To port</th>
          <th scope="col">To starboard</th>
          <th scope="col" className="word">
            Touches first
          </th>
          <th scope="col">Play fore and aft</th>
          <th scope="col">Swing over it</th>
          <th scope="col">Without coats</th>
          <th scope="col" className="word">
            Where
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ joint, port, starboard, touches, where, play, reach: over, bare }) => (
          <tr key={joint}>
            <th scope="row">{joint}</th>
            <td>{port}</td>
            <td>{starboard}</td>
            <td className="word">{touches}</td>
            <td>{play}</td>
            <td>{over}</td>
            <td>{bare}</td>
            <td className="word">{where}</td>
          </tr>
        ))}
      </tbody>
    </WideTable>
  );
}
