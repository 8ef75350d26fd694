import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../../../sim/units/parse.ts';
import type { QuantityKind } from '../../../../sim/units/parse-units.ts';

const FILE_UNITS = {
  length: 'mm',
  mass: 'g',
  density: 'g/cm³',
  angle: '°',
  temperature: '°C',
  salinity: 'g/kg',
  percent: '%',
  spread: 'g/m²',
  volume: 'mm³',
  speed: 'mm/s',
  time: 's',
  ratio: '',
} as const;

/** What was typed where the file's own unit is shown, or another. */
function read(typed: string, kind: QuantityKind = 'length', unit: string = FILE_UNITS[kind]) {
  return parseQuantity(typed, { kind, unit });
}

function messageOf(typed: string, kind: QuantityKind = 'length'): string {
  const quantity = read(typed, kind);
  if (quantity.ok) throw new Error(`${typed} was read as ${quantity.understood}`);
  return quantity.message;
}

describe('A plain number takes the unit shown and needs no echo', () => {
  test.each([
    ['35', 35],
    ['12.5', 12.5],
    [' 140 ', 140],
    ['.5', 0.5],
    ['7.', 7],
    ['+3', 3],
    ['-2', -2],
    ['−2', -2],
    ['35 mm', 35],
    ['３５ ㎜', 35],
    ['３５．０', 35],
    ['- 2', -2],
    ['12\t mm\n', 12],
    ['5.0 Millimetres', 5],
    ['35MM', 35],
    ['123456.789012345', 123456.789012345],
  ])('%j is %d mm', (typed, value) => {
    expect(read(typed)).toMatchObject({ ok: true, value, plain: true });
  });

  test('zero has no sign', () => {
    const quantity = read('-0');
    expect(quantity).toMatchObject({ ok: true, understood: '0 mm' });
    expect(quantity.ok && Object.is(quantity.value, 0)).toBe(true);
  });
});

describe('One and three eighths of an inch, in every form that a maker writes it, is 34.925 mm', () => {
  // 1 in is 25.4 mm: International Yard and Pound Agreement (1959); 11 x 25.4 / 8
  test.each([
    '1 3/8 in',
    '1-3/8 in',
    '1-3/8"',
    '1 3/8”',
    '1 3/8″',
    '1 3/8ʺ',
    '１ ３／８＂',
    "1 3/8''",
    '1 3/8’’',
    '1 3/8′′',
    '1⅜ in',
    '1 ⅜ in',
    '1-⅜ in',
    '1⅜"',
    '1 3⁄8 in',
    '1 3∕8 in',
    '1³⁄₈ in',
    '1 ³⁄₈ in',
    '1 3 / 8 in',
    '1\u00a03/8\u202fin',
    '1\u20093/8\u2009in',
    '\u200e1 3/8\u200b in',
    '1‑3/8 in',
    '1–3/8 in',
    '1 3/8in.',
    '1 3/8 Inches',
    '1 6/16 inch',
    '11/8 in',
    '1.375 in',
    '1,3750 in',
    '01.375 in',
    '1375 thou',
    '3.4925 cm',
    '34.925 mm',
    '0.034925 m',
  ])('%j', (typed) => {
    expect(read(typed)).toMatchObject({ ok: true, value: 34.925 });
  });

  test.each(['1 3/8', '1-3/8', '1⅜', '1.375'])('and so is a bare %j where inches are shown', (typed) => {
    expect(read(typed, 'length', 'in')).toMatchObject({ ok: true, value: 34.925 });
  });
});

