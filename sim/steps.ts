import type { Cure, WhatIfRow } from './ballast/advised.ts';
import type { Forgiveness } from './ballast/forgiveness.ts';
import type { LinkPlan } from './ballast/plan.ts';
import type { SettledPlan } from './ballast/settle.ts';
import type { TargetAnswer } from './ballast/target.ts';
import type { BallastPlan } from './ballast/whole.ts';
import type { Assembled } from './chain/assemble.ts';
import type { Folded } from './chain/fold.ts';
import type { Design, Setup } from './design/design.ts';
import type { Outcome } from './flow/outcome.ts';
import type { Hull } from './hull/hull.ts';
import type { Accuracy } from './hydro/accuracy.ts';
import type { Attitudes } from './hydro/attitudes.ts';
import type { Float } from './hydro/float.ts';
import type { LinkSpec } from './links/cut.ts';
import type { KeepOut } from './mass/keep-out.ts';
import type { Ledger } from './mass/ledger.ts';
import type { Hardware } from './mass/placed.ts';
import type { Wall } from './mass/wall.ts';
import type { Mesh } from './mesh/mesh.ts';
import type { BareSolid, Wetted } from './mesh/wetted.ts';
import type { Reach } from './reach/reach.ts';
import type { BaitRoll, LinkRoll } from './roll/roll.ts';
import type { Sinking } from './sinking/sink.ts';
import type { DropFit } from './sinking/timed-drop.ts';
import type { WaterAnswer } from './tables/waters.ts';
import type { Warning } from './warnings.ts';

/** The wood round ballast. */
export interface WallAnswer {
  /** The least wall of each hole, in the order of the hardware's holes. */
  readonly holes: readonly Wall[];
  /** Of each link: where no lead may go. */
  readonly keepOuts: readonly (readonly KeepOut[])[];
}

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
  /** What the setup's timed drop comes to; null: none was timed. */
  readonly drop: DropFit | null;
  /** How it falls; null: it floats or hangs. */
  readonly assembledSinking: Sinking | null;
  readonly target: TargetAnswer;
  readonly warnings: readonly Warning[];
  readonly walls: WallAnswer;
  /** What takes longer comes after all else, and only at full detail. */
  readonly assembledAccuracy: Accuracy;
  readonly assembledAttitudes: Attitudes;
  readonly assembledRoll: BaitRoll;
  /** The warnings again with those that accuracy and attitudes add, worst first. */
  readonly allWarnings: readonly Warning[];
  /** Only at full detail. Ballast that a shop can drill, and how the bait floats with it. */
  readonly ballast: BallastPlan;
  readonly planned: SettledPlan;
  /** Only at full detail. How far each joint swings before something touches, and the whole bait with them. */
  readonly reach: Reach;
  /** Only at full detail. How the bait rests on its hinges, held straight and let go; null: it has no joints. */
  readonly jointed: Assembled | null;
  /** The same as it is folded to either side; null: it has no joints. */
  readonly folded: Folded | null;
}

/** Answers about one link, by step name. */
export interface LinkAnswers {
  readonly mesh: Mesh;
  readonly solid: BareSolid;
  readonly wetted: Wetted;
  readonly ledger: Ledger;
  readonly float: Float;
  /** How it falls alone; null: it floats or hangs. */
  readonly sinking: Sinking | null;
  /** Only at full detail. */
  readonly plan: LinkPlan;
  /** null: it does not stand. */
  readonly forgiveness: Forgiveness | null;
  /** After all else, and only at full detail. */
  readonly accuracy: Accuracy;
  readonly attitudes: Attitudes;
  readonly roll: LinkRoll;
}

/** With what is advised once the answers are known. Both lists are told again as they grow. */
export interface AdvisedBaitAnswers extends BaitAnswers {
  /** What becomes of the setup when one thing is different. */
  readonly whatIfs: readonly WhatIfRow[];
}

export interface AdvisedLinkAnswers extends LinkAnswers {
  /** What would let a link be ballasted that cannot be. */
  readonly cures: readonly Cure[];
}

/** One answer on its way out of the pipeline. link: null for an answer about the whole bait. */
export type Step =
  | {
      [Name in keyof AdvisedBaitAnswers]: {
        readonly name: Name;
        readonly link: null;
        readonly outcome: Outcome<AdvisedBaitAnswers[Name]>;
      };
    }[keyof AdvisedBaitAnswers]
  | {
      [Name in keyof AdvisedLinkAnswers]: {
        readonly name: Name;
        readonly link: number;
        readonly outcome: Outcome<AdvisedLinkAnswers[Name]>;
      };
    }[keyof AdvisedLinkAnswers];
