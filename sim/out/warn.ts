import type { TargetAnswer } from '../ballast/target.ts';
import type { Hull } from '../hull/hull.ts';
import type { Float } from '../hydro/float.ts';
import type { LinkSpec } from '../links/cut.ts';
import type { Hardware } from '../mass/placed.ts';
import { thinnestWall } from '../mass/wall.ts';
import { slotVolume, type Wetted } from '../mesh/wetted.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import { radianFromDegree } from '../units/convert.ts';
import { formatAngle, formatLength, formatMass } from '../units/format.ts';
import type { Warning } from '../warnings.ts';

/** Wood that should be left round ballast in a shaped body. Common practice. */
const WALL_MM = 3;
/** Walls are said to this: one that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** What a float test asks before pins are glued in. Common practice. */
const LEVEL_RAD = radianFromDegree(2);
/** Less air than this cannot be weighed on a kitchen scale. */
const AIR_G = 0.1;

export interface WarnParts {
  readonly water: WaterAnswer;
  readonly hull: Hull;
  readonly links: readonly LinkSpec[];
  readonly hardware: Hardware;
  readonly wetted: readonly Wetted[];
  readonly floats: readonly Float[];
  readonly assembled: Float;
  readonly target: TargetAnswer;
}

/** What the maker should know of, worst first: what the float cannot be trusted in, what it misses, what is tight. */
export function warn(parts: WarnParts): readonly Warning[] {
  const { links, floats, assembled, hardware } = parts;
  const isPinned = (link: number) => hardware.pins.some(({ joint }) => joint === link - 1 || joint === link);
  return [
    ...restWarnings('the whole bait', assembled),
    ...targetWarnings(parts.target),
    ...links.flatMap(({ name }, i) => (links.length > 1 ? restWarnings(name, floats[i]) : [])),
    ...links.flatMap(({ name }, i) => (links.length > 1 ? levelWarnings(name, floats[i], isPinned(i)) : [])),
    ...airWarnings(parts),
    ...tailWarnings(parts),
    ...wallWarnings(parts),
  ];
}

function restWarnings(where: string, float: Float): readonly Warning[] {
  const said: Warning[] = [];
  const say = (code: string, text: string) => said.push({ code, where, text });
  if (!float.solver.converged) {
    say('not-settled', `The sums did not settle for ${where}: ${leftOver(float.solver)} were left over.`);
  }
  if (float.mirrored) {
    say(
      'no-rest-upright',
      `Upright is no rest for ${where}: it goes over either way. Lead set lower, or more of it, stands it up.`,
    );
  }
  if (float.neutral) say('neutral', `Metacentric height is nil for ${where}: this model sees no preferred way up.`);
  else if (float.tender) {
    say('tender', `GM is only ${formatLength(float.gmMin, 'mm', { digits: 2 })} for ${where}: a breath tips it.`);
  }
  if (float.lyingHooks)
    say('hooks-lie', `Hooks lie on ${where} here instead of hanging clear, so its attitude is rough.`);
  return said;
}

/** Both, since sums that balance in weight may still be out in moment. */
function leftOver({ force, moment }: Float['solver']): string {
  return `${formatMass(Math.abs(force), 'g', { digits: 2 })} and ${Math.abs(moment).toPrecision(2)} g mm`;
}

function targetWarnings(target: TargetAnswer): readonly Warning[] {
  return target.checks
    .filter((check) => !check.met)
    .map((check) => {
      const write = {
        proud: (value: number) => `${formatLength(value)} proud`,
        waterline: (value: number) => `a waterline at ${formatLength(value)}`,
        net: (value: number) => `${formatMass(value, 'g', { digits: 2, signed: true })} net in the water`,
        trim: (value: number) => `${formatAngle(value)} of trim`,
        heel: (value: number) => `${formatAngle(value)} of heel`,
      }[check.what];
      const got = check.got === null ? 'it lies wholly under' : `it comes to ${write(check.got)}`;
      return { code: 'target-missed', where: 'the whole bait', text: `Wanted ${write(check.wanted)}; ${got}.` };
    });
}

/**
 * Makers balance link by link: what a link cannot do alone its pins have to carry. Linked eyes carry it not at all in
 * one pair, and only past their slack in two.
 */
function levelWarnings(name: string, float: Float, isPinned: boolean): readonly Warning[] {
  if (Math.abs(float.trim) <= LEVEL_RAD && Math.abs(float.heel) <= LEVEL_RAD) return [];
  const trim = `${formatAngle(Math.abs(float.trim))} ${float.trim > 0 ? 'nose-down' : 'tail low'}`;
  const heel = `${formatAngle(Math.abs(float.heel))} over to ${float.heel > 0 ? 'starboard' : 'port'}`;
  const how = Math.abs(float.heel) > LEVEL_RAD ? `${trim} and ${heel}` : trim;
  const joined = isPinned ? 'its pins carry the difference' : 'it sags as far as its linked eyes let it';
  return [{ code: 'not-level-alone', where: name, text: `Alone, ${name} sits ${how}; joined up, ${joined}.` }];
}

function airWarnings({ water, links, wetted }: WarnParts): readonly Warning[] {
  const held = wetted.reduce((sum, link) => sum + slotVolume(link), 0) * water.density;
  if (held < AIR_G) return [];
  const where = links.length > 1 ? 'the joints' : 'the slots';
  const text = `Air caught in slots can hold up ${formatMass(held)}: shake the bait under water before you judge it.`;
  return [{ code: 'air-in-slots', where, text }];
}

/** What hair holds under water no maker knows: the float takes the middle. */
function tailWarnings({ water, hardware, assembled }: WarnParts): readonly Warning[] {
  return hardware.fittings
    .filter(({ outsideSpread }) => outsideSpread * water.density >= AIR_G / 2)
    .map(({ name, outsideSpread }) => {
      const spread = outsideSpread * water.density;
      const net = (weight: number) => formatMass(weight, 'g', { digits: 2, signed: true });
      const text = `Air in "${name}" is taken at its middle; net weight under water is ${net(assembled.netWet - spread)} with the most of it, ${net(assembled.netWet + spread)} with the least.`;
      return { code: 'air-in-tail', where: name, text };
    });
}

function wallWarnings({ hull, hardware }: WarnParts): readonly Warning[] {
  return hardware.holes
    .map((hole) => ({ name: hole.name, wall: thinnestWall(hull, hole) }))
    .filter(({ wall }) => wall < WALL_MM - SAID_TO_MM / 2)
    .toSorted((a, b) => a.wall - b.wall)
    .map(({ name, wall }) => ({
      code: 'wall-thin',
      where: name,
      text: `Hole "${name}" leaves ${formatLength(wall)} of wood; ${formatLength(WALL_MM)} is wanted.`,
    }));
}
