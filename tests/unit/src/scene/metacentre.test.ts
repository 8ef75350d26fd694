import { expect, test } from 'vitest';
import { dot, subtract } from '../../../../sim/numerics/vec3.ts';
import { metacentreOf } from '../../../../src/scene/metacentre.ts';
import { goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { outcomesOf } from '../../../support/worked-bait.ts';

function floatOf(density_g_cm3?: number) {
  const file = makeDesignFile(density_g_cm3 === undefined ? {} : { wood: { density_g_cm3 } });
  const { assembled } = outcomesOf(file).bait;
  if (assembled === undefined) throw new Error('the bait was not worked out');
  return goodOf(assembled);
}

test('M of a floating bait stands GM over G, plumb', () => {
  const float = floatOf();
  expect(float.state).toBe('floats');
  const rise = subtract(metacentreOf(float) ?? [0, 0, 0], float.gravityCentre);
  expect(dot(rise, float.up)).toBeCloseTo(float.gm, 9);
  expect(Math.hypot(...rise)).toBeCloseTo(Math.abs(float.gm), 9);
});

test('M of a hanging bait is its centre of buoyancy over G, and what sinks has none', () => {
  const sunk = floatOf(1.2);
  expect(sunk.state).toBe('sinks');
  expect(metacentreOf(sunk)).toBeNull();
  const hanging = { ...sunk, state: 'hangs' } as const;
  const rise = subtract(metacentreOf(hanging) ?? [0, 0, 0], hanging.gravityCentre);
  expect(Math.hypot(...rise)).toBeCloseTo(hanging.gm, 9);
});
