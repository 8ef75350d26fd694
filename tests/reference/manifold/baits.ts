import { readdirSync, readFileSync } from 'node:fs';
import { readDesignText } from '../../../sim/design/read.ts';
import type { Outcome } from '../../../sim/flow/outcome.ts';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import type { Float } from '../../../sim/hydro/float.ts';
import type { LinkSpec } from '../../../sim/links/cut.ts';
import type { Ledger } from '../../../sim/mass/ledger.ts';
import type { Hardware } from '../../../sim/mass/placed.ts';
import type { Detail, Wetted } from '../../../sim/mesh/wetted.ts';
import { createPipeline } from '../../../sim/pipeline.ts';

const FOLDER = new URL('../../../presets/', import.meta.url);

/** What the engine says of one link. */
export interface LinkOfBait {
  readonly spec: LinkSpec;
  readonly wetted: Wetted;
  readonly ledger: Ledger;
  readonly hung: FloatingBody['hung'];
  readonly float: Float;
}

/** What the engine says of one demo bait in one setup. */
export interface Bait {
  readonly water: number;
  readonly links: readonly LinkOfBait[];
  readonly assembled: Float;
}

/** Every demo bait with each of its setups, as pairs of file name and setup name. */
export const SETUPS: readonly (readonly [string, string])[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .flatMap((name) => designOf(name).setups.map((setup) => [name, setup.name] as const));

function designOf(name: string) {
  return good(readDesignText(readFileSync(new URL(name, FOLDER), 'utf8')));
}

function good<Value>(outcome: Outcome<Value>): Value {
  if (outcome.status !== 'ok') throw new Error(`a demo bait cannot be worked out: ${JSON.stringify(outcome)}`);
  return outcome.value;
}

/** Runs the engine on a demo bait. Throws when any answer is missing. */
export function workOut(name: string, setup: string, detail: Detail): Bait {
  let [water, specs, hung, assembled]: [number?, (readonly LinkSpec[])?, Hardware['hung']?, Float?] = [];
  const wetted: Wetted[] = [];
  const ledgers: Ledger[] = [];
  const floats: Float[] = [];
  for (const step of createPipeline().steps(designOf(name), { setup, detail })) {
    if (step.name === 'water') water = good(step.outcome).density;
    else if (step.name === 'links') specs = good(step.outcome);
    else if (step.name === 'hardware') hung = good(step.outcome).hung;
    else if (step.name === 'wetted') wetted.push(good(step.outcome));
    else if (step.name === 'ledger') ledgers.push(good(step.outcome));
    else if (step.name === 'float') floats.push(good(step.outcome));
    else if (step.name === 'assembled') assembled = good(step.outcome);
    else good<unknown>(step.outcome);
  }
  if (!water || !specs || !hung || !assembled) throw new Error(`${name} gave no answer for "${setup}"`);
  const all = hung;
  const links = specs.map((spec, i) => ({
    spec,
    wetted: wetted[i],
    ledger: ledgers[i],
    hung: all.filter((item) => item.link === i),
    float: floats[i],
  }));
  return { water, links, assembled };
}
