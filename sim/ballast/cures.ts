import type { Design, Hung, LeadStock, Setup, Shop } from '../design/design.ts';
import { type ProposedEdit, shifted } from '../design/edit.ts';
import type { DesignFile, LeadEntry } from '../design/file.ts';
import { isWithin, rangeAt } from '../design/ranges.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import { draftAt } from '../hydro/draft.ts';
import { METALS } from '../tables/metals.ts';
import type { Gram, Mm } from '../units/brand.ts';
import { degreeFromRadian, gramPerCm3FromGramPerMm3, gramPerMm3FromGramPerCm3 } from '../units/convert.ts';
import { formatDensity, formatLength, formatMass } from '../units/format.ts';
import { type BaitParts, keptLedger, type LinkParts, type LinkPlan, type Obstacle } from './plan.ts';

/** What kind of change it is; no two of one kind are offered for a link. */
export type CureKind =
  | 'empty-shop'
  | 'waterline'
  | 'hook'
  | 'hanger'
  | 'wall'
  | 'drills'
  | 'metal'
  | 'wood'
  | 'joint'
  | 'chamber'
  | 'neighbour';

/** A change that may let a link be ballasted to its aim. Of one kind the first that does is offered. */
export interface CureTrial {
  readonly kind: CureKind;
  readonly edit: ProposedEdit;
  /** What the change makes of the shop's lists; null: it changes the bait itself. */
  readonly shop: Shop | null;
}

export interface CureParts {
  readonly file: DesignFile;
  readonly design: Design;
  readonly setup: Setup;
  readonly bait: BaitParts;
  readonly link: LinkParts;
  readonly plan: LinkPlan;
}

/** Hooks are listed to a tenth of a gram. */
const HOOK_G: Gram = 0.1;
const SHIFT_MM: Mm = 1;
/** So far past the least that is needed, so that rounding does not undo it. */
const SPARE_G: Gram = 0.3;

/**
 * Changes that could cure what stands in a link's way, the least trouble first, sized by closed formulas. Whether they
 * do is for the whole recipe to say.
 */
export function cureTrials(parts: CureParts): readonly CureTrial[] {
  const { why } = parts.plan;
  if (why === null) return [];
  if (why.kind === 'empty-shop') return shopTrials(parts);
  const trials = [
    ...hangerTrials(parts),
    ...hookTrials(parts),
    ...waterlineTrials(parts),
    ...wallTrials(parts),
    ...drillTrials(parts),
    ...metalTrials(parts),
    ...jointTrials(parts),
    ...woodTrials(parts),
  ];
  return trials.filter(({ edit }) => edit.sets.every(({ path, value }) => inRange(path, value)));
}

function inRange(path: string, value: unknown): boolean {
  const range = rangeAt(path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key)));
  return range === null || typeof value !== 'number' || isWithin(value, range);
}

function trial(kind: CureKind, says: string, sets: ProposedEdit['sets'], shop: Shop | null = null): CureTrial {
  return { kind, edit: { says, sets }, shop };
}

/** The nearest place along the link at which its ballast could stand. */
function reachable(why: Obstacle, { place, need }: LinkPlan, { spec }: LinkParts): Mm {
  if (why.kind === 'outside') return Math.min(Math.max(why.x, why.from), why.to);
  const middle = (spec.span[0] + spec.span[1]) / 2;
  return place === null || need.net <= 0 ? middle : place[0];
}

/** Weight of a hung item in the water, as it counts at its eye when it hangs wholly wet. */
function wetWeight({ mass, density }: Pick<Hung, 'mass' | 'density'>, water: number): Gram {
  return mass * (1 - water / density);
}

/** What hangs from this link, with its number in the setup and its hanger. */
function hungOf({ design, setup, link }: CureParts) {
  return setup.hung.flatMap((item, index) => {
    if (!link.hung.some(({ name }) => name === item.name)) return [];
    const hanger = design.hangers.findIndex(({ name }) => name === item.from);
    return [{ item, index, hanger }];
  });
}

