import type { WarnParts } from '../../sim/out/warn.ts';
import { makeFloat } from './make-checked-bait.ts';
import { PLAIN_DESIGN } from './make-design.ts';
import { partsOf } from './worked-bait.ts';

/** Two links of the plain bait that rest well, hold no air and have no holes: nothing to be warned of. */
export function quietWarnParts(changes: Partial<WarnParts> = {}): WarnParts {
  const { hull, links, hardware } = partsOf(PLAIN_DESIGN);
  return {
    water: { density: 0.001, temperature: 20, salinity: 0, source: 'a table' },
    hull,
    links,
    // without holes no wall is thin
    hardware: { ...hardware, holes: [] },
    wetted: [],
    floats: [makeFloat(), makeFloat()],
    assembled: makeFloat(),
    target: { assembled: { up: [0, 0, 1], offset: 12, netWet: null }, links: [], checks: [], met: true, offMark: [] },
    ...changes,
  };
}
