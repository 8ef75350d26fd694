import type { Coat } from '../../design/design.ts';
import type { Equation } from '../../equations/equation.ts';
import {
  eyeMass,
  eyeOutside,
  filmMass,
  finMass,
  massVolume,
  pinMass,
  plugMass,
  pointHeight,
  pointVolume,
  pouredMass,
  pouredPoint,
  roundVolume,
  slugMass,
  soakArea,
  soakShare,
  woodMass,
  woodOut,
} from '../../equations/parts.ts';
import { type Case, putIn } from '../../equations/worked.ts';
import type { PlacedEye, PlacedFin, PlacedHung, PlacedPin } from '../../mass/placed.ts';
import { citationText } from '../../sources/cite.ts';
import { STEEL } from '../../tables/metals.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import { addUp, type Block, densityOf, drawn, given, worked, workedBlock } from './block.ts';
import { type Filled, fillOf, woodTaken } from './displaced.ts';
import type { Piece } from './piece.ts';

/** What each part of a link weighs, from its sizes. */
export function partSums(bait: CheckedBait, link: CheckedLink, piece: Piece): readonly Block[] {
  const own = <Item extends { readonly link: number }>(items: readonly Item[]) =>
    items.filter((item) => item.link === link.spec.index);
  const eyes = own(bait.hardware.eyes);
  const pins = own(bait.hardware.pins);
  const filled = piece.holes.map(fillOf);
  return [
    ...woodBlocks(bait, link, piece),
    ...coatBlocks(bait.setup.coats, link),
    ...eyeBlocks(eyes),
    ...workedBlock(pins.map((pin) => pinCase(pin, link))),
    ...workedBlock([...eyes.map(shankCase), ...pins.flatMap(runCases)]),
    ...holeBlocks(filled),
    ...workedBlock([...filled.flatMap((each) => leadVolumeCase(each) ?? []), ...piece.hung.map(hungCase)]),
    ...workedBlock(filled.map(plugCase)),
    ...workedBlock(own(bait.hardware.fins).map(finCase)),
  ];
}

function woodBlocks(bait: CheckedBait, link: CheckedLink, piece: Piece): readonly Block[] {
  const wood = link.ledger.lines.find((line) => line.kind === 'wood');
  if (wood === undefined) return [];
  const taken = woodTaken(bait.hardware, link.spec.index);
  const v_in = worked('mm^3', addUp(taken));
  const rho_w = given('g/mm^3', piece.wood[link.spec.index], wood.source.split(',')[0]);
  const v = drawn('mm^3', link.solid.volume);
  const m = worked('g', wood.mass);
  const out = taken.length === 0 ? [] : [putIn(woodOut, '', { v_i: taken.map((each) => worked('mm^3', each)) }, v_in)];
  return [...workedBlock(out), ...workedBlock([putIn(woodMass, wood.name, { rho_w, v, v_in }, m)])];
}

function coatBlocks(coats: readonly Coat[], link: CheckedLink): readonly Block[] {
  const wood = link.ledger.lines.find((line) => line.kind === 'wood');
  const lines = link.ledger.lines.filter(({ kind }) => kind === 'soak' || kind === 'coat');
  const films = coats.filter((coat) => coat.kind === 'film');
  const cases = coats.map((coat, i): Case => {
    const m = worked('g', lines[i].mass);
    if (coat.kind === 'soak-share') {
      const m_w = worked('g', wood?.mass ?? 0);
      return putIn(soakShare, coat.name, { s: given('1', coat.share), m_w }, m);
    }
    if (coat.kind === 'soak-area') {
      return putIn(soakArea, coat.name, { q: given('g/mm^2', coat.perArea), A_w: drawn('mm^2', link.solid.area) }, m);
    }
    const v_c = drawn('mm^3', link.wetted.films[films.indexOf(coat)].volume);
    return putIn(filmMass, coat.name, { rho_c: given('g/mm^3', coat.density), v_c }, m);
  });
  return ofEach([soakShare, soakArea, filmMass], cases);
}

/** A block for each equation that has cases. */
function ofEach(equations: readonly Equation[], cases: readonly Case[]): readonly Block[] {
  return equations.flatMap((equation) => workedBlock(cases.filter((each) => each.equation === equation)));
}

function eyeBlocks(eyes: readonly PlacedEye[]): readonly Block[] {
  const weighed = eyes.filter((eye) => eye.weighed).map((eye) => eye.name);
  const rho_m = given('g/mm^3', STEEL.value, `assumed: ${citationText(STEEL)}`);
  const sizes = (eye: PlacedEye) => ({
    w: given('mm', eye.wire),
    b: given('mm', eye.bore),
    n: drawn('mm', eye.neck),
  });
  const masses = eyes
    .filter((eye) => !eye.weighed)
    .map((eye) => putIn(eyeMass, eye.name, { rho_m, ...sizes(eye), s: given('mm', eye.shank) }, worked('g', eye.mass)));
  const outside = eyes.map((eye) => putIn(eyeOutside, eye.name, sizes(eye), worked('mm^3', eye.outsideVolume)));
  const words: readonly Block[] =
    weighed.length === 0 ? [] : [{ kind: 'words', text: `Weighed by the maker: ${weighed.join('; ')}.` }];
  return [...workedBlock(masses), ...words, ...workedBlock(outside)];
}

