import type { Digits } from '../../hydro/accuracy.ts';
import { type Float, LYING_RAD, NEUTRAL_MM } from '../../hydro/float.ts';
import { steadyFrom } from '../../hydro/steadiness.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import { formatLength, formatMass } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';

/**
 * What about the rest of the whole bait or of a link cannot be relied on. at: null for the whole bait. cure: looks for the
 * edit that stands it up, or steadies it.
 */
export function restWarnings(
  where: string,
  at: Vec3 | null,
  float: Float,
  digits: Digits,
  cure: () => Warning['fix'] = () => null,
): readonly Warning[] {
  const said: Warning[] = [];
  const say = (code: string, text: string, measured: Partial<Warning> = {}) =>
    said.push({ ...WORDS_ALONE, code, where, text, at, ...measured });
  if (!float.solver.converged) {
    say('not-settled', `The sums did not settle for ${where}: ${leftOver(float.solver)} were left over.`, {
      number: Math.abs(float.solver.force),
      unit: 'g',
    });
  }
  if (float.mirrored || float.laysOver) {
    const goes = float.mirrored
      ? 'it goes over either way'
      : `it goes over to ${float.heel > 0 ? 'starboard' : 'port'}`;
    const upright = float.laysOver ? ({ number: float.gmUpright, limit: 0, unit: 'mm' } as const) : {};
    say('no-rest-upright', `Upright is no rest for ${where}: ${goes}. Lead set lower, or more of it, stands it up.`, {
      ...upright,
      fix: float.laysOver ? cure() : null,
    });
  }
  const least = { number: float.gmMin, unit: 'mm' } as const;
  if (float.neutral) {
    say('neutral', `Metacentric height is nil for ${where}: this model sees no preferred way up.`, {
      ...least,
      limit: NEUTRAL_MM,
    });
  } else if (float.tender) {
    const height = formatLength(float.gmMin, 'mm', { digits: digits.gm });
    say('tender', `GM is only ${height} for ${where}: a breath tips it.`, {
      ...least,
      limit: steadyFrom(float.width),
      fix: float.laysOver ? null : cure(),
    });
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
