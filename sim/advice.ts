import { acceptHoles } from './ballast/accept.ts';
import type { Cure, WhatIfRow } from './ballast/advised.ts';
import { type PinLoad, planChamber, planTogether } from './ballast/carry.ts';
import { type CureKind, cureTrials } from './ballast/cures.ts';
import { curlWith } from './ballast/curl.ts';
import { needOf } from './ballast/need.ts';
import { type BaitParts, holesBefore, keptLedger, type LinkParts, type LinkPlan, planLink } from './ballast/plan.ts';
import { type SettledPlan, settlePlan } from './ballast/settle.ts';
import { type WhatIf, whatIfsOf } from './ballast/what-ifs.ts';
import { mergedHoles, namedApart } from './ballast/whole.ts';
import type { Target } from './design/design.ts';
import { type ProposedEdit, withEdit } from './design/edit.ts';
import type { DesignFile } from './design/file.ts';
import { valueAt } from './design/place.ts';
import { ok } from './flow/outcome.ts';
import { isSame, share } from './flow/share.ts';
import { bodyOf } from './hydro/bait-body.ts';
import type { Float } from './hydro/float.ts';
import { linkTrees } from './hydro/link-tree.ts';
import { createPipeline, type Pipeline, type Request } from './pipeline.ts';
import type { Sinking } from './sinking/sink.ts';
import type { BaitAnswers, LinkAnswers, Step } from './steps.ts';
import { METALS } from './tables/metals.ts';
import type { Gram, Radian } from './units/brand.ts';
import { radianFromDegree } from './units/convert.ts';

/** What a float test asks before pins are glued in. Common practice. */
const LEVEL_RAD: Radian = radianFromDegree(2);

/**
 * The recipe with advice after it, at full detail: for each link that cannot be ballasted what would cure that, and what
 * becomes of the setup in other water, with other hooks, coats and wood. Each is a change of the design that runs through
 * the same recipe. Both lists are told again as they grow, so that whoever drains them can stop between two changes.
 */
