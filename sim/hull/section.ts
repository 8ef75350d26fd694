import type { OvalSection, Section } from '../design/design.ts';
import { gamma } from '../numerics/gamma.ts';
import type { BoardRing } from './board.ts';

/**
 * Share of its box that a quarter of a superellipse |u|ⁿ + |v|ⁿ <= 1 fills: C(n) = Γ(1 + 1/n)² / Γ(1 + 2/n)
 * (Dirichlet's integral; π/4 for n = 2).
 */
export function sectionAreaFactor(exponent: number): number {
  return gamma(1 + 1 / exponent) ** 2 / gamma(1 + 2 / exponent);
}

/**
 * Half of a ring as points of the unit section, from the keel over the starboard flank to the back. `across` and
 * `upright` are blown up by one factor so that the polygon has the area of the smooth section: every ring is an affine
 * image of this one, so one factor serves them all. Keel and back stay where they are: draft is read off them. `gradAcross`, `gradUpright`: the outward gradient
 * (|u|ⁿ⁻¹, ±|v|ⁿ⁻¹) at the point on the smooth curve, before it is stretched to a section.
 */
export interface UnitRing {
  readonly kind: 'oval';
  readonly section: OvalSection;
  /** Steps from keel to back; there is one more point than steps. */
  readonly steps: number;
  readonly across: Float64Array;
  readonly upright: Float64Array;
  readonly gradAcross: Float64Array;
  readonly gradUpright: Float64Array;
  /** Points of the smooth curve, for the slopes of the skin. */
  readonly smoothAcross: Float64Array;
  readonly smoothUpright: Float64Array;
}

/** What the rings of a body have in common. */
export type Ring = UnitRing | BoardRing;

/** Builds the ring of a section with this many steps from keel to back, a multiple of four. */
export function buildRing(section: Section, steps: number): Ring {
  return section.kind === 'board' ? { kind: 'board', steps, section } : buildUnitRing(section, steps);
}

/** Builds the ring of an oval section with an even number of steps from keel to back. */
export function buildUnitRing(section: OvalSection, steps: number): UnitRing {
  const points = steps + 1;
  const smoothAcross = new Float64Array(points);
  const smoothUpright = new Float64Array(points);
  const gradAcross = new Float64Array(points);
  const gradUpright = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    const below = i < steps / 2;
    const n = below ? section.below : section.above;
    // quarter turn, 0 at the greatest breadth
    const turn = (Math.PI / 2) * Math.abs((2 * i) / steps - 1);
    const pole = i === 0 || i === steps;
    const u = pole ? 0 : Math.cos(turn) ** (2 / n);
    const v = pole ? 1 : Math.sin(turn) ** (2 / n);
    smoothAcross[i] = u;
    smoothUpright[i] = below ? -v : v;
    gradAcross[i] = u ** (n - 1);
    gradUpright[i] = below ? -(v ** (n - 1)) : v ** (n - 1);
  }
  const growth = equalAreaFactor(section, steps, smoothAcross, smoothUpright);
  return {
    kind: 'oval',
    section,
    steps,
    smoothAcross,
    smoothUpright,
    gradAcross,
    gradUpright,
    across: smoothAcross.map((u) => u * growth),
    upright: smoothUpright.map((v, i) => (i === 0 || i === steps ? v : v * growth)),
  };
}

/** The factor c of all points but keel and back: the polygon's area is a c² + b c, b from the pieces next to those two. */
function equalAreaFactor(section: OvalSection, steps: number, u: Float64Array, v: Float64Array): number {
  // height above and below the greatest breadth, as shares of the whole
  const rise = (height: number) => height * (height >= 0 ? 1 - section.breadth : section.breadth);
  let a = 0;
  let b = 0;
  for (let i = 0; i < steps; i++) {
    const middle = (u[i] + u[i + 1]) / 2;
    if (i === 0) b -= middle * rise(v[0]);
    else a -= middle * rise(v[i]);
    if (i + 1 === steps) b += middle * rise(v[steps]);
    else a += middle * rise(v[i + 1]);
  }
  const smooth =
    (1 - section.breadth) * sectionAreaFactor(section.above) + section.breadth * sectionAreaFactor(section.below);
  return (Math.sqrt(b ** 2 + 4 * a * smooth) - b) / (2 * a);
}
