import type { Accuracy, Float } from '../../../sim/index.ts';
import { useView } from '../../view/view.ts';
import { accuracyWords, filmWords } from './accuracy-words.ts';
import { floatRows } from './float-rows.ts';

/** The few numbers of a bait or a link at rest, and how good they are; accuracy: undefined until it is known. */
export function Numbers({ float, accuracy }: { readonly float: Float; readonly accuracy: Accuracy | undefined }) {
  const units = useView((view) => view.units);
  return (
    <div>
      <dl className="numbers">
        {floatRows(float, units, accuracy).map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p className="accuracy" title={accuracy === undefined ? undefined : (filmWords(accuracy, units) ?? undefined)}>
        {accuracy === undefined ? null : accuracyWords(accuracy, float, units)}
      </p>
    </div>
  );
}
