import { expect, test } from 'vitest';
import { amountsIn } from '../../../../../sim/units/amounts.ts';
import { aimWords, offMarkWords } from '../../../../../src/panels/whole/aim.ts';
import { makeAccuracy } from '../../../../support/make-checked-bait.ts';

const AMOUNTS = amountsIn('mm-g');
const DEGREE = Math.PI / 180;

test('An aim that is met says how near it is', () => {
  const check = { what: 'proud', wanted: 3, got: 3.4, tolerance: 1, met: true } as const;
  expect(aimWords(check, AMOUNTS)).toBe('proud: 3.0 mm wanted, 3.4 mm; near enough');
});

test('An aim that is missed says how near it would have to be, in the unit of the aim', () => {
  const net = { what: 'net', wanted: 1.2, got: -0.1, tolerance: 0.2, met: false } as const;
  expect(aimWords(net, AMOUNTS)).toBe('net in water: +1.20 g wanted, -0.10 g; not within 0.20 g');
  const trim = { what: 'trim', wanted: 0, got: 6 * DEGREE, tolerance: 2 * DEGREE, met: false } as const;
  expect(aimWords(trim, AMOUNTS)).toBe('trim, nose-down +: 0.0° wanted, 6.0°; not within 2.0°');
});

test('A bait that should stand proud and has gone under is said to be under', () => {
  const check = { what: 'proud', wanted: 3, got: null, tolerance: 1, met: false } as const;
  expect(aimWords(check, AMOUNTS)).toBe('proud: 3.0 mm wanted, wholly under; not within 1.0 mm');
});

test('What is got has the decimals that are meant, in either pair of units; what was wanted keeps its own', () => {
  const rough = makeAccuracy({ digits: { draft: 0, proud: 0, trim: 0, heel: 0, gm: 0 } });
  const check = { what: 'proud', wanted: 4.5, got: 9.42, tolerance: 1, met: false } as const;
  expect(aimWords(check, AMOUNTS, rough)).toBe('proud: 4.5 mm wanted, 9 mm; not within 1.0 mm');
  expect(aimWords(check, amountsIn('in-oz'), rough)).toBe('proud: 0.177 in wanted, 0.37 in; not within 0.039 in');
  const trim = { what: 'trim', wanted: 0, got: 6.2 * DEGREE, tolerance: 2 * DEGREE, met: false } as const;
  expect(aimWords(trim, AMOUNTS, rough)).toBe('trim, nose-down +: 0.0° wanted, 6°; not within 2.0°');
});

test('Water off its mark is told at nose, joints and tail with the side it is on, in the unit shown', () => {
  const marks = [
    { at: 'nose', x: 0, mark: 4, off: 0.32 },
    { at: 1, x: 60, mark: 4, off: 0.04 },
    { at: 'tail', x: 120, mark: 4, off: -0.24 },
  ] as const;
  expect(offMarkWords(marks, AMOUNTS)).toBe('Water off its mark: nose +0.3, joint 1 0.0, tail -0.2 mm; + is over it');
  expect(offMarkWords(marks, amountsIn('in-oz'))).toBe(
    'Water off its mark: nose +0.013, joint 1 +0.002, tail -0.009 in; + is over it',
  );
});
