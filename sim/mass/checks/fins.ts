import type { Issue } from '../../flow/outcome.ts';
import { type Hull, stationOf } from '../../hull/hull.ts';
import type { LinkSpec } from '../../links/cut.ts';
import { segmentBoxDistance, triangleDistance } from '../../numerics/distance.ts';
import type { Vec3 } from '../../numerics/vec3.ts';
import type { Mm } from '../../units/brand.ts';
import { tabBoxes, tabFloor } from '../fin-tab.ts';
import type { FixedHardware, PlacedFin } from '../placed.ts';
import { outside, type PathOf, rodsOf, slotBox } from './clearance.ts';
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
    .filter((rod) => boxes.some((box) => !outside(rod, box) && segmentBoxDistance(rod.segment, box) <= rod.radius))
    .map((rod) => meeting(rod.name, rod.path));
  const slots = spec.slots
    .filter((slot) => {
      const { low, high } = slotBox(spec, slot);
      return boxes.some((box) => [0, 1, 2].every((axis) => box.low[axis] <= high[axis] && box.high[axis] >= low[axis]));
    })
    .map((slot) => meeting('a hinge slot', slot.path));
  return [...rods, ...slots];
}

/** The loop of a hanger stands clear of a fin's plate, as a ball that it can turn in. */
export function loopIssues(fin: PlacedFin, { eyes }: FixedHardware, pathOf: PathOf): readonly Issue[] {
  return eyes.flatMap((eye, i): readonly Issue[] => {
    const radius = eye.bore / 2 + eye.wire;
    if (eye.kind !== 'hanger' || plateDistance(fin, eye.loop) >= radius) return [];
    const message = `the loop of "${eye.name}", ${mm(2 * radius)} across, stands in "${fin.name}" (${fin.path})`;
    return [{ code: 'hardware/parts-meet', path: pathOf.eye(i), message, hint: 'move one of them, or notch the fin' }];
  });
}

/** Distance of a point from a fin's plate; 0 inside it. */
function plateDistance({ mesh: { positions, topology }, thickness }: PlacedFin, [x, y, z]: Vec3): Mm {
  const corner = (vertex: number) => [positions[3 * vertex], positions[3 * vertex + 2]] as const;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < topology.index.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => corner(topology.index[i + k]));
    least = Math.min(least, triangleDistance([x, z], a, b, c));
    if (least === 0) break;
  }
  return Math.hypot(least, Math.max(0, Math.abs(y) - thickness / 2));
}

function isInOutline(hull: Hull, [x, , z]: Vec3): boolean {
  if (x <= 0 || x > hull.length) return false;
  const { back, belly } = stationOf(hull, x);
  return z > belly && z < back;
}
