import type { Terminal } from '../../src/cli/terminal.ts';

/** A terminal that keeps what it is told. */
export interface CapturedTerminal extends Terminal {
  /** Everything on standard output. */
  readonly printed: () => string;
  /** Lines on standard error. */
  readonly complaints: readonly string[];
}

/** A terminal whose standard input holds this text, in pieces as small as a slow pipe gives. */
export function captureTerminal(input = ''): CapturedTerminal {
  const printed: string[] = [];
  const complaints: string[] = [];
  return {
    input: pieces(new TextEncoder().encode(input)),
    print: (text) => printed.push(text),
    complain: (line) => complaints.push(line),
    printed: () => printed.join(''),
    complaints,
  };
}

const PIECE_BYTES = 97;

async function* pieces(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.byteLength; at += PIECE_BYTES) yield bytes.subarray(at, at + PIECE_BYTES);
}
