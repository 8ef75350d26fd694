import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Coat, Joint } from '../../sim/design/design.ts';
import type { DesignFile } from '../../sim/design/file.ts';
import { cutLinks } from '../../sim/links/cut.ts';
import { findReach, type Reach, type ReachParts } from '../../sim/reach/reach.ts';
import { radianFromDegree } from '../../sim/units/convert.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { degrees, reachPartsOf } from '../support/square-bait.ts';
import { soundIssuesOf } from '../support/worked-bait.ts';

/** Each run works reach out twice; a tenth of what others run. */
const RUNS = { numRuns: Math.ceil(Number(process.env.FLOATWRIGHT_RUNS ?? 200) / 10) };
/** Stations of the mesh move with the faces: its chords and what is thinned out leave hundredths of a millimetre. */
const NEAR_DEG = 0.15;

/** Random designs with a joint, that can be made. */
function soundJointed(): fc.Arbitrary<DesignFile> {
  return arbitraryDesignFile().filter((file) => file.joints.length > 0 && soundIssuesOf(file).length === 0);
}

function withJoints(parts: ReachParts, change: (joint: Joint) => Joint): ReachParts {
  const joints = parts.joints.map(change);
  const named = parts.links.map(({ name }) => ({ name, density: null }));
  return { ...parts, joints, links: cutLinks(parts.hull.length, named, joints) };
}

function angles({ joints }: Reach): readonly number[] {
  return joints.flatMap(({ port, starboard, bare }) =>
    [port, starboard, bare.port, bare.starboard].map(({ angle }) => degrees(angle)),
  );
}

/** No joint swings less than it did. */
function expectNoLess(after: ReachParts, before: ReachParts): void {
  const [now, then] = [angles(findReach(after)), angles(findReach(before))];
  now.forEach((angle, i) => {
    expect(angle).toBeGreaterThan(then[i] - NEAR_DEG);
  });
}

describe('of any bait that can be made', () => {
  test('every joint swings, from 0 to half a turn, most where play and no coat help it', () => {
    fc.assert(
      fc.property(soundJointed(), (file) => {
        const { joints, whole } = findReach(reachPartsOf(file));
        expect(joints).toHaveLength(file.joints.length);
        for (const { port, starboard, play, bare } of joints) {
          for (const side of ['port', 'starboard'] as const) {
            const { angle } = { port, starboard }[side];
            expect(angle).toBeGreaterThanOrEqual(0);
            expect(angle).toBeLessThanOrEqual(Math.PI);
            expect(play.least[side]).toBeLessThanOrEqual(angle);
            expect(play.most[side]).toBeGreaterThanOrEqual(angle);
            expect(degrees(bare[side].angle)).toBeGreaterThan(degrees(angle) - NEAR_DEG);
          }
        }
        expect(whole.port.fold).toBeLessThanOrEqual(whole.port.joints);
      }),
      RUNS,
    );
  });

  test('the mirror image swings to port what it swung to starboard', () => {
    fc.assert(
      fc.property(soundJointed(), (file) => {
        const parts = reachPartsOf(file);
        const mirrored = parts.hardware.eyes.map((eye) => ({
          ...eye,
          loop: [eye.loop[0], -eye.loop[1], eye.loop[2]] as const,
          entry: [eye.entry[0], -eye.entry[1], eye.entry[2]] as const,
        }));
        const [one, other] = [parts, { ...parts, hardware: { ...parts.hardware, eyes: mirrored } }].map(findReach);
        one.joints.forEach(({ port, starboard }, j) => {
          expect(other.joints[j].port.angle).toBeCloseTo(starboard.angle, 6);
          expect(other.joints[j].starboard.angle).toBeCloseTo(port.angle, 6);
        });
      }),
      RUNS,
    );
  });

  test('a wider gap never takes reach away', () => {
    fc.assert(
      fc.property(soundJointed(), fc.double({ min: 0.1, max: 1.5, noNaN: true }), (file, more) => {
        const parts = reachPartsOf(file);
        // about a knuckle its hollow alone would move
        const wider = withJoints(parts, (joint) =>
          joint.faces.kind === 'knuckle' ? joint : { ...joint, gap: joint.gap + more },
        );
        expectNoLess(wider, parts);
      }),
      RUNS,
    );
  });

  test('a steeper bevel never takes reach away', () => {
    fc.assert(
      fc.property(soundJointed(), fc.integer({ min: 1, max: 10 }), (file, more) => {
        const parts = reachPartsOf(file);
        const steeper = withJoints(parts, (joint) => {
          const { faces } = joint;
          if (faces.kind !== 'bevel') return joint;
          const by = radianFromDegree(more);
          return { ...joint, faces: { ...faces, fore: faces.fore + by, aft: faces.aft + by } };
        });
        expectNoLess(steeper, parts);
      }),
      RUNS,
    );
  });

  test('a thicker coat never adds reach, wherever it goes', () => {
    fc.assert(
      fc.property(soundJointed(), fc.constantFrom('all', 'skin'), (file, covers) => {
        const parts = reachPartsOf(file);
        const coat: Coat = { kind: 'film', name: 'more', thickness: 0.05, density: 0.0012, covers };
        expectNoLess(parts, { ...parts, coats: [...parts.coats, coat] });
      }),
      RUNS,
    );
  });
});
