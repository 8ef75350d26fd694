import { type FileHandle, open } from 'node:fs/promises';
import { type DesignFile, type Issue, issueLine, readDesignText } from '../../sim/index.ts';
import { Refusal, refusal, systemWords } from './exit.ts';
import type { Terminal } from './terminal.ts';

/** Enough to tell that a file is too large, which the reader then says; a device without end is left in time. */
const MOST_BYTES = 2_000_000;
const CHUNK_BYTES = 65_536;
/** The code of an issue that is another's: an expression that uses a name without a value. */
const WAITS = 'design/needs';
/** Of those so many are named. */
const MOST_WAITING = 6;

/** A design as the maker named it: where it came from, for messages, and what it says. */
export interface GivenDesign {
  readonly from: string;
  readonly file: DesignFile;
}

/** Reads a design file, or standard input for `-`. Throws Refusal with every problem of it. */
export async function readDesign(path: string, input: Terminal['input']): Promise<GivenDesign> {
  const from = path === '-' ? 'standard input' : path;
  const bytes = path === '-' ? await firstBytes(input) : await fileBytes(path);
  const outcome = readDesignText(bytes);
  if (outcome.status === 'ok') return { from, file: outcome.value };
  throw new Refusal(outcome.status === 'failed' ? reasonLines(outcome.issues, from) : []);
}

/**
 * Issues as lines; one about the whole design begins with where the design came from. Fields whose only fault is that
 * they use a faulty one share the last line: what is to be mended must not be lost among them.
 */
export function reasonLines(issues: readonly Issue[], from: string): readonly string[] {
  const waiting = issues.filter(({ code }) => code === WAITS);
  const told = waiting.length > 1 ? issues.filter(({ code }) => code !== WAITS) : issues;
  const lines = told.map((issue) => issueLine(issue.path === '' ? { ...issue, path: from } : issue));
  if (waiting.length < 2) return lines;
  const named = waiting.slice(0, MOST_WAITING).map(({ path }) => path);
  const more = waiting.length - named.length;
  const fields = more > 0 ? `${named.join(', ')} and ${more} more` : named.join(', ');
  return [...lines, `${fields}: have no value until that is corrected`];
}

async function fileBytes(path: string): Promise<Uint8Array> {
  let handle: FileHandle | undefined;
  try {
    handle = await open(path);
    if ((await handle.stat()).isDirectory()) throw refusal(path, 'is a folder', 'name the design file inside it');
    return await firstBytes(chunksOf(handle));
  } catch (fault) {
    if (fault instanceof Refusal) throw fault;
    throw refusal(path, `cannot be read: ${systemWords(fault)}`, 'name a design file, or - for standard input');
  } finally {
    await handle?.close();
  }
}

async function* chunksOf(handle: FileHandle): AsyncGenerator<Uint8Array> {
  while (true) {
    const { bytesRead, buffer } = await handle.read({ buffer: new Uint8Array(CHUNK_BYTES) });
    if (bytesRead === 0) return;
    yield buffer.subarray(0, bytesRead);
  }
}

async function firstBytes(chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const kept: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of chunks) {
    kept.push(chunk);
    size += chunk.byteLength;
    if (size > MOST_BYTES) break;
  }
  return Buffer.concat(kept);
}
