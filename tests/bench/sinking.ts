import { readFileSync } from 'node:fs';
import type { DesignFile } from '../../sim/design/file.ts';
import { linkTrees } from '../../sim/hydro/link-tree.ts';
import { fallPartsOf } from '../../sim/sinking/fall-parts.ts';
import { sinkBody } from '../../sim/sinking/sink.ts';
import { fitDrop } from '../../sim/sinking/timed-drop.ts';
import { answersOf } from '../support/worked-bait.ts';
import { atMost, type Row, timeRow } from './rows.ts';
import { timeOf } from './timing.ts';

const DEMOS = ['barn-door-180', 'slate-shad-140', 'copper-plate-200'] as const;
const FALL_MS = 15;
const DROP_MS = 40;

/** The fall of a whole bait, and a timed drop fitted to it. */
export function sinkingRows(): readonly Row[] {
  return DEMOS.flatMap((demo) => {
    const file = JSON.parse(readFileSync(`presets/${demo}.json`, 'utf8')) as DesignFile;
    const { bait, links } = answersOf(file, { setup: 'slow-sink' });
    const { hardware, water, assembled } = bait;
    const trees = links.map(({ wetted }, i) =>
      linkTrees(
        wetted.mesh,
        hardware.fins.filter(({ link }) => link === i),
      ),
    );
    const ledgers = links.map(({ ledger }) => ledger);
    const { whole } = fallPartsOf(trees, ledgers, hardware.hung, water, null);
    const fall = timeOf(() => sinkBody(whole, assembled));
    const drop = timeOf(() => fitDrop(whole, { distance: 1000, time: 9, netWet: null }));
    return [
      timeRow(`fall of ${links.length} links, ${demo}`, fall, 'ms', atMost(FALL_MS)),
      timeRow(`timed drop, ${links.length} links, ${demo}`, drop, 'ms', atMost(DROP_MS)),
    ];
  });
}
