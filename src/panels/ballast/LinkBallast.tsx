import { memo } from 'react';
import {
  type Accuracy,
  type Cure,
  type Forgiveness,
  hungWords,
  type LinkPlan,
  linkVerdict,
  planWords,
  type SettledPlan,
} from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { StateMark } from '../numbers/StateMark.tsx';
import { forgivingWords } from './ballast-words.ts';
import { Cures } from './Cures.tsx';
import { HoleTable } from './HoleTable.tsx';

interface LinkBallastProps {
  readonly plan: LinkPlan;
  readonly planned: SettledPlan;
  /** A link of this bait keeps its holes, since they bear what its neighbour cannot. */
  readonly isBorne: boolean;
  readonly digits: Accuracy['digits'] | undefined;
  /** undefined: not known yet. */
  readonly forgiveness: Forgiveness | null | undefined;
  readonly cures: readonly Cure[] | undefined;
}

/** One link: what to drill and how it then rests, or why not and what would cure that; and how forgiving it is. */
export const LinkBallast = memo(({ plan, planned, isBorne, digits, forgiveness, cures }: LinkBallastProps) => {
  const amounts = useAmounts();
  const { link, name, state, last } = plan;
  const float = planned.floats[link];
  const own = planned.holes.filter(({ hole }) => hole.link === link);
  const isLeft = state === 'cannot' || state === 'kept';
  const kept = own.filter(({ hole }) => isLeft || hole.hole.done || hole.air !== null).length;
  return (
    <section className="plan-link" aria-label={`Ballast of ${name}`}>
      <div className="plan-words">
        <h3 tabIndex={-1}>
          <span className="ordinal">{link + 1}</span> {name}
        </h3>
        <p className={state === 'cannot' ? 'cannot' : undefined}>{planWords(plan, amounts)}</p>
        {kept > 0 && <p>{keptWords(kept)}</p>}
        {float !== undefined && (
          <p className="verdict">
            <StateMark state={float.state} />
            <span>{linkVerdict(name, float, digits, amounts)}</span>
          </p>
        )}
      </div>
      <div className="plan-holes">
        <HoleTable plan={plan} planned={planned} />
        {last !== null && <p>Fill “{last}” last, when the sealed link has been weighed.</p>}
        {state === 'cannot' && <Cures link={link} cures={cures} isBorne={isBorne} />}
      </div>
      <Forgiving forgiveness={forgiveness} />
    </section>
  );
});

function keptWords(count: number): string {
  return count === 1 ? 'The hole that it has stays as it is.' : `The ${count} holes that it has stay as they are.`;
}

function Forgiving({ forgiveness }: Pick<LinkBallastProps, 'forgiveness'>) {
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  if (forgiveness === undefined) return null;
  return (
    <div className="forgiving">
      <h4>How forgiving, as it stands now</h4>
      {forgiveness === null ? (
        <p>It has no trim that a little more would change a little.</p>
      ) : (
        <>
          <p>{forgivingWords(forgiveness, units)}</p>
          <ul>
            {forgiveness.hung.map((effect) => (
              <li key={effect.name}>{hungWords(effect, amounts)}.</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