/** Moved by what brings the place of the ballast into the link: w δ = N (x - x_c). */
function hangerTrials(parts: CureParts): readonly CureTrial[] {
  const { plan, link, design, file, bait } = parts;
  const { why, place, need } = plan;
  if (why === null || place === null || need.net <= 0) return [];
  const off = need.net * (place[0] - reachable(why, plan, link));
  return hungOf(parts).flatMap(({ item, hanger }) => {
    const stands = design.hangers[hanger];
    const written = file.hangers[hanger]?.x_mm;
    if (written === undefined || (stands.on !== 'belly' && stands.on !== 'back')) return [];
    const exact = off / wetWeight(item, bait.water.density);
    const [from, to] = link.spec.span;
    return [0, 1, 2].flatMap((more) => {
      const by = Math.sign(exact) * (Math.ceil(Math.abs(exact) / SHIFT_MM) + more) * SHIFT_MM;
      const x = stands.at + by;
      if (by === 0 || x < from + 3 || x > to - 3) return [];
      const says = `move "${stands.name}" ${formatLength(Math.abs(by), 'mm', { digits: 0 })} ${by > 0 ? 'aft' : 'forward'}`;
      return [trial('hanger', says, [{ path: `hangers.${hanger}.x_mm`, value: shifted(written, by) }])];
    });
  });
}

/** Lighter by q at its eye E, so that the place comes to x_c: q (E - x_c) = N (x_c - x); or by what is over weight. */
function hookTrials(parts: CureParts): readonly CureTrial[] {
  const { plan, link, bait, design, setup } = parts;
  const { why, place, need } = plan;
  if (why === null) return [];
  const setupIndex = design.setups.findIndex(({ name }) => name === setup.name);
  const wantedX = reachable(why, plan, link);
  return hungOf(parts).flatMap(({ item, index }) => {
    const eye = link.hung.find(({ name }) => name === item.name)?.eye[0] ?? 0;
    const tooMuch =
      need.net <= 0 ? SPARE_G - need.net : place === null ? 0 : (need.net * (wantedX - place[0])) / (eye - wantedX);
    const less = tooMuch / (wetWeight(item, bait.water.density) / item.mass);
    const mass = Math.floor((item.mass - less) / HOOK_G + 1e-9) * HOOK_G;
    // less than a third of it is another bait
    if (!(less > 0) || mass < item.mass / 3) return [];
    const says = `hang a lighter "${item.name}": ${formatMass(mass)} for ${formatMass(item.mass)}`;
    return [trial('hook', says, [{ path: `setups.${setupIndex}.hung.${index}.mass_g`, value: tidy(mass) }])];
  });
}

/** Over weight it may ride lower; short of room it may ride higher, and wants less lead. */
function waterlineTrials(parts: CureParts): readonly CureTrial[] {
  const { plan, setup, design, link } = parts;
  const { why, need } = plan;
  if (why === null) return [];
  const path = `setups.${design.setups.findIndex(({ name }) => name === setup.name)}.`;
  const own = setup.linkTargets[link.spec.name];
  const target = own ?? setup.target;
  const place = own ? `${path}link_targets.${link.spec.name}` : `${path}target`;
  if (why.kind === 'too-heavy' && link.aim.offset === null) {
    const net = Math.ceil((link.aim.netWet ?? 0) * 10 + (SPARE_G - need.net) * 10) / 10;
    const says = `let ${link.spec.name} be ${formatMass(net, 'g', { signed: true })} in the water`;
    const wanted = { net_wet_g: tidy(net), ...trimOf(setup.target.trim) };
    return [trial('waterline', says, [{ path: `${path}link_targets.${link.spec.name}`, value: wanted }])];
  }
  if (why.kind !== 'too-heavy' && why.kind !== 'no-room') return [];
  const mores =
    why.kind === 'too-heavy' ? sparesOf(parts).map((spare) => spare - need.net) : [why.most * 0.97 - why.wanted];
  return mores.flatMap((more): readonly CureTrial[] => {
    const lower = lowerBy(parts, more);
    if (lower === null) return [];
    // half millimetres, rounded so that it rides low enough, or high enough
    const by = why.kind === 'too-heavy' ? Math.ceil(lower * 2) / 2 : Math.floor(lower * 2) / 2;
    const says = `let it ride ${formatLength(Math.abs(by))} ${by > 0 ? 'lower' : 'higher'}`;
    if (target.kind === 'proud') {
      return [trial('waterline', says, [{ path: `${place}.proud_mm`, value: tidy(target.proud - by) }])];
    }
    if (target.kind !== 'waterline') return [];
    return [trial('waterline', says, [{ path: `${place}.waterline_z_mm`, value: tidy(target.z + by) }])];
  });
}

/** How much lead a cure leaves room for: hardly any, or enough to level a link with. */
function sparesOf({ bait, link }: CureParts): readonly Gram[] {
  const { mass } = keptLedger(bait, link);
  return [SPARE_G, 0.05 * mass, 0.15 * mass, 0.3 * mass];
}

