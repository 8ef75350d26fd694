import type { Digits } from '../../hydro/accuracy.ts';
import { type Float, LYING_RAD, NEUTRAL_MM, TENDER_MM } from '../../hydro/float.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import { formatLength, formatMass } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';

/** What about the rest of the whole bait or of a link cannot be relied on. at: null for the whole bait. */
export function restWarnings(where: string, at: Vec3 | null, float: Float, digits: Digits): readonly Warning[] {
  const said: Warning[] = [];
  const say = (code: string, text: string, measured: Partial<Warning> = {}) =>
    said.push({ ...WORDS_ALONE, code, where, text, at, ...measured });
  if (!float.solver.converged) {
    say('not-settled', `The sums did not settle for ${where}: ${leftOver(float.solver)} were left over.`, {
      number: Math.abs(float.solver.force),
      unit: 'g',
    });
  }
  if (float.mirrored) {
    say(
      'no-rest-upright',
      `Upright is no rest for ${where}: it goes over either way. Lead set lower, or more of it, stands it up.`,
    );
  }
  const least = { number: float.gmMin, unit: 'mm' } as const;
  if (float.neutral) {
    say('neutral', `Metacentric height is nil for ${where}: this model sees no preferred way up.`, {
      ...least,
      limit: NEUTRAL_MM,
    });
  } else if (float.tender) {
    const height = formatLength(float.gmMin, 'mm', { digits: digits.gm });
    say('tender', `GM is only ${height} for ${where}: a breath tips it.`, { ...least, limit: TENDER_MM });
  }
  if (float.lyingHooks) {
    say('hooks-lie', `Hooks lie on ${where} here instead of hanging clear, so its attitude is rough.`, {
      number: degreeFromRadian(Math.max(Math.abs(float.trim), Math.abs(float.heel))),
      limit: degreeFromRadian(LYING_RAD),
      unit: 'deg',
    });
  }
  return said;
}

/** Both, since sums that balance in weight may still be out in moment. */
function leftOver({ force, moment }: Float['solver']): string {
  return `${formatMass(Math.abs(force), 'g', { digits: 2 })} and ${Math.abs(moment).toPrecision(2)} g mm`;
}
