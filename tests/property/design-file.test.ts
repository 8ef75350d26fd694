import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateExpression, parseExpression } from '../../sim/design/expression.ts';
import { jsonFault } from '../../sim/design/json-fault.ts';
import { valueAt, withValueAt } from '../../sim/design/place.ts';
import { checkDesignFile, readDesignText } from '../../sim/design/read.ts';
import { evaluateDesign } from '../../sim/design/validate.ts';
import { writeDesignText } from '../../sim/design/write.ts';
import type { Issue, Outcome } from '../../sim/flow/outcome.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { changed, goodOf } from '../support/change-file.ts';
import { makeDesignFile } from '../support/make-design.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 300) };
/** Signs that matter to JSON and to expressions, and some that should not be there. */
const SIGNS = [
  ...'{}[]",:\\0123456789.eE+-*/^()% \n\t_mgx',
  '\0',
  '\u001b',
  '\ufeff',
  'é',
  '🐟',
  '__proto__',
  '1e999',
  'null',
];
const text = writeDesignText(makeDesignFile({ pieces: 3, dimensions: { head_mm: 'length_mm * 0.4' } }));

/** Reads text and evaluates it, as opening a file does. */
function opened(source: string | Uint8Array): Outcome<unknown> {
  const read = readDesignText(source);
  return read.status === 'ok' ? evaluateDesign(read.value) : read;
}

/** Every outcome is a design of finite numbers, or issues that each say something in words. */
function expectAnswer(outcome: Outcome<unknown>): void {
  if (outcome.status === 'ok') {
    expect(strangeNumbers(outcome.value)).toEqual([]);
    return;
  }
  expect(outcome.status).toBe('failed');
  const issues: readonly Issue[] = outcome.status === 'failed' ? outcome.issues : [];
  expect(issues.length).toBeGreaterThan(0);
  for (const { code, message } of issues) {
    expect(code).toMatch(/^design\/[a-z-]+$/);
    expect(message).toMatch(/^[^\n]*[^.\n]$/);
    expect(message).not.toContain('undefined');
  }
}

function strangeNumbers(part: unknown): readonly unknown[] {
  if (typeof part === 'number') return Number.isFinite(part) && !Object.is(part, -0) ? [] : [part];
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(strangeNumbers) : [];
}

describe('any random design', () => {
  test('makes sense, so that only its geometry can be refused', () => {
    fc.assert(
      fc.property(arbitraryDesignFile(), (file) => {
        const design = goodOf(evaluateDesign(goodOf(checkDesignFile(file))));
        expect(strangeNumbers(design)).toEqual([]);
        expect(design.links).toHaveLength(design.joints.length + 1);
        expect(structuredClone(design)).toEqual(design);
      }),
      RUNS,
    );
  });

  test('is the same file after writing and reading, and the same bytes after writing again', () => {
    fc.assert(
      fc.property(arbitraryDesignFile(), (file) => {
        const written = writeDesignText(file);
        const read = goodOf(readDesignText(written));
        expect(read).toEqual(file);
        expect(writeDesignText(read)).toBe(written);
        expect(JSON.stringify(read, null, 2)).toBe(written.trimEnd());
      }),
      RUNS,
    );
  });

  test('is the same after an edit and its undoing', () => {
    fc.assert(
      fc.property(arbitraryDesignFile(), fc.double({ noNaN: true, noDefaultInfinity: true }), (file, value) => {
        const path = 'setups.0.water.temperature_c';
        const before = valueAt(file, path);
        fc.pre(before !== undefined);
        const edited = withValueAt(file, path, value);
        expect(valueAt(edited, path)).toBe(value);
        expect(withValueAt(edited, path, before)).toEqual(file);
      }),
      RUNS,
    );
  });
});

