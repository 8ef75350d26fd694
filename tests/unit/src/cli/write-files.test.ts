import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeTogether } from '../../../../src/cli/write-files.ts';
import { passingFolder } from '../../../support/passing-folder.ts';

const ONE = { name: '1-head.stl', bytes: Uint8Array.of(1, 2, 3) };
const TWO = { name: '2-tail.stl', bytes: Uint8Array.of(4) };
/** No file system takes a name of this length. */
const IMPOSSIBLE = { name: 'x'.repeat(300), bytes: Uint8Array.of(5) };

test('files are written into a folder that is made for them, and nothing else is left there', async () => {
  const folder = join(passingFolder(), 'new', 'deep');
  await writeTogether(folder, [ONE, TWO]);
  expect(readdirSync(folder)).toEqual(['1-head.stl', '2-tail.stl']);
  expect([...readFileSync(join(folder, ONE.name))]).toEqual([1, 2, 3]);
});

test('files written before are replaced, others in the folder are left alone', async () => {
  const folder = passingFolder();
  writeFileSync(join(folder, ONE.name), 'a longer file from before');
  writeFileSync(join(folder, 'notes.txt'), 'mine');
  await writeTogether(folder, [ONE]);
  expect([...readFileSync(join(folder, ONE.name))]).toEqual([1, 2, 3]);
  expect(readFileSync(join(folder, 'notes.txt'), 'utf8')).toBe('mine');
});

test('a folder reached through a link is written to', async () => {
  const folder = passingFolder();
  mkdirSync(join(folder, 'real'));
  symlinkSync(join(folder, 'real'), join(folder, 'link'));
  await writeTogether(join(folder, 'link'), [ONE]);
  expect(readdirSync(join(folder, 'real'))).toEqual([ONE.name]);
});

test('when one file fails none is written, and those from before stay as they were', async () => {
  const folder = passingFolder();
  writeFileSync(join(folder, ONE.name), 'from before');
  await expect(writeTogether(folder, [ONE, IMPOSSIBLE])).rejects.toThrow(
    `${join(folder, IMPOSSIBLE.name)}: cannot be written: the name is too long`,
  );
  expect(readdirSync(folder)).toEqual([ONE.name]);
  expect(readFileSync(join(folder, ONE.name), 'utf8')).toBe('from before');
});

test('a failure takes away every folder that was made for it, and no other', async () => {
  const folder = passingFolder();
  await expect(writeTogether(join(folder, 'new', 'deep'), [ONE, IMPOSSIBLE])).rejects.toThrow('too long');
  expect(readdirSync(folder)).toEqual([]);
});

test('a file in the place of the folder is refused and not touched', async () => {
  const path = join(passingFolder(), 'out');
  writeFileSync(path, 'mine');
  await expect(writeTogether(path, [ONE])).rejects.toThrow(`${path}: is a file, a folder is wanted`);
  const inside = join(path, 'deeper');
  await expect(writeTogether(inside, [ONE])).rejects.toThrow(`${inside}: cannot be made: part of the path is a file`);
  expect(readFileSync(path, 'utf8')).toBe('mine');
});

test('a folder that can be neither found nor made is refused at once', async () => {
  const nowhere = process.platform === 'linux' ? '/proc/made' : join(passingFolder(), 'x'.repeat(300));
  await expect(writeTogether(nowhere, [ONE])).rejects.toThrow(`${nowhere}: cannot be made: `);
  const dangling = join(passingFolder(), 'link');
  symlinkSync(join(passingFolder(), 'gone'), dangling);
  await expect(writeTogether(dangling, [ONE])).rejects.toThrow(`${dangling}: cannot be made: a file of that name`);
});

test('a folder in the place of a file is refused before anything is written', async () => {
  const folder = passingFolder();
  mkdirSync(join(folder, TWO.name));
  await expect(writeTogether(folder, [ONE, TWO])).rejects.toThrow(`${join(folder, TWO.name)}: is a folder`);
  expect(existsSync(join(folder, ONE.name))).toBe(false);
});

test('two runs that make one folder do not disturb each other', async () => {
  const folder = join(passingFolder(), 'new', 'deep');
  await Promise.all([writeTogether(folder, [ONE]), writeTogether(folder, [TWO])]);
  expect(readdirSync(folder)).toEqual(['1-head.stl', '2-tail.stl']);
});
