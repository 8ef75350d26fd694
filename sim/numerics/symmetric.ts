/** Of a sum of products, what doubles leave. */
const ROUNDING = 1e-14;

/**
 * Solves A x = b for a symmetric positive definite A of n rows, row by row in one array, by Cholesky's LDLᵀ. null where A
 * is not safely positive definite: where a pivot is no more than rounding leaves of its row.
 */
export function solveDefinite(a: ArrayLike<number>, b: ArrayLike<number>): Float64Array | null {
  const n = b.length;
  const l = Float64Array.from(a);
  const x = Float64Array.from(b);
  for (let j = 0; j < n; j++) {
    for (let k = 0; k < j; k++) {
      const pivot = l[k * n + k];
      const share = l[j * n + k];
      l[j * n + j] -= share * share * pivot;
    }
    const pivot = l[j * n + j];
    if (!(pivot > ROUNDING * a[j * n + j])) return null;
    for (let i = j + 1; i < n; i++) {
      let sum = l[i * n + j];
      for (let k = 0; k < j; k++) sum -= l[i * n + k] * l[j * n + k] * l[k * n + k];
      l[i * n + j] = sum / pivot;
    }
  }
  for (let i = 0; i < n; i++) for (let k = 0; k < i; k++) x[i] -= l[i * n + k] * x[k];
  for (let i = 0; i < n; i++) x[i] /= l[i * n + i];
  for (let i = n - 1; i >= 0; i--) for (let k = i + 1; k < n; k++) x[i] -= l[k * n + i] * x[k];
  return x;
}

/** The lowest eigenvalue of a small symmetric matrix, and its direction, by Jacobi's rotations. */
export function lowestMode(matrix: ArrayLike<number>, n: number): { readonly value: number; readonly mode: number[] } {
  const a = Float64Array.from(matrix);
  const modes = new Float64Array(n * n);
  for (let i = 0; i < n; i++) modes[i * n + i] = 1;
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    let size = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        size += a[i * n + j] ** 2;
        if (i !== j) off += a[i * n + j] ** 2;
      }
    }
    if (off <= 1e-28 * size) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, modes, n, p, q);
  }
  let lowest = 0;
  for (let i = 1; i < n; i++) if (a[i * n + i] < a[lowest * n + lowest]) lowest = i;
  return { value: a[lowest * n + lowest], mode: Array.from({ length: n }, (_, i) => modes[i * n + lowest]) };
}

/** One rotation in the plane of axes p and q that clears what couples them. */
function rotate(a: Float64Array, modes: Float64Array, n: number, p: number, q: number): void {
  const coupling = a[p * n + q];
  if (coupling === 0) return;
  const slope = (a[q * n + q] - a[p * n + p]) / (2 * coupling);
  const t = Math.sign(slope || 1) / (Math.abs(slope) + Math.sqrt(slope * slope + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  for (let k = 0; k < n; k++) {
    const [kp, kq] = [a[k * n + p], a[k * n + q]];
    a[k * n + p] = c * kp - s * kq;
    a[k * n + q] = s * kp + c * kq;
  }
  for (let k = 0; k < n; k++) {
    const [pk, qk] = [a[p * n + k], a[q * n + k]];
    a[p * n + k] = c * pk - s * qk;
    a[q * n + k] = s * pk + c * qk;
    const [mp, mq] = [modes[k * n + p], modes[k * n + q]];
    modes[k * n + p] = c * mp - s * mq;
    modes[k * n + q] = s * mp + c * mq;
  }
}