export function createAdvisor(): Pipeline {
  const main = createPipeline();
  // changed designs have a memory of their own: what they share with the design is worked out once for all of them
  const aside = createPipeline();
  let last: { readonly file: DesignFile; readonly setup: string | null; readonly told: readonly Step[] } | null = null;

  function* steps(file: DesignFile, request: Request): Generator<Step, void, void> {
    const run = emptyRun();
    for (const step of main.steps(file, request)) {
      note(run, step);
      yield step;
    }
    if (request.detail === 'drag') return;
    if (last?.file === file && last.setup === request.setup) {
      yield* last.told;
      return;
    }
    const told: Step[] = [];
    /** What is told last of a list is kept, with the parts of the last design's that it came out equal to. */
    function* keep(list: Iterable<Step>): Generator<Step, void, void> {
      const step = yield* toLast(list);
      const before = last?.told.find(({ name, link }) => name === step.name && link === step.link);
      const kept = { ...step, outcome: share(before?.outcome, step.outcome) } as Step;
      told.push(kept);
      yield kept;
    }
    const known = plannedOf(run);
    const parts = known && { bait: baitPartsOf(known), links: linkPartsOf(known) };
    const done: Trials = new Map();
    for (const { index } of run.bait.links ?? []) {
      yield* keep(known && parts ? curesOf(file, known, parts, index, done) : blocked('cures', index));
    }
    yield* keep(known ? rowsOf(file, known) : blocked('whatIfs', null));
    last = { file, setup: request.setup, told };
  }

  function* curesOf(
    file: DesignFile,
    run: Planned,
    { bait, links }: BallastParts,
    index: number,
    done: Trials,
  ): Generator<Step, void, void> {
    const cures: Cure[] = [];
    const told = (): Step => ({ name: 'cures', link: index, outcome: ok([...cures]) });
    yield told();
    const plan = run.ballast.links[index];
    if (plan.state !== 'cannot') return;
    const { design, setup } = run;
    // what helps one link may help the others that cannot be ballasted: then all are planned anew
    const isAlone = run.ballast.links.filter(({ state }) => state === 'cannot').length === 1;
    const has = (kind: CureKind) => cures.some((cure) => cure.kind === kind);
    const withHoles = (
      kind: CureKind,
      { says, sets }: ProposedEdit,
      plans: readonly LinkPlan[],
      pin: PinLoad | null,
    ): Cure | null => {
      const named = namedApart(links, plans);
      const holes = mergedHoles(links, named);
      const settled = settlePlan({
        ...bait,
        links,
        holes,
        target: setup.target,
        linkTargets: setup.linkTargets,
        length: design.body.length,
        timed: run.drop?.kind === 'fitted' ? run.drop.timed : null,
      });
      const [link, { assembled, target }] = [settled.floats[index], settled];
      const loaded = pin && { ...pin, curl: curlWith({ ...bait, links }, settled, design.joints, run.reach) };
      if (!liesAsAimed(setup.target, assembled, settled.assembledSinking)) return null;
      const lead = plans[index].holes.reduce((sum, hole) => sum + (hole.lead?.mass ?? 0), 0);
      const accepted = acceptHoles(file, design, setup, holes);
      // what stands in the file already cures nothing any more
      if (sets.length === 0 && accepted.sets.every(({ path, value }) => isSame(valueAt(file, path), value)))
        return null;
      const edit = { says, sets: [...sets, ...accepted.sets] };
      return {
        kind,
        edit,
        after: { link, assembled, speeds: speedsOf(settled, index), lead, met: target.met, pin: loaded },
      };
    };

    for (const { joint, beside } of pinnedNeighbours(run, index)) {
      if (has('neighbour')) break;
      const together = planTogether(bait, links[index], plan, links[beside], design.joints[joint].x);
      if (!together) continue;
      const plans = run.ballast.links.with(index, together.own).with(beside, together.neighbour);
      const says = `put the rest of its lead into ${links[beside].spec.name}, and let the pin carry the difference`;
      const cure = withHoles('neighbour', { says, sets: [] }, plans, together.pin);
      if (cure) cures.push(cure);
      yield told();
    }
    const hollowed = planChamber(bait, links[index], plan);
    if (hollowed) {
      const says = `seal an air chamber into ${links[index].spec.name}, and ballast it round that`;
      const cure = withHoles('chamber', { says, sets: [] }, run.ballast.links.with(index, hollowed), null);
      if (cure) cures.push(cure);
      yield told();
    }
    for (const { kind, edit, shop } of cureTrials({ file, design, setup, bait, link: links[index], plan })) {
      if (has(kind)) continue;
      // other tools in the shop leave the bait as it is: whether they help this link is soon told
      const inShop = shop && planLink({ ...bait, shop }, links[index]);
      const cure =
        inShop?.state === 'cannot'
          ? null
          : inShop && isAlone
            ? withHoles(kind, edit, run.ballast.links.with(index, inShop), null)
            : tried(file, run, index, kind, edit, done);
      if (cure) cures.push(cure);
      yield told();
    }
  }

  /** A change run through the recipe; null where the link still cannot be ballasted, or the bait not be made. */
  function tried(
    file: DesignFile,
    { setup }: Planned,
    index: number,
    kind: CureKind,
    edit: ProposedEdit,
    done: Trials,
  ): Cure | null {
    const changed = withEdit(file, edit);
    const key = JSON.stringify(edit.sets);
    const run = done.get(key) ?? runThrough(changed, setup.name, index);
    if (!run) return null;
    done.set(key, run);
    const { design, setup: now, ballast, planned } = run.bait;
    if (!design || !now || !ballast || !planned || ballast.links[index].state === 'cannot') return null;
    const link = planned.floats[index];
    if (!liesAsAimed(now.target, link, planned.sinkings[index])) return null;
    const accepted = acceptHoles(changed, design, now, ballast.holes);
    return {
      kind,
      edit: { says: edit.says, sets: [...edit.sets, ...accepted.sets] },
      after: {
        link,
        assembled: planned.assembled,
        speeds: speedsOf(planned, index),
        lead: ballast.links[index].lead,
        met: planned.target.met,
        pin: null,
      },
    };
  }

  /** A changed design up to how it floats as planned; null as soon as that one link cannot be ballasted. */
  function runThrough(changed: DesignFile, setup: string, index: number): Run | null {
    const run = emptyRun();
    for (const step of aside.steps(changed, { setup, detail: 'full' })) {
      if (step.outcome.status === 'failed') return null;
      note(run, step);
      if (step.name === 'plan' && step.link === index && run.links[index].plan?.state === 'cannot') return null;
      if (step.name === 'planned') break;
    }
    return run;
  }

  function* rowsOf(file: DesignFile, run: Planned): Generator<Step, void, void> {
    const rows: WhatIfRow[] = [];
    const told = (): Step => ({ name: 'whatIfs', link: null, outcome: ok([...rows]) });
    yield told();
    const leadNow = leadWanted(run);
    for (const question of whatIfsOf(file, run.design, run.setup)) {
      const row = answered(file, run, question, leadNow);
      if (row) rows.push(row);
      yield told();
    }
  }

  function answered(
    file: DesignFile,
    now: Planned,
    { name, edit, sameTarget }: WhatIf,
    leadNow: Gram,
  ): WhatIfRow | null {
    const run = emptyRun();
    const changed = withEdit(withEdit(file, weighedDrop(now)), edit);
    for (const step of aside.steps(changed, { setup: now.setup.name, detail: 'full' })) {
      if (step.outcome.status === 'failed') return null;
      note(run, step);
      if (step.name === 'target') break;
    }
    const { assembled, assembledSinking: sinking } = run.bait;
    if (!assembled || sinking === undefined) return null;
    const before = { float: now.assembled, sinking: now.assembledSinking };
    if (!sameTarget) return { ...rowOf(name, { float: assembled, sinking }, before), lead: null };
    const floated = floatedOf(run);
    if (!floated) return null;
    const mass = leadWanted(floated);
    return { ...rowOf(name, before, before), lead: { mass, change: mass - leadNow } };
  }

  return { steps };
}

