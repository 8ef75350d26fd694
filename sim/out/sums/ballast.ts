import { leadShare } from '../../equations/balance.ts';
import {
  ballastNet,
  ballastStation,
  ballastSum,
  ballastWanted,
  chamberNet,
  leadMore,
  lineMass,
  netMass,
  restMass,
  restStation,
} from '../../equations/ballast.ts';
import { type Amount, type Case, putIn } from '../../equations/worked.ts';
import { trimOf, worldAxes } from '../../frames.ts';
import type { PlacedHole } from '../../mass/placed.ts';
import { add, dot, scale, type Vec3 } from '../../numerics/vec3.ts';
import { formatAngle, formatLength, formatMass } from '../../units/format.ts';
import type { Weight } from './balance.ts';
import { addUp, type Block, densityOf, drawn, given, worked, workedBlock } from './block.ts';
import type { Piece } from './piece.ts';
import { OVER_ALL, wetAt } from './wet-at.ts';

/** Less ballast than a kitchen scale shows has no station. */
const LEAST = 0.1;

/** The ballast it has, the ballast that its target asks for, and where that should stand. */
export function ballastSums(piece: Piece, weight: Weight): readonly Block[] {
  const { aim, holes } = piece;
  if (aim === undefined) return [];
  const brought = holes.map((hole) => broughtBy(hole, piece.wood[hole.link]));
  const n = worked('g', addUp(brought.map(({ net }) => net.value)));
  const m_r = worked('g', weight.mass.value - n.value);
  const wanted = wantedMass(piece);
  const n_a = worked('g', wanted.mass.value - m_r.value);
  return [
    { kind: 'words', text: wanted.words },
    ...workedBlock(brought.map((each) => each.sum)),
    ...workedBlock(holes.length > 0 ? [putIn(ballastSum, '', { n_i: brought.map(({ net }) => net) }, n)] : []),
    ...workedBlock([wanted.sum]),
    ...workedBlock([putIn(restMass, '', { m: weight.mass, n }, m_r)]),
    ...workedBlock([putIn(ballastWanted, '', { m_a: wanted.mass, m_r }, n_a)]),
    ...leadBlocks(piece, n, n_a),
    ...stationBlocks(piece, weight, { n, m_r, n_a, wanted, at: scale(moment(brought), 1 / (n.value || 1)) }),
  ];
}

interface Brought {
  readonly net: Amount;
  readonly moment: Vec3;
  readonly sum: Case;
}

/** Mass a hole brings against the wood that was there, and its moment. */
function broughtBy({ name, hole, lead, plug, air, volume, centre }: PlacedHole, wood: number): Brought {
  const leadMass = lead?.mass ?? 0;
  const net = worked('g', leadMass + plug.mass - wood * volume);
  const both = {
    rho_w: given('g/mm^3', wood),
    rho_p: densityOf(hole.plugDensity),
    v_p: worked('mm^3', plug.volume),
  };
  const filled = add(scale(lead?.centre ?? centre, leadMass), scale(plug.centre, plug.mass));
  return {
    net,
    moment: add(filled, scale(centre, -wood * volume)),
    sum: air
      ? putIn(chamberNet, name, { ...both, v_a: worked('mm^3', air.volume) }, net)
      : putIn(
          ballastNet,
          name,
          {
            ...both,
            rho_l: given('g/mm^3', hole.lead?.stock.density ?? 0, hole.lead ? undefined : 'none'),
            v_l: worked('mm^3', lead?.volume ?? 0),
          },
          net,
        ),
  };
}

interface Wanted {
  readonly mass: Amount;
  readonly centre: Vec3;
  readonly sum: Case;
  readonly words: string;
}

