import { memo, useMemo } from 'react';
import type { LastGood } from '../../engine/answers.ts';
import { useAnswers } from '../../engine/answers.ts';
import { Bench } from './Bench.tsx';
import { Board } from './Board.tsx';
import { LinkBallast } from './LinkBallast.tsx';
import { planState } from './plan-state.ts';
import { WhatIfs } from './WhatIfs.tsx';
import { WholePlan } from './WholePlan.tsx';

/**
 * What to drill and fill, how the bait rests with it, and what to do where it cannot be done. It follows full runs: while
 * a hand is on a number it stays as it was, dimmed.
 */
export function Ballast() {
  const settled = useAnswers((answers) => answers.settled);
  const state = useAnswers(planState);
  return (
    <section className={state === 'current' ? 'ballast' : 'ballast old'} aria-labelledby="ballast">
      <h2 id="ballast">Ballast plan</h2>
      {state === 'blocked' && (
        <p className="blocked">
          There is no plan for this design: what stands against it is to be mended first. Nothing is lost meanwhile.
        </p>
      )}
      {state === 'awaited' && settled.bait.planned === undefined && <p>Not worked out yet</p>}
      <Planned settled={settled} />
    </section>
  );
}

const Planned = memo(({ settled: { bait, links } }: { readonly settled: LastGood }) => {
  const { ballast, planned } = bait;
  const wetted = useMemo(() => links.flatMap((link) => link.wetted ?? []), [links]);
  if (ballast === undefined || planned === undefined) return null;
  return (
    <div className="ballast-body">
      <Board wetted={wetted} planned={planned} own={bait.hardware?.holes} />
      <WholePlan ballast={ballast} planned={planned} accuracy={bait.assembledAccuracy} />
      <Bench />
      {ballast.links.map((plan) => (
        <LinkBallast
          key={plan.link}
          plan={plan}
          planned={planned}
          isBorne={ballast.links.some(({ state }) => state === 'kept')}
          digits={links[plan.link]?.accuracy?.digits}
          forgiveness={links[plan.link]?.forgiveness}
          cures={links[plan.link]?.cures}
        />
      ))}
      <WhatIfs rows={bait.whatIfs} />
    </div>
  );
});