describe('What was understood is said', () => {
  test.each([
    ['1 3/8"', '1 3/8 in = 34.925 mm'],
    ['1-3/8', '1 3/8 mm = 1.375 mm'],
    ['3/8 in', '3/8 in = 9.525 mm'],
    ['5/16 in', '5/16 in ≈ 7.938 mm'],
    ['2/16 in', '2/16 in = 3.175 mm'],
    ['0,092', '0.092 mm'],
    ['3.50 cm', '3.50 cm = 35 mm'],
    ['−1⅜ in', '-1 3/8 in = -34.925 mm'],
    ['1\' 2 3/8"', '1 ft 2 3/8 in = 365.125 mm'],
  ])('%j as %j where millimetres are shown', (typed, understood) => {
    expect(read(typed)).toMatchObject({ ok: true, understood, plain: false });
  });

  test.each([
    ['1 3/8', '1 3/8 in = 34.925 mm'],
    ['34.925 mm', '34.925 mm = 1 3/8 in'],
    ['35 mm', '35 mm ≈ 1.378 in (≈ 1 3/8 in)'],
    ['20 thou', '20 thou = 0.02 in (≈ 1/64 in)'],
    ['0.1 mm', '0.1 mm ≈ 0.0039 in'],
  ])('%j as %j where inches are shown', (typed, understood) => {
    expect(read(typed, 'length', 'in')).toMatchObject({ ok: true, understood, plain: false });
  });
});

describe('Every kind has the units that a maker meets', () => {
  test.each([
    // 1 lb is 453.59237 g: International Yard and Pound Agreement (1959); 1 lb is 16 oz and 7000 grains
    ['mass', '2.1 g', 2.1, '2.1 g'],
    ['mass', '1/4 oz', 7.08738078125, '1/4 oz ≈ 7.087 g'],
    ['mass', '½oz', 14.1747615625, '1/2 oz ≈ 14.175 g'],
    ['mass', '7000 grains', 453.59237, '7000 grains ≈ 453.592 g'],
    ['mass', '2.1 gms', 2.1, '2.1 g'],
    ['mass', '1 lb 2 oz', 510.29141625, '1 lb 2 oz ≈ 510.291 g'],
    ['mass', '1lb2oz', 510.29141625, '1 lb 2 oz ≈ 510.291 g'],
    ['mass', '1 lb, 2 oz', 510.29141625, '1 lb 2 oz ≈ 510.291 g'],
    ['mass', '2¼oz.', 63.7864270312, '2 1/4 oz ≈ 63.786 g'],
    ['mass', '1 lb 3 oz', 538.640939375, '1 lb 3 oz ≈ 538.641 g'],
    ['mass', '500 mg', 0.5, '500 mg = 0.5 g'],
    ['mass', '0.5 kg', 500, '0.5 kg = 500 g'],
    ['density', '420 kg/m3', 0.42, '420 kg/m³ = 0.42 g/cm³'],
    ['density', '420 kg / m³', 0.42, '420 kg/m³ = 0.42 g/cm³'],
    ['density', '420 kg per m^3', 0.42, '420 kg/m³ = 0.42 g/cm³'],
    ['density', '0.42 g/cc', 0.42, '0.42 g/cm³'],
    // 26 x 453.59237 / 30.48^3
    ['density', '0.36 g/㎤', 0.36, '0.36 g/cm³'],
    ['density', '0,36 g·cm⁻³', 0.36, '0.36 g/cm³'],
    ['density', '360 kg per cubic metre', 0.36, '360 kg/m³ = 0.36 g/cm³'],
    // 22 x 453.59237 / 30.48^3
    ['density', '22 lb/ft3', 0.352406194227, '22 lb/ft³ ≈ 0.35241 g/cm³'],
    ['density', '22 pounds per cubic foot', 0.352406194227, '22 lb/ft³ ≈ 0.35241 g/cm³'],
    ['density', '26 lb/ft3', 0.416480047723, '26 lb/ft³ ≈ 0.41648 g/cm³'],
    ['density', '26 lbs/cu ft', 0.416480047723, '26 lb/ft³ ≈ 0.41648 g/cm³'],
    ['angle', '2.5°', 2.5, '2.5°'],
    ['angle', '2,5 deg', 2.5, '2.5°'],
    ['angle', '2½º', 2.5, '2 1/2° = 2.5°'],
    ['angle', '−2° 30’', -2.5, '-2° 30′ = -2.5°'],
    ['angle', '2°30′36″', 2.51, '2° 30′ 36″ = 2.51°'],
    ['temperature', '20°', 20, '20 °C'],
    ['temperature', '72 °F', 22.2222222222, '72 °F ≈ 22.22 °C'],
    ['temperature', '68 degF', 20, '68 °F = 20 °C'],
    ['temperature', '20 deg. C', 20, '20 °C'],
    ['temperature', '68 °F', 20, '68 °F = 20 °C'],
    ['temperature', '68℉', 20, '68 °F = 20 °C'],
    ['temperature', '-40 deg f', -40, '-40 °F = -40 °C'],
    ['temperature', '293.15 K', 20, '293.15 K = 20 °C'],
    ['salinity', '3.5 %', 35, '3.5 % = 35 g/kg'],
    ['salinity', '35 ‰', 35, '35 g/kg'],
  ] as const)('%s %j', (kind, typed, value, understood) => {
    expect(read(typed, kind)).toMatchObject({ ok: true, value, understood });
  });

  test('a third of an ounce where ounces are shown says what it is in grams', () => {
    expect(read('1/3', 'mass', 'oz')).toMatchObject({ understood: '1/3 oz ≈ 9.45 g' });
  });
});

