import type { Coat, Link, Wood } from '../design/design.ts';
import { END_GRAIN } from '../mesh/measure.ts';
import type { BareSolid, Wetted } from '../mesh/wetted.ts';
import { add, scale, subtract, type Vec3 } from '../numerics/vec3.ts';
import { citationText } from '../sources/cite.ts';
import { STEEL } from '../tables/metals.ts';
import type { Gram, Mm3 } from '../units/brand.ts';
import type { FixedHardware, PlacedEye, PlacedFin, PlacedFitting, PlacedHole, PlacedPin } from './placed.ts';

export type LedgerKind =
  | 'wood'
  | 'soak'
  | 'coat'
  | 'eye'
  | 'pin'
  | 'hanger'
  | 'lead'
  | 'plug'
  | 'air'
  | 'fitting'
  | 'tail'
  | 'fin';

/** One thing that weighs. */
export interface LedgerLine {
  readonly name: string;
  readonly kind: LedgerKind;
  readonly mass: Gram;
  /** Its centre of mass, body frame. */
  readonly at: Vec3;
  /**
   * Water it displaces outside the coated solid, and where; 0 for what lies in the wood, and for a fin, which is a mesh
   * of its own.
   */
  readonly outsideVolume: Mm3;
  readonly outsideAt: Vec3;
  /** Where the number comes from, in words. */
  readonly source: string;
}

/** Everything fixed to one link; what hangs is kept apart. */
export interface Ledger {
  readonly lines: readonly LedgerLine[];
  readonly mass: Gram;
  readonly centre: Vec3;
}

/** What a link's ledger is made from. */
export interface LedgerParts {
  readonly link: Link;
  readonly wood: Wood;
  readonly coats: readonly Coat[];
  readonly solid: BareSolid;
  readonly wetted: Wetted;
  /** What this link holds, and no more. */
  readonly hardware: FixedHardware;
}

/**
 * One line for each thing fixed to a link. Wood is net of slots, holes, shanks, pin bores and the tabs of fins; a coat weighs the volume
 * it adds; soak adds mass only.
 */
export function writeLedger(parts: LedgerParts): Ledger {
  const { eyes, pins, holes, fittings, fins } = parts.hardware;
  const wood = woodLine(parts, [
    ...eyes.map((eye): Part => [eye.shankVolume, eye.shankCentre]),
    ...pins.flatMap(boreParts),
    ...holes.map((hole): Part => [hole.volume, hole.centre]),
    ...fins.flatMap(({ tab }): readonly Part[] => (tab ? [[tab.volume, tab.centre]] : [])),
  ]);
  const lines: readonly LedgerLine[] = [
    wood,
    ...coatLines(parts, wood),
    ...eyes.map(eyeLine),
    ...pins.map(pinLine),
    ...holes.flatMap(holeLines),
    ...fittings.map(fittingLine),
    ...fins.map(finLine),
  ];
  const mass = lines.reduce((sum, line) => sum + line.mass, 0);
  const moment = lines.reduce<Vec3>((sum, line) => add(sum, scale(line.at, line.mass)), [0, 0, 0]);
  return { lines, mass, centre: scale(moment, 1 / mass) };
}

/** A volume and its centre. */
type Part = readonly [Mm3, Vec3];

/** What lies in the wood, or on it as a coat, displaces nothing of its own. */
function drySide(name: string, kind: LedgerKind, mass: Gram, at: Vec3, source: string): LedgerLine {
  return { name, kind, mass, at, outsideVolume: 0, outsideAt: at, source };
}

function woodLine({ link, wood, solid }: LedgerParts, out: readonly Part[]): LedgerLine {
  const volume = solid.volume - out.reduce((sum, [taken]) => sum + taken, 0);
  const moment = out.reduce((sum, [taken, at]) => subtract(sum, scale(at, taken)), scale(solid.centre, solid.volume));
  const density = link.density ?? wood.density;
  const source = link.density === null ? 'density given for the wood' : 'density given for this link';
  return drySide('wood', 'wood', volume * density, scale(moment, 1 / volume), `${source}, volume from the shape`);
}

