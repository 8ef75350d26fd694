import { existsSync, readFileSync } from 'node:fs';
import type { DesignFile } from '../../sim/design/file.ts';
import { readDesignText } from '../../sim/design/read.ts';
import { buildRing } from '../../sim/hull/section.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { linkTree } from '../../sim/hydro/link-tree.ts';
import { loftLink } from '../../sim/mesh/loft.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import { linkTopology } from '../../sim/mesh/topology.ts';
import { goodOf } from '../support/change-file.ts';
import type { AllAnswers } from '../support/worked-bait.ts';

/** The three-link demo bait, in the setup whose head and middle float at the surface. From the top of the checkout. */
export const DEMO = 'presets/slate-shad-140.json';
export const SETUP = 'topwater';

/** null when the file is not there. */
export function readDemo(): DesignFile | null {
  return existsSync(DEMO) ? goodOf(readDesignText(readFileSync(DEMO, 'utf8'))) : null;
}

/** How finely a link is meshed; 4 × bands × steps triangles and a few for its faces and slots. */
export interface Fineness {
  readonly name: string;
  readonly bands: number;
  readonly steps: number;
}

/** The first is what the engine takes while a value is dragged. */
export const SIZES: readonly Fineness[] = [
  { name: '2k', bands: 30, steps: 16 },
  { name: '8k', bands: 60, steps: 32 },
  { name: '20k', bands: 96, steps: 52 },
  { name: '80k', bands: 192, steps: 104 },
];

/** The size the engine answers with, and so the one most targets are for. */
export const ENGINE = '8k';

/** Fine enough to stand for the smooth link: its own error is a sixteenth of the 20k mesh's. */
export const CONVERGED: Fineness = { name: '330k', bands: 400, steps: 208 };

/** A link of the demo, coated, at any fineness. */
export function meshAt({ bait, links }: AllAnswers, link: number, { bands, steps }: Fineness): Mesh {
  const spec = bait.links[link];
  const { skinGrowth, faceGrowth } = links[link].wetted;
  const counts = {
    bands,
    steps,
    foreTip: spec.foreFace === null,
    aftTip: spec.aftFace === null,
    slots: spec.slots.length,
  };
  return {
    topology: linkTopology(counts),
    positions: loftLink(bait.hull, buildRing(bait.hull.section, counts.steps), spec, counts, {
      skin: skinGrowth,
      face: faceGrowth,
    }),
  };
}

/** The link as a floating body: the ledger’s weights, whatever the mesh; its fins, which no size changes, left out. */
export function bodyAt(answers: AllAnswers, link: number, mesh: Mesh): FloatingBody {
  const { ledger } = answers.links[link];
  return {
    trees: [linkTree(mesh)],
    waterDensity: answers.bait.water.density,
    mass: ledger.mass,
    centre: ledger.centre,
    outside: ledger.lines
      .filter((line) => line.outsideVolume > 0)
      .map((line) => ({ volume: line.outsideVolume, at: line.outsideAt })),
    hung: answers.bait.hardware.hung.filter((item) => item.link === link),
  };
}
