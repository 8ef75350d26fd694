import { readdirSync, readFileSync } from 'node:fs';
import { readDesignText } from '../../../sim/design/read.ts';
import type { FloatingBody } from '../../../sim/hydro/body.ts';
import type { Float } from '../../../sim/hydro/float.ts';
import type { LinkSpec } from '../../../sim/links/cut.ts';
import type { Ledger } from '../../../sim/mass/ledger.ts';
import type { PlacedFin } from '../../../sim/mass/placed.ts';
import type { Detail, Wetted } from '../../../sim/mesh/wetted.ts';
import { goodOf } from '../../support/change-file.ts';
import { answersOf } from '../../support/worked-bait.ts';

const FOLDER = new URL('../../../presets/', import.meta.url);

/** What the engine says of one link. */
export interface LinkOfBait {
  readonly spec: LinkSpec;
  readonly wetted: Wetted;
  readonly ledger: Ledger;
  readonly hung: FloatingBody['hung'];
  readonly fins: readonly PlacedFin[];
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

export function designOf(name: string) {
  return goodOf(readDesignText(readFileSync(new URL(name, FOLDER), 'utf8')));
}

/** Runs the engine on a demo bait. Throws when any answer is missing. */
export function workOut(name: string, setup: string, detail: Detail): Bait {
  const { bait, links } = answersOf(designOf(name), { setup, detail });
  return {
    water: bait.water.density,
    links: links.map(({ wetted, ledger, float }, i) => ({
      spec: bait.links[i],
      wetted,
      ledger,
      hung: bait.hardware.hung.filter((item) => item.link === i),
      fins: bait.hardware.fins.filter((fin) => fin.link === i),
      float,
    })),
    assembled: bait.assembled,
  };
}
