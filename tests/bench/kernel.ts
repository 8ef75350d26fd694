import { judgeAccuracy } from '../../sim/hydro/accuracy.ts';
import { findAttitudes } from '../../sim/hydro/attitudes.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { restFrom } from '../../sim/hydro/equilibrium.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { planeAxes, potentialAt } from '../../sim/hydro/potential.ts';
import { rightingCurve } from '../../sim/hydro/righting-arm.ts';
import { buildTreeShape, fitTree } from '../../sim/hydro/tree.ts';
import { dot, type Vec3 } from '../../sim/numerics/vec3.ts';
import { surfaceTension } from '../../sim/tables/surface-tension.ts';
import { diceOf } from '../fuzz/dice.ts';
import { displacedBlock } from '../reference/manifold/displaced.ts';
import { measure, release, wetPart } from '../reference/manifold/solids.ts';
import type { AllAnswers } from '../support/worked-bait.ts';
import { bodyAt, ENGINE, type Fineness, meshAt, SIZES } from './demo.ts';
import { atLeast, atMost, type Row, timeRow, valueRow } from './rows.ts';
import { type Timing, timeInTurn, timeOf } from './timing.ts';
import { createVectorClip } from './vector-clip.ts';

/** The head: tip, bevelled face, two slots, line tie and a hook hung. */
const HEAD = 0;
/** A quarter of the engine's triangles. */
const [COARSE] = SIZES;
const UPRIGHT: Vec3 = [0, 0, 1];

const PASS_US: Readonly<Record<string, number>> = { '2k': 8, '8k': 15, '80k': 60 };

/** Times of the kernel at every size, and of two other ways to the same numbers, in one run. */
export function kernelRows(answers: AllAnswers): { readonly own: readonly Row[]; readonly others: readonly Row[] } {
  const sizes = SIZES.map((size) => measureSize(answers, size));
  const [first, last] = [sizes[0], sizes[sizes.length - 1]];
  const exponent = Math.log(last.pass.least / first.pass.least) / Math.log(last.triangles / first.triangles);
  return {
    own: [...sizes.flatMap((size) => size.own), valueRow('exponent of a pass, 2k to 80k', exponent, '', atMost(0.65))],
    others: sizes.flatMap((size) => size.others),
  };
}

interface MeasuredSize {
  readonly triangles: number;
  readonly pass: Timing;
  readonly own: readonly Row[];
  readonly others: readonly Row[];
}

function measureSize(answers: AllAnswers, size: Fineness): MeasuredSize {
  const mesh = meshAt(answers, HEAD, size);
  const body = bodyAt(answers, HEAD, mesh);
  const { shape } = body.trees[0];
  const rest = restFrom(body, UPRIGHT);

  // through the middle, where level water cuts the most triangles
  const [u, v] = planeAxes(UPRIGHT);
  const middle = dot(answers.links[HEAD].wetted.centre, UPRIGHT);
  const pass = timeOf(() => potentialAt(body, UPRIGHT, u, v, middle));
  const refit = timeOf(() => fitTree(shape, mesh.positions));
  const order = timeOf(() => buildTreeShape(mesh.topology, mesh.positions));

  const link = answers.links[HEAD];
  const block = displacedBlock({ spec: answers.bait.links[HEAD], wetted: { ...link.wetted, mesh } });
  const clip = createVectorClip(mesh);
  const [equilibrium, byLibrary, byVectors] = timeInTurn([
    () => restFrom(body, UPRIGHT),
    () => {
      const wet = wetPart(block, rest.up, rest.offset);
      measure(wet);
      release(wet);
    },
    () => clip(rest.up, rest.offset),
  ]);

  const wet = wetPart(block, rest.up, rest.offset);
  // outside parts are no part of any mesh
  const { displaced } = potentialAt({ ...body, outside: [] }, rest.up, ...planeAxes(rest.up), rest.offset);
  const apart = (volume: number) => Math.abs(volume / displaced - 1);
  const libraryApart = apart(measure(wet).volume);
  const vectorsApart = apart(clip(rest.up, rest.offset).volume);
  release(wet, block);

  const later = size.name === ENGINE ? laterRows(answers, body) : [];
  const triangles = mesh.topology.index.length / 3;
  const at = (what: string) => `${size.name}: ${what}`;
  const passTarget = PASS_US[size.name];
  const engine = size.name === ENGINE;
  return {
    triangles,
    pass,
    own: [
      timeRow(at(`one plane pass (${triangles} triangles)`), pass, 'µs', passTarget ? atMost(passTarget) : null),
      timeRow(at(`equilibrium from level (${rest.passes} passes)`), equilibrium, 'ms', engine ? atMost(0.1) : null),
      timeRow(at('refit of the tree'), refit, 'ms', null),
      timeRow(at('order of the tree, made once'), order, 'ms', null),
      ...later,
    ],
    others: [
      timeRow(at('manifold-3d, its passes alone'), times(byLibrary, rest.passes), 'ms', null),
      valueRow(
        at('manifold-3d over ours'),
        (byLibrary.least * rest.passes) / equilibrium.least,
        '×',
        engine ? atLeast(500) : null,
      ),
      valueRow(at('manifold-3d, wet volume apart by'), libraryApart, 'of it', null),
      timeRow(at('vector class, its passes alone'), times(byVectors, rest.passes), 'ms', null),
      valueRow(at('vector class over ours'), (byVectors.least * rest.passes) / equilibrium.least, '×', null),
      valueRow(at('vector class, wet volume apart by'), vectorsApart, 'of it', null),
    ],
  };
}

