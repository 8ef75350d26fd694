/** Draws the tub as it is now, at so many device pixels to one of the page's. */
export type Taker = (pixelRatio: number) => HTMLCanvasElement;

let taker: Taker | null = null;

/** The tub says how its picture is taken, and that it can no longer be; nothing else of it is known out here. */
export function offerPicture(take: Taker): () => void {
  taker = take;
  return () => {
    if (taker === take) taker = null;
  };
}

/** null: there is no tub to be drawn. */
export function takePicture(pixelRatio: number): HTMLCanvasElement | null {
  return taker === null ? null : taker(pixelRatio);
}
