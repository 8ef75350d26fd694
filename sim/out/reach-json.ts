import type { Vec3 } from '../numerics/vec3.ts';
import type { Swing, Swings } from '../reach/joint.ts';
import type { JointReach, Reach } from '../reach/reach.ts';
import type { Curl } from '../reach/whole.ts';
import { degreeFromRadian } from '../units/convert.ts';

/** How far the joints swing. Pairs are to port and to starboard. */
export interface ReachJson {
  readonly joints: readonly JointReachJson[];
  readonly port: CurlJson;
  readonly starboard: CurlJson;
  readonly turns_round: boolean;
}

export interface JointReachJson {
  /** As makers count, from 1. */
  readonly joint: number;
  readonly hinge: JointReach['hinge'];
  readonly x_mm: number;
  readonly approximate: boolean;
  readonly port: SwingJson;
  readonly starboard: SwingJson;
  /** Over the play of pin or eyes: how far the aft link moves fore (negative) and aft, and what that makes of the reach. */
  readonly play_mm: readonly [number, number];
  readonly least_deg: readonly [number, number];
  readonly most_deg: readonly [number, number];
  readonly without_coats_deg: readonly [number, number];
}

export interface SwingJson {
  readonly reach_deg: number;
  /** Of the fore link and of the aft link; null: nothing, it turns right round. */
  readonly touches: Swing['touch'];
  /** On the fore link at rest. */
  readonly at_mm: Vec3 | null;
}

/** All joints curled to one side in proportion to their reach. */
export interface CurlJson {
  readonly fold_deg: number;
  readonly joints_deg: number;
  /** Links that are no neighbours and stop it first, counted from 1, and where on the first of them; null: none do. */
  readonly far: { readonly links: readonly [number, number]; readonly at_mm: Vec3 } | null;
}

export function reachJson({ joints, whole }: Reach): ReachJson {
  return {
    joints: joints.map(jointJson),
    port: curlJson(whole.port),
    starboard: curlJson(whole.starboard),
    turns_round: whole.turnsRound,
  };
}

function jointJson({ joint, hinge, pivot, approximate, port, starboard, play, bare }: JointReach): JointReachJson {
  return {
    joint: joint + 1,
    hinge,
    x_mm: pivot,
    approximate,
    port: swingJson(port),
    starboard: swingJson(starboard),
    play_mm: play.moves,
    least_deg: [degreeFromRadian(play.least.port), degreeFromRadian(play.least.starboard)],
    most_deg: [degreeFromRadian(play.most.port), degreeFromRadian(play.most.starboard)],
    without_coats_deg: bothWays(bare),
  };
}

function bothWays({ port, starboard }: Swings): readonly [number, number] {
  return [degreeFromRadian(port.angle), degreeFromRadian(starboard.angle)];
}

function swingJson({ angle, touch, at }: Swing): SwingJson {
  return { reach_deg: degreeFromRadian(angle), touches: touch, at_mm: at };
}

function curlJson({ fold, joints, far }: Curl): CurlJson {
  return {
    fold_deg: degreeFromRadian(fold),
    joints_deg: degreeFromRadian(joints),
    far: far && { links: [far.links[0] + 1, far.links[1] + 1], at_mm: far.at },
  };
}
