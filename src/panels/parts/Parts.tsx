import { memo, useDeferredValue } from 'react';
import type { LinkSpec } from '../../../sim/index.ts';
import { type LastGood, useAnswers } from '../../engine/answers.ts';
import { LinkParts } from './LinkParts.tsx';

const NO_LINKS: readonly LinkSpec[] = [];

/**
 * What every link carries, in words, and the ledger of its weight: all that the picture shows, as text. A hand on a
 * number looks at the picture and the float: these follow once those stand.
 */
export function Parts() {
  const known = useDeferredValue(useAnswers((answers) => answers.lastGood));
  return <DrawnParts known={known} />;
}

const DrawnParts = memo(({ known: { bait, links } }: { readonly known: LastGood }) => {
  const { hardware, links: specs = NO_LINKS } = bait;
  if (hardware === undefined) return null;
  return (
    <section className="parts" aria-labelledby="parts">
      <h2 id="parts">What each link carries</h2>
      <div className="parts-list">
        {specs.map((spec) => (
          <LinkParts key={spec.index} spec={spec} hardware={hardware} ledger={links[spec.index]?.ledger} />
        ))}
      </div>
      <Cautions />
    </section>
  );
});

function Cautions() {
  return (
    <ul className="cautions">
      <li>
        Lead is poisonous: wash your hands after it, keep it from food and children, and leave melting and sanding it to
        those set up for it. Where lead in tackle is restricted, your local rules come first.
      </li>
      <li>Hooks: leave them off while you carve, paint and weigh links, and cover the points when you hang them.</li>
      <li>Sealers, paints and epoxies: air, gloves and waiting times are on the maker's data sheet.</li>
    </ul>
  );
}
