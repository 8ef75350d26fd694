import {
  type AdvisedLinkAnswers,
  type Float,
  type Hardware,
  type Mm,
  measureReach,
  type PlacedEye,
  type PlacedFin,
  type PlacedFitting,
  type PlacedHole,
  type PlacedHung,
  type PlacedPin,
  type Wetted,
} from '../../sim/index.ts';
import type { Answers } from '../engine/answers.ts';
import { UNDER_MM } from '../view/tub-room.ts';
import type { View } from '../view/view.ts';
import type { Pose } from './motion.ts';

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
    { hardware: known(bait.hardware), assembled: known(bait.assembled) },
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
  bait: Part<{ readonly hardware: Hardware; readonly assembled: Float }>,
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
  const fins = bait.hardware.fins.filter(isOn);
  return {
    links,
    float,
    pose: poseOf(float, links, fins),
    eyes: bait.hardware.eyes.filter(isOn),
    pins: bait.hardware.pins.filter(isOn),
    holes: bait.hardware.holes.filter(isOn),
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
