import { expect, test } from 'vitest';
import type { Hung, Target } from '../../../../../sim/design/design.ts';
import type { Float } from '../../../../../sim/hydro/float.ts';
import { warn } from '../../../../../sim/out/warn.ts';
import { makeFloat } from '../../../../support/make-checked-bait.ts';
import { quietWarnParts } from '../../../../support/quiet-warn-parts.ts';

function said(float: Partial<Float>, masses: readonly number[], target?: Target) {
  const parts = quietWarnParts({ assembled: makeFloat(float) });
  const hung = masses.map((mass, i): Hung => ({ name: `hook ${i}`, from: 'tail', mass, hang: 20, density: 0.00785 }));
  const setups = parts.drawn.setups.map((setup) => ({ ...setup, hung, target: target ?? setup.target }));
  return warn({ ...parts, drawn: { ...parts.drawn, setups } });
}

test('less in reserve than the lightest thing that hangs is told', () => {
  const [only, ...more] = said({ netWet: -1.2 }, [2, 1.3]);
  expect(more).toEqual([]);
  expect(only).toMatchObject({ code: 'reserve-small', where: 'the whole bait', number: 1.2, limit: 1.3, unit: 'g' });
  expect(only.text).toBe(
    'Only 1.20 g in reserve, less than "hook 1", the lightest that hangs from it, weighs (1.30 g): one more on it, or a bigger hook, may sink it.',
  );
  expect(said({ netWet: -1.3 }, [2, 1.3])).toEqual([]);
});

test('where nothing hangs, a small split ring is the measure', () => {
  expect(said({ netWet: -0.24 }, [])[0]).toMatchObject({ code: 'reserve-small', limit: 0.25 });
  expect(said({ netWet: -0.25 }, [])).toEqual([]);
});

test('nothing is said of what does not float, or is not meant to', () => {
  expect(said({ netWet: -0.05, state: 'hangs' }, [2])).toEqual([]);
  expect(said({ netWet: -0.2 }, [2], { kind: 'net', net: 0, trim: 0 })).toEqual([]);
  expect(said({ netWet: -0.2 }, [2], { kind: 'net', net: -0.2, trim: 0 })).toHaveLength(1);
});
