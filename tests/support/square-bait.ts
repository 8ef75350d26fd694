import type { CoatEntry, DesignFile, FacesEntry, JointEntry } from '../../sim/design/file.ts';
import { findReach, type Reach, type ReachParts } from '../../sim/reach/reach.ts';
import type { Radian } from '../../sim/units/brand.ts';
import { makeDesignFile } from './make-design.ts';
import { partsOf } from './worked-bait.ts';

/** What a test wants of a bait that is 22 mm wide at its one joint. */
export interface SquareJoint {
  readonly gap?: number;
  readonly faces?: FacesEntry;
  /** Pin before the middle of the gap. */
  readonly before?: number;
  readonly width?: number;
  readonly bore?: number;
  readonly coats?: readonly CoatEntry[];
}

/**
 * A board of 120 by 30 by 22 mm with a straight run in plan over its joint at 60, square edges, no coats: flanks that are
 * parallel there, so that reach has a closed form. Eyes of the aft link stand in slots of the fore link that are wide
 * enough never to matter unless told otherwise. Tests of the bare geometry may ask for what no shop could hinge.
 */
export function squareBait({
  gap = 2,
  faces = { kind: 'flat' },
  before = 0,
  width = 20,
  bore = 3.2,
  coats = [],
}: SquareJoint = {}): DesignFile {
  const joint: JointEntry = {
    x_mm: 60,
    gap_mm: gap,
    faces,
    hinge: {
      kind: 'pin',
      eyes: [{ in: 'aft', z_mm: 0 }],
      wire_mm: 1.8,
      bore_mm: bore,
      shank_mm: 10,
      pin: { diameter_mm: 2.4, z_mm: [-12, 12], x_mm: 60 - before, held_by: 'fore' },
    },
    slots: [{ in: 'fore', width_mm: width, depth_mm: before + 6, z_mm: [-2, 2] }],
  };
  return makeDesignFile({
    body: {
      length_mm: 120,
      height_mm: 30,
      width_mm: 22,
      deepest_x_mm: 60,
      widest_x_mm: [30, 90],
      nose: { depth_mm: 20, width_mm: 16 },
      section: { kind: 'board', back_edge_mm: 0, belly_edge_mm: 0 },
    },
    joints: [joint],
    coats,
    hangers: [],
    setups: [
      { name: 'pond', water: { temperature_c: 20, salinity_g_kg: 0 }, target: { proud_mm: 3 }, hung: [], holes: [] },
    ],
  });
}

/** What reach is read from, of a design in its first setup. */
export function reachPartsOf(file: DesignFile): ReachParts {
  const { design, setup, hull, links, hardware } = partsOf(file);
  return { hull, links, joints: design.joints, hardware, coats: setup.coats };
}

export function reachOf(file: DesignFile): Reach {
  return findReach(reachPartsOf(file));
}

export function degrees(angle: Radian): number {
  return (angle * 180) / Math.PI;
}