/** What follows when nobody is waiting: all ways to rest, and the arms that right it. */
function laterRows(answers: AllAnswers, body: FloatingBody): readonly Row[] {
  const coarse = bodyAt(answers, HEAD, meshAt(answers, HEAD, COARSE));
  const float = floatBody(body);
  // half as heavy and its weight on the datum: it lies on either flank, with a pass between
  const [light, lightCoarse] = [body, coarse].map((one): FloatingBody => {
    return { ...one, mass: body.mass / 2, centre: [body.centre[0], 0, 0] };
  });
  const lying = floatBody(light);
  const attitudes = timeOf(() => findAttitudes(body, coarse, float));
  const passes = timeOf(() => findAttitudes(light, lightCoarse, lying));
  const righting = timeOf(() => rightingCurve(body, float.up));
  const judged = timeOf(() => judgeAccuracy(body, coarse, float, surfaceTension(20)));
  const builds = perturbed(body);
  const rest = restFrom(body, UPRIGHT);
  const [cold, warm] = timeInTurn([
    () => builds.map((build) => restFrom(build, UPRIGHT)),
    () => builds.map((build) => restFrom(build, rest.up, rest)),
  ]);
  const ways = 1 + findAttitudes(light, lightCoarse, lying).others.length;
  const { points } = rightingCurve(body, float.up);
  // both ways over were taken; the target is for one
  const oneWay = times(righting, (180 / 5 + 1) / points.length);
  return [
    timeRow(`${ENGINE}: all resting attitudes, 162 starts`, attitudes, 'ms', atMost(30)),
    timeRow(`${ENGINE}: the same half as heavy, ${ways} of them with the humps between`, passes, 'ms', null),
    timeRow(`${ENGINE}: righting arms 0–180° by 5°`, oneWay, 'ms', atMost(3)),
    timeRow(`${ENGINE}: accuracy and film`, judged, 'ms', null),
    timeRow(
      `${ENGINE}: ${builds.length} builds a little different, each from the rest of the drawn one`,
      warm,
      'ms',
      atMost(60),
    ),
    timeRow(`${ENGINE}: the same, each from level`, cold, 'ms', null),
  ];
}

/** A thousand links as they may come out of the shop: a hundredth off in weight, its centre and the water a little too. */
function perturbed(body: FloatingBody): readonly FloatingBody[] {
  const dice = diceOf(1);
  const off = (most: number) => most * (2 * dice.share() - 1);
  return Array.from({ length: 1000 }, () => ({
    ...body,
    mass: body.mass * (1 + off(0.01)),
    centre: [body.centre[0] + off(0.3), body.centre[1] + off(0.1), body.centre[2] + off(0.2)],
    waterDensity: body.waterDensity * (1 + off(0.001)),
  }));
}

function times({ least, median }: Timing, count: number): Timing {
  return { least: least * count, median: median * count };
}
