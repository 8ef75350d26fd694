/** Lanczos coefficients for g = 7, n = 9 (C. Lanczos, SIAM J. Numer. Anal. B 1 (1964) 86-96), 15 digits. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** The gamma function for x > 0.5, to about 14 digits. */
export function gamma(x: number): number {
  const y = x - 1;
  const t = y + 7.5;
  let sum = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i] / (y + i);
  return Math.sqrt(2 * Math.PI) * t ** (y + 0.5) * Math.exp(-t) * sum;
}
