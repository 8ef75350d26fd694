import { describe, expect, test } from 'vitest';
import { withEdit } from '../../../../../sim/design/edit.ts';
import type { DesignFile, JointEntry } from '../../../../../sim/design/file.ts';
import { reachWarnings } from '../../../../../sim/out/warn/reach.ts';
import { makeJointReach, makeReach } from '../../../../support/make-checked-bait.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { quietWarnParts, warnPartsOf } from '../../../../support/quiet-warn-parts.ts';
import { degrees, reachOf } from '../../../../support/square-bait.ts';
import { soundIssuesOf } from '../../../../support/worked-bait.ts';

function warningsOf(file: DesignFile) {
  return reachWarnings(warnPartsOf(file), reachOf(file));
}

const [joint] = PLAIN_DESIGN.joints;

function withJoint(changes: Partial<JointEntry>): DesignFile {
  return makeDesignFile({ joints: [{ ...joint, ...changes } as JointEntry] });
}

describe('a joint that swings little', () => {
  test('is told with what stops it, and one edit that frees it', () => {
    const [warning, ...more] = warningsOf(PLAIN_DESIGN);
    expect(more).toEqual([]);
    expect(warning).toMatchObject({ code: 'joint-stiff', where: 'joint 1', limit: 15, unit: 'deg' });
    expect(warning.text).toMatch(/^Joint 1 swings \d+\.\d° a side; the faces touch first\./);
    expect(warning.number).toBeCloseTo(degrees(reachOf(PLAIN_DESIGN).joints[0].port.angle), 9);
    expect(warning.at?.[0]).toBeGreaterThan(50);
    expect(warning.fix?.says).toMatch(/^bevel the faces of joint 1 at \d+\.0°, then plan the ballast again$/);
    const cured = withEdit(PLAIN_DESIGN, warning.fix ?? { says: '', sets: [] });
    expect(soundIssuesOf(cured)).toEqual([]);
    expect(degrees(reachOf(cured).joints[0].port.angle)).toBeGreaterThanOrEqual(15);
    expect(warningsOf(cured)).toEqual([]);
  });

  test('is cured by the least step that does: one less would not', () => {
    const [{ fix }] = warningsOf(PLAIN_DESIGN);
    const set = fix?.sets[0].value as { readonly fore_deg: number };
    const less = { kind: 'bevel' as const, fore_deg: set.fore_deg - 5, aft_deg: set.fore_deg - 5 };
    expect(degrees(reachOf(withJoint({ faces: less })).joints[0].port.angle)).toBeLessThan(15);
  });

  test('has bevels that are there made steeper, expressions kept', () => {
    const [{ fix }] = warningsOf(withJoint({ faces: { kind: 'bevel', fore_deg: '2 * 1', aft_deg: 0 } }));
    expect(fix?.sets.map(({ path }) => path)).toEqual(['joints.0.faces.fore_deg', 'joints.0.faces.aft_deg']);
    expect(fix?.sets[0].value).toMatch(/^\(2 \* 1\) \+ \d+$/);
  });

  test('where the shank meets its slot is cured by wider slots', () => {
    const faces = { kind: 'bevel', fore_deg: 30, aft_deg: 30 } as const;
    // a deep slot, the pin far inside it
    const hinge = {
      ...joint.hinge,
      pin: { diameter_mm: 2, z_mm: [-12, 12], x_mm: 45, held_by: 'fore' },
    } as JointEntry['hinge'];
    const slots = joint.slots?.map((slot) => ({ ...slot, depth_mm: 18 })) ?? [];
    const file = makeDesignFile({ joints: [{ ...joint, faces, hinge, slots }] });
    const [warning] = warningsOf(file);
    expect(warning.text).toContain('slot cheek and shank touch first');
    expect(warning.fix?.sets.map(({ path }) => path)).toEqual([
      'joints.0.slots.0.width_mm',
      'joints.0.slots.1.width_mm',
    ]);
    const cured = withEdit(file, warning.fix ?? { says: '', sets: [] });
    expect(degrees(reachOf(cured).joints[0].port.angle)).toBeGreaterThanOrEqual(15);
    expect(soundIssuesOf(cured)).toEqual([]);
  });

  test('is no warning where it reads as enough', () => {
    const [at, under] = [14.96, 14.94].map((angle) => {
      const swing = { angle: (angle * Math.PI) / 180, touch: ['fin', 'fin'], at: [1, 2, 3] } as const;
      return reachWarnings(quietWarnParts(), makeReach([makeJointReach({ port: swing, starboard: swing })]));
    });
    expect(at).toEqual([]);
    expect(under.map(({ code, fix }) => [code, fix])).toEqual([['joint-stiff', null]]);
  });
});

test('a joint that touches at once does not turn, and comes first', () => {
  const swing = (angle: number) => ({ angle: (angle * Math.PI) / 180, touch: ['fin', 'fin'], at: [1, 2, 3] }) as const;
  const joints = [
    makeJointReach({ joint: 0, port: swing(12), starboard: swing(14) }),
    makeJointReach({ joint: 1, port: swing(5), starboard: swing(0) }),
  ];
  const said = reachWarnings(quietWarnParts(), makeReach(joints));
  expect(said.map(({ code, where, text, limit }) => [code, where, text, limit])).toEqual([
    ['joint-stuck', 'joint 2', 'Joint 2 does not turn: the fins touch before it has swung 1°.', 1],
    [
      'joint-stiff',
      'joint 1',
      'Joint 1 swings 12.0° to port; the fins touch first. Under 15° a bait hardly bends there.',
      15,
    ],
  ]);
});
