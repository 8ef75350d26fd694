import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { AdvisedBaitAnswers, AdvisedLinkAnswers, Mesh, Outcome, Step, Topology } from '../../sim/index.ts';
import { type Detail, type Report, stepKey } from './protocol.ts';

/** Outcomes about the whole bait by name; one that a run did not come to is absent. */
export type BaitOutcomes = { readonly [Name in keyof AdvisedBaitAnswers]?: Outcome<AdvisedBaitAnswers[Name]> };
/** Outcomes about one link by name. */
export type LinkOutcomes = { readonly [Name in keyof AdvisedLinkAnswers]?: Outcome<AdvisedLinkAnswers[Name]> };

/** What follows from the design: never saved, always remade. */
export interface Answers {
  /** The newest design asked for, and the design that these answers belong to; 0: none yet. */
  readonly askedFor: number;
  readonly heldFor: number;
  /** heldFor === askedFor: nothing shown is out of date. */
  readonly fresh: boolean;
  readonly detail: Detail;
  /** false: some of what takes longer is yet to come. */
  readonly done: boolean;
  readonly bait: BaitOutcomes;
  /** From nose to tail. */
  readonly links: readonly LinkOutcomes[];
  /**
   * What is known of the last run of each detail, from which what is not sent again is taken: coarse and full runs take
   * turns, and a run that is not done has not yet driven out the rest of the one before.
   */
  readonly runs: { readonly [D in Detail]: Run };
  readonly lastGood: LastGood;
  /** As the last full run left it: a drag does not touch it. */
  readonly settled: LastGood;
  /** A bug in the sums, in words; null while all is well. */
  readonly fault: string | null;
}

/**
 * Values to keep in sight, dimmed, while the newest design cannot be worked out. What makes up the picture (links,
 * hardware, assembled, and every link's answers) changes only as a whole: never a new body in an old attitude. What takes
 * longer (how good the sums are, how else it can rest, how to ballast it) stays from the run before, of the same bait,
 * until the newest comes to it.
 */
export interface LastGood {
  readonly bait: Partial<AdvisedBaitAnswers>;
  readonly links: readonly Partial<AdvisedLinkAnswers>[];
}

/** The outcomes of one run. */
export interface Run {
  readonly bait: BaitOutcomes;
  readonly links: readonly LinkOutcomes[];
}

const NO_RUN: Run = { bait: {}, links: [] };

const NOTHING_YET: Answers = {
  askedFor: 0,
  heldFor: 0,
  fresh: true,
  detail: 'full',
  done: true,
  ...NO_RUN,
  runs: { drag: NO_RUN, full: NO_RUN },
  lastGood: { bait: {}, links: [] },
  settled: { bait: {}, links: [] },
  fault: null,
};

/** Answers about the bait in the setup that is looked at. */
export const answersStore = createStore<Answers>()(() => NOTHING_YET);
/** Answers about the same bait in the setup that is drawn beside it, while one is. */
export const besideStore = createStore<Answers>()(() => NOTHING_YET);

/** Reads the answers inside a component, which is drawn anew only when what it reads has changed. */
export function useAnswers<Part>(select: (answers: Answers) => Part): Part {
  return useStore(answersStore, select);
}

/** Kept when there is something to show, good or bad. */
export const firstAnswers: Promise<void> = new Promise((resolve) => {
  const stop = answersStore.subscribe(({ heldFor, fault }) => {
    if (heldFor === 0 && fault === null) return;
    stop();
    resolve();
  });
});

/** Marks what is shown as out of date until the design of this number is worked out. */
export function markAsked(seq: number, store = answersStore): void {
  store.setState(({ heldFor }) => ({ askedFor: seq, fresh: heldFor === seq }));
}

/** Takes in a report at once. One for an older design than the one held is late and is dropped. */
export function takeReport(report: Report, store = answersStore): void {
  store.setState((held) => (report.seq < held.heldFor ? held : withReport(held, report)));
}

/** Says that the sums themselves broke; the numbers shown stay, as out of date. */
export function takeFault(message: string): void {
  answersStore.setState({ fault: message });
}

/** The answers after a run: what changed is new, what is present stays the same object, the rest is gone. */
function withReport(held: Answers, report: Report): Answers {
  const before = held.runs[report.detail];
  const run = runFrom(before, report);
  const lastGood = nextLastGood(held.lastGood, run);
  return {
    askedFor: held.askedFor,
    heldFor: report.seq,
    fresh: report.seq === held.askedFor,
    detail: report.detail,
    done: report.done,
    ...run,
    runs: { ...held.runs, [report.detail]: report.done ? run : laidOver(before, run) },
    lastGood,
    settled: report.detail === 'full' ? lastGood : held.settled,
    fault: null,
  };
}

function runFrom(before: Run, report: Report): Run {
  const changed = new Map(report.changed.map((step) => [stepKey(step), withSharedTopology(step)]));
  const bait: Record<string, unknown> = {};
  const links: Record<string, unknown>[] = [];
  for (const key of report.present) {
    const [name = '', link = ''] = key.split('/');
    const place = link === '' ? bait : placeFor(links, Number(link));
    const known: Record<string, unknown> | undefined = link === '' ? before.bait : before.links[Number(link)];
    place[name] = changed.get(key)?.outcome ?? known?.[name];
  }
  return {
    bait: keepIfSame(before.bait, bait as BaitOutcomes),
    links: links.map((link, index) => keepIfSame(before.links[index], link as LinkOutcomes)),
  };
}

