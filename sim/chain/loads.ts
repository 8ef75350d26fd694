import { cross, dot, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm } from '../units/brand.ts';
import type { Hinge } from './hinge.ts';
import { pointAt } from './pose.ts';
import type { Ground } from './system.ts';

/** What a pin carries from one side to the other, all that is forward of it taken together. */
export interface PinLoad {
  /** S = Σ (buoyancy - weight): positive where the fore part floats up. */
  readonly shear: Gram;
  /** M = Σ (buoyancy - weight)(x_pin - x): positive where it makes the bait sag in the middle. */
  readonly moment: GramMm;
  /** T = Σ (buoyancy - weight)(y_pin - y): positive where it turns the fore part starboard side down. */
  readonly twist: GramMm;
}

/** Loads of all pins; x runs along the level shadow of the link before the pin, y across it. */
export function loadsOf(
  hinges: readonly Hinge[],
  { poses, pulls }: Pick<Ground, 'poses' | 'pulls'>,
): readonly PinLoad[] {
  let sum = 0;
  let moment: Vec3 = [0, 0, 0];
  return hinges.map(({ pivot, holder }, j) => {
    const pull = pulls[j];
    sum += pull.sum;
    moment = [moment[0] + pull.moment[0], moment[1] + pull.moment[1], moment[2] + pull.moment[2]];
    const pin = pointAt(poses[holder === 'fore' ? j : j + 1], pivot);
    const along = shadowOf(poses[j].x);
    const across = cross([0, 0, 1], along);
    // pulls are weight less buoyancy
    return {
      shear: -sum + 0,
      moment: dot(moment, along) - sum * dot(pin, along) + 0,
      twist: dot(moment, across) - sum * dot(pin, across) + 0,
    };
  });
}

function shadowOf([x, y]: Vec3): Vec3 {
  const size = Math.hypot(x, y);
  return size > 1e-9 ? [x / size, y / size, 0] : [1, 0, 0];
}
