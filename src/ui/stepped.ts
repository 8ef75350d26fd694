/** The next whole multiple of a step above (by = 1) or below (-1), or ten of them. */
export function stepped(value: number, step: number, by: number): number {
  const steps = value / step;
  const nearest = Math.round(steps);
  const onStep = Math.abs(steps - nearest) < 1e-6;
  const from = onStep ? nearest : by > 0 ? Math.floor(steps) : Math.ceil(steps);
  return Number(((from + by) * step).toPrecision(12));
}
