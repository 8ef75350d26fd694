import type { DesignFile } from '../../sim/design/file.ts';
import { wallOf } from '../../sim/mass/wall.ts';
import type { Drawn, WarnParts } from '../../sim/out/warn/parts.ts';
import { makeFloat } from './make-checked-bait.ts';
import { PLAIN_DESIGN } from './make-design.ts';
import { partsOf } from './worked-bait.ts';

/** What a design and its file say, its first setup looked at. */
function drawnFrom(file: DesignFile): Drawn {
  const { joints, hangers, shop, setups } = partsOf(file).design;
  return { joints, hangers, wall: shop.wall, setups, setup: 0, file };
}

/** All that warnings read of a design, its float a quiet one. */
export function warnPartsOf(file: DesignFile): WarnParts {
  const { hull, links, hardware } = partsOf(file);
  return {
    ...quietWarnParts(),
    hull,
    links,
    hardware,
    walls: hardware.holes.map((hole) => wallOf(hull, hole)),
    floats: links.map(() => makeFloat()),
    drawn: drawnFrom(file),
  };
}

/** Two links of the plain bait that rest well, hold no air and have neither holes nor eyes: nothing to be warned of. */
export function quietWarnParts(changes: Partial<WarnParts> = {}): WarnParts {
  const { hull, links, hardware } = partsOf(PLAIN_DESIGN);
  const drawn = drawnFrom(PLAIN_DESIGN);
  return {
    water: { density: 0.001, temperature: 20, salinity: 0, source: 'a table' },
    hull,
    links,
    // without holes no wall is thin, without eyes none stands too shallow and no hook reaches anything
    hardware: { ...hardware, holes: [], eyes: [] },
    walls: [],
    wetted: [],
    floats: [makeFloat(), makeFloat()],
    assembled: makeFloat(),
    target: { assembled: { up: [0, 0, 1], offset: 12, netWet: null }, links: [], checks: [], met: true, offMark: [] },
    // with no hook to change, a gram and a half in reserve is enough
    drawn: { ...drawn, setups: drawn.setups.map((setup) => ({ ...setup, hung: [] })) },
    ...changes,
  };
}
