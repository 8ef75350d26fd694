import type { LinkPlan, SettledPlan } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { holeRows, isPointed } from './ballast-words.ts';
import { WideTable } from './WideTable.tsx';

/** The planned holes of a link, to drill by; nothing where none are. */
export function HoleTable({ plan, planned }: { readonly plan: LinkPlan; readonly planned: SettledPlan }) {
  const amounts = useAmounts();
  const rows = holeRows(plan, planned, amounts);
  if (rows.length === 0) return null;
  const isAcross = rows.some(({ across }) => across !== '');
  return (
    <>
      <WideTable label={`Holes of ${plan.name}`}>
        <thead>
          <tr>
            <th scope="col">Hole</th>
            <th scope="col" className="word">
              From
            </th>
            <th scope="col">From the nose</th>
            {isAcross && <th scope="col">Across</th>}
            <th scope="col">Drill</th>
            <th scope="col">Depth</th>
            <th scope="col">Lead</th>
            <th scope="col" className="word">
              Stock
            </th>
            <th scope="col">Wall left</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, side, x, across, drill, depth, lead, stock, wall }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="word">{side}</td>
              <td>{x}</td>
              {isAcross && <td>{across}</td>}
              <td>{drill}</td>
              <td>{depth}</td>
              <td>{lead}</td>
              <td className="word">{stock}</td>
              <td>{wall}</td>
            </tr>
          ))}
        </tbody>
      </WideTable>
      {isPointed(plan) && <p className="note">Depths are to the shoulder of the drill; its point goes deeper.</p>}
    </>
  );
}