function coatLines({ coats, solid, wetted }: LedgerParts, wood: LedgerLine): readonly LedgerLine[] {
  return coats.map((coat): LedgerLine => {
    if (coat.kind === 'soak-share' || coat.kind === 'soak-area') {
      const [mass, of] =
        coat.kind === 'soak-share'
          ? [coat.share * wood.mass, 'share of the wood’s mass']
          : [coat.perArea * solid.area, 'mass for each area of bare wood'];
      const source = `${of}, lying ${END_GRAIN} times as thick in end grain`;
      return drySide(coat.name, 'soak', mass, solid.soakCentre, source);
    }
    const film = wetted.films[coats.filter((other) => other.kind === 'film').indexOf(coat)];
    return drySide(coat.name, 'coat', film.volume * coat.density, film.centre, 'volume it adds times its density');
  });
}

function eyeLine(eye: PlacedEye): LedgerLine {
  const whole = eye.outsideVolume + eye.shankVolume;
  const moment = add(scale(eye.outsideCentre, eye.outsideVolume), scale(eye.shankCentre, eye.shankVolume));
  return {
    name: eye.name,
    kind: eye.kind === 'hinge' ? 'eye' : 'hanger',
    mass: eye.mass,
    at: scale(moment, 1 / whole),
    outsideVolume: eye.outsideVolume,
    outsideAt: eye.outsideCentre,
    source: eye.weighed ? 'weighed by the maker' : `wire size; ${citationText(STEEL)}`,
  };
}

function pinSection(pin: PlacedPin): number {
  return (Math.PI / 4) * pin.diameter ** 2;
}

function boreParts(pin: PlacedPin): readonly Part[] {
  return pin.bored.map(([from, to]): Part => [(to - from) * pinSection(pin), [pin.x, 0, (from + to) / 2]]);
}

function pinLine(pin: PlacedPin): LedgerLine {
  const [from, to] = pin.z;
  const wet = pin.wet.reduce((sum, run) => sum + run[1] - run[0], 0);
  const wetHeight = pin.wet.reduce((sum, run) => sum + (run[1] ** 2 - run[0] ** 2) / 2, 0);
  const middle: Vec3 = [pin.x, 0, (from + to) / 2];
  return {
    name: pin.name,
    kind: 'pin',
    mass: (to - from) * pinSection(pin) * pin.density,
    at: middle,
    outsideVolume: wet * pinSection(pin),
    outsideAt: wet > 0 ? [pin.x, 0, wetHeight / wet] : middle,
    source: 'length and diameter times its density',
  };
}

function holeLines(hole: PlacedHole): readonly LedgerLine[] {
  const plug = drySide(
    `${hole.name}, plug`,
    'plug',
    hole.plug.mass,
    hole.plug.centre,
    hole.air ? 'its length in the hole, times its density' : 'what the hole has left, times the plug’s density',
  );
  if (hole.air) {
    const source = 'sealed in: the wood is gone, and air weighs nothing';
    return [drySide(`${hole.name}, air`, 'air', 0, hole.air.centre, source), plug];
  }
  if (!hole.lead || !hole.hole.lead) return [plug];
  const { stock } = hole.hole.lead;
  return [drySide(hole.name, 'lead', hole.lead.mass, hole.lead.centre, `mass given; ${stock.name}`), plug];
}

/** A limp tail acts at its root: it turns about it freely, so nothing but its net force comes through. */
function fittingLine({ name, kind, mass, at, outsideVolume }: PlacedFitting): LedgerLine {
  const source = kind === 'tail' ? 'weighed by the maker; limp, so it pulls at its root' : 'weighed by the maker';
  return { name, kind, mass, at, outsideVolume, outsideAt: at, source };
}

/** Plate outside the skin and tab in the wood, of one stuff. */
function finLine({ name, density, outsideVolume, outsideCentre, tab }: PlacedFin): LedgerLine {
  const inside = tab?.volume ?? 0;
  const volume = outsideVolume + inside;
  const moment = add(scale(outsideCentre, outsideVolume), scale(tab?.centre ?? outsideCentre, inside));
  const source = tab ? 'size of plate and tab times its density' : 'size of the plate times its density';
  return drySide(name, 'fin', volume * density, scale(moment, 1 / volume), source);
}