function trimOf(trim: number): { readonly trim_deg?: number } {
  return trim === 0 ? {} : { trim_deg: tidy(degreeFromRadian(trim)) };
}

/** How much deeper the link lies when it weighs so much more than its aim; null where it has no waterline. */
function lowerBy({ bait, link, plan }: CureParts, more: Gram): Mm | null {
  const { offset } = link.aim;
  if (offset === null) return null;
  const body = bodyOf([link.trees], [keptLedger(bait, link)], link.hung, bait.water);
  const { up, along, across, net } = plan.need;
  const loaded = { ...body, mass: body.mass + net + more };
  return draftAt(loaded, up, along, across, offset, 1e-6).offset - offset;
}

const WALLS_MM: readonly Mm[] = [2.5, 2, 1.5, 1];

function wallTrials({ plan, bait: { shop }, file }: CureParts): readonly CureTrial[] {
  if (plan.why?.kind !== 'no-room' && plan.why?.kind !== 'not-level' && plan.why?.kind !== 'outside') return [];
  return WALLS_MM.filter((wall) => wall < shop.wall).map((wall) => {
    const says = `leave ${formatLength(wall)} of wood round lead, for ${formatLength(shop.wall)}`;
    return trial('wall', says, [{ path: 'shop', value: { ...file.shop, wall_mm: wall } }], { ...shop, wall });
  });
}

/** Tungsten as thick as the stock there is, thickest first. */
function metalTrials({ plan, bait: { shop }, file }: CureParts): readonly CureTrial[] {
  if (plan.why?.kind !== 'no-room' && plan.why?.kind !== 'not-level') return [];
  const density = METALS.tungsten.value;
  const isLighter = (stock: LeadStock) => stock.density < 0.95 * density;
  const names = new Set(shop.lead.map(({ name }) => name));
  return shop.lead
    .filter((stock) => stock.kind === 'slug' && isLighter(stock))
    .toSorted((a, b) => diameterOf(b) - diameterOf(a))
    .slice(0, 2)
    .flatMap((rod) => {
      const diameter = diameterOf(rod);
      const name = `tungsten rod, ${formatLength(diameter)}`;
      if (names.has(name)) return [];
      const entry: LeadEntry = {
        name,
        kind: 'slug',
        diameter_mm: tidy(diameter),
        density_g_cm3: tidy(gramPerCm3FromGramPerMm3(density)),
      };
      const says = `take tungsten, ${formatDensity(density)}, for lead: rod of ${formatLength(diameter)}`;
      const lead = [...shop.lead, { name, kind: 'slug', diameter, density } as const];
      const written = { ...file.shop, lead: [...(file.shop?.lead ?? []), entry] };
      return [trial('metal', says, [{ path: 'shop', value: written }], { ...shop, lead })];
    });
}

function diameterOf(stock: LeadStock): Mm {
  return stock.kind === 'slug' ? stock.diameter : 0;
}

/** A longer link carries more, and its middle lies elsewhere. With its pin, and only where the file says where they stand. */
function jointTrials({ plan, file, design, link }: CureParts): readonly CureTrial[] {
  const { why } = plan;
  if (why === null || (why.kind !== 'too-heavy' && why.kind !== 'outside' && why.kind !== 'no-weight-left')) return [];
  const { index } = link.spec;
  const ends = [
    { joint: index - 1, away: -1, other: design.links[index - 1]?.name },
    { joint: index, away: 1, other: design.links[index + 1]?.name },
  ].filter(({ joint }) => joint >= 0 && joint < design.joints.length);
  return ends.flatMap(({ joint, away, other }) => {
    const entry = file.joints[joint];
    return [2, 4, 6].map((by) => {
      const pin = entry.hinge.kind === 'pin' ? entry.hinge.pin.x_mm : undefined;
      const sets = [
        { path: `joints.${joint}.x_mm`, value: shifted(entry.x_mm, away * by) },
        // a pin that stands at an expression of the cut's own moves by itself only if it is told to
        ...(pin === undefined ? [] : [{ path: `joints.${joint}.hinge.pin.x_mm`, value: shifted(pin, away * by) }]),
      ];
      const says = `cut ${formatLength(by, 'mm', { digits: 0 })} ${away > 0 ? 'further aft' : 'further forward'}: ${link.spec.name} longer, ${other} shorter`;
      return trial('joint', says, sets);
    });
  });
}

