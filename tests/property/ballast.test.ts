import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waterHeight } from '../../sim/ballast/off-mark.ts';
import type { LinkPlan, Obstacle } from '../../sim/ballast/plan.ts';
import { floatWith } from '../../sim/ballast/refloat.ts';
import type { Aim } from '../../sim/ballast/target.ts';
import type { SetupEntry, TargetEntry } from '../../sim/design/file.ts';
import { trimOf, worldAxes } from '../../sim/frames.ts';
import { bodyOf } from '../../sim/hydro/bait-body.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { type Float, HANGS_G, HANGS_SHARE } from '../../sim/hydro/float.ts';
import { type Potential, potentialAt } from '../../sim/hydro/potential.ts';
import { dot, subtract } from '../../sim/numerics/vec3.ts';
import { radianFromDegree } from '../../sim/units/convert.ts';
import { arbitraryShopBait } from '../support/arbitrary-shop-bait.ts';
import { type Planned, plannedOf, withHoles } from '../support/planned-bait.ts';
import { soundIssuesOf } from '../support/worked-bait.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 200) };

/** Trim that a plan may leave by the slopes at its aim: the first of these that any plan comes to. */
const STEPS = [0.3, 1, 2].map(radianFromDegree);
/** Slopes are those at the aim: the bait turns on until it rests, and on the way they change. */
const TURNED_ON = radianFromDegree(0.2);
/** Heel that it may leave, by the same slopes: none that a float test shows. */
const UPRIGHT = radianFromDegree(2);
/** Rows stand on half millimetres, so up to a quarter of one is left; and a fifth more, since stiffness changes too. */
const ROW_MM = 0.3;
/** And one that heels trims with it, by the square of its heel. */
const heeledOn = ({ heel }: Float) => (heel * heel) / 2;
/** Two sums over the same things differ by less than that. */
const DUST = 1e-6;

/** Lead goes in by tenths of a gram, in pairs from the flanks: half of one is left at most, less what a plug would weigh. */
function mostLeft({ holes, state }: LinkPlan): number {
  if (state === 'enough') return 0.1;
  return holes.some(({ from }) => from === 'starboard') ? 0.1 : 0.05;
}

/** Lighter than that it shows some of itself. Where rounding decides, a waterplane holds it level or none does. */
function isAfloat(netWet: number, mass: number): boolean {
  return netWet < -Math.max(HANGS_G, HANGS_SHARE * mass);
}

function planeAt(body: FloatingBody, { up, offset }: Pick<Aim, 'up' | 'offset'>): Potential | null {
  const { along, across } = worldAxes(up);
  return offset === null ? null : potentialAt(body, up, along, across, offset);
}

/**
 * How far a body floats off a target as it is written, 1: as far as its rounding explains. So many grams too light or too
 * heavy it rises or sinks by that over the water's density times its waterplane, the smaller one of where it should float
 * and where it does; it turns about the middle of that plane, and a mark `arm` away from it goes up or down as it turns.
 */
function missOf(
  target: TargetEntry,
  body: FloatingBody,
  aim: Aim,
  float: Float,
  grams: number,
  length: number,
): number {
  const { proud, netWet, mass } = float;
  const slack = grams + DUST;
  if ('reserve_g' in target) return Math.abs(-netWet - Number(target.reserve_g)) / slack;
  if ('net_wet_g' in target) return Math.abs(netWet - Number(target.net_wet_g)) / slack;
  // what everything wet lifts is that share more than the mass
  if ('reserve_percent' in target) {
    return Math.abs(mass - (mass - netWet) / (1 + Number(target.reserve_percent) / 100)) / slack;
  }
  const [at, found] = [planeAt(body, aim), planeAt(body, float)];
  // asked for next to no dry wood, or left with none: it hangs, then
  if (!at || !found) return Math.abs(netWet) / (slack + Math.max(HANGS_G, HANGS_SHARE * mass));
  const turned = Math.tan(Math.abs(float.trim - trimOf(aim.up))) + Math.tan(Math.abs(float.heel));
  const mm = (arm: number) => slack / Math.min(at.curveDD, found.curveDD) + arm * turned + 0.01;
  if ('proud_mm' in target) return Math.abs((proud ?? 0) - Number(target.proud_mm)) / mm(length);
  const z = 'waterline_z_mm' in target ? Number(target.waterline_z_mm) : Number.NaN;
  // along the bait's own height: the water leans
  const cos = Math.min(aim.up[2], float.up[2]);
  const off = (waterHeight(float, length / 2) ?? Number.NaN) - z;
  return (Math.abs(off) * cos) / mm(Math.abs(length / 2 - at.centre[0]) / cos);
}

