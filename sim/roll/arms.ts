import { isOnEnd } from '../frames.ts';
import type { FloatingBody } from '../hydro/body.ts';
import { type Float, NEUTRAL_MM } from '../hydro/float.ts';
import { rightingCurve, type WayOver } from '../hydro/righting-arm.ts';
import type { GramMm, Mm, Radian } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';

/** One place on a righting-arm curve. */
export interface ArmAt {
  readonly heel: Radian;
  /** Positive turns it to port. */
  readonly arm: Mm;
  /** What it takes to hold it there, from its rest. */
  readonly energy: GramMm;
}

/** How far it may be heeled one way, and what brings it back. */
export interface ArmsOver {
  /** Heel from which it no longer comes back; null: it comes back from as far as the curve goes. */
  readonly limit: Radian | null;
  /** Longest arm that brings it back, as a length, and its heel. */
  readonly most: { readonly heel: Radian; readonly arm: Mm };
  /** What it takes to heel it up to the limit, or to the end of the curve. */
  readonly energy: GramMm;
  /** Heel at which it would go on to stand on end, where the curve ends; null: it never does. */
  readonly onEnd: Radian | null;
}

/** Righting arms half a turn to port and to starboard. */
export interface Arms {
  readonly points: readonly ArmAt[];
  readonly starboard: ArmsOver;
  readonly port: ArmsOver;
}

const STEP: Radian = radianFromDegree(5);
const HALF = Math.round(Math.PI / STEP);

/**
 * The righting arms of a body about its rest, free to trim and to rise. Afloat from `rightingCurve`; wholly under water
 * nothing changes as it turns but the lever of its buoyancy B over its weight G, so the arm is BG sin(heel from its rest)
 * and the energy ρV·BG (1 - cos). null: it stands on end, where heel means nothing, or has no preferred way up.
 */
export function armsOf(body: FloatingBody, float: Float): Arms | null {
  if (isOnEnd(float.trim) || (Math.abs(float.gmUpright) < NEUTRAL_MM && float.neutral)) return null;
  if (float.state !== 'floats') return armsUnder(float);
  const { points, starboard, port } = rightingCurve(body, float.up, STEP);
  const { mass } = float;
  const inEnergy = ({ limit, most, area, onEnd }: WayOver): ArmsOver => ({ limit, most, energy: area * mass, onEnd });
  return {
    points: points.map(({ heel, arm, energy }) => ({ heel, arm, energy: energy * mass })),
    starboard: inEnergy(starboard),
    port: inEnergy(port),
  };
}

function armsUnder({ heel: rest, gm, mass, netWet }: Float): Arms {
  const lift = mass - netWet;
  const at = (heel: Radian): ArmAt => ({
    heel,
    arm: gm * Math.sin(heel - rest),
    energy: lift * gm * (1 - Math.cos(heel - rest)),
  });
  const over = (way: 1 | -1): ArmsOver => ({
    limit: null,
    most: { heel: rest + (way * Math.PI) / 2, arm: gm },
    energy: 2 * lift * gm,
    onEnd: null,
  });
  return {
    points: Array.from({ length: 2 * HALF + 1 }, (_, k) => at((k - HALF) * STEP)),
    starboard: over(1),
    port: over(-1),
  };
}
