import type { Design, Setup } from '../../sim/design/design.ts';
import type { DesignFile } from '../../sim/design/file.ts';
import { evaluateDesign } from '../../sim/design/validate.ts';
import { type Issue, type Outcome, SimError } from '../../sim/flow/outcome.ts';
import { buildHull, type Hull } from '../../sim/hull/hull.ts';
import { cutLinks, type LinkSpec } from '../../sim/links/cut.ts';
import { placeFins } from '../../sim/mass/fin.ts';
import { placeHardware } from '../../sim/mass/place.ts';
import type { Hardware } from '../../sim/mass/placed.ts';
import { checkSound } from '../../sim/mass/sound.ts';
import type { Detail } from '../../sim/mesh/wetted.ts';
import { createPipeline, type Pipeline } from '../../sim/pipeline.ts';
import type { BaitAnswers, LinkAnswers } from '../../sim/steps.ts';
import { goodOf } from './change-file.ts';

type Outcomes<Answers> = { readonly [Name in keyof Answers]: Outcome<Answers[Name]> };

/** Every answer to a design by the name of its step, those of a link by its number. */
export interface AllOutcomes {
  readonly bait: Outcomes<BaitAnswers>;
  readonly links: readonly Outcomes<LinkAnswers>[];
}

/** The same where nothing is missing. */
export interface AllAnswers {
  readonly bait: BaitAnswers;
  readonly links: readonly LinkAnswers[];
}

/** What is wanted other than the first setup at full detail from a pipeline without memories. */
interface Wish {
  readonly pipeline?: Pipeline;
  readonly setup?: string | null;
  readonly detail?: Detail;
}

/** Runs a design through to its last step. */
export function outcomesOf(file: DesignFile, wish: Wish = {}): AllOutcomes {
  const { pipeline = createPipeline(), setup = null, detail = 'full' } = wish;
  const bait: Record<string, unknown> = {};
  const links: Record<string, unknown>[] = [];
  for (const { name, link, outcome } of pipeline.steps(file, { setup, detail })) {
    if (link === null) bait[name] = outcome;
    else {
      links[link] ??= {};
      links[link][name] = outcome;
    }
  }
  return { bait, links } as unknown as AllOutcomes;
}

/** Runs a design that can be made. Throws with the issues of the first answer that is not there. */
export function answersOf(file: DesignFile, wish: Wish = {}): AllAnswers {
  const values = (outcomes: object) =>
    Object.fromEntries(Object.entries(outcomes).map(([name, outcome]) => [name, goodOf(outcome)]));
  const { bait, links } = outcomesOf(file, wish);
  return { bait: values(bait), links: links.map(values) } as unknown as AllAnswers;
}

/** What stands before the meshes: the design, its first setup, and where everything is. */
export interface BaitParts {
  readonly design: Design;
  readonly setup: Setup;
  readonly hull: Hull;
  readonly links: readonly LinkSpec[];
  readonly hardware: Hardware;
}

export function partsOf(file: DesignFile): BaitParts {
  const design = goodOf(evaluateDesign(file));
  const [setup] = design.setups;
  const hull = buildHull(design.body);
  const links = cutLinks(design.body.length, design.links, design.joints);
  const hardware = placeHardware(
    hull,
    links,
    design.joints,
    design.hangers,
    setup.hung,
    setup.holes,
    design.fittings,
    design.tails,
    placeFins(hull, links, design.fins),
  );
  return { design, setup, hull, links, hardware };
}

/** What stands against the geometry of a design in its first setup; nothing when it can be made. */
export function soundIssuesOf(file: DesignFile): readonly Issue[] {
  const { design, setup, hull, links, hardware } = partsOf(file);
  try {
    checkSound(hull, links, design.joints, hardware, setup.coats, 0);
    return [];
  } catch (error) {
    if (!(error instanceof SimError)) throw error;
    return error.issues;
  }
}
