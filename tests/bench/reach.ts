import { readFileSync } from 'node:fs';
import { readDesignText } from '../../sim/design/read.ts';
import { findReach } from '../../sim/reach/reach.ts';
import { jointBlocks, reachByHalving, releaseJoint } from '../reference/manifold/turned.ts';
import { goodOf } from '../support/change-file.ts';
import { degrees, reachPartsOf } from '../support/square-bait.ts';
import { partsOf } from '../support/worked-bait.ts';
import { atLeast, atMost, type Row, timeRow, valueRow } from './rows.ts';
import { timeOf } from './timing.ts';

/** The demo bait with most links. */
const LINKED = 'presets/withy-165.json';
/** A demo bait of four links on pins. */
const PINNED = 'presets/copper-plate-200.json';
/** What halving calls a meeting. */
const NOTHING_MM3 = 1e-4;

/** How long reach takes, and what a library of solids needs for a part of it, asked for one angle after the other. */
export function reachRows(): readonly Row[] {
  const five = reachPartsOf(fileOf(LINKED));
  const four = reachPartsOf(fileOf(PINNED));
  const own = timeOf(() => findReach(four));
  const { joints } = findReach(four);
  const parts = partsOf(fileOf(PINNED));
  let furthest = 0;
  const start = performance.now();
  for (const { joint, pivot, starboard } of joints) {
    const blocks = jointBlocks(parts, joint, pivot);
    const found = reachByHalving(blocks, 1, NOTHING_MM3);
    furthest = Math.max(furthest, Math.abs(found - degrees(starboard.angle)));
    releaseJoint(blocks);
  }
  const library = performance.now() - start;
  return [
    timeRow(
      'reach of a five-link bait: either side, its play, without coats, curled up',
      timeOf(() => findReach(five)),
      'ms',
      atMost(100),
    ),
    timeRow('the same of a four-link bait on pins', own, 'ms', atMost(100)),
    valueRow('to one side alone, as coated, by halving on solids of manifold-3d', library, 'ms', null),
    valueRow('how many times as long', library / own.least, '×', atLeast(10)),
    valueRow('furthest the two are apart', furthest, '°', atMost(0.5)),
  ];
}

function fileOf(path: string) {
  return goodOf(readDesignText(readFileSync(path, 'utf8')));
}