describe('any damaged text', () => {
  test('with signs changed, put in or taken out gives a design or says what is wrong', () => {
    const damage = fc.record({
      at: fc.nat({ max: text.length - 1 }),
      take: fc.nat({ max: 4 }),
      put: fc.array(fc.constantFrom(...SIGNS), { maxLength: 3 }).map((signs) => signs.join('')),
    });
    fc.assert(
      fc.property(fc.array(damage, { minLength: 1, maxLength: 3 }), (damages) => {
        const damaged = damages.reduce(
          (whole, { at, take, put }) => whole.slice(0, at) + put + whole.slice(at + take),
          text,
        );
        expectAnswer(opened(damaged));
      }),
      RUNS,
    );
  });

  test('cut off anywhere says that it is not whole', () => {
    fc.assert(
      fc.property(fc.nat({ max: text.length - 3 }), (length) => {
        expect(opened(text.slice(0, length)).status).toBe('failed');
      }),
      RUNS,
    );
  });

  test('of random bytes says what is wrong', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        const outcome = opened(bytes);
        expect(outcome.status).toBe('failed');
        expectAnswer(outcome);
      }),
      RUNS,
    );
  });

  test('is found to be no JSON exactly where JSON itself says so', () => {
    const pieces = fc.array(fc.constantFrom(...SIGNS, '"a"', '"a":', '[]', '{}', 'true', '\\u00e9', '-0.5e3'), {
      maxLength: 12,
    });
    const near = fc
      .tuple(fc.json(), fc.nat(40), fc.constantFrom(...SIGNS, ''))
      .map(([whole, at, put]) => whole.slice(0, at) + put + whole.slice(at));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.json(),
          near,
          pieces.map((some) => some.join('')),
        ),
        (source) => {
          expect(jsonFault(source) === null).toBe(isJson(source));
        },
      ),
      RUNS,
    );
  });
});

describe('any value put anywhere', () => {
  test('gives a design or says what is wrong, and never throws', () => {
    const plain: unknown = JSON.parse(text);
    const places = placesOf(plain);
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.double(),
      fc.constantFrom(...[-1, 0, 1e300, 5e-324, '9^9^9^9', '1/0', 'length_mm', '', 'head_mm', 'a'.repeat(200)]),
      fc.constant(undefined),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), value, (place, put) => {
        const read = checkDesignFile(changed(plain, place, put));
        expectAnswer(read.status === 'ok' ? evaluateDesign(read.value) : read);
      }),
      RUNS,
    );
  });
});

describe('any expression of plain arithmetic', () => {
  interface Sum {
    readonly text: string;
    readonly value: number;
  }
  const leaf: fc.Arbitrary<Sum> = fc.oneof(
    fc.integer({ min: 0, max: 999 }).map((value) => ({ text: String(value), value })),
    fc.constant({ text: 'length_mm', value: 140 }),
  );
  const operators: Readonly<Record<string, (a: number, b: number) => number>> = {
    '+': (a, b) => a + b,
    '-': (a, b) => a - b,
    '*': (a, b) => a * b,
    '/': (a, b) => a / b,
  };
  const combined = (parts: fc.Arbitrary<Sum>): fc.Arbitrary<Sum> =>
    fc.tuple(parts, fc.constantFrom(...Object.keys(operators)), parts).map(([a, sign, b]) => ({
      text: `(${a.text} ${sign} ${b.text})`,
      value: operators[sign]?.(a.value, b.value) ?? Number.NaN,
    }));
  const arithmetic = combined(fc.oneof(leaf, combined(fc.oneof(leaf, combined(leaf)))));

  test('is worked out as by hand', () => {
    fc.assert(
      fc.property(arithmetic, ({ text: sum, value }) => {
        expect(evaluateExpression(parseExpression(sum, ''), () => 140)).toBe(value);
      }),
      RUNS,
    );
  });
});

function isJson(source: string): boolean {
  try {
    JSON.parse(source);
    return true;
  } catch {
    return false;
  }
}

/** Every place in a JSON value, parts and single values alike. */
function placesOf(part: unknown, place = ''): readonly string[] {
  if (typeof part !== 'object' || part === null) return [place];
  const children = Object.entries(part).flatMap(([key, child]) =>
    placesOf(child, place === '' ? key : `${place}.${key}`),
  );
  return place === '' ? children : [place, ...children];
}
