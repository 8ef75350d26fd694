import { EPOXY } from '../tables/finishes.ts';
import { STEEL } from '../tables/metals.ts';
import { woodNamed } from '../tables/woods.ts';
import type { GramPerMm3, Mm } from '../units/brand.ts';
import {
  gramPerMm2FromGramPerM2,
  gramPerMm3FromGramPerCm3,
  radianFromDegree,
  shareFromPercent,
} from '../units/convert.ts';
import { isAlong } from './combinations.ts';
import { bodyFrom } from './derive-body.ts';
import type {
  Coat,
  Design,
  Fin,
  Fitting,
  Hanger,
  Hole,
  Hung,
  Joint,
  LeadStock,
  Setup,
  Shop,
  Target,
  Trailing,
  Water,
  Wire,
} from './design.ts';
import type { WorkedFile } from './work-out.ts';

type Part<Key extends keyof WorkedFile> = NonNullable<WorkedFile[Key]>;
type WorkedJoint = Part<'joints'>[number];
type WorkedHanger = Part<'hangers'>[number];
type WorkedSetup = Part<'setups'>[number];
type WorkedHole = WorkedSetup['holes'][number];

/** Full angle of a common twist drill's point, in degrees: common practice. */
const DRILL_POINT_DEG = 118;
/** Common practice: what is left round ballast in a shaped body. */
const WALL_MM: Mm = 3;

/**
 * The file's numbers as a design: names of our own for its fields, house units, every default filled in. The one place
 * where units change. The file has passed every check of `evaluateDesign`.
 */
export function designFrom(file: WorkedFile): Design {
  const coats = file.coats.map(coatFrom);
  const shop = shopFrom(file.shop ?? {});
  const species = file.wood.species === undefined ? null : woodNamed(file.wood.species);
  return {
    name: file.name,
    notes: file.notes ?? '',
    body: bodyFrom(file.body),
    links: file.links.map(({ name, density_g_cm3: density }) => ({ name, density: densityOr(density, null) })),
    joints: file.joints.map(jointFrom),
    wood: { species: species?.name ?? null, density: gramPerMm3FromGramPerCm3(file.wood.density_g_cm3) },
    hangers: file.hangers.map(hangerFrom),
    fittings: (file.fittings ?? []).map(fittingFrom),
    tails: (file.tails ?? []).map(trailingFrom),
    fins: (file.fins ?? []).map(finFrom),
    shop,
    setups: file.setups.map((setup) => setupFrom(setup, coats, shop)),
    worked: file,
  };
}

function jointFrom(joint: WorkedJoint): Joint {
  const { x_mm: x, gap_mm: gap, slots = [] } = joint;
  const faces = facesFrom(joint.faces, x, gap);
  return {
    x,
    gap,
    faces,
    hinge: hingeFrom(joint.hinge, faces.kind === 'knuckle' ? faces.axis : x),
    slots: slots.map((slot) => ({ in: slot.in, width: slot.width_mm, depth: slot.depth_mm, z: slot.z_mm })),
  };
}

/** Flat faces are bevels of no angle. The nose of a knuckle begins where a flat face would stand. */
function facesFrom(faces: WorkedJoint['faces'], x: number, gap: number): Joint['faces'] {
  switch (faces.kind) {
    case 'flat':
      return { kind: 'bevel', fore: 0, aft: 0 };
    case 'bevel':
      return { kind: 'bevel', fore: radianFromDegree(faces.fore_deg), aft: radianFromDegree(faces.aft_deg) };
    case 'knuckle': {
      const { on, radius_mm: radius } = faces;
      const toAxis = gap / 2 + radius;
      return { kind: 'knuckle', on, radius, axis: on === 'aft' ? x + toAxis : x - toAxis };
    }
  }
}

/** usual: where the pin stands if nothing is said. */
function hingeFrom(hinge: WorkedJoint['hinge'], usual: number): Joint['hinge'] {
  if (hinge.kind === 'linked-eyes') return { kind: 'linked-eyes', z: hinge.z_mm, ...wireFrom(hinge) };
  const { pin } = hinge;
  return {
    kind: 'pin',
    eyes: hinge.eyes.map((eye) => ({ in: eye.in, z: eye.z_mm })),
    ...wireFrom(hinge),
    pin: {
      x: pin.x_mm ?? usual,
      diameter: pin.diameter_mm,
      z: pin.z_mm,
      heldBy: pin.held_by,
      density: densityOr(pin.density_g_cm3, STEEL.value),
    },
  };
}

function wireFrom(eye: { readonly wire_mm: number; readonly bore_mm: number; readonly shank_mm: number }): Wire {
  return { wire: eye.wire_mm, bore: eye.bore_mm, shank: eye.shank_mm };
}

function coatFrom(coat: Part<'coats'>[number]): Coat {
  const { name } = coat;
  if ('soak_percent' in coat) return { kind: 'soak-share', name, share: shareFromPercent(coat.soak_percent) };
  if ('soak_g_m2' in coat) return { kind: 'soak-area', name, perArea: gramPerMm2FromGramPerM2(coat.soak_g_m2) };
  const density = gramPerMm3FromGramPerCm3(coat.density_g_cm3);
  return { kind: 'film', name, thickness: coat.thickness_mm, density, covers: coat.covers ?? 'all' };
}

