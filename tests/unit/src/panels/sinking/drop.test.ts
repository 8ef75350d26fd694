import { expect, test } from 'vitest';
import { evaluateDesign } from '../../../../../sim/design/validate.ts';
import { dropOf, withDropNumber, withoutDrop } from '../../../../../src/panels/sinking/drop.ts';
import { goodOf } from '../../../../support/change-file.ts';
import { makeDesignFile } from '../../../../support/make-design.ts';

const FILE = makeDesignFile();
const OTHERS = { distance_mm: 304.8, time_s: 3.321, net_wet_g: 1.1834 };

test('the first number makes the drop, with the depth and what the bait weighed then', () => {
  const { setups } = withDropNumber(0, 'time_s', 3.2, OTHERS)(FILE);
  expect(setups[0].drop).toEqual({ distance_mm: 304.8, time_s: 3.2, net_wet_g: 1.18 });
  const next = withDropNumber(0, 'distance_mm', 1000, OTHERS)({ ...FILE, setups });
  expect(next.setups[0].drop).toEqual({ distance_mm: 1000, time_s: 3.2, net_wet_g: 1.18 });
  expect(FILE.setups[0].drop).toBeUndefined();
});

test('what it weighed is never nothing: nothing does not sink', () => {
  const { setups } = withDropNumber(0, 'time_s', 3.2, { ...OTHERS, net_wet_g: 0.001 })(FILE);
  expect(setups[0].drop?.net_wet_g).toBe(0.01);
});

test('it can be forgotten, and is read as it was worked out', () => {
  const timed = withDropNumber(0, 'time_s', 3.2, OTHERS)(FILE);
  expect(dropOf(goodOf(evaluateDesign(timed)), 0, 5)).toEqual({ distance_mm: 304.8, time_s: 3.2, net_wet_g: 1.18 });
  expect(withoutDrop(0)(timed)).toEqual(FILE);
  expect(dropOf(goodOf(evaluateDesign(FILE)), 0, 5)).toBeNull();
  expect(dropOf(undefined, 0, 5)).toBeNull();
  const [setup] = FILE.setups;
  const bare = { ...FILE, setups: [{ ...setup, drop: { distance_mm: 500, time_s: 4 } }] };
  expect(dropOf(goodOf(evaluateDesign(bare)), 0, 0.8)?.net_wet_g).toBe(0.8);
});
