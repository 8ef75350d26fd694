import type { Float } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { floatRows } from './float-rows.ts';

/** The few numbers of a bait or a link at rest. */
export function Numbers({ float }: { readonly float: Float }) {
  return (
    <dl className="numbers">
      {floatRows(float, useAmounts()).map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
