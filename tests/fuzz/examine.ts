import { createAdvisor } from '../../sim/advice.ts';
import type { DesignFile } from '../../sim/design/file.ts';
import { readDesignText } from '../../sim/design/read.ts';
import { writeDesignText } from '../../sim/design/write.ts';
import type { Issue, Outcome } from '../../sim/flow/outcome.ts';
import type { Float } from '../../sim/hydro/float.ts';
import { measureVolume } from '../../sim/mesh/measure.ts';
import type { Mesh } from '../../sim/mesh/mesh.ts';
import type { Detail } from '../../sim/mesh/wetted.ts';
import { ballastJson } from '../../sim/out/ballast/json.ts';
import { ballastReport } from '../../sim/out/ballast/report.ts';
import { checkJson } from '../../sim/out/check-json.ts';
import { checkReport } from '../../sim/out/check-report.ts';
import { compareSetups } from '../../sim/out/compare/compare.ts';
import { compareJson } from '../../sim/out/compare/json.ts';
import { compareReport } from '../../sim/out/compare/report.ts';
import { linkSolids } from '../../sim/out/solids.ts';
import { createPipeline } from '../../sim/pipeline.ts';
import { collectAnswers } from '../../src/cli/work-out.ts';
import { isClosed, wildNumbers } from '../support/faults.ts';
import { type AllAnswers, type AllOutcomes, answersOf, outcomesOf } from '../support/worked-bait.ts';

/** No fault, but rare enough to be looked at. */
export const UNSETTLED = 'unsettled, and says so';

/** How far a file came. */
export type Reached = 'not read' | 'numbers refused' | 'shape refused' | 'floats' | 'under water' | typeof UNSETTLED;

export interface Finding {
  readonly reached: Reached;
  /** What must never be; empty where all is well. */
  readonly faults: readonly string[];
}

/** Issues that are about the whole text and so have no field to point at. */
const OF_THE_WHOLE: ReadonlySet<string> = new Set([
  'design/too-large',
  'design/not-text',
  'design/empty',
  'design/not-json',
  'design/more',
  // a list or a number where the whole design should be; in a field it has a path of its own
  'design/wrong-type',
]);
/** So large in the text that no number can hold it: quoted back it is infinite. */
const OVERFLOW = /e\+?\d{3}|\d{309}/i;
/** Weight and lift of a bait that came to rest: a hundred times the solver's own limit. */
const FORCE_SHARE = 1e-9;

/** Opens a file as the app does, works out every setup, and says what went wrong that must not. Never throws. */
export function examine(source: string | Uint8Array, detail: Detail): Finding {
  try {
    const read = readDesignText(source);
    if (read.status !== 'ok') return { reached: 'not read', faults: refusalFaults(read, source) };
    const file = read.value;
    const again = writeDesignText(file);
    const same = writeDesignText(designOf(readDesignText(again))) === again;
    const pipeline = createPipeline();
    const findings = file.setups.map(({ name }) =>
      examineSetup(file, name, detail, (setup) => outcomesOf(file, { pipeline, setup, detail }), source),
    );
    const [first] = findings;
    return {
      reached: first?.reached ?? 'not read',
      faults: [
        ...(same ? [] : ['written and read again it is another file']),
        ...findings.flatMap((one) => one.faults),
      ],
    };
  } catch (error) {
    return { reached: 'not read', faults: [`threw ${error instanceof Error ? error.stack : error}`] };
  }
}

function examineSetup(
  file: DesignFile,
  setup: string,
  detail: Detail,
  run: (setup: string) => AllOutcomes,
  source: string | Uint8Array,
): Finding {
  const outcomes = run(setup);
  const all: readonly Outcome<unknown>[] = [outcomes.bait, ...outcomes.links].flatMap((steps) => Object.values(steps));
  const failures = all.filter(({ status }) => status === 'failed');
  const faults = failures.flatMap((outcome) => refusalFaults(outcome, source));
  const wild = wildNumbers(all.flatMap((outcome) => (outcome.status === 'ok' ? [outcome.value] : [])));
  if (wild.length > 0) faults.push(`numbers that are none: ${wild.slice(0, 3).join('; ')}`);
  if (outcomes.bait.design.status !== 'ok') return { reached: 'numbers refused', faults };
  if (failures.length > 0) return { reached: 'shape refused', faults };
  if (all.some(({ status }) => status !== 'ok')) return { reached: 'shape refused', faults: ['blocked by nothing'] };
  const answers = answersOf(file, { setup, detail });
  faults.push(...meshFaults(answers), ...floatFaults(answers));
  if (detail === 'full') faults.push(...outputFaults(file, setup));
  return { reached: reachedBy(answers), faults };
}

