import { type Camera, type Group, Vector3 } from 'three';
import { type Box, type LabelBox, placeLabels } from './labels.ts';

/** Words of one mark: beside its sign to the left (-1) or to the right (1), or where the mark is (0). */
export type Side = -1 | 0 | 1;

/** What the board knows of one mark. */
interface Entry {
  readonly rank: number;
  readonly side: Side;
  /** How far over their point words want to be, CSS pixels. */
  readonly rise: number;
  readonly anchor: Group;
  readonly words: HTMLElement;
  readonly label: { -readonly [Key in keyof LabelBox]: LabelBox[Key] };
  /** Where the mark is in the picture, and its sign if it has one. */
  readonly sign: Box;
  shiftX: number;
  shiftY: number;
}

/** Keeps the words over one picture apart. */
export interface LabelBoard {
  /** Words join in the order of their rank, the first have the best places; the answer takes them off again. */
  join(anchor: Group, words: HTMLElement, rank: number, side: Side, rise: number): () => void;
  /** Puts the words where there is room, if anything has moved since; width and height of the picture in CSS pixels. */
  place(camera: Camera, width: number, height: number): void;
}

/** Half a sign with a pixel round it, and from the sign's middle to its words. */
const SIGN_PX = 15;
const BESIDE_PX = 9.5;
/** Between two words. */
const GAP_PX = 2;
/** Less than can be seen. */
const STILL_PX = 0.01;

/** redraw: asks for a frame, in which `place` is called. */
export function createLabelBoard(redraw: () => void): LabelBoard {
  const entries: Entry[] = [];
  const labels: LabelBox[] = [];
  const signs: Box[] = [];
  const point = new Vector3();
  let stale = true;
  const size = { width: 0, height: 0 };

  function list(): void {
    entries.sort((one, other) => one.rank - other.rank);
    labels.length = 0;
    signs.length = 0;
    for (const { label, sign, side } of entries) {
      labels.push(label);
      if (side !== 0) signs.push(sign);
    }
    stale = true;
    redraw();
  }

  return {
    join(anchor, words, rank, side, rise) {
      const label = { wantedX: 0, wantedY: 0, x: 0, y: 0, width: 0, height: 0, placed: false };
      const sign = { x: 0, y: 0, width: SIGN_PX, height: SIGN_PX };
      const entry = { rank, side, rise, anchor, words, label, sign, shiftX: 0, shiftY: 0 };
      // a face that has loaded, or another number, makes words wider
      const observer = new ResizeObserver(() => {
        label.width = words.offsetWidth + GAP_PX;
        label.height = words.offsetHeight + GAP_PX;
        stale = true;
        redraw();
      });
      observer.observe(words);
      entries.push(entry);
      list();
      return () => {
        observer.disconnect();
        entries.splice(entries.indexOf(entry), 1);
        list();
      };
    },
    place(camera, width, height) {
      camera.updateMatrixWorld();
      let moved = stale || size.width !== width || size.height !== height;
      for (const { anchor, sign } of entries) {
        anchor.updateWorldMatrix(true, false);
        point.setFromMatrixPosition(anchor.matrixWorld).project(camera);
        const [x, y] = [((point.x + 1) / 2) * width, ((1 - point.y) / 2) * height];
        if (Math.abs(x - sign.x) > STILL_PX || Math.abs(y - sign.y) > STILL_PX) moved = true;
        sign.x = x;
        sign.y = y;
      }
      if (!moved) return;
      stale = false;
      size.width = width;
      size.height = height;
      for (const { label, sign, side, rise } of entries) {
        label.wantedX = sign.x + side * (BESIDE_PX + label.width / 2);
        label.wantedY = sign.y - rise;
      }
      placeLabels(labels, signs, width, height);
      for (const entry of entries) write(entry);
    },
  };
}

/** The page is told of a shift only when there is a new one. */
function write(entry: Entry): void {
  const { words, label, sign } = entry;
  const visibility = label.placed ? '' : 'hidden';
  if (words.style.visibility !== visibility) words.style.visibility = visibility;
  if (!label.placed) return;
  const [x, y] = [label.x - sign.x, label.y - sign.y];
  if (Math.abs(x - entry.shiftX) <= STILL_PX && Math.abs(y - entry.shiftY) <= STILL_PX) return;
  entry.shiftX = x;
  entry.shiftY = y;
  words.style.translate = `${x}px ${y}px`;
}
