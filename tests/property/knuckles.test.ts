import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../sim/design/file.ts';
import { type Hull, skinHeight, stationOf } from '../../sim/hull/hull.ts';
import { faceAt, isRound, type LinkSpec } from '../../sim/links/cut.ts';
import { measureVolume } from '../../sim/mesh/measure.ts';
import { meshLink } from '../../sim/mesh/wetted.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { partsOf, soundIssuesOf } from '../support/worked-bait.ts';

/** Each run adds a link up from 160,000 columns; a tenth of what others run. */
const RUNS = { numRuns: Math.ceil(Number(process.env.FLOATWRIGHT_RUNS ?? 200) / 10) };

function hasRoundFace({ foreFace, aftFace }: LinkSpec): boolean {
  return [foreFace, aftFace].some((face) => face !== null && isRound(face));
}

/** Random designs with a knuckle, that can be made. */
function soundKnuckle(): fc.Arbitrary<DesignFile> {
  return arbitraryDesignFile().filter(
    (file) => partsOf(file).links.some(hasRoundFace) && soundIssuesOf(file).length === 0,
  );
}

/** A link without its slots, added up from upright columns between its faces: no ring, no root, no mesh. */
function columnVolume(hull: Hull, { foreFace, aftFace }: LinkSpec): number {
  const [rows, columns] = [400, 400];
  const most = mostHalfWidth(hull);
  let sum = 0;
  for (let i = 0; i < rows; i++) {
    // crowded where the flanks are upright, as at the tips below
    const lean = (Math.PI * (i + 0.5)) / (2 * rows);
    const y = most * Math.sin(lean);
    const from = foreFace ? faceAt(foreFace, y) : 0;
    const to = aftFace ? faceAt(aftFace, y) : hull.length;
    for (let j = 0; to > from && j < columns; j++) {
      const turn = (Math.PI * (j + 0.5)) / columns;
      const x = from + ((to - from) * (1 - Math.cos(turn))) / 2;
      const [back, belly] = [skinHeight(hull, 'back', x, y), skinHeight(hull, 'belly', x, y)];
      if (back !== null && belly !== null) sum += (back - belly) * Math.sin(turn) * (to - from) * Math.cos(lean);
    }
  }
  return (sum * most * Math.PI ** 2) / (2 * rows * columns);
}

/** Half of the greatest width: readings can bend the body wider than the width it was drawn with. */
function mostHalfWidth(hull: Hull): number {
  const stations = 2000;
  const halves = Array.from(
    { length: stations + 1 },
    (_, i) => stationOf(hull, (hull.length * i) / stations).halfWidth,
  );
  return Math.max(...halves);
}

describe('any link with a knuckle or a hollow', () => {
  test('has the wood that stands between its faces', () => {
    fc.assert(
      fc.property(soundKnuckle(), (file) => {
        const { hull, links } = partsOf(file);
        for (const spec of links.filter(hasRoundFace)) {
          const bare = { ...spec, slots: [] };
          const full = measureVolume(meshLink(hull, bare, 'full')).volume;
          const wanted = columnVolume(hull, spec);
          // of 1,100 links half were within 2e-5, the worst 6e-4; the columns are good to a few hundred-thousandths
          expect(Math.abs(full / wanted - 1)).toBeLessThan(1.5e-3);
        }
      }),
      RUNS,
    );
  });
});
