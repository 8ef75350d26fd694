import { readFileSync } from 'node:fs';
import { createAdvisor } from '../../sim/advice.ts';
import { planLink } from '../../sim/ballast/plan.ts';
import { planBallast } from '../../sim/ballast/whole.ts';
import type { DesignFile } from '../../sim/design/file.ts';
import { ballastPartsOf } from '../support/planned-bait.ts';
import { answersOf } from '../support/worked-bait.ts';
import { atMost, type Row, timeRow, valueRow } from './rows.ts';
import { timeOf } from './timing.ts';

/** Demos of two to five links. */
const DEMOS = ['barn-door-180', 'slate-shad-140', 'millpond-280', 'copper-plate-200', 'withy-165'] as const;
const PLAN_MS = 300;
const CURE_MS = 50;
const TABLE_MS = 200;
/** With so much wood round its lead the demo has links that cannot be ballasted, and cures are looked for. */
const CURED = { demo: 'slate-shad-140', wall_mm: 3 } as const;

/** The ballast plan of demos of two to five links, what a cure takes, and the table of what-ifs. */
export function ballastRows(): readonly Row[] {
  return [...DEMOS.flatMap(planRows), ...adviceRows()];
}

function read(demo: string): DesignFile {
  return JSON.parse(readFileSync(`presets/${demo}.json`, 'utf8')) as DesignFile;
}

function planRows(demo: string): readonly Row[] {
  const file = read(demo);
  return file.setups.map(({ name }) => {
    const { links, ...bait } = ballastPartsOf(answersOf(file, { setup: name }));
    // what was laid out for one plan is kept for the next of the same link: new objects begin anew
    const time = timeOf(() => {
      const [fresh, shared] = [links.map((link) => ({ ...link })), { ...bait }];
      const alone = fresh.map((link) => planLink(shared, link));
      return planBallast(shared, fresh, 0, alone);
    });
    return timeRow(`plan, ${links.length} links, ${demo}, ${name}`, time, 'ms', atMost(PLAN_MS));
  });
}

/** Time between one telling and the next: each change of the design is told of once it has been through the recipe. */
function adviceRows(): readonly Row[] {
  const file = read(CURED.demo);
  const tight = { ...file, shop: { ...file.shop, wall_mm: CURED.wall_mm } };
  const cures: number[] = [];
  const tables: number[] = [];
  for (let repeat = 0; repeat < 6; repeat++) {
    let [last, table] = [0, 0];
    const advisor = createAdvisor();
    for (const { name } of advisor.steps(tight, { setup: null, detail: 'full' })) {
      const now = performance.now();
      // the first runs have their code to compile
      if (name === 'cures' && last > 0 && repeat > 1) cures.push(now - last);
      if (name === 'whatIfs') table ||= now;
      last = name === 'cures' ? now : 0;
    }
    if (repeat > 1) tables.push(performance.now() - table);
  }
  const mean = cures.reduce((sum, time) => sum + time, 0) / cures.length;
  const label = `${CURED.demo}, ${CURED.wall_mm} mm of wood`;
  return [
    valueRow(`a cure, on average of ${cures.length}, ${label}`, mean, 'ms', atMost(CURE_MS)),
    valueRow(`all what-ifs of a setup, ${label}`, Math.min(...tables), 'ms', atMost(TABLE_MS)),
  ];
}