/** The mass that the target comes to, and the centre of buoyancy that goes with it. */
function wantedMass(piece: Piece): Wanted {
  const { aim, wet, water } = piece;
  const up = aim?.up ?? [0, 0, 1];
  const offset = aim?.offset ?? null;
  const under = wetAt(wet, up, offset ?? OVER_ALL);
  const volume = under.volume + addUp(under.hung.map((each) => each.volume));
  const lifts = wet.hung.reduce<Vec3>(
    (sum, item, i) => add(sum, scale(item.eye, under.hung[i].volume)),
    scale(under.centre, under.volume),
  );
  const V = drawn('mm^3', volume);
  const centre = scale(lifts, 1 / volume);
  if (offset !== null) {
    const mass = worked('g', water.value * volume);
    const trim = up[0] === 0 ? 'level' : `at the nose tip, with a trim of ${formatAngle(trimOf(up))} nose-down`;
    return {
      mass,
      centre,
      sum: putIn(lineMass, '', { rho: water, V_a: V }, mass),
      words: `Wanted: the waterline at z = ${formatLength(offset / up[2])}, ${trim}.`,
    };
  }
  const net = aim?.netWet ?? 0;
  const mass = worked('g', water.value * volume + net);
  const drag = aim?.drag;
  return {
    mass,
    // in the fall drag bears what buoyancy does not: the two together act here
    centre: drag ? scale(add(scale(lifts, water.value), scale(drag, net)), 1 / mass.value) : centre,
    sum: putIn(netMass, '', { rho: water, V_all: V, w_a: given('g', net, 'from the target') }, mass),
    words: `Wanted: a net weight of ${formatMass(net, 'g', { digits: 2, signed: true })} with everything under water${drag ? dragWords(drag) : ''}.`,
  };
}

/** What a sinking speed wants is level in its fall. */
function dragWords(drag: Vec3): string {
  return `, for its sinking speed; level as it falls, so that x_B is where buoyancy and the drag of that weight, at ${formatLength(drag[0])}, act together`;
}

function leadBlocks(piece: Piece, n: Amount, n_a: Amount): readonly Block[] {
  const leaded = piece.holes.find((hole) => hole.hole.lead !== null);
  if (leaded?.hole.lead === undefined || leaded.hole.lead === null) return [];
  const { stock } = leaded.hole.lead;
  const wood = piece.wood[leaded.link];
  const k = worked('1', (stock.density - wood) / stock.density);
  const more = worked('g', (n_a.value - n.value) / k.value);
  const values = { rho_l: given('g/mm^3', stock.density), rho_w: given('g/mm^3', wood) };
  return [
    ...workedBlock([putIn(leadShare, stock.name, values, k)]),
    ...workedBlock([putIn(leadMore, stock.name, { n_a, n, k }, more)]),
  ];
}

interface Shares {
  readonly n: Amount;
  readonly m_r: Amount;
  readonly n_a: Amount;
  readonly wanted: Wanted;
  /** Where the ballast stands now. */
  readonly at: Vec3;
}

function stationBlocks(piece: Piece, weight: Weight, { n, m_r, n_a, wanted, at }: Shares): readonly Block[] {
  if (n_a.value < LEAST) {
    return [{ kind: 'words', text: 'No ballast to speak of is wanted here, so it has no station.' }];
  }
  const { along } = worldAxes(piece.aim?.up ?? [0, 0, 1]);
  // held level, a station is an x
  const x_G = along[0] === 1 ? weight.centre[0] : worked('mm', dot(piece.float.gravityCentre, along));
  const x_n = worked('mm', dot(at, along));
  const x_r = worked('mm', (weight.mass.value * x_G.value - n.value * x_n.value) / m_r.value);
  const x_B = drawn('mm', dot(wanted.centre, along));
  const x_a = worked('mm', (wanted.mass.value * x_B.value - m_r.value * x_r.value) / n_a.value);
  return [
    ...workedBlock([putIn(restStation, '', { m: weight.mass, x_G, n, x_n, m_r }, x_r)]),
    ...workedBlock([putIn(ballastStation, '', { m_a: wanted.mass, x_B, m_r, x_r, n_a }, x_a)]),
    ...(n.value < LEAST ? [] : [{ kind: 'words', text: `It stands at ${formatLength(x_n.value)} now.` } as const]),
  ];
}

function moment(brought: readonly Brought[]): Vec3 {
  return brought.reduce<Vec3>((sum, each) => add(sum, each.moment), [0, 0, 0]);
}
