import {
  type AdvisedLinkAnswers,
  type Float,
  type Hardware,
  type KeepOut,
  type Mm,
  measureReach,
  type PlacedEye,
  type PlacedFin,
  type PlacedFitting,
  type PlacedHole,
  type PlacedHung,
  type PlacedPin,
  type Vec3,
  type WallAnswer,
  type Wetted,
} from '../../sim/index.ts';
import type { Answers } from '../engine/answers.ts';
import { UNDER_MM } from '../view/tub-room.ts';
import type { View } from '../view/view.ts';
import type { Pose } from './motion.ts';
import type { HoleWall } from './wall-mark.ts';

/** One link as it is drawn. */
export interface ShownLink {
  readonly index: number;
  readonly wetted: Wetted;
}

/** Everything the tub draws: bodies, what they carry, and the one attitude they all stand in. */
export interface ShownBait {
  readonly links: readonly ShownLink[];
  readonly float: Float;
  readonly pose: Pose;
  readonly eyes: readonly PlacedEye[];
  readonly pins: readonly PlacedPin[];
  readonly holes: readonly PlacedHole[];
  /** The wood round each of the holes. */
  readonly walls: readonly HoleWall[];
  /** Where no lead may go: of each shown link. */
  readonly keepOuts: readonly (readonly KeepOut[])[];
  readonly hung: readonly PlacedHung[];
  readonly fins: readonly PlacedFin[];
  readonly fittings: readonly PlacedFitting[];
  /** Kept from an older run because the newest design cannot be worked out. */
  readonly kept: boolean;
}

/**
 * What there is to see: of the newest run if it has all that the picture needs, else of the last run that had; null
 * before there was any.
 */
export function shownBait(
  answers: Pick<Answers, 'bait' | 'links' | 'lastGood'>,
  shown: View['shown'],
): ShownBait | null {
  const { bait, links, lastGood } = answers;
  const now = picture(
    links.map((link) => ({ wetted: known(link.wetted), float: known(link.float) })),
    { hardware: known(bait.hardware), assembled: known(bait.assembled), walls: known(bait.walls) },
    shown,
    false,
  );
  return now ?? picture(lastGood.links, lastGood.bait, shown, true);
}

type Seen<Value> = { readonly status: 'ok'; readonly value: Value } | { readonly status: 'failed' | 'blocked' };

function known<Value>(outcome: Seen<Value> | undefined): Value | undefined {
  return outcome?.status === 'ok' ? outcome.value : undefined;
}

type Part<Value> = { readonly [Name in keyof Value]?: Value[Name] | undefined };

function picture(
  answers: readonly Part<Pick<AdvisedLinkAnswers, 'wetted' | 'float'>>[],
  bait: Part<{ readonly hardware: Hardware; readonly assembled: Float; readonly walls: WallAnswer }>,
  shown: View['shown'],
  kept: boolean,
): ShownBait | null {
  const wanted = shown === 'whole' ? answers.map((_, index) => index) : [shown];
  const links = wanted.flatMap((index) => {
    const wetted = answers[index]?.wetted;
    return wetted ? [{ index, wetted }] : [];
  });
  const float = shown === 'whole' ? bait.assembled : answers[shown]?.float;
  if (!float || !bait.hardware || links.length === 0 || links.length < wanted.length) return null;
  const isOn = (item: { readonly link: number }) => shown === 'whole' || item.link === shown;
  const { walls } = bait;
  const fins = bait.hardware.fins.filter(isOn);
  return {
    links,
    float,
    pose: poseOf(float, links, fins),
    eyes: bait.hardware.eyes.filter(isOn),
    pins: bait.hardware.pins.filter(isOn),
    holes: bait.hardware.holes.filter(isOn),
    walls: bait.hardware.holes.flatMap((hole, i) => {
      const wall = walls?.holes[i];
      return wall && isOn(hole) ? [{ hole, wall }] : [];
    }),
    keepOuts: links.map(({ index }) => walls?.keepOuts[index] ?? []),
    hung: bait.hardware.hung.filter(isOn),
    fins,
    fittings: bait.hardware.fittings.filter(isOn),
    kept,
  };
}

export function poseOf(float: Float, links: readonly ShownLink[], fins: readonly PlacedFin[]): Pose {
  const { up, offset } = float;
  if (offset !== null) return { up, offset };
  return { up, offset: reachAlong(links, up, fins) + UNDER_MM };
}

/** How far the links' coated surfaces, and fins if there are any, reach in a direction of the body frame. */
export function reachAlong(links: readonly ShownLink[], direction: Pose['up'], fins: readonly PlacedFin[] = []): Mm {
  const meshes = [...links.map(({ wetted }) => wetted.mesh), ...fins.map(({ mesh }) => mesh)];
  return Math.max(...meshes.map(({ positions }) => measureReach(positions, direction)[1]));
}

/** The aft end of a waterline on the links' coated skins, in the body frame; null where it does not touch them. */
export function waterlineEnd(links: readonly ShownLink[], up: Vec3, offset: Mm): Vec3 | null {
  let end: Vec3 | null = null;
  for (const { wetted } of links) {
    const { positions, topology } = wetted.mesh;
    const over = (i: number) => up[0] * positions[i] + up[1] * positions[i + 1] + up[2] * positions[i + 2] - offset;
    for (let i = 0; i < topology.index.length; i++) {
      const [a, b] = [3 * topology.index[i], 3 * topology.index[i % 3 === 2 ? i - 2 : i + 1]];
      const [overA, overB] = [over(a), over(b)];
      if (overA > 0 === overB > 0) continue;
      const share = overA / (overA - overB);
      const between = (axis: 0 | 1 | 2) => positions[a + axis] + share * (positions[b + axis] - positions[a + axis]);
      const x = between(0);
      if (end === null || x > end[0]) end = [x, between(1), between(2)];
    }
  }
  return end;
}
