/**
 * Minimises any smooth function by the method of Broyden, Fletcher, Goldfarb and Shanno with slopes by differences, which
 * knows nothing of what it minimises. Infinite values are walls. Returns the lowest point found, and how often it asked.
 */
export function minimise(f: (x: readonly number[]) => number, start: readonly number[], tolerance: number) {
  const n = start.length;
  let asked = 0;
  const ask = (x: readonly number[]): number => {
    asked++;
    return f(x);
  };
  const slopeAt = (x: readonly number[]): number[] =>
    x.map((_, k) => {
      const h = 1e-6;
      return (ask(x.with(k, x[k] + h)) - ask(x.with(k, x[k] - h))) / (2 * h);
    });
  const identity = (): number[][] =>
    Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, k) => (i === k ? 1 : 0)));
  let inverse = identity();
  let x = [...start];
  let value = ask(x);
  let slope = slopeAt(x);
  for (let round = 0; round < 600; round++) {
    let way = inverse.map((row) => -row.reduce((sum, each, k) => sum + each * slope[k], 0));
    let along = way.reduce((sum, each, k) => sum + each * slope[k], 0);
    if (!(along < 0)) {
      inverse = identity();
      way = slope.map((each) => -each);
      along = -slope.reduce((sum, each) => sum + each * each, 0);
    }
    if (-along < tolerance) break;
    let step = Math.min(1, 0.2 / Math.max(...way.map(Math.abs)));
    let next = x;
    let there = value;
    for (let halvings = 0; halvings < 40; halvings++, step /= 2) {
      next = x.map((each, k) => each + step * way[k]);
      there = ask(next);
      if (there <= value + 1e-4 * step * along) break;
    }
    if (!(there < value)) break;
    const nextSlope = slopeAt(next);
    const moved = next.map((each, k) => each - x[k]);
    const bent = nextSlope.map((each, k) => each - slope[k]);
    const product = moved.reduce((sum, each, k) => sum + each * bent[k], 0);
    if (product > 1e-300) {
      const turned = inverse.map((row) => row.reduce((sum, each, k) => sum + each * bent[k], 0));
      const share = bent.reduce((sum, each, k) => sum + each * turned[k], 0);
      const old = inverse;
      inverse = old.map((row, i) =>
        row.map(
          (each, k) =>
            each +
            ((product + share) * moved[i] * moved[k]) / product ** 2 -
            (turned[i] * moved[k] + moved[i] * turned[k]) / product,
        ),
      );
    }
    [x, value, slope] = [next, there, nextSlope];
  }
  return { x, value, asked };
}