/** A link that is planned, or needs nothing, against what is asked of it. */
function checkLink({ answers, settled }: Planned, body: FloatingBody, plan: LinkPlan, own?: TargetEntry): void {
  const { link, need, left, name } = plan;
  const float = settled.floats[link];
  const aim = answers.bait.target.links[link];
  if (left === null) throw new Error(`what the plan of ${name} leaves is not told`);
  // what the link before it left is in its need: so it weighs
  expect(Math.abs(answers.links[link].float.mass + need.net - left.net - float.mass)).toBeLessThan(DUST);
  expect(Math.abs(left.net)).toBeLessThan(mostLeft(plan) + DUST);
  expect(float.gm).toBeGreaterThan(0);
  if (isAfloat(float.netWet, float.mass) === isAfloat(float.netWet + left.net, float.mass + left.net)) {
    const step = STEPS.find((most) => Math.abs(left.trim) <= most) ?? Number.NaN;
    // at rest, and not only by its slopes at the aim
    expect(Math.abs(float.trim - trimOf(aim.up))).toBeLessThan(step + TURNED_ON + heeledOn(float));
    expect(Math.abs(float.heel)).toBeLessThan(UPRIGHT + TURNED_ON);
  }
  if (own === undefined) return;
  const { length } = answers.bait.design.body;
  const isMet = missOf(own, body, aim, float, Math.abs(left.net), length) < 1;
  expect([name, own, isMet]).toEqual([name, own, true]);
}

/** The whole bait, all links of which are planned or need nothing, against what its setup asks for. */
function checkWhole({ answers, settled, links }: Planned, body: FloatingBody, target: TargetEntry): void {
  const { assembled: aim, links: aims } = answers.bait.target;
  const { assembled: float } = settled;
  const grams = Math.abs(links.reduce((sum, { left }) => sum + (left?.net ?? 0), 0));
  const isMet = missOf(target, body, aim, float, grams, answers.bait.design.body.length) < 1;
  expect([target, isMet]).toEqual([target, true]);

  // links on one plane rest on it together too, but for what each leaves, with its arm to the middle of all their waterplane
  const at = planeAt(body, aim);
  if (!at || aims.some(({ offset }) => offset === null)) return;
  const momentOf = ({ link, left, need }: LinkPlan, axis: 'along' | 'across', own: number) =>
    Math.abs((left?.net ?? 0) * dot(subtract(need.about, at.centre), need[axis])) + Math.abs(own) * aims[link].up[2];
  let [along, across] = [0, 0];
  for (const plan of links) {
    const { mass, gmLong } = settled.floats[plan.link];
    along += momentOf(plan, 'along', mass * gmLong * Math.tan(plan.left?.trim ?? 0));
    across += momentOf(plan, 'across', ROW_MM * plan.need.net);
  }
  expect(Math.abs(float.trim - trimOf(aim.up))).toBeLessThan(
    Math.atan(along / at.curveUU) + TURNED_ON + heeledOn(float),
  );
  expect(Math.abs(float.heel)).toBeLessThan(Math.atan(across / at.curveVV) + TURNED_ON);
}

