import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readDesignText } from '../../../../../sim/design/read.ts';
import { evaluateDesign } from '../../../../../sim/design/validate.ts';
import { type Design, type DesignFile, valueAt } from '../../../../../sim/index.ts';
import type { Field } from '../../../../../src/panels/margin/field.ts';
import {
  bodyFields,
  hookFields,
  jointFields,
  slugField,
  waterFields,
  woodField,
} from '../../../../../src/panels/margin/fields.ts';
import {
  bareHangerFolds,
  bodyFolds,
  coatFolds,
  fittedFolds,
  holeFolds,
  hookFolds,
  jointFolds,
  shopFolds,
  targetFields,
  wallFields,
  woodFolds,
} from '../../../../../src/panels/margin/more-fields.ts';
import { goodOf } from '../../../../support/change-file.ts';
import { numbersIn } from '../../../../support/numbers-in.ts';

const FOLDER = new URL('../../../../../presets/', import.meta.url);
const presets = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => [name, goodOf(readDesignText(readFileSync(new URL(name, FOLDER), 'utf8')))] as const);

/** A number that neither a float nor a plan depends on, and the version, which only a migration changes. */
const LEFT_OUT = [/^version$/, /^shop\.kerf_mm$/];

function fieldsOf(file: DesignFile, design: Design): readonly Field[] {
  const folds = [
    ...bodyFolds(file, design),
    ...file.joints.flatMap((_, joint) => jointFolds(file, design, joint)),
    ...woodFolds(file, design),
    ...fittedFolds(file, design),
    ...shopFolds(file, design, 'drills'),
    ...shopFolds(file, design, 'lead'),
    ...file.setups.flatMap(({ hung, holes }, setup) => [
      ...coatFolds(file, design, setup),
      ...bareHangerFolds(file, design, setup),
      ...hung.flatMap((_, hook) => hookFolds(file, design, setup, hook)),
      ...holes.flatMap((_, hole) => holeFolds(file, design, setup, hole)),
    ]),
  ];
  return [
    ...bodyFields(file, design),
    ...file.joints.flatMap((_, joint) => jointFields(file, design, joint)),
    woodField(file, design),
    ...wallFields(file, design),
    ...file.setups.flatMap(({ hung, holes }, setup) => [
      ...waterFields(file, design, setup),
      ...targetFields(file, design, setup),
      ...hung.flatMap((_, hook) => hookFields(file, design, setup, hook)),
      ...holes.flatMap((_, hole) => slugField(file, design, setup, hole) ?? []),
    ]),
    ...folds.flatMap(({ fields }) => fields),
  ];
}

describe.each(presets)('%s in the margin', (_, file) => {
  const design = goodOf(evaluateDesign(file));
  const fields = fieldsOf(file, design);

  test('has every number that its float or its plan depends on in a field', () => {
    const reached = new Set(fields.flatMap(({ paths }) => paths));
    const numbers = numbersIn(file).filter((path) => !LEFT_OUT.some((pattern) => pattern.test(path)));
    expect(numbers.filter((path) => !reached.has(path))).toEqual([]);
  });

  test('shows each of them as it was written or as it was worked out', () => {
    for (const { label, value, paths } of fields) {
      expect([label, Number.isFinite(value)]).toEqual([label, true]);
      const written = valueAt(file, paths.at(-1) ?? '');
      if (typeof written === 'number') expect(value).toBe(written);
    }
  });

  test('takes a number in each, and still reads as a design', () => {
    for (const { label, value, paths, edit } of fields) {
      const edited = edit((value ?? 0) + 0.001)(file);
      expect([label, valueAt(edited, paths[0] ?? '')]).toEqual([label, (value ?? 0) + 0.001]);
    }
  });
});