/** A run that is not done, with what the one before it had of what is yet to come. */
function laidOver(before: Run, run: Run): Run {
  const links = Array.from({ length: Math.max(before.links.length, run.links.length) }, (_, index) =>
    keepIfSame(before.links[index], { ...before.links[index], ...run.links[index] }),
  );
  return { bait: keepIfSame(before.bait, { ...before.bait, ...run.bait }), links };
}

function placeFor(links: Record<string, unknown>[], index: number): Record<string, unknown> {
  while (links.length <= index) links.push({});
  return links[index] as Record<string, unknown>;
}

/** The record held before, if the next one has the very same parts. */
function keepIfSame<Part extends object>(before: Part | undefined, next: Part): Part {
  if (before === undefined) return next;
  const names = Object.keys(next) as (keyof Part)[];
  const same = names.length === Object.keys(before).length && names.every((name) => before[name] === next[name]);
  return same ? before : next;
}

/** How the whole bait or one link floats, how good that is and how else it can rest, as far as that is known. */
export function floatingOf({ bait, links }: LastGood, shown: 'whole' | number): Partial<Floating> {
  if (shown !== 'whole') return links[shown] ?? {};
  const { assembled: float, assembledAccuracy: accuracy, assembledAttitudes: attitudes } = bait;
  return { ...(float && { float }), ...(accuracy && { accuracy }), ...(attitudes && { attitudes }) };
}

type Floating = Pick<AdvisedLinkAnswers, 'float' | 'accuracy' | 'attitudes'>;

const PICTURE = ['links', 'hardware', 'assembled'] as const;
/** What goes with the picture where it is there. */
const WITH_PICTURE = ['walls'] as const;
const LINK_PARTS = ['mesh', 'solid', 'wetted', 'ledger', 'float'] as const;
/** What comes after the picture. */
const BAIT_LATER = [
  'assembledSinking',
  'assembledAccuracy',
  'assembledAttitudes',
  'assembledRoll',
  'ballast',
  'planned',
  'reach',
  'jointed',
  'folded',
  'whatIfs',
] as const;
const LINK_LATER = ['sinking', 'accuracy', 'attitudes', 'roll', 'plan', 'forgiveness', 'cures'] as const;

function nextLastGood(before: LastGood, { bait, links }: Run): LastGood {
  const whole =
    links.length > 0 &&
    PICTURE.every((name) => bait[name]?.status === 'ok') &&
    links.every((link) => LINK_PARTS.every((name) => link[name]?.status === 'ok'));
  const good = goodParts(bait);
  // the longer list of warnings holds the shorter: it is of no use beside a newer one
  const { allWarnings, ...rest } = before.bait;
  const known = good.warnings === undefined && allWarnings !== undefined ? before.bait : rest;
  if (whole) {
    const isSame = before.bait.design?.name === good.design?.name && before.links.length === links.length;
    return {
      bait: { ...(isSame ? known : without(known, BAIT_LATER)), ...good },
      links: links.map((link, index) => ({
        ...(isSame ? only(before.links[index], LINK_LATER) : {}),
        ...goodParts(link),
      })),
    };
  }

  // the picture stays as it was, with all that is said of it; only what there never was is taken
  return {
    bait: { ...known, ...good, ...only(before.bait, [...PICTURE, ...WITH_PICTURE, ...BAIT_LATER]) },
    links: before.links.length > 0 ? before.links : links.map((link) => goodParts(link)),
  };
}

function only<Parts extends object>(parts: Parts | undefined, names: readonly (keyof Parts)[]): Partial<Parts> {
  const kept: Partial<Parts> = {};
  for (const name of names) if (parts?.[name] !== undefined) kept[name] = parts[name];
  return kept;
}

function without<Parts extends object>(parts: Parts, names: readonly (keyof Parts)[]): Partial<Parts> {
  const kept: Partial<Parts> = { ...parts };
  for (const name of names) delete kept[name];
  return kept;
}

/** The values of those outcomes that are ok. */
function goodParts<Parts extends object>(
  outcomes: {
    readonly [Name in keyof Parts]?: Outcome<Parts[Name]>;
  },
): Partial<Parts> {
  const good: Partial<Parts> = {};
  for (const name of Object.keys(outcomes) as (keyof Parts)[]) {
    const outcome = outcomes[name];
    if (outcome?.status === 'ok') good[name] = outcome.value;
  }
  return good;
}

/** Equal keys mean equal topologies: one object for each, so that what was made from it can be kept. */
const topologies = new Map<string, Topology>();

function withSharedTopology(step: Step): Step {
  if (step.outcome.status !== 'ok') return step;
  if (step.name === 'mesh') {
    return { ...step, outcome: { status: 'ok', value: share(step.outcome.value) } };
  }
  if (step.name === 'wetted') {
    const wetted = step.outcome.value;
    return { ...step, outcome: { status: 'ok', value: { ...wetted, mesh: share(wetted.mesh) } } };
  }
  return step;
}

function share(mesh: Mesh): Mesh {
  const known = topologies.get(mesh.topology.key);
  if (known !== undefined) return { ...mesh, topology: known };
  topologies.set(mesh.topology.key, mesh.topology);
  return mesh;
}
