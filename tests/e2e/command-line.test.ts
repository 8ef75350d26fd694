import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { changed } from '../support/change-file.ts';
import { PLAIN_DESIGN } from '../support/make-design.ts';
import { passingFolder } from '../support/passing-folder.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const command = join(root, 'dist/cli/floatwright.js');
const PLAIN = PLAIN_DESIGN;
const TEXT = JSON.stringify(PLAIN);

beforeAll(() => {
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const build = spawnSync(process.execPath, [vite, 'build', '--config', 'src/cli/vite.config.ts'], {
    cwd: root,
    env: { ...process.env, NODE_ENV: 'production' },
    encoding: 'utf8',
  });
  if (build.status !== 0) throw new Error(`the command line does not build: ${build.stderr}${build.stdout}`);
});

function floatwright(
  words: readonly string[],
  options: { readonly cwd?: string; readonly input?: string | Buffer } = {},
) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: options.cwd ?? root,
    input: options.input ?? '',
    encoding: 'utf8',
  });
  return { code: status, stdout, stderr };
}

describe('the command a maker types', () => {
  test('checks a design in a file, from another folder, and from standard input, with the same answer', () => {
    const cwd = passingFolder();
    writeFileSync(join(cwd, 'plain bait.json'), TEXT);
    const fromFile = floatwright(['check', 'plain bait.json'], { cwd });
    expect(fromFile).toMatchObject({ code: 0, stderr: '' });
    expect(fromFile.stdout).toContain('Link 2 of 2, alone: tail');
    expect(floatwright(['check', '-'], { input: TEXT })).toEqual(fromFile);
  });

  test('is found as npx floatwright inside the clone', () => {
    const { status, stdout } = spawnSync('npx', ['floatwright', '--version'], { cwd: root, encoding: 'utf8' });
    expect({ status, stdout }).toEqual({
      status: 0,
      stdout: `${JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version}\n`,
    });
  });

  test('writes one link per file, and runs again over its own files', () => {
    const cwd = passingFolder();
    const words = ['export', '-', '--out', 'made', '--solids'];
    const first = floatwright(words, { cwd, input: TEXT });
    expect(first).toMatchObject({ code: 0, stderr: '' });
    const names = ['1-head.flooded.stl', '1-head.stl', '2-tail.stl'];
    expect(readdirSync(join(cwd, 'made'))).toEqual(names);
    const bytes = names.map((name) => readFileSync(join(cwd, 'made', name)));
    expect(floatwright(words, { cwd, input: TEXT })).toEqual(first);
    expect(names.map((name) => readFileSync(join(cwd, 'made', name)))).toEqual(bytes);
  });

  test('prints the sums behind its answers', () => {
    const page = floatwright(['sums', '-', '--link', 'head'], { input: TEXT });
    expect(page).toMatchObject({ code: 0, stderr: '' });
    for (const part of ['Link 1 of 2, alone: head', 'GM = KB + BM - KG', 'The whole bait, held straight']) {
      expect(page.stdout).toContain(part);
    }
  });

  test('ends with 1 when a target is missed under --strict, the report still on standard output', () => {
    const input = JSON.stringify(changed(PLAIN, 'setups.0.target', { net_wet_g: 300 }));
    const strict = floatwright(['check', '-', '--strict'], { input });
    expect(strict).toMatchObject({ code: 1, stderr: '' });
    expect(strict.stdout).toContain('missed: ');
  });

  test('says nothing when its reader has seen enough', async () => {
    // the shell closes the pipe while node is still starting
    const shell = spawn('sh', ['-c', `"$0" "$1" check - --json | head -c 1`, process.execPath, command]);
    const said: string[] = [];
    shell.stderr.on('data', (chunk) => said.push(String(chunk)));
    shell.stdin.end(TEXT);
    await once(shell, 'close');
    expect(said.join('')).toBe('');
    const early = spawn('sh', ['-c', `"$0" "$1" check - --json | true`, process.execPath, command]);
    early.stderr.on('data', (chunk) => said.push(String(chunk)));
    early.stdin.end(TEXT);
    await once(early, 'close');
    expect(said.join('')).toBe('');
  });

  test('tells when its report cannot be written', () => {
    const { status, stderr } = spawnSync('sh', ['-c', `"$0" "$1" check - > /dev/full`, process.execPath, command], {
      input: TEXT,
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect(stderr).toBe('standard output: cannot be written: no space is left\n');
  });
});

describe('a bad file ends with 2, its reasons on standard error, and no report', () => {
  const withField = (place: string, value: unknown) => JSON.stringify(changed(PLAIN, place, value));
  test.each<[what: string, text: string | Buffer, says: RegExp]>([
    ['empty', '', /^bad\.json: the file is empty/],
    ['blank', ' \n\t\n', /^bad\.json: the file is empty/],
    ['not text', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0x00]), /^bad\.json: .*UTF-8/],
    ['UTF-16', Buffer.from(TEXT, 'utf16le'), /^bad\.json: .*UTF-8/],
    ['not JSON', 'length: 120', /^bad\.json: not JSON: line 1, column 1/],
    ['cut short', TEXT.slice(0, -20), /^bad\.json: not JSON: line 1/],
    ['a list', '[]', /^bad\.json: /],
    ['another format', withField('format', 'something-else'), /^format: /],
    ['from a later version', withField('version', 2), /^version: /],
    ['too large', `${TEXT}${' '.repeat(1_100_000)}`, /^bad\.json: the file has \d+ bytes, at most 1000000/],
    ['too deep', '['.repeat(100_000), /^bad\.json: /],
    ['reaching for a prototype', TEXT.replace('"name"', '"__proto__":{"a":1},"name"'), /__proto__/],
    ['with an unknown field', withField('body.girth_mm', 40), /^body\.girth_mm: unknown field/],
    ['without a body', withField('body', undefined), /^body: /],
    ['with a word for a number', withField('joints.0.gap_mm', null), /^joints\.0\.gap_mm: /],
    ['with an expression that goes round', withField('dimensions', { a_mm: 'b_mm', b_mm: 'a_mm' }), /^dimensions\./],
    ['with an unknown name', withField('body.width_mm', 'girth_mm / 3'), /^body\.width_mm: .*girth_mm/],
    ['with a call that is not arithmetic', withField('body.width_mm', 'import(1)'), /^body\.width_mm: /],
    ['with a length out of range', withField('body.length_mm', 6000), /^body\.length_mm: .*6000/],
    ['with an infinite number', TEXT.replace('"length_mm":120', '"length_mm":1e999'), /^body\.length_mm: /],
    ['with a hook on no hanger', withField('setups.0.hung.0.from', 'nowhere'), /^setups\.0\.hung\.0\.from: .*nowhere/],
    ['with a joint off the body', withField('joints.0.x_mm', 300), /^joints\.0/],
    ['with two links of one name', withField('links.1.name', 'head'), /^links\.1\.name: /],
    ['with lead longer than its hole', withField('setups.0.holes.0.lead.mass_g', 90), /^setups\.0\.holes\.0/],
    ['with a hole through the back', withField('setups.0.holes.0.depth_mm', 60), /^setups\.0\.holes\.0/],
  ])('%s', (_, text, says) => {
    const cwd = passingFolder();
    writeFileSync(join(cwd, 'bad.json'), text);
    const { code, stdout, stderr } = floatwright(['check', 'bad.json'], { cwd });
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(says);
    expectPlainWords(stderr);
    const exported = floatwright(['export', 'bad.json', '--out', 'out', '--solids'], { cwd });
    expect(exported).toEqual({ code, stdout, stderr });
    expect(readdirSync(cwd)).toEqual(['bad.json']);
  });

  test('with every problem at once, a line each', () => {
    const file = changed(changed(PLAIN, 'body.length_mm', 6000), 'setups.0.hung.1.from', 'nowhere');
    const { stderr } = floatwright(['check', '-'], { input: JSON.stringify(file) });
    expect(
      stderr.split('\n').filter((line) => /^body\.length_mm: |^setups\.0\.hung\.1\.from: /.test(line)),
    ).toHaveLength(2);
  });
});

