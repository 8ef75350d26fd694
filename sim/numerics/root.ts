export interface Root {
  readonly x: number;
  /** f(x): what is left over. */
  readonly residual: number;
  readonly steps: number;
}

/**
 * A root of a continuous f between a and b, where f(a) and f(b) differ in sign (or one is zero). False position with
 * the Illinois halving of the end that stays, so it never leaves the bracket and never stalls. If the signs agree, the
 * end with the smaller |f| is given back and the residual tells.
 */
export function bracketedRoot(f: (x: number) => number, a: number, b: number, tolerance: number, maxSteps = 100): Root {
  let lo = a;
  let hi = b;
  let fLo = f(lo);
  let fHi = f(hi);
  if (fLo === 0) return { x: lo, residual: 0, steps: 0 };
  if (fHi === 0) return { x: hi, residual: 0, steps: 0 };
  if (fLo > 0 === fHi > 0) {
    return Math.abs(fLo) < Math.abs(fHi) ? { x: lo, residual: fLo, steps: 0 } : { x: hi, residual: fHi, steps: 0 };
  }
  let side = 0;
  for (let steps = 1; ; steps++) {
    const x = (lo * fHi - hi * fLo) / (fHi - fLo);
    const fx = f(x);
    if (Math.abs(fx) <= tolerance || steps === maxSteps) return { x, residual: fx, steps };
    if (fx > 0 === fHi > 0) {
      hi = x;
      fHi = fx;
      if (side === 1) fLo /= 2;
      side = 1;
    } else {
      lo = x;
      fLo = fx;
      if (side === -1) fHi /= 2;
      side = -1;
    }
  }
}