/** Whatever stands in a link's way is told in numbers that hang together. */
function checkObstacle(why: Obstacle, { need, place }: LinkPlan, lead: readonly string[]): void {
  const numbers = Object.values(why).filter((value) => typeof value === 'number');
  expect(numbers.every(Number.isFinite)).toBe(true);
  if (why.kind === 'too-heavy') {
    expect(why.over).toBeGreaterThanOrEqual(0);
    expect(why.over).toBe(-need.net);
    return;
  }
  // whatever else it is, the link is light enough to take some
  expect(need.net).toBeGreaterThan(0);
  switch (why.kind) {
    case 'no-weight-left':
      expect([why.net, why.moment]).toEqual([need.net, need.moment.along]);
      expect(why.net).toBeLessThan(0.3);
      break;
    case 'outside':
      expect(why.x).toBe(place?.[0]);
      expect(why.from).toBeLessThanOrEqual(why.to);
      expect(why.x < why.from || why.x > why.to).toBe(true);
      break;
    case 'no-room':
      expect(why.wanted).toBe(need.net);
      expect(why.most).toBeGreaterThanOrEqual(0);
      expect(why.most).toBeLessThan(why.wanted);
      break;
    case 'empty-shop':
      expect([why.lacks, lead]).toEqual(['drills that take the lead', lead.filter((kind) => kind === 'slug')]);
      break;
    default:
      expect(place?.every(Number.isFinite)).toBe(true);
  }
}

test('each link of a random bait is ballasted to its aim, or it is said why not', () => {
  const counts = { planned: 0, enough: 0, cannot: 0, kept: 0, known: 0, whole: 0 };
  fc.assert(
    fc.property(arbitraryShopBait(), ({ file, known }) => {
      const planned = plannedOf(file);
      const { links, settled, parts, plan } = planned;
      const [{ target, link_targets: own = {} }] = file.setups as [SetupEntry];
      const { ledgers } = floatWith(parts, { holes: settled.holes.map(({ hole }) => hole) });
      const hungOn = parts.links.flatMap(({ hung }) => hung);
      links.forEach((link, i) => {
        counts[link.state]++;
        expect(link.why === null).toBe(link.state !== 'cannot');
        expect(link.holes.length > 0).toBe(link.state === 'planned');
        if (link.why) checkObstacle(link.why, link, file.shop?.lead?.map(({ kind }) => kind) ?? []);
        if (link.state === 'planned' || link.state === 'enough') {
          const { trees, hung } = parts.links[i];
          checkLink(planned, bodyOf([trees], [ledgers[i]], hung, parts.water), link, own[link.name]);
        }
        if (!known[i]) return;
        counts.known++;
        expect([link.name, link.why]).toEqual([link.name, null]);
      });
      if (links.every(({ state }) => state === 'planned' || state === 'enough')) {
        counts.whole++;
        const trees = parts.links.map((link) => link.trees);
        // links with targets of their own add up to what they add up to
        if (Object.keys(own).length === 0) checkWhole(planned, bodyOf(trees, ledgers, hungOn, parts.water), target);
      }
      if (links.some(({ state }) => state === 'planned')) {
        expect(soundIssuesOf(withHoles(file, plan.holes))).toEqual([]);
        for (const { hole, wall } of settled.holes) {
          expect([hole.name, wall.thickness > parts.shop.wall - 0.05]).toEqual([hole.name, true]);
        }
      }
    }),
    { ...RUNS, endOnFailure: true },
  );
  // of all links about half; the rest have no room for their lead, or none that levels them or lets them stand up
  expect(counts.planned).toBeGreaterThan(0.9 * RUNS.numRuns);
  expect(counts.cannot).toBeGreaterThan(0.5 * RUNS.numRuns);
  expect(counts.known).toBeGreaterThan(0.25 * RUNS.numRuns);
  expect(counts.whole).toBeGreaterThan(0.2 * RUNS.numRuns);
});
