import { worldAxes } from '../frames.ts';
import { type FloatingBody, type Totals, totalsOf } from '../hydro/body.ts';
import { draftAt } from '../hydro/draft.ts';
import { HANGS_G, HANGS_SHARE } from '../hydro/float.ts';
import { potentialAt } from '../hydro/potential.ts';
import { add, dot, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import type { Gram, GramMm, Mm } from '../units/brand.ts';
import type { Aim } from './target.ts';

/** What a body lacks of resting as its aim says. */
export interface Need {
  /** Weight less the buoyancy that it brings along; negative: too heavy without any ballast. */
  readonly net: Gram;
  readonly up: Vec3;
  /** The level axes of the aim, written in the body frame: towards the tail, and across. */
  readonly along: Vec3;
  readonly across: Vec3;
  readonly buoyancy: Vec3;
  /** What moments and rises are measured from. */
  readonly about: Vec3;
  /** Moments that ballast must bring about `about`: Σ Δm (r - about)·along, and across. */
  readonly moment: { readonly along: GramMm; readonly across: GramMm };
  /** Righting moment for each radian of trim and of heel, before any ballast; a gram set h higher takes h away. */
  readonly stiffness: { readonly trim: GramMm; readonly heel: GramMm };
}

/**
 * The ballast that lets a body without it rest as its aim says. At the aimed attitude the potential has a slope
 * g = mG - ρM; ballast of net mass Δm at r adds Δm (r - c), and at rest nothing is left of it (see `potentialAt`).
 * Wholly under water B must stand over G, so Σ m (r - B) is level there, whatever the net weight.
 */
export function needOf(body: FloatingBody, aim: Aim): Need {
  const { up } = aim;
  const { along, across } = worldAxes(up);
  const totals = totalsOf(body);
  const buoyancy = body.waterDensity * totals.volume;
  const axes = { up, along, across };
  if (aim.netWet !== null && !isAfloat(aim.netWet, buoyancy + aim.netWet)) {
    return needUnder(axes, totals, buoyancy + aim.netWet, aim);
  }
  const offset = aim.offset ?? offsetFor(body, axes, buoyancy + (aim.netWet ?? 0), totals.mass);
  const at = potentialAt(body, up, along, across, offset);
  // a waterline that leaves next to nothing dry is one of a body that hangs
  const wanted = totals.mass + at.force;
  if (!isAfloat(wanted - buoyancy, wanted)) return needUnder(axes, totals, wanted, aim);
  return {
    net: at.force,
    ...axes,
    buoyancy: at.buoyancyCentre,
    about: at.centre,
    moment: { along: -at.slopeU, across: -at.slopeV },
    stiffness: { trim: at.curveUU, heel: at.curveVV },
  };
}

type Axes = Pick<Need, 'up' | 'along' | 'across'>;

/**
 * Of a body that is to weigh so much with everything wet. While it falls drag bears what buoyancy does not: with w at P and
 * ρV at B the weights level it where Σ m (r - B) = w (P - B), along and across.
 */
function needUnder(axes: Axes, totals: Totals, wanted: Gram, { netWet, drag }: Aim): Need {
  const lever = subtract(totals.massCentre, totals.volumeCentre);
  const pull: Vec3 = drag === undefined ? [0, 0, 0] : scale(subtract(drag, totals.volumeCentre), netWet ?? 0);
  const upright = dot(pull, axes.up) - totals.mass * dot(lever, axes.up);
  return {
    net: wanted - totals.mass,
    ...axes,
    buoyancy: totals.volumeCentre,
    about: totals.volumeCentre,
    moment: {
      along: dot(pull, axes.along) - totals.mass * dot(lever, axes.along),
      across: dot(pull, axes.across) - totals.mass * dot(lever, axes.across),
    },
    stiffness: { trim: upright, heel: upright },
  };
}

/** Lighter than that, a body shows some of itself. */
function isAfloat(netWet: Gram, mass: Gram): boolean {
  return netWet < -Math.max(HANGS_G, HANGS_SHARE * mass);
}

/** Where the water stands when the body weighs so much. */
function offsetFor(body: FloatingBody, { up, along, across }: Axes, wanted: Gram, mass: Gram): Mm {
  const loaded = { ...body, mass: body.mass + wanted - mass };
  return draftAt(loaded, up, along, across, null, 1e-9 * wanted).offset;
}

/**
 * Where ballast of this net weight must act, as the point of its line nearest to `about`: along the body and across.
 * null: it has no weight to speak of, and no place cures a moment.
 */
export function placeOf({ net, about, moment, along, across }: Need): Vec3 | null {
  if (Math.abs(net) < 1e-9) return null;
  return add(about, add(scale(along, moment.along / net), scale(across, moment.across / net)));
}
