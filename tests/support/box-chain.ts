import { assemble, chainOf } from '../../sim/chain/assemble.ts';
import type { Hinge, YawRange } from '../../sim/chain/hinge.ts';
import type { Chain } from '../../sim/chain/system.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import type { Vec3 } from '../../sim/numerics/vec3.ts';
import { boxMesh } from './box-mesh.ts';
import { treeOf, WATER } from './float-mesh.ts';

/** A link as a box about the datum line, and the point at which its weight counts. */
export interface BoxLink {
  readonly from: number;
  readonly to: number;
  readonly wide: number;
  readonly high: number;
  readonly mass: number;
  readonly centre: Vec3;
}

function boxBody({ from, to, wide, high, mass, centre }: BoxLink): FloatingBody {
  const mesh = boxMesh({ from: [from, -wide / 2, -high / 2], to: [to, wide / 2, high / 2] });
  return { trees: [treeOf(mesh)], waterDensity: WATER, mass, centre, outside: [], hung: [] };
}

/** No play at all: two loops on a pin that fills them. */
const STIFF: Omit<Hinge, 'pivot'> = {
  holder: 'fore',
  loops: [-10, 10],
  room: 0,
  rise: [0, 0],
  jam: 0.5,
  radius: 1,
};

/** A bait of boxes, hinged half way between each two. */
export function boxChain(links: readonly BoxLink[], hinge: Partial<Hinge> = {}): Chain {
  const bodies = links.map(boxBody);
  const hinges = links.slice(1).map((link, j): Hinge => {
    const pivot: Vec3 = [(links[j].to + link.from) / 2, 0, 0];
    return { ...STIFF, pivot, ...hinge };
  });
  return chainOf(bodies, hinges, false, null);
}

/** All links of a chain as one rigid body. */
export function rigidOf({ bodies }: Chain): FloatingBody {
  const mass = bodies.reduce((sum, body) => sum + body.mass, 0);
  const centre = [0, 1, 2].map((axis) => bodies.reduce((sum, body) => sum + body.mass * body.centre[axis], 0) / mass);
  return {
    trees: bodies.flatMap(({ trees }) => trees),
    fins: bodies.flatMap(({ fins }) => fins ?? []),
    waterDensity: bodies[0].waterDensity,
    mass,
    centre: centre as unknown as Vec3,
    outside: bodies.flatMap(({ outside }) => outside),
    hung: bodies.flatMap(({ hung }) => hung),
  };
}

/** How a chain rests from where it does in one piece. */
export function assembled(chain: Chain, reach: YawRange = { port: 0.6, starboard: 0.6 }) {
  const start = floatBody(rigidOf(chain));
  return {
    start,
    ...assemble(
      chain,
      start,
      chain.hinges.map(() => reach),
    ),
  };
}
