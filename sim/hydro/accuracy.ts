import type { Mm, Radian } from '../units/brand.ts';
import { degreeFromRadian } from '../units/convert.ts';
import { type FloatingBody, totalsOf } from './body.ts';
import { restFrom } from './equilibrium.ts';
import { type Film, filmOf } from './film.ts';
import { type Float, floatAt, floatBody } from './float.ts';
import { planeAxes, potentialAt } from './potential.ts';

/** How far the sums themselves may be off, the bait being exactly as drawn; and what the water's skin may add. */
export interface Accuracy {
  /** By the mesh's facets; null when the coarser mesh floats another way, so that nothing can be told. */
  readonly mesh: MeshError | null;
  readonly solver: SolverError;
  readonly film: Film;
  readonly digits: Digits;
}

/** draft, proud: null under water. */
export interface MeshError {
  readonly draft: Mm | null;
  readonly proud: Mm | null;
  readonly trim: Radian;
  readonly heel: Radian;
  readonly gm: Mm;
}

/** What is left of force and moment, as draft and as angle. null: nothing holds it there. */
export interface SolverError {
  readonly draft: Mm | null;
  readonly angle: Radian | null;
}

/** Decimals that are meant: of millimetres, of degrees, of millimetres of GM. */
export interface Digits {
  readonly draft: number;
  readonly proud: number;
  readonly trim: number;
  readonly heel: number;
  readonly gm: number;
}

/** Never more than these, however exact the sums: no bait is cut finer. Said too before it is known how good they are. */
export const MOST_DIGITS: Digits = { draft: 1, proud: 1, trim: 1, heel: 1, gm: 2 };
/** A mesh of a quarter of the triangles has four times the error: its difference is three times that of the fine one. */
const ORDER_SHARE = 1 / 3;
/** No error is told as smaller: a mesh that straddles its skin is better than that law, but parts of its error cancel. */
const LEAST_MM: Mm = 0.002;
const LEAST_RAD: Radian = 3e-5;
/** Rests further apart than this on the two meshes are not the same rest. */
const SAME_REST = Math.cos(0.1);

/**
 * Estimates how far a float may be off. Errors of a mesh fall with the square of its steps, so those of the full mesh
 * are a third of what separates it from a mesh of half the steps (L. F. Richardson, 1911).
 *
 * coarse: the same body on a quarter of the triangles. tension: of the water, grams of force for each mm.
 */
export function judgeAccuracy(body: FloatingBody, coarse: FloatingBody, float: Float, tension: number): Accuracy {
  const mesh = meshError(coarse, float);
  const solver = solverError(body, float);
  return { mesh, solver, film: filmOf(body, float, tension), digits: digitsFor(float, mesh, solver) };
}

function meshError(coarse: FloatingBody, float: Float): MeshError | null {
  const { mass, volume } = totalsOf(coarse);
  // a bait that barely floats may not do so on the coarse mesh
  if (float.state === 'floats' && coarse.waterDensity * volume <= mass) return null;
  const other = float.state === 'floats' ? floatAt(coarse, restFrom(coarse, float.up, float)) : floatBody(coarse);
  if ((other.offset === null) !== (float.offset === null)) return null;
  if (other.up[0] * float.up[0] + other.up[1] * float.up[1] + other.up[2] * float.up[2] < SAME_REST) return null;
  const apart = (a: Mm, b: Mm) => Math.max(LEAST_MM, ORDER_SHARE * Math.abs(a - b));
  const turned = (a: Radian, b: Radian) => {
    const angle = Math.abs(a - b);
    return Math.max(LEAST_RAD, ORDER_SHARE * Math.min(angle, 2 * Math.PI - angle));
  };
  return {
    draft: other.draft === null || float.draft === null ? null : apart(other.draft, float.draft),
    proud: other.proud === null || float.proud === null ? null : apart(other.proud, float.proud),
    trim: turned(other.trim, float.trim),
    heel: turned(other.heel, float.heel),
    gm: apart(other.gm, float.gm),
  };
}

function solverError(body: FloatingBody, { up, offset, mass, gmMin, solver }: Float): SolverError {
  if (offset === null) return { draft: null, angle: gmMin > 0 ? 0 : null };
  const [u, v] = planeAxes(up);
  const { curveDD } = potentialAt(body, up, u, v, offset);
  return {
    draft: curveDD > 0 ? Math.abs(solver.force) / curveDD : null,
    angle: gmMin > 0 ? solver.moment / (mass * gmMin) : null,
  };
}

/**
 * How many decimals of each number are meant: as many as leave the error within half a unit of the last, and never more
 * than a workbench can use. 0 where nothing is known, and for the angles of a bait without a preferred way up.
 */
export function digitsFor(float: Float, mesh: MeshError | null, solver: SolverError): Digits {
  if (mesh === null) return { draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 };
  const { draft, angle } = solver;
  const lift = draft ?? 0;
  // a turn moves what is proud by no more than the bait is deep
  const depth = (float.draft ?? 0) + (float.proud ?? 0);
  const swing = float.neutral || angle === null ? null : angle;
  const degrees = (error: Radian) => (swing === null ? Number.POSITIVE_INFINITY : degreeFromRadian(error + swing));
  return {
    draft: decimals((mesh.draft ?? 0) + lift + (swing ?? 0) * depth, MOST_DIGITS.draft),
    proud: decimals((mesh.proud ?? 0) + lift + (swing ?? 0) * depth, MOST_DIGITS.proud),
    trim: decimals(degrees(mesh.trim), MOST_DIGITS.trim),
    heel: decimals(degrees(mesh.heel), MOST_DIGITS.heel),
    gm: decimals(mesh.gm, MOST_DIGITS.gm),
  };
}

function decimals(error: number, most: number): number {
  if (!Number.isFinite(error)) return 0;
  if (error === 0) return most;
  return Math.max(0, Math.min(most, Math.floor(-Math.log10(2 * error))));
}
