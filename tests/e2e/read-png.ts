import { inflateSync } from 'node:zlib';

/** A picture of 8-bit colours. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue and cover of a pixel, 0..255, counted from the upper left. */
  readonly at: (x: number, y: number) => readonly [number, number, number, number];
}

const SIGNATURE_BYTES = 8;
const CHANNELS: Readonly<Record<number, number>> = { 2: 3, 6: 4 };

/** Reads a screenshot: a PNG of 8 bits a channel, RGB or RGBA, not interlaced (PNG, third edition, clauses 5, 9 and 11). */
export function readPng(file: Buffer): Picture {
  const parts: Buffer[] = [];
  let head: Buffer | undefined;
  for (let at = SIGNATURE_BYTES; at < file.length; ) {
    const size = file.readUInt32BE(at);
    const kind = file.toString('latin1', at + 4, at + 8);
    const body = file.subarray(at + 8, at + 8 + size);
    if (kind === 'IHDR') head = body;
    if (kind === 'IDAT') parts.push(body);
    at += size + 12;
  }
  const channels = head && CHANNELS[head[9]];
  if (!head || !channels || head[8] !== 8 || head[12] !== 0) throw new Error('not a plain PNG of 8 bits a channel');
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  const pixels = unfilter(inflateSync(Buffer.concat(parts)), width * channels, height, channels);
  return {
    width,
    height,
    at: (x, y) => {
      const first = (y * width + x) * channels;
      return [pixels[first], pixels[first + 1], pixels[first + 2], channels === 4 ? pixels[first + 3] : 255];
    },
  };
}

function unfilter(raw: Buffer, rowBytes: number, height: number, channels: number): Buffer {
  const out = Buffer.alloc(rowBytes * height);
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (rowBytes + 1)];
    for (let i = 0; i < rowBytes; i++) {
      const here = y * rowBytes + i;
      const left = i >= channels ? out[here - channels] : 0;
      const up = y > 0 ? out[here - rowBytes] : 0;
      const corner = y > 0 && i >= channels ? out[here - rowBytes - channels] : 0;
      out[here] = raw[y * (rowBytes + 1) + 1 + i] + predicted(filter, left, up, corner);
    }
  }
  return out;
}

function predicted(filter: number, left: number, up: number, corner: number): number {
  if (filter === 0) return 0;
  if (filter === 1) return left;
  if (filter === 2) return up;
  if (filter === 3) return (left + up) >> 1;
  const guess = left + up - corner;
  const [toLeft, toUp, toCorner] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  if (toLeft <= toUp && toLeft <= toCorner) return left;
  return toUp <= toCorner ? up : corner;
}
