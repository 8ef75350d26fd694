import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readDesign, reasonLines } from '../../../../src/cli/read-design.ts';
import { captureTerminal } from '../../../support/captured-terminal.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { passingFolder } from '../../../support/passing-folder.ts';

const FILE = makeDesignFile();
const NOTHING = captureTerminal().input;

test('a design is read from a file', async () => {
  const path = join(passingFolder(), 'plain.json');
  writeFileSync(path, JSON.stringify(FILE));
  await expect(readDesign(path, NOTHING)).resolves.toEqual({ from: path, file: FILE });
});

test('a dash reads the design from standard input, however small its pieces', async () => {
  const input = captureTerminal(JSON.stringify({ ...FILE, notes: 'geölt, 魚'.repeat(40) })).input;
  const given = await readDesign('-', input);
  expect(given.from).toBe('standard input');
  expect(given.file.notes).toBe('geölt, 魚'.repeat(40));
});

test('a file that is not there, and a folder, are named', async () => {
  const folder = passingFolder();
  await expect(readDesign(folder, NOTHING)).rejects.toThrow(`${folder}: is a folder (name the design file inside it)`);
  const path = join(folder, 'gone.json');
  await expect(readDesign(path, NOTHING)).rejects.toThrow(
    `${path}: cannot be read: there is no such file or folder (name a design file, or - for standard input)`,
  );
  await expect(readDesign('', NOTHING)).rejects.toThrow('there is no such file or folder');
  await expect(readDesign('a\0b', NOTHING)).rejects.toThrow('cannot be read');
});

test('an issue of the whole file begins with the name of the file', async () => {
  const path = join(passingFolder(), 'empty.json');
  writeFileSync(path, '');
  await expect(readDesign(path, NOTHING)).rejects.toThrow(`${path}: the file is empty`);
  await expect(readDesign('-', captureTerminal('{').input)).rejects.toThrow(/^standard input: not JSON/);
});

test('a stream without end is left when it is clear that it is too large', async () => {
  let given = 0;
  async function* endless() {
    while (true) {
      given += 65_536;
      yield new Uint8Array(65_536).fill(0x20);
    }
  }
  await expect(readDesign('-', endless())).rejects.toThrow(/^standard input: the file has \d+ bytes, at most 1000000/);
  expect(given).toBeLessThan(3_000_000);
});

test('every problem of a design has a line of its own', async () => {
  const text = JSON.stringify({ ...FILE, wood: { density_g_cm3: true }, links: 3 });
  const fault: unknown = await readDesign('-', captureTerminal(text).input).catch((reason: unknown) => reason);
  expect(fault).toMatchObject({
    reasons: expect.arrayContaining([
      expect.stringMatching(/^wood\.density_g_cm3: /),
      expect.stringMatching(/^links: /),
    ]),
  });
});

test('of two numbers for one field neither is taken', async () => {
  const text = JSON.stringify(FILE).replace('"length_mm":', '"length_mm":80,"length_mm":');
  await expect(readDesign('-', captureTerminal(text).input)).rejects.toThrow(
    /^body\.length_mm: stands twice in one object, again on line 1, column \d+; once is allowed \(take one of them out\)$/,
  );
});

test('fields that only wait for a faulty one share a line, after the fault', () => {
  const waits = { code: 'design/needs', message: 'needs it', hint: 'correct it first' };
  const fault = { code: 'design/no-number', path: 'body.length_mm', message: '"0/0" gives no number' };
  expect(reasonLines([{ ...waits, path: 'a_mm' }, fault, { ...waits, path: 'b_mm' }], 'x.json')).toEqual([
    'body.length_mm: "0/0" gives no number',
    'a_mm, b_mm: have no value until that is corrected',
  ]);
  const many = Array.from({ length: 9 }, (_, i) => ({ ...waits, path: `a${i}_mm` }));
  expect(reasonLines([fault, ...many], 'x.json')[1]).toBe(
    'a0_mm, a1_mm, a2_mm, a3_mm, a4_mm, a5_mm and 3 more: have no value until that is corrected',
  );
  expect(reasonLines([fault, { ...waits, path: 'a_mm' }], 'x.json')[1]).toBe('a_mm: needs it (correct it first)');
});
