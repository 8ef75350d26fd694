import type { Digits } from '../../hydro/accuracy.ts';
import type { Float } from '../../hydro/float.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian, radianFromDegree } from '../../units/convert.ts';
import { formatAngle } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';
import type { WarnParts } from './parts.ts';

/** What a float test asks before pins are glued in. Common practice. */
const LEVEL_RAD = radianFromDegree(2);
/** Under this a trim beside a heel is not worth the words. */
const TRIM_SAID_RAD = radianFromDegree(0.5);

/** The whole bait is worked out as one rigid piece, which pins make of it and linked eyes do not. */
export function linkedWarnings({ links, hardware: { pins }, drawn }: WarnParts): readonly Warning[] {
  const isPinned = new Set(pins.map(({ joint }) => joint));
  const linked = Array.from({ length: links.length - 1 }, (_, joint) => joint).filter((joint) => !isPinned.has(joint));
  if (linked.length === 0) return [];
  const numbers = linked.map((joint) => joint + 1).join(', ');
  const where = linked.length === 1 ? `joint ${numbers}` : `joints ${numbers}`;
  const text = `Linked eyes at ${where} do not hold the bait straight: one pair lets it sag freely, two pairs as far as their slack. The numbers of the whole bait are those of one held straight.`;
  const [only, ...others] = linked;
  const hinge = drawn.joints[only]?.hinge;
  const at: Vec3 | null =
    others.length === 0 && hinge?.kind === 'linked-eyes' ? [drawn.joints[only].x, 0, hinge.z[0]] : null;
  return [{ ...WORDS_ALONE, code: 'linked-eyes', where, text, at }];
}

/**
 * Makers balance link by link: what a link cannot do alone its pins have to carry. Linked eyes carry it not at all in
 * one pair, and only past their slack in two. number: the trim, or the heel where that alone is too much.
 */
export function levelWarnings(name: string, float: Float, isPinned: boolean, digits: Digits): readonly Warning[] {
  const [trimmed, heeled] = [Math.abs(float.trim), Math.abs(float.heel)];
  if (trimmed <= LEVEL_RAD && heeled <= LEVEL_RAD) return [];
  const trim = `${formatAngle(trimmed, { digits: digits.trim })} ${float.trim > 0 ? 'nose-down' : 'tail low'}`;
  const heel = `${formatAngle(heeled, { digits: digits.heel })} over to ${float.heel > 0 ? 'starboard' : 'port'}`;
  const how = [...(trimmed > TRIM_SAID_RAD ? [trim] : []), ...(heeled > LEVEL_RAD ? [heel] : [])];
  const joined = isPinned ? 'its pins carry the difference' : 'it sags as far as its linked eyes let it';
  return [
    {
      code: 'not-level-alone',
      where: name,
      text: `Alone, ${name} sits ${how.join(' and ')}; joined up, ${joined}.`,
      at: float.gravityCentre,
      number: degreeFromRadian(trimmed > LEVEL_RAD ? trimmed : heeled),
      limit: degreeFromRadian(LEVEL_RAD),
      unit: 'deg',
      fix: null,
    },
  ];
}
