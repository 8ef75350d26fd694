/*
 * Drag coefficients of what falls across its length. All on the area that it shows to the fall, all for the Reynolds
 * numbers of baits that sink, some hundreds to some ten thousands: the flow leaves the body before its broadest place.
 */

/** A sum of powers of the speed: constant + half v^-½ + twoThirds v^-⅔ + whole v⁻¹. */
export interface Powers {
  readonly constant: number;
  readonly half: number;
  readonly twoThirds: number;
  readonly whole: number;
}

export const NO_DRAG: Powers = { constant: 0, half: 0, twoThirds: 0, whole: 0 };

/** The sum at a speed above zero. */
export function powersAt({ constant, half, twoThirds, whole }: Powers, speed: number): number {
  return constant + half / Math.sqrt(speed) + twoThirds / Math.cbrt(speed * speed) + whole / speed;
}

/** a + k b, power by power. */
export function addPowers(a: Powers, b: Powers, k = 1): Powers {
  return {
    constant: a.constant + k * b.constant,
    half: a.half + k * b.half,
    twoThirds: a.twoThirds + k * b.twoThirds,
    whole: a.whole + k * b.whole,
  };
}

/**
 * A long round bar across the flow, over Re (its speed times width over viscosity is speed · reynolds):
 *
 *   C_d = 1 + 10 Re^-⅔,  1 < Re < 2·10⁵        White, Viscous fluid flow
 *
 * Experiments lie within 15 % of it, 1.2 at Re 10⁴ to 10⁵.
 */
export function barDrag(reynolds: number): Powers {
  return { ...NO_DRAG, constant: 1, twoThirds: 10 / Math.cbrt(reynolds * reynolds) };
}

/** Mean friction of one side of a plate in laminar flow: 1.328/√Re, Blasius. */
const BLASIUS = 1.328;
/** A long thin plate square to the flow. Hoerner, Fluid-dynamic drag, from memory. */
const LONG_PLATE = 1.98;
/**
 * A short plate square to the flow. White, Fluid mechanics, table 7.3, from memory: 1.18 for a square, 1.2 for 1:5.
 */
export const SHORT_PLATE = 1.2;
/**
 * Long bars with square edges, the depth along the flow over the width across it against C_d. White, Fluid mechanics,
 * table 7.2, flat nose, from memory; the peak near 0.7 is left out, as no bait's section has edges that sharp.
 */
const SQUARE_EDGES: readonly (readonly [depth: number, drag: number])[] = [
  [0, 1.98],
  [1, 2.1],
  [2, 1.8],
  [3, 1.3],
  [6, 0.9],
];

/** What an ellipse fills of its box. */
const ELLIPSE = Math.PI / 4;

/**
 * A long bar of some section across the flow, on its width.
 *
 * depth: height of the section in the direction of the fall over its width across it. An ellipse after Hoerner
 * (Fluid-dynamic drag, from memory): a part by shape, which falls with its depth, and friction along its sides,
 *
 *   C_d = shape/depth + 2 C_f (1 + depth),  C_f = 1.328/√Re_depth
 *
 * with the shape part that makes a depth of 1 White's round bar. Wider than deep, the shape part goes to the plate's in
 * proportion: an ellipse of 1:2 on its flat side gets 1.5, where 1.6 is measured (from memory).
 * fullness: share of its box that the section fills. What it fills more than an ellipse takes it towards square edges,
 * by the square of the way, since edges round off to a quarter of the width have lost nearly all they do (from memory).
 * relief: what is left of the shape part by the flow round the ends, see `endRelief`; friction is not relieved.
 * width: Re of the width at a speed of 1.
 */
export function sectionDrag(depth: number, fullness: number, relief: number, width: number): Powers {
  const bar = barDrag(width);
  // of the round bar, what is not friction: 4 C_f of its width
  const shape = addPowers(bar, { ...NO_DRAG, half: (4 * BLASIUS) / Math.sqrt(width) }, -1);
  const ellipse =
    depth >= 1
      ? addPowers(NO_DRAG, shape, 1 / depth)
      : addPowers({ ...NO_DRAG, constant: LONG_PLATE * (1 - depth) }, shape, depth);
  const square = Math.min(1, Math.max(0, (fullness - ELLIPSE) / (1 - ELLIPSE))) ** 2;
  const edges = { ...NO_DRAG, constant: squareEdges(depth) };
  const form = addPowers(addPowers(NO_DRAG, ellipse, 1 - square), edges, square);
  const friction = (2 * BLASIUS * (1 + depth) * Math.min(1, depth)) / Math.sqrt(width * Math.max(depth, 1e-3));
  return addPowers({ ...NO_DRAG, half: friction }, form, relief);
}

function squareEdges(depth: number): number {
  const after = SQUARE_EDGES.findIndex(([at]) => at >= depth);
  if (after < 0) return SQUARE_EDGES[SQUARE_EDGES.length - 1][1];
  if (after === 0) return SQUARE_EDGES[0][1];
  const [[from, low], [to, high]] = [SQUARE_EDGES[after - 1], SQUARE_EDGES[after]];
  return low + ((high - low) * (depth - from)) / (to - from);
}

/**
 * What the ends of a bar of some length over its width leave of a long bar's drag: 1 - 0.467/(1 + slender/25). Our fit
 * to White, Fluid mechanics, table 7.3, finite cylinders across the flow (from memory: 0.64, 0.68, 0.74, 0.74, 0.82,
 * 0.91, 0.98 of lengths 1, 2, 3, 5, 10, 20, 40, against 1.20 of no end), within 0.035.
 */
export function endRelief(slender: number): number {
  return 1 - 0.467 / (1 + slender / 25);
}

/**
 * Drag of a ball: 24/Re (1 + 0.150 Re^0.681) + 0.407/(1 + 8710/Re), Re < 2·10⁵. Brown, Lawler (2003), equation 19.
 */
export function ballDrag(reynolds: number): number {
  return (24 / reynolds) * (1 + 0.15 * reynolds ** 0.681) + 0.407 / (1 + 8710 / reynolds);
}

/** What the drag of any body is estimated from: how like a ball it is. */
export interface BallLikeness {
  /** Area of the ball of its volume over its own. */
  readonly sphericity: number;
  /** Section of that ball over the area that it shows to the fall. */
  readonly crosswise: number;
  /** Re of that ball's diameter at a speed of 1. */
  readonly reynolds: number;
}

/**
 * Any body by its sphericities, on the section of the ball of its volume:
 *
 *   C_d = 8/(Re √φ⊥) + 16/(Re √φ) + 3/(√Re φ^¾) + 0.42 · 10^(0.4 (-lg φ)^0.2)/φ⊥
 *
 * Hölzer, Sommerfeld (2008), simplified form; on their data it is off by 14 % in the mean (from memory). They had
 * spheroids, discs, plates and cylinders, none shaped to part the water.
 */
export function likenessDrag({ sphericity, crosswise, reynolds }: BallLikeness): Powers {
  const round = Math.min(1, sphericity);
  return {
    constant: (0.42 * 10 ** (0.4 * (-Math.log10(round)) ** 0.2)) / crosswise,
    half: 3 / (Math.sqrt(reynolds) * round ** 0.75),
    twoThirds: 0,
    whole: (8 / Math.sqrt(crosswise) + 16 / Math.sqrt(round)) / reynolds,
  };
}
