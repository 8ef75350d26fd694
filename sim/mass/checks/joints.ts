import type { Design } from '../../design/design.ts';
import type { Issue } from '../../flow/outcome.ts';
import type { Hull } from '../../hull/hull.ts';
import { type Face, fallBack, isRound, type LinkSpec } from '../../links/cut.ts';
import type { Mm } from '../../units/brand.ts';
import { mm, widestOf } from './wood.ts';

/** Shorter than this there is nothing to hold while shaping a link. Common practice. */
const SHORTEST_LINK_MM = 5;
/** Wood left between two faces that lean or bend towards each other off the centre line. */
const SHORTEST_FLANK_MM = 1;
/** Places between centre line and flank where a link is measured: round faces can come nearest between the two. */
const PLACES = 8;

/** Joints in order inside the body, every link long enough to hold on the centre line and along its flanks. */
export function jointIssues(hull: Hull, links: readonly LinkSpec[], joints: Design['joints']): readonly Issue[] {
  const placed = joints.flatMap((joint, j): Issue[] => {
    const from = joints[j - 1]?.x ?? 0;
    const to = joints[j + 1]?.x ?? hull.length;
    const before = joint.x - joint.gap / 2;
    const after = joint.x + joint.gap / 2;
    if (before > from && after < to && before > 0 && after < hull.length) return [];
    return [
      {
        code: joint.x <= 0 || joint.x >= hull.length ? 'links/joint-outside-body' : 'links/joints-crossing',
        path: `joints.${j}.x_mm`,
        message: `joint ${j + 1} at ${mm(joint.x)}, gap ${mm(joint.gap)}, does not fall between ${mm(from)} and ${mm(to)}`,
        hint: 'move the joint inside the body, after the joint before it',
      },
    ];
  });
  if (placed.length > 0) return placed;
  return links.flatMap((spec): Issue[] => {
    const long = spec.span[1] - spec.span[0];
    const where = spec.aftFace ? `joints.${spec.index}.x_mm` : `joints.${spec.index - 1}.x_mm`;
    if (long < SHORTEST_LINK_MM) {
      const message = `link "${spec.name}" is ${mm(long)} long on the centre line; at least ${mm(SHORTEST_LINK_MM)} is needed`;
      return [{ code: 'links/link-too-short', path: where, message, hint: 'move a joint or narrow its gap' }];
    }
    const flank = thinnest(hull, spec, long);
    if (flank >= SHORTEST_FLANK_MM) return [];
    if ([spec.foreFace, spec.aftFace].some((face) => face && isRound(face))) {
      const message = `the faces of link "${spec.name}" leave ${mm(flank)} of wood between them beside the centre line; at least ${mm(SHORTEST_FLANK_MM)} is needed`;
      const hint = 'lengthen the link, or take a larger radius or a smaller bevel';
      return [{ code: 'links/faces-meet', path: where, message, hint }];
    }
    const message = `the bevels of link "${spec.name}" leave ${mm(flank)} along its flank; at least ${mm(SHORTEST_FLANK_MM)} is needed`;
    return [{ code: 'links/bevels-meet', path: where, message, hint: 'lessen the bevels or lengthen the link' }];
  });
}

/** Least length of a link along x between its faces, from the centre line out to the flanks. */
function thinnest(hull: Hull, spec: LinkSpec, long: Mm): Mm {
  const halfOf = (face: Face) => {
    if (!isRound(face)) return widestOf(hull, spec.span);
    const stretch = [face.at, face.axis].toSorted((a, b) => a - b);
    return Math.min(face.radius, widestOf(hull, [Math.max(0, stretch[0]), Math.min(hull.length, stretch[1])]));
  };
  const [foreHalf, aftHalf] = [spec.foreFace && halfOf(spec.foreFace), spec.aftFace && halfOf(spec.aftFace)];
  const reach = (face: Face | null, half: Mm | null, share: number) =>
    face && half ? fallBack(face, half * share) : 0;
  return Math.min(
    ...Array.from({ length: PLACES + 1 }, (_, i) => {
      const share = i / PLACES;
      return long - reach(spec.foreFace, foreHalf, share) - reach(spec.aftFace, aftHalf, share);
    }),
  );
}

/** Coats on the two faces leave some of the gap. */
export function gapIssues(joints: Design['joints'], faceGrowth: Mm): readonly Issue[] {
  return joints.flatMap((joint, j): Issue[] => {
    if (faceGrowth < joint.gap / 2) return [];
    const message = `coats of ${mm(faceGrowth)} on both faces close a gap of ${mm(joint.gap)}; they must be thinner than half of it`;
    return [
      { code: 'joints/coats-close-gap', path: `joints.${j}.gap_mm`, message, hint: 'widen the gap, or mask the faces' },
    ];
  });
}
