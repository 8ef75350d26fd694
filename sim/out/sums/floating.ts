import {
  BG,
  BM,
  buoyancyCentre,
  floatingVolume,
  GM,
  hungWet,
  KB,
  KG,
  leastGM,
  restHeel,
  restTrim,
  tipAngle,
  waterMoment,
  waterMomentTotal,
  waterTotal,
} from '../../equations/floating.ts';
import { type Amount, putIn } from '../../equations/worked.ts';
import { worldAxes } from '../../frames.ts';
import { NEUTRAL_MM } from '../../hydro/float.ts';
import { dot, type Vec3 } from '../../numerics/vec3.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import { formatAngle, formatLength } from '../../units/format.ts';
import type { Weight } from './balance.ts';
import { type Block, drawn, given, worked, workedBlock } from './block.ts';
import { axesOf, momentTable, type Placed } from './moment-table.ts';
import type { Piece } from './piece.ts';
import { OVER_ALL, type WetAt, wetAt } from './wet-at.ts';

type Point = readonly [Amount, Amount, Amount];

/** B and G nearer in height than this tell no angle worth printing (mm). */
const TOO_LEVEL = 0.05;

/** How it rests: what is under water, what rights it, and the angles it comes to. */
export function floatingSums(piece: Piece, weight: Weight): readonly Block[] {
  const { float } = piece;
  if (!float.solver.converged) {
    return [
      { kind: 'words', text: 'The tool found no attitude in which it comes to rest, so there are no sums of one.' },
    ];
  }
  const wet = wetAt(piece.wet, float.up, float.offset ?? OVER_ALL);
  const V = worked('mm^3', float.displaced + float.hungDisplaced);
  const { B, blocks } = buoyancyBlocks(piece, wet, V);
  const afloat = float.offset !== null;
  const gmLong = worked('mm', float.gmLong);
  return [
    ...(afloat ? workedBlock([putIn(floatingVolume, '', { m: weight.mass, rho: piece.water }, V)]) : []),
    ...blocks,
    ...(afloat ? stiffnessBlocks(piece, weight, B, V, wet, gmLong) : underBlocks(piece, weight, B, gmLong)),
    ...restBlocks(piece, weight, B),
    ...tipBlocks(piece, weight, B, wet, gmLong),
  ];
}

function buoyancyBlocks(piece: Piece, wet: WetAt, V: Amount) {
  const { float, hung } = piece;
  const drowned = hung.map((item, i) => {
    const values = {
      v_h: worked('mm^3', item.volume),
      l: worked('mm', wet.hung[i].length),
      h: given('mm', item.hang),
    };
    return putIn(hungWet, item.name, values, worked('mm^3', wet.hung[i].volume));
  });
  const parts: readonly Placed[] = [
    { name: 'body and fixed parts', weight: float.displaced, at: float.buoyancyCentre },
    ...hung.map((item, i) => ({ name: item.name, weight: wet.hung[i].volume, at: item.eye })),
  ];
  const { table, moments } = momentTable({
    parts,
    total: V,
    symbols: ['v', 'mm^3', 'mm^4'],
    equations: { part: waterMoment, total: waterTotal, moments: waterMomentTotal },
    names: { weight: 'v', weights: 'v_i', moments: 'N_i' },
  });
  const B = [0, 1, 2].map((axis) =>
    worked('mm', parts.reduce((sum, part) => sum + part.weight * part.at[axis], 0) / V.value),
  ) as unknown as Point;
  const cases = axesOf(parts).map(({ axis, name }) =>
    putIn(buoyancyCentre, `${name} of B`, { N: moments[axis] ?? V, V }, B[axis]),
  );
  const triangles = piece.wet.meshes.reduce((sum, mesh) => sum + mesh.topology.index.length / 3, 0);
  const exact: Block = {
    kind: 'words',
    text: `The body under water is added up over the ${triangles} triangles of the drawn, coated body${piece.wet.meshes.length > piece.links.length ? ' and its fins' : ''}, slots left out: each, cut at the surface, holds a pyramid a · (b × c) / 6 with the nose tip, its middle a quarter of the way down from the base. That is exact for the drawn body and too long for paper; its sum stands in the first line of the table, where it has the place that the report calls buoyancy.`,
  };
  return {
    B,
    blocks: [...(parts[0].weight > 0 ? [exact] : []), ...workedBlock(drowned), table, ...workedBlock(cases)],
  };
}

