import { restFrom } from '../../sim/hydro/equilibrium.ts';
import { planeAxes, potentialAt } from '../../sim/hydro/potential.ts';
import { buildTreeShape, fitTree } from '../../sim/hydro/tree.ts';
import { dot, type Vec3 } from '../../sim/numerics/vec3.ts';
import { displacedBlock } from '../reference/manifold/displaced.ts';
import { measure, release, wetPart } from '../reference/manifold/solids.ts';
import type { AllAnswers } from '../support/worked-bait.ts';
import { bodyAt, ENGINE, type Fineness, meshAt, SIZES } from './demo.ts';
import { atLeast, atMost, type Row, timeRow, valueRow } from './rows.ts';
import { type Timing, timeInTurn, timeOf } from './timing.ts';
import { createVectorClip } from './vector-clip.ts';

/** The head: tip, bevelled face, two slots, line tie and a hook hung. */
const HEAD = 0;
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
  const block = displacedBlock({
    ...link,
    spec: answers.bait.links[HEAD],
    wetted: { ...link.wetted, mesh },
    hung: body.hung,
  });
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

function times({ least, median }: Timing, count: number): Timing {
  return { least: least * count, median: median * count };
}