/** Left out, the loop of a hanger lies on the skin: its middle is half a bore and the wire off it. */
function hangerFrom(hanger: WorkedHanger): Hanger {
  const { name, on, bore_mm: bore, wire_mm: wire } = hanger;
  const at = isAlong(on) ? hanger.x_mm : hanger.z_mm;
  return {
    name,
    on,
    // its absence has been refused
    at: at ?? 0,
    across: hanger.across_mm ?? 0,
    ...wireFrom(hanger),
    stand: hanger.stand_mm ?? bore / 2 + wire,
    mass: hanger.mass_g ?? null,
  };
}

function fittingFrom(fitting: Part<'fittings'>[number]): Fitting {
  const { name, x_mm: x, y_mm: y = 0, z_mm: z, mass_g: mass, outside_mm3: outside = 0, pair = false } = fitting;
  return { name, x, y, z, mass, outside, pair };
}

function trailingFrom(tail: Part<'tails'>[number]): Trailing {
  const { name, x_mm: x, y_mm: y = 0, z_mm: z, mass_g: mass, air_mm3: air = [0, 0] } = tail;
  return { name, x, y, z, mass, density: gramPerMm3FromGramPerCm3(tail.density_g_cm3), air };
}

function finFrom(fin: Part<'fins'>[number]): Fin {
  const { name, on, edge_mm: edge, thickness_mm: thickness, tab_mm: tab = 0 } = fin;
  return { name, on, edge, thickness, tab, density: gramPerMm3FromGramPerCm3(fin.density_g_cm3) };
}

function shopFrom(shop: Part<'shop'>): Shop {
  return {
    kerf: shop.kerf_mm ?? null,
    wall: shop.wall_mm ?? WALL_MM,
    drills: (shop.drills ?? []).map(({ name, diameter_mm: diameter, point_deg: point }) => ({
      name,
      diameter,
      point: radianFromDegree(point ?? DRILL_POINT_DEG),
    })),
    lead: (shop.lead ?? []).map(leadFrom),
  };
}

function leadFrom(lead: NonNullable<Part<'shop'>['lead']>[number]): LeadStock {
  const { name, diameter_mm: diameter } = lead;
  const density = gramPerMm3FromGramPerCm3(lead.density_g_cm3);
  return diameter === undefined ? { name, kind: 'filled', density } : { name, kind: 'slug', diameter, density };
}

function setupFrom(setup: WorkedSetup, coats: readonly Coat[], shop: Shop): Setup {
  const targets = Object.entries(setup.link_targets ?? {});
  return {
    name: setup.name,
    notes: setup.notes ?? '',
    water: waterFrom(setup.water),
    target: targetFrom(setup.target),
    linkTargets: Object.fromEntries(targets.map(([link, target]) => [link, targetFrom(target)])),
    hung: setup.hung.map(hungFrom),
    holes: setup.holes.map((hole) => holeFrom(hole, shop)),
    coats: setup.coats?.map(coatFrom) ?? coats,
    drop: dropFrom(setup.drop),
  };
}

function waterFrom(water: WorkedSetup['water']): Water {
  return 'measured_g_cm3' in water
    ? { kind: 'measured', density: gramPerMm3FromGramPerCm3(water.measured_g_cm3) }
    : { kind: 'natural', temperature: water.temperature_c, salinity: water.salinity_g_kg };
}

function targetFrom(target: WorkedSetup['target']): Target {
  const trim = radianFromDegree(target.trim_deg ?? 0);
  if ('proud_mm' in target) return { trim, kind: 'proud', proud: target.proud_mm };
  if ('waterline_z_mm' in target) return { trim, kind: 'waterline', z: target.waterline_z_mm };
  if ('reserve_g' in target) return { trim, kind: 'reserve', reserve: target.reserve_g };
  if ('reserve_percent' in target)
    return { trim, kind: 'reserve-share', share: shareFromPercent(target.reserve_percent) };
  if ('net_wet_g' in target) return { trim, kind: 'net', net: target.net_wet_g };
  return { trim, kind: 'sink', speed: target.sink_mm_s };
}

function dropFrom(drop: WorkedSetup['drop']): Setup['drop'] {
  return drop === undefined ? null : { distance: drop.distance_mm, time: drop.time_s, netWet: drop.net_wet_g ?? null };
}

function hungFrom(hung: WorkedSetup['hung'][number]): Hung {
  const { name, from, mass_g: mass, hang_mm: hang } = hung;
  return { name, from, mass, hang, density: densityOr(hung.density_g_cm3, STEEL.value) };
}

function holeFrom(hole: WorkedHole, shop: Shop): Hole {
  return {
    name: hole.name,
    from: hole.from,
    x: hole.x_mm,
    across: hole.across_mm ?? 0,
    diameter: hole.diameter_mm,
    depth: hole.depth_mm,
    point: radianFromDegree(hole.point_deg ?? DRILL_POINT_DEG),
    lead: ballastFrom(hole.lead, shop),
    air: hole.air === undefined ? null : { plug: hole.air.plug_mm },
    plugDensity: densityOr(hole.plug_g_cm3, EPOXY.value.usual),
    done: hole.done ?? false,
  };
}

function ballastFrom(lead: WorkedHole['lead'], shop: Shop): Hole['lead'] {
  const stock = shop.lead.find(({ name }) => name === lead?.of);
  return lead === undefined || stock === undefined ? null : { stock, mass: lead.mass_g };
}

function densityOr<Otherwise extends GramPerMm3 | null>(gramPerCm3: number | undefined, otherwise: Otherwise) {
  return gramPerCm3 === undefined ? otherwise : gramPerMm3FromGramPerCm3(gramPerCm3);
}