function reachedBy({ bait, links }: AllAnswers): Reached {
  const floats = [bait.assembled, ...links.map(({ float }) => float)];
  if (floats.some(({ solver }) => !solver.converged)) return UNSETTLED;
  return bait.assembled.state === 'floats' ? 'floats' : 'under water';
}

/** A refusal says in words what is wrong and, unless the text as a whole is none, where. */
function refusalFaults(outcome: Outcome<unknown>, source: string | Uint8Array): string[] {
  if (outcome.status !== 'failed') return [`neither good nor refused: ${outcome.status}`];
  if (outcome.issues.length === 0) return ['refused without a reason'];
  return outcome.issues.flatMap((issue) => issueFaults(issue, source));
}

function issueFaults({ code, path, message, hint }: Issue, source: string | Uint8Array): string[] {
  const faults: string[] = [];
  const say = (what: string) =>
    faults.push(`issue ${code} at "${path.slice(0, 60)}" ${what}: ${message.slice(0, 120)}`);
  if (!/^[a-z]+\/[a-z-]+$/.test(code)) say('has no code');
  if (path === '' && !OF_THE_WHOLE.has(code)) say('has no path');
  if (message === '' || message.endsWith('.') || /\n/.test(message)) say('is no line of words');
  if (message.length > 2000) say('is longer than anyone reads');
  if (hint === '') say('has an empty hint');
  const odd = /NaN|Infinity|undefined|\[object/.exec(`${message} ${hint ?? ''} ${path}`)?.[0];
  // a maker's own nonsense may be quoted
  const own =
    typeof source === 'string' && (source.includes(odd ?? '') || (odd === 'Infinity' && OVERFLOW.test(source)));
  if (odd !== undefined && !own) say(`says ${odd}`);
  return faults;
}

function meshFaults({ links }: AllAnswers): string[] {
  const faultsOf = (mesh: Mesh, what: string): string[] => [
    ...(isClosed(mesh.topology) ? [] : [`${what} stands open`]),
    ...(measureVolume(mesh).volume > 0 ? [] : [`${what} encloses nothing`]),
  ];
  return links.flatMap(({ mesh, wetted }, link) => [
    ...faultsOf(mesh, `mesh of link ${link}`),
    ...faultsOf(wetted.mesh, `wetted mesh of link ${link}`),
    ...(wetted.volume > 0 ? [] : [`link ${link} displaces ${wetted.volume} mm³`]),
  ]);
}

/** What floats displaces its weight; what did not settle says so, and the maker is warned of it. */
function floatFaults({ bait, links }: AllAnswers): string[] {
  const warned = bait.warnings.filter(({ code }) => code === 'not-settled').map(({ where }) => where);
  const of = (float: Float, where: string): string[] => {
    const said = warned.includes(where);
    if (!float.solver.converged) return said ? [] : [`${where} did not settle and nobody is told`];
    const lifted = bait.water.density * (float.displaced + float.hungDisplaced);
    const out = Math.abs(float.mass - lifted - (float.state === 'floats' ? 0 : float.netWet)) / float.mass;
    return [
      ...(said ? [`${where} settled and is said not to have`] : []),
      ...(out < FORCE_SHARE ? [] : [`${where} ${float.state} with ${out} of its weight left over`]),
      ...(float.mass > 0 ? [] : [`${where} weighs ${float.mass} g`]),
      ...(Math.abs(Math.hypot(...float.up) - 1) < 1e-12 ? [] : [`${where} has no up: ${float.up}`]),
    ];
  };
  const alone = links.length > 1 ? links.flatMap(({ float }, link) => of(float, bait.links[link].name)) : [];
  return [...of(bait.assembled, 'the whole bait'), ...alone];
}

/** Reports, JSON and solids, as the command line writes them. */
function outputFaults(file: DesignFile, setup: string): string[] {
  const checked = collectAnswers(createAdvisor().steps(file, { setup, detail: 'full' }), 'a random file');
  const compared = compareSetups(checked, checked);
  const wild = wildNumbers([checkJson(checked), ballastJson(checked), compareJson(compared)]);
  const own = JSON.stringify(file);
  const reports = [checkReport(checked), ballastReport(checked), compareReport(compared)].join('\n');
  const odd = [...reports.matchAll(/NaN|Infinity|undefined|\[object/g)].filter(([word]) => !own.includes(word));
  return [
    ...(wild.length > 0 ? [`JSON output has ${wild[0]}`] : []),
    ...(odd.length > 0 ? [`the report says ${odd[0][0]}`] : []),
    // an empty STL has 84 bytes
    ...linkSolids(checked).flatMap(({ name, bytes }) => (bytes.length > 84 ? [] : [`${name} is empty`])),
  ];
}

function designOf(outcome: Outcome<DesignFile>): DesignFile {
  if (outcome.status === 'ok') return outcome.value;
  throw new Error(`a design as it was written is refused: ${JSON.stringify(outcome)}`);
}
