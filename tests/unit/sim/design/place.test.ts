import { expect, test } from 'vitest';
import { valueAt, withValueAt } from '../../../../sim/design/place.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const FILE = Object.freeze(makeDesignFile({ body: { widest_x_mm: [50, 70] } }));

test('A place reads as the path of an issue does', () => {
  expect(valueAt(FILE, 'joints.0.gap_mm')).toBe(2);
  expect(valueAt(FILE, 'body.widest_x_mm.1')).toBe(70);
  expect(valueAt(FILE, 'setups.0.hung.1.name')).toBe('aft treble');
});

test('Where nothing stands nothing is found, and the language is no part of the file', () => {
  expect(valueAt(FILE, 'joints.7.gap_mm')).toBeUndefined();
  expect(valueAt(FILE, 'body.tail.z_mm')).toBeUndefined();
  expect(valueAt(FILE, 'body.constructor')).toBeUndefined();
  expect(valueAt(FILE, 'joints.length_mm')).toBeUndefined();
});

test('Another value at a place changes the way to it and nothing beside it', () => {
  const edited = withValueAt(FILE, 'setups.0.holes.1.lead.mass_g', 1.5);
  expect(valueAt(edited, 'setups.0.holes.1.lead.mass_g')).toBe(1.5);
  expect(valueAt(edited, 'setups.0.holes.1.lead.of')).toBe('shot in epoxy');
  expect(valueAt(FILE, 'setups.0.holes.1.lead.mass_g')).toBe(1);
  expect(edited.body).toBe(FILE.body);
  expect(edited.joints).toBe(FILE.joints);
  expect(edited.setups[0]?.hung).toBe(FILE.setups[0]?.hung);
  expect(edited.setups[0]?.holes[0]).toBe(FILE.setups[0]?.holes[0]);
});

test('One end of a straight run changes without the other, and stays a list', () => {
  const edited = withValueAt(FILE, 'body.widest_x_mm.0', 45);
  expect(edited.body.widest_x_mm).toEqual([45, 70]);
});

test('A list does not grow', () => {
  const edited = withValueAt(FILE, 'joints.7.gap_mm', 3);
  expect(edited).toEqual(FILE);
});

test('A name of the language becomes a field like any other, for the reading of the file to refuse', () => {
  const edited = withValueAt(FILE, '__proto__.length_mm', 1);
  expect(Object.hasOwn(edited, '__proto__')).toBe(true);
  expect(({} as Record<string, unknown>).length_mm).toBeUndefined();
});

test('A field that was left out is put in', () => {
  const edited = withValueAt(makeDesignFile({ body: {} }), 'body.back_mm', 17);
  expect(edited.body.back_mm).toBe(17);
});
