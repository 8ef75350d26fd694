import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../../../../src/styles/tokens.css', import.meta.url), 'utf8');
const [light = '', dark = ''] = css.split('@media (prefers-color-scheme: dark)');

/** The colours that carry text; hairline and line never do. */
const TEXT = ['ink', 'pencil', 'water', 'deep', 'brass', 'lead', 'vermilion', 'moss'];
/** WCAG 2.2, success criterion 1.4.3, level AA. */
const LEAST_CONTRAST = 4.5;

function colour(rules: string, name: string): string {
  const value = new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(rules)?.[1];
  if (value === undefined) throw new Error(`tokens.css gives no colour --${name}`);
  return value;
}

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4));
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].toSorted((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

describe.each([
  ['by day', light],
  ['at night', dark],
])('On paper %s', (_, rules) => {
  test.each(TEXT)('%s can be read', (name) => {
    expect(contrast(colour(rules, name), colour(rules, 'paper'))).toBeGreaterThanOrEqual(LEAST_CONTRAST);
  });
});

test('The measure itself: black on white is 21 to 1', () => {
  // WCAG 2.2, definition of contrast ratio: "Contrast ratios can range from 1 to 21"
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
});
