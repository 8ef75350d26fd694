import {
  countsFor,
  gravityCentre,
  hungShare,
  leadShare,
  massTotal,
  momentTotal,
  netTotal,
  partMoment,
  partShare,
  reserve,
} from '../../equations/balance.ts';
import { type Amount, type Case, putIn } from '../../equations/worked.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import { addUp, type Block, densityOf, drawn, given, inColumn, worked, workedBlock } from './block.ts';
import { displacedBy, woodTaken } from './displaced.ts';
import { axesOf, momentTable, type Placed } from './moment-table.ts';
import type { Piece } from './piece.ts';
import { OVER_ALL, wetAt } from './wet-at.ts';

/** Mass of everything and the place of G, as other sums of the page use them. */
export interface Weight {
  readonly mass: Amount;
  /** x, y, z. */
  readonly centre: readonly [Amount, Amount, Amount];
  readonly blocks: readonly Block[];
}

/** The ledger as a table of moments: every part of a link, or every link of the bait, and what hangs. */
export function ledgerSums(piece: Piece): Weight {
  const { float, hung, links } = piece;
  const [single] = links;
  const fixed: readonly Placed[] =
    links.length === 1 && single
      ? single.ledger.lines.map((line) => ({ name: line.name, weight: line.mass, at: line.at }))
      : links.map(({ spec, ledger }) => ({ name: `link ${spec.name}`, weight: ledger.mass, at: ledger.centre }));
  const parts = [...fixed, ...hung.map((item) => ({ name: item.name, weight: item.mass, at: item.eye }))];
  const mass = worked('g', float.mass);
  const { table, moments } = momentTable({
    parts,
    total: mass,
    symbols: ['m', 'g', 'g mm'],
    equations: { part: partMoment, total: massTotal, moments: momentTotal },
    names: { weight: 'm', weights: 'm_i', moments: 'M_i' },
  });
  const centre = float.gravityCentre.map((place) => worked('mm', place)) as unknown as Weight['centre'];
  const cases = axesOf(parts).map(({ axis, name }) =>
    putIn(gravityCentre, `${name} of G`, { M: moments[axis] ?? mass, m: mass }, centre[axis]),
  );
  return { mass, centre, blocks: [table, ...workedBlock(cases)] };
}

/** What every part of a link counts for in water, and the shares that lead and hooks count for. */
export function countSums(bait: CheckedBait, link: CheckedLink, piece: Piece): readonly Block[] {
  const density = piece.wood[link.spec.index];
  const rho_w = given('g/mm^3', density);
  const rho = piece.water;
  const [masses, outs, ins, counts, shares] = [{}, {}, {}, {}, {}];
  const taken = addUp(woodTaken(bait.hardware, link.spec.index));
  const parts = [
    ...link.ledger.lines.map((line) =>
      line.kind === 'wood'
        ? { name: 'bare, nothing drilled', mass: line.mass + density * taken, out: link.solid.volume, in: 0 }
        : { name: line.name, mass: line.mass, ...displacedBy(line, link, bait.hardware) },
    ),
    ...piece.hung.map((item) => ({ name: item.name, mass: item.mass, out: item.volume, in: 0 })),
  ];
  const net = worked('g', piece.float.netWet);
  const cases: Case[] = [];
  const rows = parts.map((part) => {
    const m = inColumn(masses, 'g', part.mass);
    const v_out = inColumn(outs, 'mm^3', part.out);
    const v_in = inColumn(ins, 'mm^3', part.in);
    const w = inColumn(counts, 'g', part.mass - rho.value * part.out - density * part.in);
    cases.push(putIn(countsFor, part.name, { m, rho, v_out, rho_w, v_in }, w));
    if (!(part.mass > 0) || w.value < 0) return { name: part.name, cells: [m, v_out, v_in, w, null], w };
    const k = inColumn(shares, '1', w.value / part.mass);
    cases.push(putIn(partShare, part.name, { w, m }, k));
    return { name: part.name, cells: [m, v_out, v_in, w, k], w };
  });
  cases.push(putIn(netTotal, 'all parts', { w_i: rows.map(({ w }) => w) }, net));
  const table: Block = {
    kind: 'table',
    equations: [countsFor, partShare, netTotal],
    constants: [
      ['rho', rho],
      ['rho_w', rho_w],
    ],
    heads: ['m', 'v_out', 'v_in', 'w', 'w / m'],
    rows,
    sums: [null, null, null, net, null],
    cases,
  };
  const leads = piece.holes.flatMap((hole) => {
    const stock = hole.hole.lead?.stock;
    if (!stock) return [];
    const k = worked('1', (stock.density - density) / stock.density);
    return [putIn(leadShare, stock.name, { rho_l: given('g/mm^3', stock.density), rho_w }, k)];
  });
  const hooks = piece.hung.map((item) => {
    const rho_h = densityOf(item.mass / item.volume);
    return putIn(hungShare, item.name, { rho_h, rho }, worked('1', 1 - (rho.value * item.volume) / item.mass));
  });
  return [table, ...workedBlock(leads), ...workedBlock(hooks)];
}

/** What it could still carry. */
export function reserveSums(piece: Piece, mass: Amount): readonly Block[] {
  const under = wetAt(piece.wet, piece.float.up, OVER_ALL);
  const V_all = drawn('mm^3', under.volume + addUp(under.hung.map(({ volume }) => volume)));
  const r = worked('g', -piece.float.netWet);
  return workedBlock([putIn(reserve, '', { rho: piece.water, V_all, m: mass }, r)]);
}