describe('a bad command line ends with 2 and says what is allowed', () => {
  test.each<[words: readonly string[], says: RegExp]>([
    [[], /a command is wanted: check, ballast, compare, export, sums/],
    [['balast', '-'], /unknown command "balast", known: check, ballast, compare, export, sums/],
    [['compare', '-'], /--setups A,B is wanted/],
    [['ballast', '-', '--write', 'plain.json'], /^plain\.json: is there already/],
    [['check'], /a DESIGN is wanted/],
    [['check', '-', '-'], /one DESIGN at a time/],
    [['check', '-', '--jason'], /unknown option "--jason", known: --setup NAME, --fold DEG,DEG, --json, --strict/],
    [['check', '-', '--setup', 'ice'], /^--setup: the design has no setup "ice" \(choose one of "still pond"\)/],
    [['sums', '-', '--link', 'fin'], /^--link: the design has no link "fin" \(choose one of "head", "tail"\)/],
    [['sums', '-', '--setup', 'ice'], /^--setup: the design has no setup "ice" \(choose one of "still pond"\)/],
    [['check', 'gone.json'], /^gone\.json: cannot be read: there is no such file/],
    [['check', '.'], /^\.: is a folder/],
    [['check', 'plain.json/x.json'], /^plain\.json\/x\.json: cannot be read: part of the path is a file/],
    [['export', '-', '--out', 'made'], /say what to export: --solids/],
    [['export', '-', '--solids'], /--out DIR is wanted/],
    [['export', '-', '--solids', '--out', 'plain.json'], /^plain\.json: is a file, a folder is wanted/],
    [['export', '-', '--solids', '--out', 'plain.json/made'], /^plain\.json\/made: cannot be made/],
    [['export', '-', '--solids', '--out', '/proc/made'], /^\/proc\/made: cannot be made/],
  ])('floatwright %j', (words, says) => {
    const cwd = passingFolder();
    writeFileSync(join(cwd, 'plain.json'), TEXT);
    const { code, stdout, stderr } = floatwright(words, { cwd, input: TEXT });
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(says);
    expectPlainWords(stderr);
    expect(readdirSync(cwd)).toEqual(['plain.json']);
  });
});

test('an export that fails half-way leaves the folder as it was', () => {
  const cwd = passingFolder();
  mkdirSync(join(cwd, 'made', '2-tail.stl'), { recursive: true });
  const { code, stderr } = floatwright(['export', '-', '--out', 'made', '--solids'], { cwd, input: TEXT });
  expect(code).toBe(2);
  expect(stderr).toBe('made/2-tail.stl: is a folder, a file is to be written there (choose another --out)\n');
  expect(existsSync(join(cwd, 'made', '1-head.stl'))).toBe(false);
});

/** A line for each reason, `where: what (cure)`; no stack, no class of an error, no file of the program. */
function expectPlainWords(stderr: string): void {
  expect(stderr).toMatch(/^(\S.*: .+\n)+$/);
  expect(stderr).not.toMatch(/^\s*at |Error\b|node:|floatwright\.js|a fault of the program/m);
}
