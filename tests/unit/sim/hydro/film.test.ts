import { describe, expect, test } from 'vitest';
import { filmOf } from '../../../../sim/hydro/film.ts';
import { floatBody } from '../../../../sim/hydro/float.ts';
import { surfaceTension } from '../../../../sim/tables/surface-tension.ts';
import { bodyOf, floatHomogeneous } from '../../../support/float-mesh.ts';
import { barMesh, prismMesh, roundSection } from '../../../support/meshes.ts';

const TENSION = 0.0074;
const block = bodyOf(barMesh(60, 20, 30), 0.6, [0, 0, -8]);

describe('the film round a block of 60 by 20', () => {
  const film = filmOf(block, floatBody(block), TENSION);

  test('pulls along its four edges', () => {
    expect(film.edge).toBeCloseTo(160, 9);
    expect(film.force).toBeCloseTo(160 * TENSION, 9);
    expect(film.tooClose).toBe(false);
  });

  test('moves the draft by its pull over the waterplane', () => {
    expect(film.draft).toBeCloseTo((160 * TENSION) / (0.001 * 60 * 20), 9);
  });

  test('heels and trims it by the levers of its edges over m GM', () => {
    // across: two sides of 60 at 10, two ends of 20 whose levers average 5; along: two ends of 20 at 30, two sides at 15
    const [heel, trim] = [2 * 60 * 10 + 2 * 20 * 5, 2 * 20 * 30 + 2 * 60 * 15];
    const [gm, gmLong] = [2 + 400 / 216, 2 + 3600 / 216];
    expect(film.heel).toBeCloseTo((TENSION * heel) / (21.6 * gm), 9);
    expect(film.trim).toBeCloseTo((TENSION * trim) / (21.6 * gmLong), 9);
  });
});

test('a block whose reserve is less than the pull is too close to call, floating or sinking', () => {
  for (const mass of [35, 37]) {
    const body = bodyOf(barMesh(60, 20, 30), 1, [0, 0, -8], { mass });
    expect(filmOf(body, floatBody(body), TENSION).tooClose).toBe(true);
  }
  const heavy = bodyOf(barMesh(60, 20, 30), 1, [0, 0, -8], { mass: 38 });
  const film = filmOf(heavy, floatBody(heavy), TENSION);
  expect(film.tooClose).toBe(false);
  // on its way down it is wet round its sides
  expect(film.edge).toBeCloseTo(160, 9);
  expect([film.draft, film.heel, film.trim]).toEqual([null, null, null]);
});

test('of a round bar says nothing of heel, which nothing holds', () => {
  const bar = prismMesh(roundSection(10, 240), -40, 40);
  const film = filmOf(bodyOf(bar, 0.4), floatHomogeneous(bar, 0.4), TENSION);
  expect(film.heel).toBeNull();
  expect(film.trim).toBeGreaterThan(0);
});

test('the skin of water pulls with 0.07274 N/m at 20 degrees and 0.07422 at 10', () => {
  // IAPWS R1-76, from memory; 1 gf = 9.80665 mN
  expect(surfaceTension(20) * 9.80665).toBeCloseTo(0.07274, 5);
  expect(surfaceTension(10) * 9.80665).toBeCloseTo(0.07422, 5);
});