function stiffnessBlocks(
  piece: Piece,
  weight: Weight,
  B: Point,
  V: Amount,
  wet: WetAt,
  GM_l: Amount,
): readonly Block[] {
  const { float } = piece;
  const [u_x, u_y, u_z] = float.up.map((part) => worked('1', part));
  const k = drawn('mm', (float.offset ?? 0) - (float.draft ?? 0));
  const heightOf = ([x, y, z]: Point) => ({ u_x, u_y, u_z, x, y, z, k });
  const [kb, kg] = [B, weight.centre].map((point) => worked('mm', dot(float.up, valuesOf(point)) - k.value));
  const gm = worked('mm', float.gm);
  const [across, along] = [wet.across, wet.along].map((moment) => worked('mm', moment / V.value));
  return [
    ...workedBlock([putIn(KB, '', heightOf(B), kb)]),
    ...workedBlock([putIn(KG, '', heightOf(weight.centre), kg)]),
    ...workedBlock([
      putIn(BM, 'leaning across', { I: drawn('mm^4', wet.across), V }, across),
      putIn(BM, 'leaning along', { I: drawn('mm^4', wet.along), V }, along),
    ]),
    ...workedBlock([
      putIn(GM, 'leaning across', { KB: kb, BM: across, KG: kg }, gm),
      putIn(GM, 'leaning along', { KB: kb, BM: along, KG: kg }, GM_l),
    ]),
    ...workedBlock([putIn(leastGM, '', { GM: gm, GM_l, J: drawn('mm^4', wet.mixed), V }, worked('mm', float.gmMin))]),
  ];
}

function underBlocks(piece: Piece, weight: Weight, [x_B, y_B, z_B]: Point, bg: Amount): readonly Block[] {
  const [x_G, y_G, z_G] = weight.centre;
  const blocks = workedBlock([putIn(BG, '', { x_B, x_G, y_B, y_G, z_B, z_G }, bg)]);
  if (piece.float.gmMin >= NEUTRAL_MM) return blocks;
  return [...blocks, { kind: 'words', text: 'B and G lie in one place: it has no preferred way up, and no angles.' }];
}

/** The angles follow from B and G where these stand clearly one over the other. */
function restBlocks({ float }: Piece, weight: Weight, B: Point): readonly Block[] {
  const [x_B, y_B, z_B] = B;
  const [x_G, y_G, z_G] = weight.centre;
  const apart = Math.abs(z_B.value - z_G.value);
  const told = `trim ${formatAngle(float.trim)} nose-down, heel ${formatAngle(float.heel)} starboard down`;
  if (apart < TOO_LEVEL || Math.abs(Math.cos(float.heel)) < 0.2 || float.gmMin < NEUTRAL_MM) {
    return [{ kind: 'words', text: `The tool finds ${told}; B and G say too little for a sum of it.` }];
  }
  const heel = worked('deg', degreeFromRadian(float.heel));
  const trim = worked('deg', degreeFromRadian(float.trim));
  const upright = Math.abs(float.heel) < Math.PI / 2;
  return [
    ...(upright ? workedBlock([putIn(restHeel, '', { y_B, y_G, z_B, z_G }, heel)]) : []),
    ...workedBlock([putIn(restTrim, '', { x_B, x_G, z_B, z_G, heel }, trim)]),
  ];
}

/** What each hanging part alone tips it by. */
function tipBlocks(piece: Piece, weight: Weight, B: Point, wet: WetAt, R: Amount): readonly Block[] {
  const { float, hung, water } = piece;
  if (R.value < TOO_LEVEL) return [];
  const { along } = worldAxes(float.up);
  const middle = wet.middle ?? dot(valuesOf(B), along);
  const cases = hung.map((item, i) => {
    const w = worked('g', item.mass - water.value * wet.hung[i].volume);
    const d = drawn('mm', middle - dot(item.eye, along));
    const tip = Math.atan((w.value * d.value) / (float.mass * R.value));
    return putIn(tipAngle, item.name, { w, d, m: weight.mass, R }, worked('deg', degreeFromRadian(tip)));
  });
  if (cases.length === 0) return [];
  const about =
    wet.middle === null
      ? 'Under water it tips about B'
      : `Afloat it tips about the middle of the waterplane, ${formatLength(wet.middle)} along the level from the nose tip`;
  return [...workedBlock(cases), { kind: 'words', text: `${about}.` }];
}

function valuesOf([x, y, z]: Point): Vec3 {
  return [x.value, y.value, z.value];
}