/** Lighter by what it is over; heavier by what there is no room for. */
function woodTrials(parts: CureParts): readonly CureTrial[] {
  const { plan, bait, link } = parts;
  const { why } = plan;
  if (why === null) return [];
  const wood = keptLedger(bait, link).lines.find(({ kind }) => kind === 'wood');
  const density = link.link.density ?? bait.wood.density;
  if (!wood) return [];
  const share = bait.coats.reduce((sum, coat) => sum + (coat.kind === 'soak-share' ? coat.share : 0), 0);
  const mores =
    why.kind === 'too-heavy'
      ? sparesOf(parts).map((spare) => -(why.over + spare))
      : why.kind === 'no-room'
        ? [why.wanted - 0.97 * why.most]
        : [];
  return mores.flatMap((more): readonly CureTrial[] => {
    const exact = gramPerCm3FromGramPerMm3(density * (1 + more / (wood.mass * (1 + share))));
    const rounded = more < 0 ? Math.floor(exact * 100) / 100 : Math.ceil(exact * 100) / 100;
    // no wood that a bait is carved from is lighter or heavier
    if (rounded < 0.1 || rounded > 1) return [];
    const says = `make ${link.spec.name} of ${more < 0 ? 'lighter' : 'heavier'} wood, ${rounded} g/cm³ for ${tidy(gramPerCm3FromGramPerMm3(density))}`;
    return [trial('wood', says, [{ path: `links.${link.spec.index}.density_g_cm3`, value: rounded }])];
  });
}

/** Drills with rods that go into them: what a shop begins with, and what it comes to. Common practice. */
const FIRST_SIZES = [['1/4 in', 6.35]] as const;
const USUAL_SIZES = [
  ['3/16 in', 4.7625],
  ['1/4 in', 6.35],
  ['5/16 in', 7.9375],
  ['3/8 in', 9.525],
  ['1/2 in', 12.7],
] as const;
/** A rod is so much thinner than its drill, and weighs what lead does. Common practice. */
const LOOSE_MM: Mm = 0.1;
const ROD_G_CM3 = 11.3;

function shopTrials(parts: CureParts): readonly CureTrial[] {
  return [
    stocked(parts, 'empty-shop', FIRST_SIZES, 'add a drill of 1/4 in and a rod of lead that it takes to the shop'),
    stocked(parts, 'empty-shop', USUAL_SIZES, USUAL_WORDS),
  ];
}

const USUAL_WORDS = 'add drills of 3/16 to 1/2 in and rods of lead that they take to the shop';

/** Other sizes than those on the list. */
function drillTrials(parts: CureParts): readonly CureTrial[] {
  const { why } = parts.plan;
  if (why?.kind !== 'no-room' && why?.kind !== 'not-level') return [];
  const has = (size: Mm) => parts.bait.shop.drills.some(({ diameter }) => Math.abs(diameter - size) < LOOSE_MM);
  return USUAL_SIZES.every(([, size]) => has(size)) ? [] : [stocked(parts, 'drills', USUAL_SIZES, USUAL_WORDS)];
}

function stocked(
  { file, bait: { shop } }: CureParts,
  kind: CureKind,
  sizes: readonly (readonly [name: string, diameter: Mm])[],
  says: string,
): CureTrial {
  const { drills = [], lead = [], ...rest } = file.shop ?? {};
  const names = new Set([...drills, ...lead].map(({ name }) => name));
  const isNew = ({ name }: { readonly name: string }) => !names.has(name);
  const newDrills = sizes.map(([name, diameter]) => ({ name, diameter_mm: diameter, point_deg: 180 })).filter(isNew);
  const newRods = sizes
    .map(([name, diameter]) => ({
      name: `${name} rod`,
      kind: 'slug' as const,
      diameter_mm: tidy(diameter - LOOSE_MM),
      density_g_cm3: ROD_G_CM3,
    }))
    .filter(isNew);
  const value = { ...rest, drills: [...drills, ...newDrills], lead: [...lead, ...newRods] };
  const after: Shop = {
    ...shop,
    drills: [
      ...shop.drills,
      ...newDrills.map(({ name, diameter_mm: diameter }) => ({ name, diameter, point: Math.PI })),
    ],
    lead: [
      ...shop.lead,
      ...newRods.map(({ name, diameter_mm: diameter }) => ({
        name,
        kind: 'slug' as const,
        diameter,
        density: gramPerMm3FromGramPerCm3(ROD_G_CM3),
      })),
    ],
  };
  return trial(kind, says, [{ path: 'shop', value }], after);
}

function tidy(value: number): number {
  return Number(value.toFixed(6)) + 0;
}
