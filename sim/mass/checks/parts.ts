import type { Hole } from '../../design/design.ts';
import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import type { LinkSpec } from '../../links/cut.ts';
import { add, scale, subtract, type Vec3 } from '../../numerics/vec3.ts';
import { holeMouth } from '../hole.ts';
import type { PlacedEye, PlacedFitting, PlacedHole } from '../placed.ts';
import { betweenFaces, inBody, mm, rim } from './wood.ts';

/** A shank lies in the wood of its link from the skin to its end. */
export function shankIssue(hull: Hull, spec: LinkSpec, eye: PlacedEye, path: string): readonly Issue[] {
  const end = add(eye.entry, scale(eye.inward, eye.shank));
  const ends = rim(end, eye.inward, eye.wire / 2);
  // just under the skin: on a tip or a ridge the entry itself has no width yet
  const under = add(eye.entry, scale(eye.inward, Math.min(eye.wire, eye.shank)));
  const besides: Vec3 = eye.inward[2] === 0 ? [0, 0, 0] : [eye.wire / 2, 0, 0];
  const entersWood =
    inBody(hull, under) && [add(under, besides), subtract(under, besides)].every((point) => betweenFaces(spec, point));
  if (!entersWood) {
    const message = `eye "${eye.name}" at ${mm(eye.entry[0])} enters no wood of link "${spec.name}", ${mm(spec.span[0])} to ${mm(spec.span[1])}`;
    return [{ code: 'hardware/in-a-gap', path, message, hint: 'move it along, clear of the joint' }];
  }
  if (ends.every((point) => inBody(hull, point) && betweenFaces(spec, point))) return [];
  const message = `a shank of ${mm(eye.shank)} comes out of link "${spec.name}" at its far end`;
  return [
    {
      code: 'hardware/shank-out-of-wood',
      path: `${path}.shank_mm`,
      message,
      hint: 'take a shorter shank or move the eye',
    },
  ];
}

/** What is fixed on stands on its link, not over the gap of a joint. */
export function fittingIssue(spec: LinkSpec, { name, at, path }: PlacedFitting): readonly Issue[] {
  if (betweenFaces(spec, at)) return [];
  const message = `"${name}" at ${mm(at[0])} stands in the gap beside link "${spec.name}", ${mm(spec.span[0])} to ${mm(spec.span[1])}`;
  return [{ code: 'hardware/in-a-gap', path: `${path}.x_mm`, message, hint: 'move it along, clear of the joint' }];
}

/** A hole lies in the wood of one link, and what is put into it fits. */
export function holeIssues(hull: Hull, spec: LinkSpec, placed: PlacedHole, path: string): readonly Issue[] {
  const { hole } = placed;
  const mouth = holeMouth(hull, hole);
  const radius = hole.diameter / 2;
  if (!mouth?.whole) {
    const message = `a hole of ${mm(hole.diameter)} at ${mm(hole.x)}, ${mm(hole.across)} across, reaches past the ${hole.from}`;
    return [{ code: 'holes/off-the-body', path, message, hint: 'move it towards the middle, or take a smaller drill' }];
  }
  const along = (distance: number): Vec3 => add(placed.mouth, scale(placed.inward, distance));
  const shoulder = rim(along(hole.depth), placed.inward, radius);
  if (![...shoulder, along(hole.depth + placed.pointDepth)].every((point) => inBody(hull, point))) {
    const message = `a hole ${mm(hole.depth)} deep, its point ${mm(placed.pointDepth)} deeper, comes out of the body`;
    return [
      { code: 'holes/through-the-body', path: `${path}.depth_mm`, message, hint: 'drill less deep, or a smaller hole' },
    ];
  }
  if (![...shoulder, ...rim(placed.mouth, placed.inward, radius)].every((point) => betweenFaces(spec, point))) {
    const message = `a hole of ${mm(hole.diameter)} at ${mm(hole.x)} reaches into a joint of link "${spec.name}", ${mm(spec.span[0])} to ${mm(spec.span[1])}`;
    return [{ code: 'holes/in-a-joint', path: `${path}.x_mm`, message, hint: 'move it along, clear of the joint' }];
  }
  return [...leadIssues(placed, mouth.deepest, path), ...chamberIssues(hole, mouth.deepest, path)];
}

/** The plug closes the whole mouth and leaves a chamber under it. */
function chamberIssues({ air, depth }: Hole, deepestSkin: number, path: string): readonly Issue[] {
  if (!air || (air.plug > deepestSkin && air.plug < depth)) return [];
  const message = `a plug of ${mm(air.plug)} does not close a chamber here; it must go deeper than ${mm(deepestSkin)} and less deep than ${mm(depth)}`;
  const hint = air.plug < depth ? 'make the plug longer' : 'make the plug shorter, or drill deeper';
  return [{ code: 'holes/no-chamber', path: `${path}.air.plug_mm`, message, hint }];
}

function leadIssues(placed: PlacedHole, deepestSkin: number, path: string): readonly Issue[] {
  const { lead, hole } = placed;
  if (!lead) return [];
  if (lead.diameter > hole.diameter) {
    const message = `"${hole.lead?.stock.name}", ${mm(lead.diameter)} thick, does not go into a hole of ${mm(hole.diameter)}`;
    return [
      { code: 'holes/lead-too-wide', path: `${path}.lead.of`, message, hint: 'take a larger drill or thinner lead' },
    ];
  }
  if (lead.from >= deepestSkin) return [];
  const most = (lead.mass * (lead.to - deepestSkin)) / (lead.to - lead.from);
  const message = `${Number(lead.mass.toFixed(2))} g of "${hole.lead?.stock.name}" stands ${mm(lead.to - lead.from)} tall in a hole that holds ${mm(lead.to - deepestSkin)}, about ${most.toFixed(1)} g`;
  return [
    {
      code: 'holes/lead-too-long',
      path: `${path}.lead.mass_g`,
      message,
      hint: 'drill deeper, or spread the lead over two holes',
    },
  ];
}
