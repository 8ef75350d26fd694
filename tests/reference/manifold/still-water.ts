import type { FloatingBody } from '../../../sim/hydro/body.ts';
import { dot, type Vec3 } from '../../../sim/numerics/vec3.ts';
import type { LinkOfBait } from './baits.ts';
import { displacedBlock } from './displaced.ts';
import { type Block, blockOf, measure, middleOf, release, wetPart } from './solids.ts';

/** A floating body put together from the library's solids and the ledger. */
export interface Afloat {
  readonly water: number;
  readonly blocks: readonly Block[];
  /** What is fixed and what hangs: each pulls down at a point. */
  readonly weights: readonly { readonly mass: number; readonly at: Vec3 }[];
  /** Fixed parts outside the solids. */
  readonly balls: readonly { readonly volume: number; readonly at: Vec3 }[];
  readonly hung: FloatingBody['hung'];
}

interface Energy {
  /** Of the body and of the water it has pushed up, over the acceleration of free fall (g mm). */
  readonly energy: number;
  /** Buoyancy less weight (g). */
  readonly force: number;
}

export function afloat(water: number, links: readonly LinkOfBait[]): Afloat {
  const hung = links.flatMap((link) => link.hung);
  return {
    water,
    blocks: links.flatMap((link) => [
      displacedBlock(link),
      ...link.fins.map(({ mesh }) => blockOf(mesh, ['skin'], middleOf(mesh))),
    ]),
    weights: [
      ...links.map(({ ledger }) => ({ mass: ledger.mass, at: ledger.centre })),
      ...hung.map(({ mass, eye }) => ({ mass, at: eye })),
    ],
    balls: links.flatMap(({ ledger }) =>
      ledger.lines
        .filter((line) => line.outsideVolume > 0)
        .map((line) => ({ volume: line.outsideVolume, at: line.outsideAt })),
    ),
    hung,
  };
}

/**
 * Energy at a water surface up·p = offset: each weight times its height, and each wet volume times the depth of its own
 * middle. It is least over the offset where buoyancy equals weight.
 */
export function energyAt(body: Afloat, up: Vec3, offset: number): Energy {
  const depth = (at: Vec3) => offset - dot(up, at);
  const wet = [
    ...body.blocks.map((block) => {
      const part = wetPart(block, up, offset);
      const { volume, centre } = measure(part);
      release(part);
      return { volume, deep: depth(centre) };
    }),
    ...body.balls.map(({ volume, at }) => wetBall(volume, depth(at))),
    ...body.hung.map(({ volume, eye, hang }) => wetHung(volume, hang, depth(eye))),
  ];
  const mass = body.weights.reduce((sum, weight) => sum + weight.mass, 0);
  return {
    energy:
      body.water * wet.reduce((sum, { volume, deep }) => sum + volume * deep, 0) -
      body.weights.reduce((sum, weight) => sum + weight.mass * depth(weight.at), 0),
    force: body.water * wet.reduce((sum, { volume }) => sum + volume, 0) - mass,
  };
}

interface Wet {
  readonly volume: number;
  /** Depth of the middle of what is wet. */
  readonly deep: number;
}

/**
 * A ball with its middle at a depth. The cap under water: V = π h² (3 r - h)/3, its middle 3 (2 r - h)²/(4 (3 r - h))
 * off the ball's.
 */
function wetBall(volume: number, depth: number): Wet {
  const radius = Math.cbrt((3 * volume) / (4 * Math.PI));
  const height = Math.min(Math.max(radius + depth, 0), 2 * radius);
  const cap = (Math.PI * height ** 2 * (3 * radius - height)) / 3;
  return { volume: cap, deep: depth + (3 * (2 * radius - height) ** 2) / (4 * (3 * radius - height)) };
}

/** Hangs plumb from an eye at a depth, as thick at the eye as at its foot: wet from its foot up. */
function wetHung(volume: number, hang: number, depth: number): Wet {
  const length = Math.min(Math.max(depth + hang, 0), hang);
  return { volume: (volume * length) / hang, deep: depth + hang - length / 2 };
}

/** All that can displace, with everything wet; hung items at their eyes, where they pull. */
export function drowned(body: Afloat): { readonly volume: number; readonly centre: Vec3 } {
  const parts = [
    ...body.blocks.map(measure),
    ...body.balls.map(({ volume, at }) => ({ volume, centre: at })),
    ...body.hung.map(({ volume, eye }) => ({ volume, centre: eye })),
  ];
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  const at = (axis: 0 | 1 | 2) => parts.reduce((sum, part) => sum + part.volume * part.centre[axis], 0) / volume;
  return { volume, centre: [at(0), at(1), at(2)] };
}

/** Weight and where it pulls. */
export function weighed(body: Afloat): { readonly mass: number; readonly centre: Vec3 } {
  const mass = body.weights.reduce((sum, weight) => sum + weight.mass, 0);
  const at = (axis: 0 | 1 | 2) => body.weights.reduce((sum, weight) => sum + weight.mass * weight.at[axis], 0) / mass;
  return { mass, centre: [at(0), at(1), at(2)] };
}
