import { describe, expect, test } from 'vitest';
import { dropCells, type Vec3 } from '../../../../../sim/index.ts';
import { sphereGrid } from '../../../../../sim/numerics/sphere-grid.ts';
import { layOutGlobe, letterOf, MIDDLES, placeOf, RADIUS } from '../../../../../src/panels/roll/globe.ts';

const [BACK_UP, BELLY_UP] = MIDDLES;

describe('A way up on the map', () => {
  test.each<[name: string, up: Vec3, x: number, y: number]>([
    ['upright is the middle of the first disc', [0, 0, 1], BACK_UP.x, BACK_UP.y],
    ['belly up that of the second', [0, 0, -1], BELLY_UP.x, BELLY_UP.y],
    ['on its nose is at the left rim', [1, 0, 0], BACK_UP.x - RADIUS, BACK_UP.y],
    ['on its tail at the right', [-1, 0, 0], BACK_UP.x + RADIUS, BACK_UP.y],
    ['on its starboard flank at the top', [0, -1, 0], BACK_UP.x, BACK_UP.y - RADIUS],
    ['on its port flank at the foot', [0, 1, 0], BACK_UP.x, BACK_UP.y + RADIUS],
    [
      'heeled 60° to starboard has half the disc inside it',
      [0, -Math.sqrt(3) / 2, 0.5],
      BACK_UP.x,
      BACK_UP.y - RADIUS / Math.SQRT2,
    ],
  ])('%s', (_, up, x, y) => {
    expect(placeOf(up).x).toBeCloseTo(x, 9);
    expect(placeOf(up).y).toBeCloseTo(y, 9);
  });
});

/** Area of all closed runs of a path, each by its corners. */
function areaOf(path: string): number {
  return path
    .split('M')
    .filter((run) => run !== '')
    .reduce((sum, run) => {
      const points = run
        .replace('Z', '')
        .split('L')
        .map((place) => place.split(' ').map(Number));
      const twice = points.reduce((all, [x = 0, y = 0], i) => {
        const [u = 0, v = 0] = points[(i + 1) % points.length] ?? [];
        return all + x * v - u * y;
      }, 0);
      return sum + Math.abs(twice) / 2;
    }, 0);
}

describe('The map of drops', () => {
  const { points } = sphereGrid(2);
  const drops = points.map((up) => ({ up, rest: up[1] < 0 ? 0 : 1 }));
  const globe = layOutGlobe(drops, dropCells({ drops }));

  test('shows a share of drops as that share of both discs', () => {
    const whole = 2 * Math.PI * RADIUS ** 2;
    expect(globe.regions.map(({ rest }) => rest)).toEqual([0, 1]);
    for (const { rest, path } of globe.regions) {
      const share = drops.filter((drop) => drop.rest === rest).length / drops.length;
      // cells differ by a few per cent
      expect(areaOf(path) / whole).toBeGreaterThan(share - 0.03);
      expect(areaOf(path) / whole).toBeLessThan(share + 0.03);
    }
    const all = globe.regions.reduce((sum, { path }) => sum + areaOf(path), 0);
    expect(all / whole).toBeGreaterThan(0.99);
    expect(all / whole).toBeLessThan(1.005);
  });

  test('draws lines only between what differs', () => {
    expect(globe.borders).not.toBe('');
    expect(globe.borders).not.toMatch(/NaN/);
    const same = drops.map(({ up }) => ({ up, rest: 0 }));
    expect(layOutGlobe(same, dropCells({ drops: same }))).toMatchObject({ borders: '', regions: [{ rest: 0 }] });
  });

  test('of no drops is empty', () => {
    expect(layOutGlobe([], [])).toEqual({ regions: [], borders: '' });
  });
});

test('Rests are named by letters, and past the last of them with numbers', () => {
  expect([0, 1, 25, 26, 53].map(letterOf)).toEqual(['A', 'B', 'Z', 'A2', 'B3']);
});