/** What has been told of a design. */
interface Run {
  readonly bait: Partial<BaitAnswers>;
  readonly links: Partial<LinkAnswers>[];
}

/** What changes came to that were seen through: a change of the shop may be tried for one link after another. */
type Trials = Map<string, Run>;

function emptyRun(): Run {
  return { bait: {}, links: [] };
}

function note({ bait, links }: Run, { name, link, outcome }: Step): void {
  if (outcome.status !== 'ok') return;
  if (link === null) Object.assign(bait, { [name]: outcome.value });
  else {
    links[link] ??= {};
    Object.assign(links[link], { [name]: outcome.value });
  }
}

const FLOATED = [
  'design',
  'setup',
  'water',
  'hull',
  'links',
  'hardware',
  'assembled',
  'drop',
  'assembledSinking',
  'target',
] as const;
type Floated = Pick<BaitAnswers, (typeof FLOATED)[number]> & {
  readonly made: readonly Pick<LinkAnswers, 'solid' | 'wetted'>[];
};
/** What the planner is given of a bait. */
interface BallastParts {
  readonly bait: BaitParts;
  readonly links: readonly LinkParts[];
}

type Planned = Floated & Pick<BaitAnswers, 'ballast' | 'planned' | 'reach'>;

/** All that is known of a bait that floats; null where something stands against it. */
function floatedOf({ bait, links }: Run): Floated | null {
  const isWhole =
    FLOATED.every((name) => bait[name] !== undefined) && links.every(({ solid, wetted }) => solid && wetted);
  return isWhole ? ({ ...bait, made: links } as Floated) : null;
}

function plannedOf(run: Run): Planned | null {
  return run.bait.ballast && run.bait.planned && run.bait.reach ? (floatedOf(run) as Planned | null) : null;
}

function blocked(name: 'cures' | 'whatIfs', link: number | null): Iterable<Step> {
  return [{ name, link, outcome: { status: 'blocked', by: ['planned'] } } as Step];
}

/** Tells everything, and gives what was told last. */
function* toLast(steps: Iterable<Step>): Generator<Step, Step, void> {
  let last: Step | null = null;
  for (const step of steps) {
    if (last) yield last;
    last = step;
  }
  if (!last) throw new Error('an advice that tells nothing');
  return last;
}

function baitPartsOf({ hull, water, design: { wood, shop }, setup: { coats } }: Floated): BaitParts {
  return { hull, water, wood, shop, coats };
}

