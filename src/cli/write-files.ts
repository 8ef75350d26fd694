import { mkdir, rename, rm, rmdir, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { refusal, systemWords } from './exit.ts';

interface NamedBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Writes files into a folder, making it if need be. Each is written whole under a passing name first and takes its own
 * name only when all are written, so nobody ever reads half a file, and a failure leaves nothing behind.
 * Throws Refusal, saying which file or folder, and why.
 */
export async function writeTogether(folder: string, files: readonly NamedBytes[]): Promise<void> {
  const made = await makeFolder(folder);
  const passing = files.map((file) => ({
    ...file,
    path: join(folder, file.name),
    draft: draftPath(folder, file.name),
  }));
  try {
    for (const { path } of passing) await mustBeFree(path);
    for (const { path, draft, bytes } of passing) {
      await writeFile(draft, bytes, { flag: 'wx' }).catch((fault: unknown) => Promise.reject(unwritable(path, fault)));
    }
    for (const { path, draft } of passing) {
      await rename(draft, path).catch((fault: unknown) => Promise.reject(unwritable(path, fault)));
    }
  } catch (fault) {
    // what cannot be taken away must not hide why the writing failed
    for (const { draft } of passing) await rm(draft, { force: true }).catch(() => undefined);
    if (made !== null) await removeMade(folder, made);
    throw fault;
  }
}

/** The process number keeps two runs into one folder apart. */
function draftPath(folder: string, name: string): string {
  return join(folder, `.${name}.${process.pid}.part`);
}

/** Makes the folder and those above it where they are missing. Gives the topmost that was made, null when it was there. */
async function makeFolder(folder: string): Promise<string | null> {
  const there = await stat(folder).catch(() => null);
  if (there?.isDirectory()) return null;
  if (there !== null) throw refusal(folder, 'is a file, a folder is wanted', 'choose another --out');
  try {
    return (await mkdir(folder, { recursive: true })) ?? null;
  } catch (fault) {
    throw refusal(folder, `cannot be made: ${systemWords(fault)}`, 'choose another --out');
  }
}

/** Takes away the folders made here, deepest first, as long as they are empty. */
async function removeMade(folder: string, topmost: string): Promise<void> {
  const top = resolve(topmost);
  for (let made = resolve(folder); made.startsWith(top); made = dirname(made)) {
    const gone = await rmdir(made).then(
      () => true,
      () => false,
    );
    if (!gone) return;
  }
}

async function mustBeFree(path: string): Promise<void> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory()) throw refusal(path, 'is a folder, a file is to be written there', 'choose another --out');
}

function unwritable(path: string, fault: unknown): Error {
  return refusal(path, `cannot be written: ${systemWords(fault)}`, 'choose another --out, or make room');
}
