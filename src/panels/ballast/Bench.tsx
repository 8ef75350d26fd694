import { useMemo } from 'react';
import { benchWords, type Comparison, changeWords, firstFootWords } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useBeside } from '../../engine/beside.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { changeKey } from './ballast-words.ts';
import { comparedAt } from './compared.ts';

/** What differs at the bench between the setup that is looked at and the one beside it; nothing while there is none. */
export function Bench() {
  const beside = useView((view) => view.beside);
  const own = useAnswers((answers) => answers.settled);
  const other = useBeside(beside, ({ settled }) => settled);
  const isBroken = useBeside(beside, ({ broken }) => broken);
  const comparison = useMemo(() => comparedAt(own, other, beside), [own, other, beside]);
  if (beside === null) return null;
  return (
    <section className="bench" aria-labelledby="bench">
      <h3 id="bench">Side by side at the bench: {beside}</h3>
      {comparison !== null && !isBroken ? (
        <Changes comparison={comparison} />
      ) : (
        <p>{isBroken ? 'Not worked out: choose it to see what is to be mended.' : 'Not worked out yet'}</p>
      )}
    </section>
  );
}

function Changes({ comparison }: { readonly comparison: Comparison }) {
  const amounts = useAmounts();
  return (
    <>
      <p>{benchWords(comparison, amounts)}</p>
      {comparison.sinkings.some((sinking) => sinking !== null) && (
        <p>
          First foot:{' '}
          {comparison.setups.map((name, i) => `${name} ${firstFootWords(comparison.sinkings[i])}`).join('; ')}.
        </p>
      )}
      <dl>
        {comparison.links.map(({ name, holes }) => {
          const lines = holes.flatMap((change) => {
            const words = changeWords(change, comparison.setups, amounts);
            return words === null ? [] : [{ key: changeKey(change), words }];
          });
          return (
            <div key={name}>
              <dt>{name}</dt>
              {lines.length === 0 ? <dd>drilled alike</dd> : lines.map(({ key, words }) => <dd key={key}>{words}</dd>)}
            </div>
          );
        })}
      </dl>
    </>
  );
}
