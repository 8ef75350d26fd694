import type { BallastPlan } from './ballast/plan.ts';
import type { SettledPlan } from './ballast/settle.ts';
import type { TargetAnswer } from './ballast/target.ts';
import type { Design, Setup } from './design/design.ts';
import type { Outcome } from './flow/outcome.ts';
import type { Hull } from './hull/hull.ts';
import type { Accuracy } from './hydro/accuracy.ts';
import type { Attitudes } from './hydro/attitudes.ts';
import type { Float } from './hydro/float.ts';
import type { LinkSpec } from './links/cut.ts';
import type { Ledger } from './mass/ledger.ts';
import type { Hardware } from './mass/placed.ts';
import type { Mesh } from './mesh/mesh.ts';
import type { BareSolid, Wetted } from './mesh/wetted.ts';
import type { WaterAnswer } from './tables/waters.ts';
import type { Warning } from './warnings.ts';

/** Answers about the whole bait, by step name. */
export interface BaitAnswers {
  readonly design: Design;
  readonly setup: Setup;
  readonly water: WaterAnswer;
  readonly hull: Hull;
  readonly links: readonly LinkSpec[];
  readonly hardware: Hardware;
  /** true: nothing found against the geometry; a failed outcome lists what was. */
  readonly sound: true;
  readonly assembled: Float;
  readonly target: TargetAnswer;
  readonly warnings: readonly Warning[];
  /** What takes longer comes after all else, and only at full detail. */
  readonly assembledAccuracy: Accuracy;
  readonly assembledAttitudes: Attitudes;
  /** The warnings again with those that accuracy and attitudes add, worst first. */
  readonly allWarnings: readonly Warning[];
  /** Ballast that a shop can drill, and how the bait floats with it. */
  readonly plan: BallastPlan;
  readonly planned: SettledPlan;
}

/** Answers about one link, by step name. */
export interface LinkAnswers {
  readonly mesh: Mesh;
  readonly solid: BareSolid;
  readonly wetted: Wetted;
  readonly ledger: Ledger;
  readonly float: Float;
  /** After all else, and only at full detail. */
  readonly accuracy: Accuracy;
  readonly attitudes: Attitudes;
}

/** One answer on its way out of the pipeline. link: null for an answer about the whole bait. */
export type Step =
  | {
      [Name in keyof BaitAnswers]: {
        readonly name: Name;
        readonly link: null;
        readonly outcome: Outcome<BaitAnswers[Name]>;
      };
    }[keyof BaitAnswers]
  | {
      [Name in keyof LinkAnswers]: {
        readonly name: Name;
        readonly link: number;
        readonly outcome: Outcome<LinkAnswers[Name]>;
      };
    }[keyof LinkAnswers];
