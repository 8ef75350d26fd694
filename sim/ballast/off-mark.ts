import { dot, type Vec3 } from '../numerics/vec3.ts';
import type { Mm } from '../units/brand.ts';

/** A water in the body frame: it is where up·p < offset; null where there is no surface to speak of. */
export interface Water {
  readonly up: Vec3;
  readonly offset: Mm | null;
}

/** How far the water stands off the line that is aimed for, at one place along the bait. */
export interface OffMark {
  /** A joint by its number, counted from 1 at the nose. */
  readonly at: 'nose' | 'tail' | number;
  readonly x: Mm;
  /** Height of the mark over the datum, on the centre plane. */
  readonly mark: Mm;
  /** Water over the mark: positive where the bait sits too deep. */
  readonly off: Mm;
}

/** Nearer to its side or to its end than this, heights over the datum say nothing. A target leans by 60° at most: 0.5. */
const LEAST_UPRIGHT = 0.4;

/** Height of the water over the datum at a place on the centre plane: up·(x, 0, z) = offset. null: none over it. */
export function waterHeight({ up, offset }: Water, x: Mm): Mm | null {
  if (offset === null || up[2] <= 0) return null;
  return (offset - dot(up, [x, 0, 0])) / up[2];
}

/**
 * The water that was found against the water aimed for, in mm of height over the datum: at the nose, at each joint and at
 * the tail. Empty where either has no surface, or the bait lies on its side or stands on an end.
 */
export function waterOffMark(found: Water, aim: Water, joints: readonly Mm[], length: Mm): readonly OffMark[] {
  const places = [
    { at: 'nose' as const, x: 0 },
    ...joints.map((x, i) => ({ at: i + 1, x })),
    { at: 'tail' as const, x: length },
  ];
  return places.flatMap(({ at, x }) => {
    const [water, mark] = [heightAt(found, x), heightAt(aim, x)];
    return water === null || mark === null ? [] : [{ at, x, mark, off: water - mark }];
  });
}

function heightAt(water: Water, x: Mm): Mm | null {
  return water.up[2] < LEAST_UPRIGHT ? null : waterHeight(water, x);
}
