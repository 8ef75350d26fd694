/** A rectangle on the tub, CSS pixels from its upper left corner. */
export interface Box {
  /** Of its middle. */
  x: number;
  y: number;
  readonly width: number;
  readonly height: number;
}

/** Words that stand as near to where they are wanted as there is room. */
export interface LabelBox extends Box {
  readonly wantedX: number;
  readonly wantedY: number;
  /** false: the tub is too full for it. */
  placed: boolean;
}

/** Rounding of sums of pixels, far less than can be seen. */
const TOUCH_PX = 1e-6;

/**
 * Puts each label, in order, at the free place nearest to where it is wanted, or to the edge of the tub there: inside the
 * tub, clear of the fixed boxes and of the labels before it. That place is the wanted one, straight beside it at an edge of what is in the way, or in a
 * corner between two such edges, so that trying these finds it. Writes into the labels and makes no garbage; sizes in CSS
 * pixels. The same boxes give the same places, whatever was there before.
 */
export function placeLabels(
  labels: readonly LabelBox[],
  fixed: readonly Readonly<Box>[],
  width: number,
  height: number,
): void {
  for (let index = 0; index < labels.length; index++) placeOne(labels, index, fixed, width, height);
}

function placeOne(
  labels: readonly LabelBox[],
  index: number,
  fixed: readonly Readonly<Box>[],
  width: number,
  height: number,
): void {
  const label = labels[index];
  const [rightmost, lowest] = [width - label.width / 2, height - label.height / 2];
  const wantedX = Math.min(rightmost, Math.max(label.width / 2, label.wantedX));
  const wantedY = Math.min(lowest, Math.max(label.height / 2, label.wantedY));
  label.placed = false;
  let nearest = Number.POSITIVE_INFINITY;
  // the wanted place, then both edges of each thing that stands
  const count = 1 + 2 * (fixed.length + index);
  for (let i = 0; i < count; i++) {
    if (!stands(labels, fixed, (i - 1) >> 1)) continue;
    const x = i === 0 ? wantedX : edgeOf(standing(labels, fixed, (i - 1) >> 1), label, i % 2 === 0 ? 1 : -1, true);
    const beside = (x - wantedX) ** 2;
    if (beside >= nearest || x < label.width / 2 || x > rightmost) continue;
    for (let j = 0; j < count; j++) {
      if (!stands(labels, fixed, (j - 1) >> 1)) continue;
      const y = j === 0 ? wantedY : edgeOf(standing(labels, fixed, (j - 1) >> 1), label, j % 2 === 0 ? 1 : -1, false);
      const away = beside + (y - wantedY) ** 2;
      if (away >= nearest || y < label.height / 2 || y > lowest) continue;
      if (!isFree(labels, index, fixed, x, y)) continue;
      nearest = away;
      label.x = x;
      label.y = y;
      label.placed = true;
    }
  }
}

/** The fixed boxes, then the labels. */
function standing(labels: readonly LabelBox[], fixed: readonly Readonly<Box>[], index: number): Readonly<Box> {
  return index < fixed.length ? fixed[index] : labels[index - fixed.length];
}

function stands(labels: readonly LabelBox[], fixed: readonly Readonly<Box>[], index: number): boolean {
  return index < fixed.length || labels[index - fixed.length].placed;
}

/** Where the label's middle is when it touches the box from before or behind. */
function edgeOf(box: Readonly<Box>, label: LabelBox, side: 1 | -1, sideways: boolean): number {
  return sideways ? box.x + (side * (box.width + label.width)) / 2 : box.y + (side * (box.height + label.height)) / 2;
}

function isFree(
  labels: readonly LabelBox[],
  index: number,
  fixed: readonly Readonly<Box>[],
  x: number,
  y: number,
): boolean {
  const { width, height } = labels[index];
  for (let i = 0; i < fixed.length + index; i++) {
    if (!stands(labels, fixed, i)) continue;
    const box = standing(labels, fixed, i);
    const [apartX, apartY] = [(box.width + width) / 2 - TOUCH_PX, (box.height + height) / 2 - TOUCH_PX];
    if (Math.abs(box.x - x) < apartX && Math.abs(box.y - y) < apartY) return false;
  }
  return true;
}
