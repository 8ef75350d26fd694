import type { Refloated } from '../../ballast/refloat.ts';
import { shiftAt } from '../../design/edit.ts';
import { ownerAt } from '../../links/cut.ts';
import { holeIssues } from '../../mass/checks/parts.ts';
import { betweenFaces, rim } from '../../mass/checks/wood.ts';
import { placeHole } from '../../mass/hole.ts';
import type { PlacedHole } from '../../mass/placed.ts';
import { wallOf } from '../../mass/wall.ts';
import { add, scale } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength } from '../../units/format.ts';
import type { ProposedEdit, Warning } from '../../warnings.ts';
import { isBetter, moveWords, quoted, stepsTo } from './cure.ts';
import type { TrialFloat, WarnParts } from './parts.ts';

/** Walls are said to this: one that reads as enough is no warning. */
const SAID_TO_MM = 0.1;
/** What is tried: a drill is set to half a millimetre, holes are marked out at whole ones. */
const DEPTHS_MM = stepsTo(6, 0.5);
const PLACES_MM = stepsTo(5, 1);

/** Holes that leave less wood than the maker wants, the thinnest first. refloat: also what would thicken it. */
export function wallWarnings(parts: WarnParts, refloat?: TrialFloat): readonly Warning[] {
  const { hardware, walls, drawn } = parts;
  return hardware.holes
    .map((hole, index) => ({ hole, index, wall: walls[index] }))
    .filter(({ wall }) => wall.thickness < drawn.wall - SAID_TO_MM / 2)
    .toSorted((a, b) => a.wall.thickness - b.wall.thickness)
    .map(({ hole, index, wall }) => ({
      code: 'wall-thin',
      where: hole.name,
      text: `Hole "${hole.name}" leaves ${formatLength(wall.thickness)} of wood; ${formatLength(drawn.wall)} is wanted.`,
      at: wall.at,
      number: wall.thickness,
      limit: drawn.wall,
      unit: 'mm',
      fix: refloat ? cureOf(parts, refloat, index) : null,
    }));
}

/** The least change of depth, else of place, that gives a hole its wall; a hole and its mirror image change alike. */
function cureOf(parts: WarnParts, refloat: TrialFloat, index: number): ProposedEdit | null {
  const { holes } = parts.hardware;
  const twin = holes.findIndex((hole) => isTwin(holes[index], hole));
  const indices = twin === -1 ? [index] : [index, twin];
  if (indices.some((i) => holes[i].hole.done)) return null;
  const names = indices.map((i) => holes[i].name);
  for (const by of DEPTHS_MM) {
    const says = `drill ${quoted(names)} ${formatLength(Math.abs(by))} ${by < 0 ? 'less deep' : 'deeper'}`;
    const edit = changedHoles(parts, refloat, indices, { what: 'depth', by, says });
    if (edit) return edit;
  }
  for (const by of PLACES_MM) {
    const edit = changedHoles(parts, refloat, indices, { what: 'x', by, says: moveWords(names, by) });
    if (edit) return edit;
  }
  return null;
}

const KEYS = { depth: 'depth_mm', x: 'x_mm' } as const;

/** A change of one measure of holes. says: it as an order. cures: what it is made for, of the bait as it then floats. */
interface HoleChange {
  readonly what: keyof typeof KEYS;
  readonly by: Mm;
  readonly says: string;
  cures?(next: Refloated): boolean;
}

/** The edit, if the holes then keep their wall and the bait is better off; null: they do not, or it is not. */
export function changedHoles(
  parts: WarnParts,
  refloat: TrialFloat,
  indices: readonly number[],
  { what, by, says, cures }: HoleChange,
): ProposedEdit | null {
  const { hull, links, hardware, drawn } = parts;
  const { holes } = hardware;
  const sets = indices.map((i) =>
    shiftAt(drawn.file, `setups.${drawn.setup}.holes.${i}.${KEYS[what]}`, by, holes[i].hole[what]),
  );
  if (!sets.every((set) => set !== null)) return null;
  const next = new Map(
    indices.map((i) => {
      const hole = { ...holes[i].hole, [what]: holes[i].hole[what] + by };
      return [i, placeHole(hull, hole, ownerAt(drawn.joints, hole.x))];
    }),
  );
  const keepsWall = (hole: PlacedHole) =>
    holeIssues(hull, links[hole.link], hole, '').length === 0 &&
    (what === 'depth' || isClearOfFaces(hole, links[hole.link], drawn.wall)) &&
    wallOf(hull, hole).thickness >= drawn.wall;
  if (![...next].every(([i, hole]) => hole.link === holes[i].link && keepsWall(hole))) return null;
  const other = { holes: holes.map((hole, i) => next.get(i) ?? hole) };
  if (cures) {
    const floated = refloat(other);
    if (!floated || !cures(floated)) return null;
  }
  return isBetter(parts, refloat, other) ? { says, sets } : null;
}

/** Whether a hole keeps the same wall to the joint faces of its link. */
function isClearOfFaces(hole: PlacedHole, spec: WarnParts['links'][number], wall: Mm): boolean {
  return [hole.mouth, add(hole.mouth, scale(hole.inward, hole.depth))].every((middle) =>
    rim(middle, hole.inward, hole.diameter / 2 + wall).every((point) => betweenFaces(spec, point)),
  );
}

/** Whether one hole is the other's image on the other side, lead and all: only both together keep the bait level. */
function isTwin({ hole: a }: PlacedHole, { hole: b }: PlacedHole): boolean {
  if (a.x !== b.x || a.diameter !== b.diameter || a.depth !== b.depth) return false;
  if (a.lead?.mass !== b.lead?.mass || a.air?.plug !== b.air?.plug) return false;
  const isAcross = a.from === 'port' || a.from === 'starboard';
  if (isAcross) return b.from === (a.from === 'port' ? 'starboard' : 'port') && a.across === b.across;
  return a.from === b.from && a.across !== 0 && a.across === -b.across;
}
