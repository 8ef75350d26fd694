import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { describe, expect, test } from 'vitest';
import layers, { SIM_BESIDE, SIM_FILES, SIM_GROUND, SIM_LAYERS } from './layers.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const canary = fileURLToPath(new URL('canary/', import.meta.url));

describe('the layers are as drawn', async () => {
  const { modules, summary } = await cruiseFrom(root);

  test('no file imports what the layers forbid', () => {
    const found = summary.violations.map(
      ({ rule, from, to }) => `${from} -> ${to} (${rule.name}: ${commentOf(rule.name)})`,
    );
    expect(found).toEqual([]);
  });

  test('sim and src were really read: a cruise that sees nothing finds nothing wrong', () => {
    const ours = modules.filter(({ source }) => /^(sim|src)\//.test(source));
    expect(ours.length).toBeGreaterThan(10);
    expect(ours.flatMap(({ dependencies }) => dependencies).length).toBeGreaterThan(10);
  });

  test('every folder and file of sim has its place in the order', () => {
    const entries = readdirSync(`${root}sim`, { withFileTypes: true });
    const placed = [...SIM_GROUND, ...SIM_LAYERS, ...SIM_BESIDE];
    const folders = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
    const files = entries.filter(({ name }) => name.endsWith('.ts')).map(({ name }) => name.replace(/\.ts$/, ''));
    expect(folders.filter((name) => !placed.includes(name))).toEqual([]);
    expect(files.filter((name) => !SIM_FILES.includes(name))).toEqual([]);
  });

  test('only the worker and the command line make a pipeline: the page never computes', () => {
    expect(makersOfPipelines(root)).toEqual([]);
  });
});

describe('the canary: a tree that breaks every rule once', async () => {
  const { summary } = await cruiseFrom(canary);
  const caught = new Set(summary.violations.map(({ rule }) => rule.name));

  test.each((layers.forbidden ?? []).map(({ name }) => name ?? ''))('%s is noticed', (name) => {
    expect([...caught]).toContain(name);
  });

  test('a panel that makes a pipeline is noticed', () => {
    expect(makersOfPipelines(canary)).toEqual(['src/panels/pipeline-in-a-panel.ts']);
  });
});

async function cruiseFrom(baseDir: string): Promise<ICruiseResult> {
  const folders = ['sim', 'src', 'tests'];
  const ruleSet = { forbidden: layers.forbidden ?? [] };
  const { output } = await cruise(folders, { ...layers.options, baseDir, validate: true, ruleSet });
  if (typeof output === 'string') throw new Error(`dependency-cruiser gave text, not a result: ${output}`);
  return output;
}

function commentOf(name: string): string {
  return layers.forbidden?.find((rule) => rule.name === name)?.comment ?? '';
}

/** The files of src/ that name createPipeline, without the two places that may. */
function makersOfPipelines(base: string): readonly string[] {
  return readdirSync(`${base}src`, { recursive: true, encoding: 'utf8' })
    .map((name) => `src/${name.replaceAll('\\', '/')}`)
    .filter((name) => /\.tsx?$/.test(name))
    .filter((name) => name !== 'src/engine/engine.worker.ts' && !name.startsWith('src/cli/'))
    .filter((name) => /\bcreatePipeline\b/.test(readFileSync(`${base}${name}`, 'utf8')))
    .sort();
}
