import type { Issue } from '../../flow/outcome.ts';
import { type Hull, stationOf } from '../../hull/hull.ts';
import type { LinkSpec } from '../../links/cut.ts';
import {
  type Box,
  cylinderBoxDistance,
  type Plate,
  type Segment,
  segmentPlateDistance,
} from '../../numerics/distance.ts';
import { length, scale, subtract, type Vec3 } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';
import { tabBoxes, tabFloor } from '../fin-tab.ts';
import type { FixedHardware, PlacedFin } from '../placed.ts';
import { type PathOf, rodsOf, slotBox } from './clearance.ts';
import { betweenFaces, mm } from './wood.ts';

/** A fin's tab ends in the wood of its link, clear of slots, shanks, bores and holes. */
export function tabIssues(
  hull: Hull,
  spec: LinkSpec,
  fin: PlacedFin,
  hardware: FixedHardware,
  pathOf: PathOf,
): readonly Issue[] {
  const { tab } = fin;
  if (!tab) return [];
  const path = `${fin.path}.tab_mm`;
  const name = `the tab of "${fin.name}"`;
  if (!tabFloor(tab).every((point) => isInOutline(hull, point) && betweenFaces(spec, point))) {
    const message = `${name}, ${mm(tab.depth)} deep, comes out of link "${spec.name}"`;
    return [{ code: 'fins/tab-too-deep', path, message, hint: 'let it in less deep' }];
  }
  const meeting = (what: string, where: string): Issue => {
    const message = `${name}, ${mm(tab.depth)} deep, runs into ${what} (${where})`;
    return { code: 'hardware/parts-meet', path, message, hint: 'let it in less deep, or move one of them' };
  };
  const boxes = tabBoxes(tab);
  const rods = rodsOf(hardware, spec.index, pathOf)
    .filter((rod) => boxes.some((box) => cylinderBoxDistance({ ...rod.segment, radius: rod.radius }, box) <= 0))
    .map((rod) => meeting(rod.name, rod.path));
  const slots = spec.slots
    .filter((slot) => {
      const sawn = slotBox(spec, slot);
      return boxes.some((box) => overlaps(box, sawn));
    })
    .map((slot) => meeting('a hinge slot', slot.path));
  return [...rods, ...slots];
}

/** A hanger stands clear of a fin's plate: its loop as a ball that it can turn in, and its wire down to the wood. */
export function hangerIssues(fin: PlacedFin, { eyes }: FixedHardware, pathOf: PathOf): readonly Issue[] {
  const plates = platesOf(fin);
  return eyes.flatMap((eye, i): readonly Issue[] => {
    if (eye.kind !== 'hanger') return [];
    const meets = (to: Vec3, radius: Mm) => {
      const segment = { from: eye.loop, to };
      return plates.some((plate) => !beyond(segment, radius, plate) && segmentPlateDistance(segment, plate) < radius);
    };
    const radius = eye.bore / 2 + eye.wire;
    // taken as round-ended: its end comes to the skin and not beyond
    const end = Math.min(eye.wire / 2, length(subtract(eye.entry, eye.loop)));
    const part = meets(eye.loop, radius)
      ? `the loop of "${eye.name}", ${mm(2 * radius)} across,`
      : meets(subtract(eye.entry, scale(eye.inward, end)), eye.wire / 2)
        ? `the shank of "${eye.name}", ${mm(eye.wire)} thick,`
        : null;
    if (part === null) return [];
    const message = `${part} stands in "${fin.name}" (${fin.path}); it must stand clear of the plate`;
    return [{ code: 'hardware/parts-meet', path: pathOf.eye(i), message, hint: 'move one of them, or notch the fin' }];
  });
}

/** True only where a bar cannot meet a plate: they lie apart along x or z. Spares nearly every plate the long search. */
function beyond({ from, to }: Segment, radius: Mm, { corners: [a, b, c] }: Plate): boolean {
  const apart = (p: Mm, q: Mm, one: Mm, two: Mm, three: Mm) =>
    Math.min(p, q) - radius > Math.max(one, two, three) || Math.max(p, q) + radius < Math.min(one, two, three);
  return apart(from[0], to[0], a[0], b[0], c[0]) || apart(from[2], to[2], a[1], b[1], c[1]);
}

/** Tabs of different fins do not meet in the wood. */
export function tabsMeeting(fins: readonly PlacedFin[]): readonly Issue[] {
  return fins.flatMap((fin, i) =>
    fins.slice(0, i).flatMap((other): readonly Issue[] => {
      if (fin.path === other.path || fin.link !== other.link || !fin.tab || !other.tab) return [];
      const others = tabBoxes(other.tab);
      if (!tabBoxes(fin.tab).some((box) => others.some((one) => overlaps(box, one)))) return [];
      const message = `the tab of "${fin.name}", ${mm(fin.tab.depth)} deep, runs into the tab of "${other.name}", ${mm(other.tab.depth)} deep (${other.path}.tab_mm)`;
      const hint = 'let one of them in less deep';
      return [{ code: 'hardware/parts-meet', path: `${fin.path}.tab_mm`, message, hint }];
    }),
  );
}

/** Touching counts as meeting. */
function overlaps(a: Box, b: Box): boolean {
  return [0, 1, 2].every((axis) => a.low[axis] <= b.high[axis] && a.high[axis] >= b.low[axis]);
}

/** A fin's plate in three-cornered pieces; each flank of its mesh, and its rim, seen from the side. */
function platesOf({ mesh: { positions, topology }, thickness }: PlacedFin): readonly Plate[] {
  const corner = (vertex: number) => [positions[3 * vertex], positions[3 * vertex + 2]] as const;
  return Array.from({ length: topology.index.length / 3 }, (_, i): Plate => {
    const [a, b, c] = topology.index.subarray(3 * i, 3 * i + 3);
    return { corners: [corner(a), corner(b), corner(c)], thickness };
  });
}

function isInOutline(hull: Hull, [x, , z]: Vec3): boolean {
  if (x <= 0 || x > hull.length) return false;
  const { back, belly } = stationOf(hull, x);
  return z > belly && z < back;
}
