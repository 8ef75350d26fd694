import type { Mm } from '../../sim/index.ts';
import type { Sheet } from '../view/view.ts';
import { createEase } from './ease.ts';
import { reachAlong, type ShownBait } from './shown.ts';
import { type Room, scaleToFit, type TubSize } from './stand.ts';

/** Clear gap between neighbours that are pulled apart, in mean lengths of a link. */
const GAP_SHARE = 0.2;

/**
 * How far each link goes along the body's x when links are pulled apart. spans: fore and aft end of each link, nose to
 * tail. Neighbours end up a fifth of the mean length apart, or stay as they are where they stand wider already; the
 * first goes as far forward as the last goes aft, so that the middle of the whole stays.
 */
export function shiftsApart(spans: readonly (readonly [Mm, Mm])[]): readonly Mm[] {
  const gap = (GAP_SHARE * spans.reduce((sum, [fore, aft]) => sum + aft - fore, 0)) / Math.max(1, spans.length);
  const gone: Mm[] = [];
  spans.forEach(([fore], i) => {
    const [before, ahead] = [gone[i - 1], spans[i - 1]];
    gone.push(before === undefined || ahead === undefined ? 0 : before + Math.max(0, gap - (fore - ahead[1])));
  });
  const half = (gone.at(-1) ?? 0) / 2;
  return gone.map((shift) => shift - half);
}

/** Shift of each shown link, in the order in which they are shown. */
export function shiftsOf({ links }: ShownBait): readonly Mm[] {
  return shiftsApart(links.map((link) => [-reachAlong([link], [-1, 0, 0]), reachAlong([link], [1, 0, 0])]));
}

/** The sheet that a picture is drawn at which needs more room than the sheet has: smaller, about the same middle. */
export function shrunkSheet(sheet: Sheet, size: TubSize, room: Room): Sheet {
  const middlePx = sheet.left + room.middle * sheet.scale;
  const fitting = scaleToFit(size, room, middlePx);
  // none fits while the sheet is still laid out for another size of the tub
  const scale = fitting > 0 ? Math.min(sheet.scale, fitting) : sheet.scale;
  return { scale, left: middlePx - room.middle * scale };
}

/** Called with 0 where all is together up to 1 where it is pulled apart. */
type SpreadListener = (share: number) => void;

/** How far the links are on their way apart. */
export interface Spread {
  /** Sets out for apart or together; at once while still. */
  aim(apart: boolean, now_ms: number, still: boolean): void;
  /** Moves on to a time; true while there is more to come. */
  step(now_ms: number): boolean;
  /** Calls back at once and at every move; the answer ends that. */
  listen(listener: SpreadListener): () => void;
}

/** Links start together. Eases by mutation, as motion does. */
export function createSpread(): Spread {
  let [from, to, drawn] = [0, 0, 0];
  const ease = createEase((share) => {
    drawn = from + (to - from) * share;
    return drawn;
  }, drawn);

  return {
    aim(apart, now_ms, still) {
      from = drawn;
      to = apart ? 1 : 0;
      ease.begin(now_ms, still || from === to);
    },
    step: ease.step,
    listen: ease.listen,
  };
}
