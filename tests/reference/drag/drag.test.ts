import { describe, expect, test } from 'vitest';
import { dragAreas, showToFall } from '../../../sim/sinking/drag-law.ts';
import { ballDrag, barDrag, likenessDrag, powersAt } from '../../../sim/sinking/section-drag.ts';
import { SOURCES } from '../../../sim/sources/sources.ts';
import { bodyOf } from '../../support/float-mesh.ts';
import { ellipsoidMesh } from '../../support/meshes.ts';
import given from './case.json';

const { ball, bar, spheroids } = given;

test('the sources are listed', () => {
  for (const { source } of [ball, bar, spheroids]) expect(Object.keys(SOURCES)).toContain(source);
});

describe('a ball', () => {
  test.each(ball.reynolds.map((reynolds, i) => ({ reynolds, exact: ball.exact[i], i })))(
    'at Re $reynolds has C_d $exact',
    ({ reynolds, exact, i }) => {
      // the values have six figures
      expect(Math.abs(ballDrag(reynolds) / exact - 1)).toBeLessThan(2e-6);
      for (const other of Object.values(ball.others)) {
        expect(Math.abs(ballDrag(reynolds) / other[i] - 1)).toBeLessThan(reynolds > 1e4 ? 0.08 : 0.05);
      }
    },
  );
});

describe('a round bar across the flow', () => {
  test.each(bar.reynolds.map((reynolds, i) => ({ reynolds, exact: bar.exact[i] })))(
    'at Re $reynolds has C_d $exact',
    ({ reynolds, exact }) => {
      expect(Math.abs(powersAt(barDrag(1), reynolds) - exact)).toBeLessThan(1e-6);
      expect(Math.abs(powersAt(barDrag(20), reynolds / 20) - exact)).toBeLessThan(1e-6);
    },
  );
});

describe.each(['broadside', 'axial'] as const)('spheroids, %s', (way) => {
  const { crosswise, exact } = spheroids[way];
  test.each(exact.map((drag, i) => ({ drag, i })))(
    'have C_d $drag on the section of the ball of their volume',
    ({ drag, i }) => {
      const law = likenessDrag({ sphericity: spheroids.sphericity[i], crosswise: crosswise[i], reynolds: 1 });
      expect(Math.abs(powersAt(law, spheroids.reynolds) - drag)).toBeLessThan(1e-5);
    },
  );
});

test('a spheroid sinking broadside has them within its band, and they have it near its middle', () => {
  [2, 3, 4, 5].forEach((slender, i) => {
    const body = bodyOf(ellipsoidMesh([10 * slender, 10, 10], 100, 64), 1.02);
    const diameter = 20 * Math.cbrt(slender);
    const { law } = showToFall([body], [0, 0, 1], 1, null);
    const [low, mid, high] = dragAreas(law, spheroids.reynolds / diameter);
    const wanted = spheroids.broadside.exact[i] * (Math.PI / 4) * diameter ** 2;
    expect(wanted).toBeGreaterThan(low);
    expect(wanted).toBeLessThan(high);
    expect(Math.abs(mid / wanted - 1)).toBeLessThan(0.1);
  });
});
