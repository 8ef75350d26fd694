import type { TargetAnswer, TargetCheck } from '../ballast/target.ts';
import type { Hull } from '../hull/hull.ts';
import { type Digits, MOST_DIGITS } from '../hydro/accuracy.ts';
import type { Float } from '../hydro/float.ts';
import type { LinkSpec } from '../links/cut.ts';
import type { Hardware } from '../mass/placed.ts';
import { wallOf } from '../mass/wall.ts';
import { slotVolume, type Wetted } from '../mesh/wetted.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import { amountsIn } from '../units/amounts.ts';
import { radianFromDegree } from '../units/convert.ts';
import { formatAngle, formatLength, formatMass } from '../units/format.ts';
import type { Warning } from '../warnings.ts';
import { aimAmount } from './target-words.ts';

/** Wood that should be left round ballast in a shaped body. Common practice. */
const WALL_MM = 3;
/** Walls are said to this: one that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** What a float test asks before pins are glued in. Common practice. */
const LEVEL_RAD = radianFromDegree(2);
/** Under this a trim beside a heel is not worth the words. */
const TRIM_SAID_RAD = radianFromDegree(0.5);
/** Less air than this cannot be weighed on a kitchen scale. */
const AIR_G = 0.1;
const METRIC = amountsIn('mm-g');

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

/** How many decimals are meant, of each link alone and of the whole. */
export interface MeantDigits {
  readonly links: readonly Digits[];
  readonly whole: Digits;
}

/**
 * What the maker should know of, worst first: what the float cannot be trusted in, what it misses, what is tight.
 * meant: undefined until it is known how good the sums are.
 */
export function warn(parts: WarnParts, meant?: MeantDigits): readonly Warning[] {
  const { links, floats, assembled, hardware } = parts;
  const isPinned = (link: number) => hardware.pins.some(({ joint }) => joint === link - 1 || joint === link);
  const digitsOf = (link: number) => meant?.links[link] ?? MOST_DIGITS;
  const alone = links.length > 1 ? links : [];
  const whole = meant?.whole ?? MOST_DIGITS;
  return [
    ...restWarnings('the whole bait', assembled, whole),
    ...targetWarnings(parts.target, whole),
    ...linkedWarnings(links.length, hardware),
    ...alone.flatMap(({ name }, i) => restWarnings(name, floats[i], digitsOf(i))),
    ...alone.flatMap(({ name }, i) => levelWarnings(name, floats[i], isPinned(i), digitsOf(i))),
    ...airWarnings(parts),
    ...tailWarnings(parts),
    ...wallWarnings(parts),
  ];
}

function restWarnings(where: string, float: Float, digits: Digits): readonly Warning[] {
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
    say(
      'tender',
      `GM is only ${formatLength(float.gmMin, 'mm', { digits: digits.gm })} for ${where}: a breath tips it.`,
    );
  }
  if (float.lyingHooks)
    say('hooks-lie', `Hooks lie on ${where} here instead of hanging clear, so its attitude is rough.`);
  return said;
}

/** Both, since sums that balance in weight may still be out in moment. */
function leftOver({ force, moment }: Float['solver']): string {
  return `${formatMass(Math.abs(force), 'g', { digits: 2 })} and ${Math.abs(moment).toPrecision(2)} g mm`;
}

function targetWarnings(target: TargetAnswer, digits: Digits): readonly Warning[] {
  return target.checks
    .filter((check) => !check.met)
    .map(({ what, wanted, got }) => {
      const inWords = AIM_WORDS[what];
      const reached =
        got === null ? 'it lies wholly under' : `it comes to ${inWords(aimAmount(what, got, METRIC, digits))}`;
      const text = `Wanted ${inWords(aimAmount(what, wanted, METRIC))}; ${reached}.`;
      return { code: 'target-missed', where: 'the whole bait', text };
    });
}

const AIM_WORDS: Readonly<Record<TargetCheck['what'], (amount: string) => string>> = {
  proud: (amount) => `${amount} proud`,
  waterline: (amount) => `a waterline at ${amount}`,
  net: (amount) => `${amount} net in the water`,
  trim: (amount) => `${amount} of trim`,
  heel: (amount) => `${amount} of heel`,
};

/** The whole bait is worked out as one rigid piece, which pins make of it and linked eyes do not. */
function linkedWarnings(linkCount: number, { pins }: Hardware): readonly Warning[] {
  const isPinned = new Set(pins.map(({ joint }) => joint));
  const linked = Array.from({ length: linkCount - 1 }, (_, joint) => joint).filter((joint) => !isPinned.has(joint));
  if (linked.length === 0) return [];
  const numbers = linked.map((joint) => joint + 1).join(', ');
  const where = linked.length === 1 ? `joint ${numbers}` : `joints ${numbers}`;
  const text = `Linked eyes at ${where} do not hold the bait straight: one pair lets it sag freely, two pairs as far as their slack. The numbers of the whole bait are those of one held straight.`;
  return [{ code: 'linked-eyes', where, text }];
}

/**
 * Makers balance link by link: what a link cannot do alone its pins have to carry. Linked eyes carry it not at all in
 * one pair, and only past their slack in two.
 */
function levelWarnings(name: string, float: Float, isPinned: boolean, digits: Digits): readonly Warning[] {
  if (Math.abs(float.trim) <= LEVEL_RAD && Math.abs(float.heel) <= LEVEL_RAD) return [];
  const trim = `${formatAngle(Math.abs(float.trim), { digits: digits.trim })} ${float.trim > 0 ? 'nose-down' : 'tail low'}`;
  const heel = `${formatAngle(Math.abs(float.heel), { digits: digits.heel })} over to ${float.heel > 0 ? 'starboard' : 'port'}`;
  const how = [
    ...(Math.abs(float.trim) > TRIM_SAID_RAD ? [trim] : []),
    ...(Math.abs(float.heel) > LEVEL_RAD ? [heel] : []),
  ];
  const joined = isPinned ? 'its pins carry the difference' : 'it sags as far as its linked eyes let it';
  return [
    { code: 'not-level-alone', where: name, text: `Alone, ${name} sits ${how.join(' and ')}; joined up, ${joined}.` },
  ];
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
    .map((hole) => ({ name: hole.name, wall: wallOf(hull, hole).thickness }))
    .filter(({ wall }) => wall < WALL_MM - SAID_TO_MM / 2)
    .toSorted((a, b) => a.wall - b.wall)
    .map(({ name, wall }) => ({
      code: 'wall-thin',
      where: name,
      text: `Hole "${name}" leaves ${formatLength(wall)} of wood; ${formatLength(WALL_MM)} is wanted.`,
    }));
}
