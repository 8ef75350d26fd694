import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../sim/design/file.ts';
import { findReach } from '../../../sim/reach/reach.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, PLAIN_DESIGN } from '../../support/make-design.ts';
import { degrees } from '../../support/square-bait.ts';
import { partsOf } from '../../support/worked-bait.ts';
import { designOf, SETUPS } from './baits.ts';
import { jointBlocks, overlapAt, reachByHalving, releaseJoint } from './turned.ts';

/** What is aimed for; facets and levels leave a tenth of that. */
const NEAR_DEG = 0.5;
/** A corner that has gone in so far takes away far more; solids that are clear of each other have nothing in common. */
const NOTHING_MM3 = 1e-4;

const BAITS: readonly (readonly [string, DesignFile])[] = [
  ...[...new Set(SETUPS.map(([name]) => name))].map((name) => [name, designOf(name)] as const),
  ['the plain bait', PLAIN_DESIGN],
  ['the plain bait on a knuckle', KNUCKLE_DESIGN],
  ['the plain bait on linked eyes', LINKED_DESIGN],
];

describe.each(BAITS)('the joints of %s', (_name, file) => {
  const parts = partsOf(file);
  const { design, hull, links, hardware, setup } = parts;
  const reach = findReach({ hull, links, joints: design.joints, hardware, coats: setup.coats });

  const joints = reach.joints.map((joint) => [joint.joint + 1, joint] as const);

  test.each(joints)(
    'joint %d: solids turned to just short of its reach are clear, and just past it meet',
    (_number, joint) => {
      for (const coated of [true, false]) {
        const blocks = jointBlocks(parts, joint.joint, joint.pivot, coated);
        const swings = coated ? joint : joint.bare;
        expect(overlapAt(blocks, 0)).toBeLessThan(NOTHING_MM3);
        for (const [side, swing] of [
          [-1, swings.port],
          [1, swings.starboard],
        ] as const) {
          const angle = degrees(swing.angle);
          expect(overlapAt(blocks, side * (angle - NEAR_DEG))).toBeLessThan(NOTHING_MM3);
          expect(overlapAt(blocks, side * (angle + NEAR_DEG))).toBeGreaterThan(NOTHING_MM3);
        }
        releaseJoint(blocks);
      }
    },
  );

  test.each(joints)('joint %d: nothing meets before, by steps and halving', (_number, joint) => {
    const blocks = jointBlocks(parts, joint.joint, joint.pivot);
    const found = reachByHalving(blocks, 1, NOTHING_MM3);
    expect(Math.abs(found - degrees(joint.starboard.angle))).toBeLessThan(NEAR_DEG);
    releaseJoint(blocks);
  });
});
