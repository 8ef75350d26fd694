import type { Cure, WhatIfRow } from '../ballast/advised.ts';
import type { Forgiveness } from '../ballast/forgiveness.ts';
import type { SettledPlan } from '../ballast/settle.ts';
import type { TargetAnswer } from '../ballast/target.ts';
import type { BallastPlan } from '../ballast/whole.ts';
import type { Assembled } from '../chain/assemble.ts';
import type { Folded } from '../chain/fold.ts';
import type { Design, Setup } from '../design/design.ts';
import type { Accuracy } from '../hydro/accuracy.ts';
import type { Attitudes } from '../hydro/attitudes.ts';
import type { Float } from '../hydro/float.ts';
import type { LinkSpec } from '../links/cut.ts';
import type { Ledger } from '../mass/ledger.ts';
import type { Hardware } from '../mass/placed.ts';
import type { BareSolid, Wetted } from '../mesh/wetted.ts';
import type { Reach } from '../reach/reach.ts';
import type { BaitRoll, LinkRoll } from '../roll/roll.ts';
import type { Sinking } from '../sinking/sink.ts';
import type { DropFit } from '../sinking/timed-drop.ts';
import type { WaterAnswer } from '../tables/waters.ts';
import type { Warning } from '../warnings.ts';

/** A bait with all its answers, in house units: what a report is made from. */
export interface CheckedBait {
  readonly design: Design;
  readonly setup: Setup;
  readonly water: WaterAnswer;
  readonly hardware: Hardware;
  /** From nose to tail. */
  readonly links: readonly CheckedLink[];
  readonly assembled: Float;
  readonly assembledAccuracy: Accuracy;
  readonly assembledAttitudes: Attitudes;
  readonly assembledRoll: BaitRoll;
  /** What the setup's timed drop comes to; null: none was timed. */
  readonly drop: DropFit | null;
  /** How it falls; null: it floats or hangs. */
  readonly assembledSinking: Sinking | null;
  readonly target: TargetAnswer;
  readonly warnings: readonly Warning[];
  readonly ballast: BallastPlan;
  readonly planned: SettledPlan;
  readonly reach: Reach;
  /** null: it has no joints. */
  readonly jointed: Assembled | null;
  readonly folded: Folded | null;
  readonly whatIfs: readonly WhatIfRow[];
}

export interface CheckedLink {
  readonly spec: LinkSpec;
  readonly solid: BareSolid;
  readonly wetted: Wetted;
  readonly ledger: Ledger;
  readonly float: Float;
  readonly accuracy: Accuracy;
  readonly attitudes: Attitudes;
  readonly roll: LinkRoll;
  readonly sinking: Sinking | null;
  readonly cures: readonly Cure[];
  readonly forgiveness: Forgiveness | null;
}
