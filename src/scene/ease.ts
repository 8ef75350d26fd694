/** Long enough to see which way it went, short enough not to wait for. */
const EASE_MS = 200;

/** Share of the way that is done this long after setting out, slow at both ends; 1 from the end on. */
function eased(since_ms: number): number {
  const share = Math.min(1, Math.max(0, since_ms / EASE_MS));
  return share * share * (3 - 2 * share);
}

/** A part of the picture on its way from one place to another, with those that draw by it. */
export interface Ease<Drawn> {
  /** Sets out; at the end of the way at once while still. */
  begin(now_ms: number, still: boolean): void;
  /** Moves on to a time; true while there is more to come. */
  step(now_ms: number): boolean;
  /** Calls back at once and at every move; the answer ends that. */
  listen(listener: (drawn: Drawn) => void): () => void;
}

/** draw: what stands at a share of the way, 0 to 1; drawn: what stands before the first way. */
export function createEase<Drawn>(draw: (share: number) => Drawn, drawn: Drawn): Ease<Drawn> {
  const listeners = new Set<(drawn: Drawn) => void>();
  let now = drawn;
  let began_ms = 0;
  let moving = false;

  function show(share: number): void {
    now = draw(share);
    for (const listener of listeners) listener(now);
  }

  return {
    begin(now_ms, still) {
      began_ms = now_ms;
      moving = !still;
      if (still) show(1);
    },
    step(now_ms) {
      if (!moving) return false;
      const share = eased(now_ms - began_ms);
      show(share);
      moving = share < 1;
      return moving;
    },
    listen(listener) {
      listeners.add(listener);
      listener(now);
      return () => listeners.delete(listener);
    },
  };
}
