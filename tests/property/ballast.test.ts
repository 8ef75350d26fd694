import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DesignFile, SetupEntry } from '../../sim/design/file.ts';
import { heelOf, trimOf } from '../../sim/frames.ts';
import { upInFall } from '../../sim/sinking/drag-law.ts';
import { radianFromDegree } from '../../sim/units/convert.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { plannedOf, withHoles } from '../support/planned-bait.ts';
import { partsOf, soundIssuesOf } from '../support/worked-bait.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 200) };
const INCH = 25.4;

/** Drills of 1/8 to 1/2 inch by sixteenths, pointed and flat. Common practice. */
const DRILLS = [2, 3, 4, 5, 6, 7, 8].flatMap((sixteenths) =>
  ([118, 180] as const).map((point_deg) => ({
    name: `${sixteenths}/16 in, ${point_deg} degrees`,
    diameter_mm: (sixteenths / 16) * INCH,
    point_deg,
  })),
);
const LEAD = [
  { name: '3/16 in rod', kind: 'slug' as const, diameter_mm: 4.7, density_g_cm3: 11.3 },
  { name: '5/16 in rod', kind: 'slug' as const, diameter_mm: 7.8, density_g_cm3: 11.3 },
  { name: 'shot in epoxy', kind: 'filled' as const, density_g_cm3: 7.3 },
];
/** The search takes long over longer ones: ways to place three holes grow by the cube of a link's length. */
const LONGEST_LINK_MM = 70;

/** A random bait that can be made, without ballast as yet, in a small shop. */
function shopBait(): fc.Arbitrary<DesignFile> {
  return fc
    .record({
      file: arbitraryDesignFile(),
      drills: fc.subarray(DRILLS, { minLength: 1, maxLength: 3 }),
      lead: fc.subarray(LEAD, { minLength: 1, maxLength: 2 }),
    })
    .map(({ file, drills, lead }): DesignFile => {
      const setups = file.setups.map((setup): SetupEntry => ({ ...setup, holes: [] }));
      // light enough to want lead
      const links = file.links.map(({ name }) => ({ name }));
      return { ...file, links, wood: { density_g_cm3: 0.35 }, shop: { drills, lead }, setups };
    })
    .filter((file) => soundIssuesOf(file).length === 0)
    .filter((file) => partsOf(file).links.every(({ span: [from, to] }) => to - from < LONGEST_LINK_MM));
}

test('each link of a random bait is ballasted to its aim, or it is said why not', () => {
  const counts = { planned: 0, enough: 0, cannot: 0, kept: 0 };
  fc.assert(
    fc.property(shopBait(), (file) => {
      const { links, settled, answers, plan } = plannedOf(file);
      links.forEach((link, i) => {
        counts[link.state]++;
        expect(link.why === null).toBe(link.state !== 'cannot');
        expect(link.holes.length > 0).toBe(link.state === 'planned');
        const float = settled.floats[i];
        const { left, need } = link;
        if (link.state !== 'planned' || left === null) return;
        // what the link before it left is in its need: so it weighs, and no more than half the least lead is left
        expect(Math.abs(answers.links[i].float.mass + need.net - left.net - float.mass)).toBeLessThan(1e-6);
        expect(Math.abs(left.net)).toBeLessThan(0.11);
        const steps = [0.3, 1, 2].map(radianFromDegree);
        const step = steps.find((most) => Math.abs(left.trim) <= most) ?? Number.NaN;
        const aim = answers.bait.target.links[i];
        const up = aim.drag ? upInFall(float, aim.drag) : float.up;
        const off = trimOf(up) - trimOf(aim.up);
        // drag bears what weight is left over too, where it acts
        const borne = aim.drag ? Math.abs(left.net * (aim.drag[0] - float.gravityCentre[0])) : 0;
        const pulled = Math.atan(borne / (float.mass * float.gm));
        // as it lies, and not only by its slopes at the aim
        expect(Math.abs(off)).toBeLessThan(step + radianFromDegree(0.2) + pulled);
        // rows lie on half millimetres: a quarter of one, with all that was added, may be left, and heels a tender link
        const heels = Math.atan((0.3 * need.net) / (float.mass * float.gm));
        expect(float.gm).toBeGreaterThan(0);
        expect(Math.abs(heelOf(up))).toBeLessThan(Math.max(radianFromDegree(2), heels));
      });
      if (links.some(({ state }) => state === 'planned')) {
        expect(soundIssuesOf(withHoles(file, plan.holes))).toEqual([]);
        for (const { hole, wall } of settled.holes) {
          expect([hole.name, wall.thickness > 3 - 0.05]).toEqual([hole.name, true]);
        }
      }
    }),
    { ...RUNS, endOnFailure: true },
  );
  // most random links have no room for their lead, or none that levels them
  expect(counts.planned).toBeGreaterThan(0.05 * RUNS.numRuns);
  expect(counts.cannot).toBeGreaterThan(0.05 * RUNS.numRuns);
});