describe('Feet and inches', () => {
  test.each([
    '1\' 2 3/8"',
    '1ft2 3/8in',
    '1 ft, 2 3/8 in',
    '１＇ ２ ３／８＂',
    '1\'-2 3/8"',
    '1′2⅜″',
    '1 ft 2 3/8 in',
    '1 foot 2-3/8 inches',
    "1' 2 3/8",
  ])('%j is 14 3/8 in', (typed) => {
    expect(read(typed)).toMatchObject({ ok: true, value: 365.125 });
  });

  test.each([
    ['1\' 14"', '12 in make one ft; fewer can follow it'],
    ['5 in 3 ft', 'nothing more is read after in; type one number and one unit'],
    ['1.5\' 2"', '1.5 ft is not whole, so that no in can follow'],
    ["1' 2 mm", 'only in can follow ft'],
    ['12 in 3/8', 'nothing more is read after in; type one number and one unit'],
    ['35 mm x', 'nothing more is read after mm; type one number and one unit'],
  ])('%j is refused: %s', (typed, because) => {
    expect(messageOf(typed)).toBe(`"${typed}" is not read: ${because}`);
  });
});

describe('What could be meant in two ways is refused with both', () => {
  test.each([
    ['1,234', 'it could be 1.234 or 1234; type the one that is meant'],
    ['12,345 mm', 'it could be 12.345 or 12345; type the one that is meant'],
    ['1,234.5', 'thousands want no mark between them; type a number such as 1234.5'],
    ['1.234,5', 'thousands want no mark between them; type a number such as 1234.5'],
    ["1'000", 'thousands want no mark between them; type a number such as 1234.5'],
    ['12’345’678 mm', 'thousands want no mark between them; type a number such as 1234.5'],
    ['1 234', 'thousands want no mark between them; type a number such as 1234.5'],
    ['1\u202f234,5', 'thousands want no mark between them; type a number such as 1234.5'],
    ['1 - 3/8', 'it could be 1 3/8, or 1 less 3/8; type 1 3/8, or what it comes to'],
    ['1 -3/8', 'it could be 1 3/8, or 1 less 3/8; type 1 3/8, or what it comes to'],
    ['1−3/8', 'it could be 1 3/8, or 1 less 3/8; type 1 3/8, or what it comes to'],
    ['35 mil', '"mil" is a thousandth of an inch to some and a millimetre to others; type thou or mm'],
  ])('%j', (typed, because) => {
    expect(messageOf(typed)).toBe(`"${typed}" is not read: ${because}`);
  });

  test('grains or grams', () => {
    expect(messageOf('30 gr', 'mass')).toBe(
      '"30 gr" is not read: "gr" is grains to some and grams to others; type grains or g',
    );
  });

  test.each([
    ['0,092', 0.092],
    ['12,5', 12.5],
    ['1234,567', 1234.567],
    ['1,2345', 1.2345],
    ['1.234', 1.234],
  ])('but %j can be one thing only', (typed, value) => {
    expect(read(typed)).toMatchObject({ ok: true, value });
  });
});

