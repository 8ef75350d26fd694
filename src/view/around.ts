/** Two neighbours in a row of points at even shares from 0 to 1, and how far between them a share lies. */
export function around<Point>(points: readonly Point[], share: number): { from: Point; to: Point; part: number } {
  const at = share * (points.length - 1);
  const k = Math.max(0, Math.min(points.length - 2, Math.floor(at)));
  const [from, to] = [points[k], points[k + 1]];
  if (from === undefined || to === undefined) throw new Error('a share of a row that has no two points');
  return { from, to, part: at - k };
}
