import type { PlacedFin } from '../mass/placed.ts';
import type { CheckedBait, CheckedLink } from './checked-bait.ts';
import { fileNamePart } from './file-name.ts';
import { binaryStl, trianglesOf } from './stl.ts';

/** A file to be written. */
export interface ExportFile {
  readonly name: string;
  /** What is in it, in words. */
  readonly what: string;
  readonly bytes: Uint8Array;
}

/**
 * The solid that displaces water, link by link: `N-name.stl` with its coats, and where water stands in slots
 * `N-name.flooded.stl`, to be taken from it. Binary STL in millimetres, body frame, each closed and outward. Fins are in
 * their link's file as shells of their own: these end at the bare skin, so that their feet lie within the coats, and
 * what displaces water is the sum of the shells' volumes.
 */
export function linkSolids(bait: Pick<CheckedBait, 'design' | 'setup' | 'links' | 'hardware'>): readonly ExportFile[] {
  const of = `${bait.design.name}, ${bait.setup.name}, mm`;
  return bait.links.flatMap((link) => solidsOfLink(link, ofLink(bait.hardware.fins, link), of));
}

function ofLink(fins: readonly PlacedFin[], { spec }: CheckedLink): readonly PlacedFin[] {
  return fins.filter(({ link }) => link === spec.index);
}

function solidsOfLink({ spec, wetted }: CheckedLink, fins: readonly PlacedFin[], of: string): readonly ExportFile[] {
  const number = spec.index + 1;
  const stem = `${number}-${fileNamePart(spec.name, 'link')}`;
  const shells = [
    ...trianglesOf(wetted.mesh, ['skin', 'fore-face', 'aft-face']),
    ...fins.flatMap(({ mesh }) => trianglesOf(mesh, ['skin'])),
  ];
  const solid: ExportFile = {
    name: `${stem}.stl`,
    what: `link ${number}, ${spec.name}: the coated solid, slots not cut${fins.length > 0 ? ', and its fins' : ''}`,
    bytes: binaryStl(shells, `${spec.name} of ${of}`),
  };
  const slots = trianglesOf(wetted.mesh, ['slot'], true);
  if (slots.length === 0) return [solid];
  const flooded: ExportFile = {
    name: `${stem}.flooded.stl`,
    what: `link ${number}, ${spec.name}: the water in its slots, to be taken from the solid`,
    bytes: binaryStl(slots, `water in ${spec.name} of ${of}`),
  };
  return [solid, flooded];
}
