import { worldAxes } from '../frames.ts';
import { type FloatingBody, totalsOf } from '../hydro/body.ts';
import type { Float } from '../hydro/float.ts';
import { potentialAt } from '../hydro/potential.ts';
import type { PlacedHung } from '../mass/placed.ts';
import { dot, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';

/** How little it takes to put a body out of trim. First order: right for small changes. Nose-down positive. */
export interface Forgiveness {
  /** Trim when its centre of gravity lies a millimetre further forward than thought. */
  readonly perMm: Radian;
  /** Trim when a gram more lies at its nose end, at its tail end. */
  readonly perGram: readonly [Radian, Radian];
  readonly hung: readonly HungEffect[];
}

/** What one hung item does to the trim of what it hangs from. */
export interface HungEffect {
  readonly name: string;
  /** Trim that goes when it is taken off. */
  readonly trim: Radian;
  /** Where its eye would have to stand to level the body; null: nowhere on it. */
  readonly levelX: Mm | null;
  /** What it would have to weigh where it hangs; null: no mass of it would. */
  readonly levelMass: Gram | null;
}

/** Further over than this no first order says anything. */
const OFF_RAD: Radian = radianFromDegree(30);

/**
 * Trim follows moment as tan θ = M/(W·GM_L), the inclining formula; wholly under water GM_L is the height of B over G. A
 * hung item counts with its weight less the buoyancy of what of it is wet, at its eye. null: it does not stand, or lies far
 * over.
 */
export function forgivenessOf(
  body: FloatingBody,
  hung: readonly PlacedHung[],
  float: Float,
  span: readonly [Mm, Mm],
): Forgiveness | null {
  const stiffness = float.mass * float.gmLong;
  if (!(stiffness > 0) || Math.max(Math.abs(float.trim), Math.abs(float.heel)) > OFF_RAD) return null;
  const { along, across } = worldAxes(float.up);
  const about = turningPoint(body, float, along, across);
  const arm = (at: Vec3) => dot(subtract(at, about), along);
  // weight behind the turning point lifts the nose
  const trimBy = (weight: Gram, at: Vec3) => -Math.atan((weight * arm(at)) / stiffness);
  const end = (x: Mm): Vec3 => [x, 0, about[2]];
  const righting = stiffness * Math.tan(float.trim);
  return {
    perMm: Math.atan(float.mass / stiffness),
    perGram: [trimBy(1, end(span[0])), trimBy(1, end(span[1]))],
    hung: hung.map(({ name, mass, volume, eye, hang }): HungEffect => {
      const wet = volume * wetShare(float, eye, hang) * body.waterDensity;
      const weight = mass - wet;
      // the same metal: a heavier hook is larger, and brings its buoyancy along
      const perGram = weight / mass;
      const lever = arm(eye);
      const levelMass = mass + righting / (lever * perGram);
      const levelX = eye[0] + righting / weight;
      return {
        name,
        trim: trimBy(weight, eye),
        levelX: levelX > span[0] && levelX < span[1] ? levelX : null,
        levelMass: weight > 0 && Math.abs(lever) > 1e-6 && levelMass > 0 ? levelMass : null,
      };
    }),
  };
}

/** Weight added over this point changes the draft and not the trim: the middle of the waterplane, or B under water. */
function turningPoint(body: FloatingBody, float: Float, along: Vec3, across: Vec3): Vec3 {
  if (float.offset === null) return totalsOf(body).volumeCentre;
  return potentialAt(body, float.up, along, across, float.offset).centre;
}

function wetShare({ up, offset }: Float, eye: Vec3, hang: Mm): number {
  if (offset === null || hang === 0) return 1;
  const height = dot(up, eye) - offset;
  return Math.min(Math.max((hang - height) / hang, 0), 1);
}
