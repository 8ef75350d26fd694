import { describe, expect, test } from 'vitest';
import { placeColumns, type Stretch } from '../../../../../src/panels/columns/place-columns.ts';

/** Spans from their lengths, laid end to end with gaps between. */
function spansOf(widths: readonly number[], left: number, gap = 8): readonly Stretch[] {
  let edge = left;
  return widths.map((width) => {
    const span = { left: edge, width };
    edge += width + gap;
    return span;
  });
}

function mustPlace(spans: readonly Stretch[], width: number): readonly Stretch[] {
  const placed = placeColumns(spans, width);
  if (placed === null) throw new Error('there was room for columns');
  return placed;
}

test('Under wide links the columns are exactly as wide as the spans and right under them', () => {
  const spans = spansOf([400, 300, 250], 30);
  expect(mustPlace(spans, 1100)).toEqual(spans);
});

test('A short link gets a column that can be read, and the long one beside it keeps its span', () => {
  const [head, tail] = mustPlace(spansOf([400, 60], 30), 1000);
  expect(head).toEqual({ left: 30, width: 400 });
  expect(tail?.width).toBeGreaterThan(130);
});

describe.each([
  ['five short links', [90, 60, 60, 60, 60], 40, 700],
  ['a long head and a crowd behind it', [420, 50, 50, 50], 20, 680],
  ['links crowded at the tail end', [60, 60, 60], 500, 720],
  ['one link', [300], 100, 500],
])('%s', (_, widths, left, width) => {
  const spans = spansOf(widths, left);
  const columns = mustPlace(spans, width);

  test('stand apart, in order, within the sheet', () => {
    let edge = 0;
    for (const column of columns) {
      expect(column.left).toBeGreaterThanOrEqual(edge - 1e-9);
      edge = column.left + column.width;
    }
    expect(edge).toBeLessThanOrEqual(width + 1e-9);
  });

  test('are all wide enough to read', () => {
    for (const column of columns) expect(column.width).toBeGreaterThanOrEqual(131.9);
  });
});

test('A sheet too narrow for columns has none, and so has a bait without links', () => {
  expect(placeColumns(spansOf([120, 80, 70], 10), 366)).toBeNull();
  expect(placeColumns([], 1000)).toBeNull();
});
