import { memo } from 'react';
import { restated, secondsWords, trimWords, type WhatIfRow, whatIfWords } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { useFilledUp } from './filled-up.ts';
import { isComplete } from './plan-state.ts';
import { WideTable } from './WideTable.tsx';

/** What becomes of the setup, as it stands, in other water, with other hooks, coats and wood. */
export const WhatIfs = memo(({ rows }: { readonly rows: readonly WhatIfRow[] | undefined }) => {
  const isNow = useAnswers(({ fresh, bait }) => fresh && bait.whatIfs?.status === 'ok');
  const isAll = useAnswers(isComplete);
  const shown = useFilledUp(rows, isNow, isAll);
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  const falls = shown.some(({ item }) => item.firstFoot !== null);
  return (
    <section className="what-ifs" aria-labelledby="what-ifs">
      <h3 id="what-ifs">What if</h3>
      <p className="note">The whole bait as it stands now, with one thing different.</p>
      {shown.length > 0 && (
        <WideTable label="What if one thing is different">
          <thead>
            <tr>
              <th scope="col">What if</th>
              <th scope="col">In the water</th>
              <th scope="col">Trim</th>
              <th scope="col">Proud</th>
              {falls && <th scope="col">First foot</th>}
              <th scope="col" className="word">
                The change
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ item, isOld }) => (
              <tr key={item.name} className={isOld ? 'awaited' : undefined}>
                <th scope="row">{restated(item.name, units)}</th>
                <td>{amounts.mass(item.netWet, { digits: 2, signed: true })}</td>
                <td>{trimWords(item.trim)}</td>
                <td>{item.proud === null ? 'under water' : amounts.length(item.proud)}</td>
                {falls && <td>{item.firstFoot === null ? 'does not sink' : secondsWords(item.firstFoot)}</td>}
                <td className="word">{whatIfWords(item, amounts)}</td>
              </tr>
            ))}
          </tbody>
        </WideTable>
      )}
      {!(isNow && isAll) && <p className="note">More is being worked out …</p>}
    </section>
  );
});