function shankCase(eye: PlacedEye): Case {
  const values = { d: given('mm', eye.wire), l: given('mm', eye.shank) };
  return putIn(roundVolume, `shank of ${eye.name}`, values, worked('mm^3', eye.shankVolume));
}

function pinCase(pin: PlacedPin, { ledger }: CheckedLink): Case {
  const l = pin.z[1] - pin.z[0];
  const line = ledger.lines.find(({ kind, name }) => kind === 'pin' && name === pin.name);
  const values = { rho_m: densityOf(pin.density), d: given('mm', pin.diameter), l: given('mm', l) };
  return putIn(pinMass, pin.name, values, worked('g', line?.mass ?? 0));
}

/** Wet runs of a pin and runs in its bore, each kind together. */
function runCases(pin: PlacedPin): readonly Case[] {
  const section = (Math.PI / 4) * pin.diameter ** 2;
  const kinds = [
    [`${pin.name}, in the water`, pin.wet],
    [`${pin.name}, in its bore`, pin.bored],
  ] as const;
  return kinds.flatMap(([label, runs]) => {
    const l = addUp(runs.map(([from, to]) => to - from));
    if (l === 0) return [];
    const values = { d: given('mm', pin.diameter), l: drawn('mm', l) };
    return [putIn(roundVolume, label, values, worked('mm^3', l * section))];
  });
}

function holeBlocks(filled: readonly Filled[]): readonly Block[] {
  const points = filled.flatMap(({ hole, point, pointHeight: p }) => {
    if (hole.pointDepth === 0) return [];
    const d = given('mm', hole.diameter);
    const alpha = given('deg', degreeFromRadian(hole.hole.point));
    return [putIn(pointHeight, hole.name, { d, alpha }, p), putIn(pointVolume, hole.name, { d, p }, point)];
  });
  const leads = filled.flatMap((each) => leadCase(each) ?? []);
  return ofEach([pointHeight, pointVolume, slugMass, pouredMass, pouredPoint], [...points, ...leads]);
}

function leadVolumeCase({ hole, leadVolume }: Filled): Case | null {
  if (!leadVolume || !hole.hole.lead) return null;
  const { stock, mass } = hole.hole.lead;
  return putIn(massVolume, hole.name, { m: given('g', mass), rho_i: given('g/mm^3', stock.density) }, leadVolume);
}

function plugCase({ hole, leadVolume }: Filled): Case {
  const values = {
    rho_p: densityOf(hole.hole.plugDensity),
    v_h: drawn('mm^3', hole.volume),
    v_l: leadVolume ?? (hole.air ? worked('mm^3', hole.air.volume) : given('mm^3', 0, 'none')),
  };
  return putIn(plugMass, `${hole.name}, plug`, values, worked('g', hole.plug.mass));
}

function finCase({ name, density, outsideVolume, tab }: PlacedFin): Case {
  const inside = tab?.volume ?? 0;
  const values = {
    rho_f: given('g/mm^3', density),
    v_f: drawn('mm^3', outsideVolume),
    v_t: tab ? drawn('mm^3', inside) : given('mm^3', 0, 'none'),
  };
  return putIn(finMass, name, values, worked('g', density * (outsideVolume + inside)));
}

/** How high the lead stands: worked out from its mass, so this sum reads back what was given. */
function leadCase({ hole, point, pointHeight: p }: Filled): Case | null {
  const { lead } = hole;
  if (!lead || !hole.hole.lead) return null;
  const m = given('g', lead.mass);
  const rho_l = given('g/mm^3', hole.hole.lead.stock.density);
  if (!lead.fillsPoint) {
    const values = { rho_l, d: given('mm', lead.diameter), h: worked('mm', lead.to - lead.from) };
    return putIn(slugMass, hole.name, values, m);
  }
  if (lead.from >= hole.depth) {
    return putIn(pouredPoint, hole.name, { rho_l, v_p: point, h: worked('mm', lead.to - lead.from), p }, m);
  }
  const h = worked('mm', hole.depth - lead.from);
  return putIn(pouredMass, hole.name, { rho_l, v_p: point, d: given('mm', hole.diameter), h }, m);
}

function hungCase(item: PlacedHung): Case {
  const rho_i = densityOf(item.mass / item.volume);
  return putIn(massVolume, item.name, { m: given('g', item.mass), rho_i }, worked('mm^3', item.volume));
}
