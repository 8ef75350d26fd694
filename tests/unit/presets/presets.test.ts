import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readDesignText } from '../../../sim/design/read.ts';
import { writeDesignText } from '../../../sim/design/write.ts';
import type { BaitAnswers, Step } from '../../../sim/index.ts';
import { createPipeline } from '../../../sim/index.ts';

const FOLDER = new URL('../../../presets/', import.meta.url);
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.json'));

function textOf(name: string): string {
  return readFileSync(new URL(name, FOLDER), 'utf8');
}

function designOf(name: string) {
  const read = readDesignText(textOf(name));
  if (read.status !== 'ok') throw new Error(`${name} cannot be read`);
  return read.value;
}

const setups = names.flatMap((name) => designOf(name).setups.map((setup) => [name, setup.name] as const));

function answersOf(name: string, setup: string): { readonly steps: readonly Step[]; readonly bait: BaitAnswers } {
  const steps = [...createPipeline().steps(designOf(name), { setup, detail: 'full' })];
  const bait: Record<string, unknown> = {};
  for (const step of steps) if (step.link === null && step.outcome.status === 'ok') bait[step.name] = step.outcome.value;
  return { steps, bait: bait as unknown as BaitAnswers };
}

test('there are three demo baits with two setups each', () => {
  expect(names).toHaveLength(3);
  expect(setups).toHaveLength(6);
});

test.each(names)('%s is written as the tool itself would write it', (name) => {
  expect(writeDesignText(designOf(name))).toBe(textOf(name));
});

describe.each(setups)('%s, %s', (name, setup) => {
  const { steps, bait } = answersOf(name, setup);

  test('can be made: every answer is there', () => {
    expect(steps.flatMap(({ outcome }) => (outcome.status === 'failed' ? outcome.issues : []))).toEqual([]);
    expect(steps.every(({ outcome }) => outcome.status === 'ok')).toBe(true);
  });

  test('meets what it was meant to do, held straight with hooks hung', () => {
    const { assembled, target } = bait;
    const wanted = bait.setup.target;
    if (wanted.kind === 'proud') expect(Math.abs((assembled.proud ?? Number.NaN) - wanted.proud)).toBeLessThan(1);
    else if (wanted.kind === 'net' && wanted.net === 0) {
      expect(assembled.state).toBe('hangs');
      expect(Math.abs(assembled.netWet)).toBeLessThanOrEqual(Math.max(0.1, 0.001 * assembled.mass));
    } else if (wanted.kind === 'net') {
      expect(assembled.state).toBe('sinks');
      expect(Math.abs(assembled.netWet - wanted.net)).toBeLessThan(0.2);
    } else throw new Error(`no demo aims for ${wanted.kind}`);
    expect(Math.abs(assembled.trim)).toBeLessThan((2 * Math.PI) / 180);
    expect(Math.abs(assembled.heel)).toBeLessThan((2 * Math.PI) / 180);
    expect(target.met).toBe(true);
  });

  test('stands up by itself and its sums have settled', () => {
    const floats = [bait.assembled, ...steps.flatMap((s) => (s.name === 'float' && s.outcome.status === 'ok' ? [s.outcome.value] : []))];
    for (const float of floats) {
      expect(float.solver.converged).toBe(true);
      expect(float.mirrored).toBe(false);
      expect(float.gmMin).toBeGreaterThan(0.1);
    }
  });

  test('says in its notes which link cannot be levelled alone', () => {
    const crooked = bait.warnings.filter((warning) => warning.code === 'not-level-alone').map((warning) => warning.where);
    const notes = `${bait.design.notes} ${bait.setup.notes}`;
    for (const link of crooked) expect(notes).toMatch(new RegExp(`${link}.*(pins|alone)`, 'i'));
  });
});
