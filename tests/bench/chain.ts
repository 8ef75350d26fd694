import { readFileSync } from 'node:fs';
import { assemble } from '../../sim/chain/assemble.ts';
import { foldBait } from '../../sim/chain/fold.ts';
import type { YawRange } from '../../sim/chain/hinge.ts';
import type { JointedBait } from '../../sim/chain/jointed-bait.ts';
import { energyOf, JOINT, ROOT, stepped, straightIn } from '../../sim/chain/system.ts';
import type { DesignFile } from '../../sim/design/file.ts';
import type { Radian } from '../../sim/units/brand.ts';
import { minimise } from '../support/generic-minimiser.ts';
import { jointedOf } from '../support/jointed-bait.ts';
import { answersOf } from '../support/worked-bait.ts';
import { atLeast, atMost, type Row, timeRow, valueRow } from './rows.ts';
import { timeInTurn, timeOf } from './timing.ts';

/** Five links, and two that curl by themselves. */
const DEMOS = ['withy-165', 'tin-whistle-90', 'copper-plate-200'] as const;
const ASSEMBLED_MS = 20;
const FOLD_MS = 300;
/** The same for every joint, so that nothing else is timed. */
const REACH: Radian = 0.5;

/** How a jointed bait rests, held straight and let go, and folded to both sides. */
export function chainRows(): readonly Row[] {
  return DEMOS.flatMap((demo): readonly Row[] => {
    const file = JSON.parse(readFileSync(`presets/${demo}.json`, 'utf8')) as DesignFile;
    const { chain, start } = jointedOf(answersOf(file));
    const reach = chain.hinges.map((): YawRange => ({ port: REACH, starboard: REACH }));
    const what = `${chain.bodies.length} links, ${demo}`;
    const solved = timeOf(() => assemble(chain, start, reach));
    const folded = timeOf(() => foldBait(chain, start, reach));
    return [
      timeRow(`assembled, ${what}`, solved, 'ms', atMost(ASSEMBLED_MS)),
      timeRow(`folded both ways, ${what}`, folded, 'ms', atMost(FOLD_MS)),
      ...(demo === DEMOS[1] ? genericRows({ chain, start }, what) : []),
    ];
  });
}

/** The straight bait's rest by a minimiser that knows nothing of it, its play walled by a penalty. */
function genericRows({ chain, start }: JointedBait, what: string): readonly Row[] {
  if (start.offset === null) return [];
  const state = straightIn(start.up, start.offset, chain.hinges.length);
  const about = [chain.hinges[0].pivot[0], 0, 0] as const;
  const root: readonly number[] = [ROOT.heave, ROOT.tiltX, ROOT.tiltY];
  const free = root.concat(
    chain.hinges.flatMap((_, j) =>
      [JOINT.shiftX, JOINT.shiftY, JOINT.rise, JOINT.pitch, JOINT.roll].map((k) => ROOT.size + JOINT.size * j + k),
    ),
  );
  const mass = chain.bodies.reduce((sum, body) => sum + body.mass, 0);
  const energy = (x: readonly number[]): number => {
    const step = new Float64Array(ROOT.size + JOINT.size * chain.hinges.length);
    free.forEach((k, i) => {
      step[k] = x[i];
    });
    const next = stepped(state, about, step);
    let over = 0;
    chain.hinges.forEach(({ loops, room, rise }, j) => {
      const { shift, pitch, roll, rise: risen } = next.joints[j];
      for (const z of loops) over += Math.max(0, Math.hypot(shift[0] + z * pitch, shift[1] - z * roll) - room) ** 2;
      over += Math.max(0, -rise[0] - risen, risen - rise[1]) ** 2;
    });
    return energyOf(chain, next) + 1e3 * mass * over;
  };
  const held = chain.hinges.map((): YawRange => ({ port: 0, starboard: 0 }));
  const run = () =>
    minimise(
      energy,
      free.map(() => 0),
      1e-9 * mass,
    );
  const [ours, generic] = timeInTurn([() => assemble(chain, start, held), run]);
  const apart = (run().value - assemble(chain, start, held).straight.energy) / mass;
  return [
    timeRow(`held straight, ${what}`, ours, 'ms', null),
    timeRow(`held straight, ${what}: a generic minimiser`, generic, 'ms', null),
    valueRow(`held straight, ${what}: generic over ours`, generic.least / ours.least, '×', atLeast(5)),
    valueRow(`held straight, ${what}: it rests lower or higher by`, Math.abs(apart), 'mm', atMost(0.01)),
  ];
}
