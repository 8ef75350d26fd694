/** A stretch across the sheet in CSS pixels. */
export interface Stretch {
  readonly left: number;
  readonly width: number;
}

/** Narrower than this a column breaks its numbers from their words. */
const LEAST_WIDTH = 132;
/** A column of one short link beside long ones. */
const COMFORTABLE_WIDTH = 176;

/**
 * Where the column of each link stands: as wide as the link's span and right under it where that is wide enough, else
 * as wide as can be read and as near under it as its neighbours leave room. spans and width in CSS pixels, spans from
 * the nose on and apart. null: the sheet is too narrow for columns.
 */
export function placeColumns(spans: readonly Stretch[], width: number): readonly Stretch[] | null {
  if (spans.length === 0 || width < spans.length * LEAST_WIDTH) return null;
  const least = Math.min(COMFORTABLE_WIDTH, width / spans.length);
  const widths = spans.map((span) => Math.max(span.width, least));
  const total = widths.reduce((sum, each) => sum + each, 0);
  // long links give way before short ones become unreadable
  const spare = widths.map((each) => each - least);
  const spareTotal = spare.reduce((sum, each) => sum + each, 0);
  const cut = total > width && spareTotal > 0 ? (total - width) / spareTotal : 0;
  const fitted = widths.map((each, index) => each - cut * (spare[index] ?? 0));

  const lefts = spans.map((span, index) => span.left + (span.width - (fitted[index] ?? 0)) / 2);
  let edge = 0;
  const pushedAft = lefts.map((left, index) => {
    const moved = Math.max(left, edge);
    edge = moved + (fitted[index] ?? 0);
    return moved;
  });
  edge = width;
  const placed: Stretch[] = [];
  for (let index = spans.length - 1; index >= 0; index -= 1) {
    const own = fitted[index] ?? 0;
    const left = Math.max(0, Math.min(pushedAft[index] ?? 0, edge - own));
    edge = left;
    placed.unshift({ left, width: own });
  }
  return placed;
}
