import type { JointReach, Mm, Outline } from '../../../sim/index.ts';

/** A point of the plan: x from the nose tip aft, y to starboard. */
export type PlanPoint = readonly [x: Mm, y: Mm];

/** What is drawn of one joint: from above, the aft link at rest and at its two limits. */
export interface DrawnJoint {
  readonly joint: number;
  readonly pivot: PlanPoint;
  /** Both links as they rest. */
  readonly fore: readonly (readonly PlanPoint[])[];
  readonly aft: readonly (readonly PlanPoint[])[];
  readonly limits: readonly DrawnLimit[];
}

export interface DrawnLimit {
  readonly side: 'port' | 'starboard';
  readonly outlines: readonly (readonly PlanPoint[])[];
  /** Where the two touch; null: they do not. */
  readonly contact: PlanPoint | null;
  /** The far end of the link that has swung, by which its angle is written. */
  readonly end: PlanPoint;
}

/** The outlines of a joint on the level that stops it first. */
export function drawnJoint({ joint, pivot, port, starboard, level }: JointReach): DrawnJoint {
  const aft = level.aft.map(pointsOf);
  const far = Math.max(pivot, ...aft.flat().map(([x]) => x));
  return {
    joint,
    pivot: [pivot, 0],
    fore: level.fore.map(pointsOf),
    aft,
    limits: (['port', 'starboard'] as const).map((side) => {
      const swing = { port, starboard }[side];
      const turn = side === 'starboard' ? swing.angle : -swing.angle;
      return {
        side,
        outlines: aft.map((points) => points.map((point) => turned(point, pivot, turn))),
        contact: swing.at && [swing.at[0], swing.at[1]],
        end: turned([far, 0], pivot, turn),
      };
    }),
  };
}

function pointsOf({ x, y }: Outline): readonly PlanPoint[] {
  return x.map((one, i): PlanPoint => [one, y[i] ?? 0]);
}

/** A point turned about an upright line on the centre plane, from aft to starboard. */
function turned([x, y]: PlanPoint, pivot: Mm, turn: number): PlanPoint {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [pivot + cos * (x - pivot) - sin * y, sin * (x - pivot) + cos * y];
}

/** How far to either side anything of the drawing reaches. */
export function extentOf(joints: readonly DrawnJoint[]): { readonly side: Mm } {
  const points = joints.flatMap(({ fore, aft, limits }) =>
    [...fore, ...aft, ...limits.flatMap(({ outlines }) => outlines)].flat(),
  );
  return {
    side: Math.max(0, ...points.map(([, y]) => Math.abs(y))),
  };
}