function linkPartsOf({ design, setup, links, made, hardware, target }: Floated): readonly LinkParts[] {
  return links.map((spec, i): LinkParts => {
    const own = <Item extends { readonly link: number }>(items: readonly Item[]) =>
      items.filter(({ link }) => link === i);
    const fins = own(hardware.fins);
    const { solid, wetted } = made[i];
    return {
      spec,
      link: design.links[i],
      solid,
      wetted,
      trees: linkTrees(wetted.mesh, fins),
      hardware: {
        eyes: own(hardware.eyes),
        pins: own(hardware.pins),
        holes: own(hardware.holes),
        fittings: own(hardware.fittings),
        fins,
        finFaults: hardware.finFaults,
      },
      hung: own(hardware.hung),
      aim: target.links[i],
      likes: holesBefore(design.setups, setup, design.joints, i),
    };
  });
}

/** Links that a hinge pin joins to this one: the nearer to the middle of the bait first, where there is more wood. */
function pinnedNeighbours({ links, hardware }: Floated, index: number): readonly { joint: number; beside: number }[] {
  const pinned = new Set(hardware.pins.map(({ joint }) => joint));
  const sides = [
    { joint: index - 1, beside: index - 1 },
    { joint: index, beside: index + 1 },
  ].filter(({ joint, beside }) => pinned.has(joint) && beside >= 0 && beside < links.length);
  const middle = (links.length - 1) / 2;
  return sides.toSorted((a, b) => Math.abs(a.beside - middle) - Math.abs(b.beside - middle));
}

/** Within what a float test asks of trim and heel: at rest, or in the fall where a sinking speed is aimed at. */
function liesAsAimed({ kind, trim }: Target, float: Float, sinking: Sinking | null): boolean {
  const lies = kind === 'sink' && sinking ? sinking : float;
  return Math.abs(lies.trim - trim) <= LEVEL_RAD && Math.abs(lies.heel) <= LEVEL_RAD;
}

function speedsOf({ sinkings, assembledSinking }: SettledPlan, index: number): Cure['after']['speeds'] {
  return { link: sinkings[index]?.speed ?? null, assembled: assembledSinking?.speed ?? null };
}

/** A timed drop was of the bait as it is: what is changed must not change what it weighed then. */
function weighedDrop({ design, setup, assembled }: Planned): ProposedEdit {
  const { drop } = setup;
  const says = 'keep what the dropped bait weighed';
  if (drop === null || drop.netWet !== null || !(assembled.netWet > 0)) return { says, sets: [] };
  const index = design.setups.findIndex(({ name }) => name === setup.name);
  return { says, sets: [{ path: `setups.${index}.drop.net_wet_g`, value: assembled.netWet }] };
}

/** Lead that all links together want, each for its aim: N ρ_lead/(ρ_lead - ρ_wood), the share of lead that counts in wood. */
function leadWanted(floated: Floated): Gram {
  const bait = baitPartsOf(floated);
  const lead = bait.shop.lead[0]?.density ?? METALS.lead.value;
  return linkPartsOf(floated).reduce((sum, parts) => {
    const { net } = needOf(bodyOf([parts.trees], [keptLedger(bait, parts)], parts.hung, bait.water), parts.aim);
    const wood = parts.link.density ?? bait.wood.density;
    return sum + Math.max(0, net / (1 - wood / lead));
  }, 0);
}

/** A whole bait, or a link, as it rests and falls. */
interface Riding {
  readonly float: Float;
  readonly sinking: Sinking | null;
}

function rowOf(name: string, { float: after, sinking }: Riding, was: Riding): Omit<WhatIfRow, 'lead'> {
  const before = was.float;
  const [foot, footBefore] = [sinking, was.sinking].map((falls) => falls?.firstFoot[1] ?? null);
  return {
    name,
    state: after.state,
    netWet: after.netWet,
    trim: after.trim,
    proud: after.proud,
    firstFoot: foot,
    change: {
      netWet: after.netWet - before.netWet,
      trim: after.trim - before.trim,
      proud: after.proud === null || before.proud === null ? null : after.proud - before.proud,
      firstFoot: foot === null || footBefore === null ? null : foot - footBefore,
    },
  };
}