describe('What is no quantity is refused with what was typed and what is allowed', () => {
  test.each([
    ['1/0', '1/0 has nothing below the line; type a fraction such as 3/8'],
    ['3/0', '3/0 has nothing below the line; type a fraction such as 3/8'],
    ['1 11/8', '11/8 is no part of one, to stand after a whole number; type one such as 1 3/8'],
    ['3/8/2', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['1+3/8', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['1 3/8 3/8', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['1.5 3/8', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['⅜5', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['½⅜', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['10-20', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['1.2.3', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['1--3/8', 'it is not one number; type 12.5, 3/8 or 1 3/8'],
    ['.', 'it is not a number; type 12.5, 3/8 or 1 3/8'],
    ['NaN', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['∞', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['٣', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['--5', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['-', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['length_mm * 2', 'no number stands where one should; type 35, 1 3/8 in or 3.5 cm'],
    ['1e3', '"e3" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['0x10', '"x1" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['5³', '"³" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['1ft2', '"ft2" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['3/8 of an inch', '"of" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['2*3', '"*3" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['35 g', '"g" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['35 inchworms', '"inchworms" is no unit of length; type mm, cm, m, in, ft or thou'],
    ['12345678901', 'at most 9 digits stand before the point and 9 after it'],
    ['9'.repeat(40), 'at most 9 digits stand before the point and 9 after it'],
    ['12345/8', 'a fraction has at most 4 digits on either side of its line'],
  ])('%j', (typed, because) => {
    expect(messageOf(typed)).toBe(`"${typed}" is not read: ${because}`);
  });

  test.each([
    ['35 mm', 'mass', 'type g, kg, mg, oz, lb or grains'],
    ['2 g', 'density', 'type g/cm³, kg/m³, lb/ft³, oz/in³ or lb/in³'],
    ['20 °C', 'angle', 'type °, ′, ″ or rad'],
    ['20 mm', 'temperature', 'type °C, °F or K'],
    ['35 psu', 'salinity', 'type g/kg or %'],
  ] as const)('%j as a %s', (typed, kind, allowed) => {
    expect(messageOf(typed, kind)).toContain(allowed);
  });

  test('nothing typed, in words of its own', () => {
    expect(messageOf('  ', 'mass')).toBe('Nothing typed: type a mass, such as 2.1, 1/4 oz or 30 grains');
    expect(messageOf('\u00a0', 'angle')).toContain('Nothing typed: type an angle');
  });

  test('a whole page is cut short in the message', () => {
    expect(messageOf('1 '.repeat(5000)).length).toBeLessThan(150);
  });

  test('a box in no unit of its kind is a fault of the program', () => {
    expect(() => parseQuantity('1', { kind: 'mass', unit: 'mm' })).toThrow('mm is no unit of mass');
  });
});

test('A share may be typed as a number or in hundredths, and a ratio takes no unit', () => {
  expect(read('0.8', 'ratio')).toMatchObject({ ok: true, value: 0.8, understood: '0.8', plain: true });
  expect(read('80 %', 'ratio')).toMatchObject({ ok: true, value: 0.8, understood: '80 % = 0.8' });
  expect(read('4/5', 'ratio')).toMatchObject({ ok: true, value: 0.8 });
  expect(messageOf('0.8 mm', 'ratio')).toContain('no unit or %');
});
