import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Everything that would be one more thing lives inside one of the nine; the rest is what tools insist on. */
const ALLOWED = [
  ...['README.md', 'DEVELOPERS.md', 'package.json', 'tsconfig.json', 'sim', 'src', 'shaders', 'tests', 'presets'],
  ...['package-lock.json', '.gitignore', '.npmrc', '.ci'],
];

test('the top level holds the nine and what tools insist on', () => {
  const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '-z'], {
    cwd: root,
    encoding: 'utf8',
  });
  const entries = new Set(files.split('\0').map((file) => file.split('/')[0] ?? ''));
  entries.delete('');
  expect([...entries].filter((entry) => !ALLOWED.includes(entry))).toEqual([]);
  expect([...entries]).toContain('package.json');
});

test('every package is pinned to one version', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const pins = Object.entries<string>({ ...dependencies, ...devDependencies });
  expect(pins.length).toBeGreaterThan(10);
  expect(pins.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

test('the lock names no host to fetch from', () => {
  const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8'));
  const entries = Object.entries<{ readonly resolved?: string; readonly integrity?: string }>(packages);
  expect(entries.length).toBeGreaterThan(10);
  expect(entries.filter(([, { resolved }]) => resolved !== undefined).map(([folder]) => folder)).toEqual([]);
  const unsealed = entries.filter(([folder, { integrity }]) => folder !== '' && integrity === undefined);
  expect(unsealed.map(([folder]) => folder)).toEqual([]);
});
