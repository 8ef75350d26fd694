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
 * Throws Refusal, saying which file or folder, why, and by which option another is chosen.
 */
export async function writeTogether(folder: string, files: readonly NamedBytes[], option = '--out'): Promise<void> {
  const made = await makeFolder(folder, option);
  const passing = files.map((file) => ({
    ...file,
    path: join(folder, file.name),
    draft: draftPath(folder, file.name),
  }));
  try {
    for (const { path } of passing) await mustBeFree(path, option);
    for (const { path, draft, bytes } of passing) {
      await writeFile(draft, bytes, { flag: 'wx' }).catch((fault: unknown) =>
        Promise.reject(unwritable(path, fault, option)),
      );
    }
    for (const { path, draft } of passing) {
      await rename(draft, path).catch((fault: unknown) => Promise.reject(unwritable(path, fault, option)));
    }
  } catch (fault) {
    // what cannot be taken away must not hide why the writing failed
    for (const { draft } of passing) await rm(draft, { force: true }).catch(() => undefined);
    await removeMade(made);
    throw fault;
  }
}

/** The process number keeps two runs into one folder apart. */
function draftPath(folder: string, name: string): string {
  return join(folder, `.${name}.${process.pid}.part`);
}

/**
 * Makes the folder and those above it where they are missing, and gives those it made, topmost first. One by one: the
 * system's own recursive way never returns where a folder can be neither found nor made, as in /proc.
 */
async function makeFolder(folder: string, option: string): Promise<readonly string[]> {
  const missing: string[] = [];
  for (let path = resolve(folder); !(await isFolder(path, folder, option)); path = dirname(path)) missing.unshift(path);
  const made: string[] = [];
  for (const path of missing) {
    try {
      await mkdir(path);
      made.push(path);
    } catch (fault) {
      // another run may have made it meanwhile
      if (await isFolder(path, folder, option)) continue;
      await removeMade(made);
      throw refusal(folder, `cannot be made: ${systemWords(fault)}`, `choose another ${option}`);
    }
  }
  return made;
}

/** Whether there is a folder; false when there is nothing. Throws Refusal about the folder asked for at anything else. */
async function isFolder(path: string, asked: string, option: string): Promise<boolean> {
  try {
    if ((await stat(path)).isDirectory()) return true;
  } catch (fault) {
    // the root is there; without this a system that denies it would be climbed for ever
    if (fault instanceof Error && 'code' in fault && fault.code === 'ENOENT' && dirname(path) !== path) return false;
    throw refusal(asked, `cannot be made: ${systemWords(fault)}`, `choose another ${option}`);
  }
  throw refusal(
    asked,
    path === resolve(asked) ? 'is a file, a folder is wanted' : `${path} is a file`,
    `choose another ${option}`,
  );
}

/** Takes folders away, deepest first, as long as they are empty. */
async function removeMade(made: readonly string[]): Promise<void> {
  for (const path of made.toReversed()) await rmdir(path).catch(() => undefined);
}

async function mustBeFree(path: string, option: string): Promise<void> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory())
    throw refusal(path, 'is a folder, a file is to be written there', `choose another ${option}`);
}

function unwritable(path: string, fault: unknown, option: string): Error {
  return refusal(path, `cannot be written: ${systemWords(fault)}`, `choose another ${option}, or make room`);
}

/** Writes one file that is not there yet, whole or not at all. Throws Refusal where something is in its way. */
export async function writeNew(folder: string, file: NamedBytes, option: string): Promise<void> {
  const path = join(folder, file.name);
  if (await stat(path).catch(() => null))
    throw refusal(path, 'is there already', 'choose another name, or move it away');
  await writeTogether(folder, [file], option);
}
