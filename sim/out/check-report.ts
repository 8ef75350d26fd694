import type { Assembly } from '../chain/assemble.ts';
import type { Accuracy, Digits } from '../hydro/accuracy.ts';
import type { Attitudes } from '../hydro/attitudes.ts';
import type { Film } from '../hydro/film.ts';
import type { Float } from '../hydro/float.ts';
import type { PlacedHung } from '../mass/placed.ts';
import type { Vec3 } from '../numerics/vec3.ts';
import type { Sinking } from '../sinking/sink.ts';
import type { Gram, Mm } from '../units/brand.ts';
import {
  counted,
  formatAngle,
  formatDensity,
  formatLength,
  formatMass,
  formatNumber,
  formatPercent,
  formatVolume,
} from '../units/format.ts';
import { planWords, whatIfWords } from './ballast/words.ts';
import type { CheckedBait, CheckedLink } from './checked-bait.ts';
import { foldedAtLines } from './joints/folded-at.ts';
import { jointLines } from './joints/report.ts';
import { dropWords, humpWords, restWords } from './other-rest.ts';
import { reachLines } from './reach-words.ts';
import { baitOffCentreWords, leastLeadWords, linkOffCentreWords, rollWords } from './roll/words.ts';
import { sinkingWords, timedDropWords } from './sinking/words.ts';
import { type Column, textTable } from './table.ts';
import { targetLine } from './target-line.ts';
import { baitVerdict, linkVerdict } from './verdict.ts';

/**
 * The answers about a bait as text for a terminal or a notebook: the whole bait, each link with the ledger of its
 * weight, how far its joints swing, what hangs, warnings, targets, and how far to trust it. Millimetres, grams, degrees.
 */
export function checkReport(bait: CheckedBait, folded: Assembly | null = null): string {
  const blocks = [
    titleBlock(bait),
    ['Whole bait, held straight', ...indented(baitLines(bait))],
    ...bait.links.map((link) => linkBlock(bait, link)),
    ...(bait.reach.joints.length === 0 ? [] : [['Swing', ...indented(reachLines(bait.reach))]]),
    ...(bait.jointed === null || bait.folded === null
      ? []
      : [
          [
            'Pins',
            ...indented([...jointLines(bait.jointed, bait.folded), ...(folded ? foldedAtLines(bait, folded) : [])]),
          ],
        ]),
    ['Other ways it can rest', ...indented(otherLines(bait))],
    ['Hung', ...indented(hungLines(bait))],
    ['Warnings', ...indented(warningLines(bait))],
    ['Target', ...indented(bait.target.checks.map((check) => targetLine(check, bait.assembledAccuracy.digits)))],
    ['Ballast plan (floatwright ballast)', ...indented(bait.ballast.links.map((plan) => planWords(plan)))],
    ['What if', ...indented(bait.whatIfs.map((row) => `${row.name}: ${whatIfWords(row)}`))],
    trustLines(bait),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function titleBlock({ design, setup, water }: CheckedBait): readonly string[] {
  const { body, wood } = design;
  const size = [body.length, body.height, body.width].map((side) => formatNumber(side)).join(' × ');
  const species = wood.species === null ? '' : `${wood.species}, `;
  const state =
    water.temperature === null || water.salinity === null
      ? ''
      : `${formatNumber(water.temperature)} °C, ${formatNumber(water.salinity)} g/kg salt, `;
  const density = formatDensity(water.density, { digits: 5 });
  return [
    `${design.name}: ${setup.name}`,
    `Body   ${size} mm, ${counted(design.links.length, 'link')}`,
    `Wood   ${species}${formatDensity(wood.density)}`,
    `Water  ${state}${density} (${water.source})`,
    'Places in mm from the nose tip: x aft, y to starboard, z up.',
  ];
}

function baitLines(bait: CheckedBait): readonly string[] {
  const { assembled, assembledAccuracy, assembledRoll, assembledSinking, drop, hardware } = bait;
  const hung = sum(hardware.hung.map((item) => item.mass));
  return [
    baitVerdict(assembled, assembledAccuracy.digits),
    ...floatLines(assembled, assembledAccuracy, hung),
    ...fallLines(assembledSinking),
    ...(drop ? [timedDropWords(drop)] : []),
    ...sentences([...rollWords(assembledRoll, assembledAccuracy.digits), baitOffCentreWords(assembledRoll)]),
  ];
}

/** One to a line; what there is nothing to say of is left out. */
function sentences(words: readonly (string | null)[]): readonly string[] {
  return words.flatMap((sentence) => (sentence === null ? [] : [`${sentence}.`]));
}

function linkBlock(bait: CheckedBait, link: CheckedLink): readonly string[] {
  const { spec, float } = link;
  const hung = bait.hardware.hung.filter((item) => item.link === spec.index);
  const [from, to] = spec.span.map((x) => formatNumber(x));
  return [
    `Link ${spec.index + 1} of ${bait.links.length}, alone: ${spec.name} (${from} to ${to} mm)`,
    ...indented([
      linkVerdict(spec.name, float, link.accuracy.digits),
      ...floatLines(float, link.accuracy, sum(hung.map((item) => item.mass))),
      ...fallLines(link.sinking),
      ...sentences([
        ...rollWords(link.roll, link.accuracy.digits),
        linkOffCentreWords(link.roll.offCentre, bait.assembledRoll.offCentre?.links[spec.index] ?? null),
        leastLeadWords(link.roll),
      ]),
      '',
      ...ledgerTable(link, hung),
    ]),
  ];
}

function floatLines(float: Float, accuracy: Accuracy, hung: Gram): readonly string[] {
  const { digits } = accuracy;
  const trim = formatAngle(float.trim, { digits: digits.trim });
  const heel = formatAngle(float.heel, { digits: digits.heel });
  const rows = [
    ['mass', `${mass(float.mass)}${hung > 0 ? `, ${mass(hung)} of it hung` : ''}`],
    ['reserve', `${mass(-float.netWet)}, ${formatPercent(float.reserveShare)} of the mass`],
    ['attitude', `trim ${trim} (nose-down +), heel ${heel} (starboard down +)`],
    ...(float.draft === null || float.proud === null
      ? [['water', 'over its back']]
      : [['water', waterLevel(float.draft, float.proud, digits)]]),
    ['displaced', `${formatVolume(float.displaced, { digits: 2 })} by the body, ${hungVolume(float)}`],
    ['weight at', point(float.gravityCentre)],
    ['buoyancy at', point(float.buoyancyCentre)],
    ['steadiness', steadiness(float, digits)],
    ['film', filmWords(accuracy.film)],
  ];
  return textTable([words(''), words('')], rows).slice(1);
}

/** How it falls, where it does. */
function fallLines(sinking: Sinking | null): readonly string[] {
  return sinking ? [sinkingWords(sinking)] : [];
}

function hungVolume(float: Float): string {
  return float.hungDisplaced > 0
    ? `${formatVolume(float.hungDisplaced, { digits: 2 })} by what hangs`
    : 'none by what hangs';
}

/** Under water there is no waterplane: what rights a body is the height of its buoyancy over its weight. */
function steadiness(float: Float, digits: Digits): string {
  const least = formatLength(float.gmMin, 'mm', { digits: digits.gm });
  if (float.offset === null) return `buoyancy ${least} over weight`;
  const [across, along] = [float.gm, float.gmLong].map((gm) => formatNumber(gm, { digits: digits.gm }));
  return `GM: across ${across}, along ${along}, least ${least}`;
}

function waterLevel(draft: Mm, proud: Mm, digits: Digits): string {
  const [deep, high] = [
    formatLength(draft, 'mm', { digits: digits.draft }),
    formatLength(proud, 'mm', { digits: digits.proud }),
  ];
  return `draft ${deep}, proud ${high}`;
}

/** The skin of the water pulls along the wet edge: what that may add or take. */
function filmWords({ edge, force, draft, heel, trim }: Film): string {
  const parts = [
    `±${mass(force)}`,
    ...(draft === null ? [] : [`draft ±${formatLength(draft)}`]),
    ...(heel === null ? [] : [`heel ±${formatAngle(heel)}`]),
    ...(trim === null ? [] : [`trim ±${formatAngle(trim)}`]),
  ];
  return `at most ${parts.join(', ')}, by ${formatLength(edge, 'mm', { digits: 0 })} of wet edge`;
}

function otherLines({ assembled, assembledAttitudes, links }: CheckedBait): readonly string[] {
  const whole = otherRestLines('The whole bait', assembled, assembledAttitudes);
  const parts = links.flatMap(({ spec, float, attitudes }) => otherRestLines(`${spec.name}, alone`, float, attitudes));
  return [...whole, ...(links.length > 1 ? parts : [])];
}

function otherRestLines(who: string, float: Float, { others, firstIsNeutral, starts }: Attitudes): readonly string[] {
  if (others.length === 0) {
    return [`${who}: ${firstIsNeutral ? 'no preferred way up' : 'none, it comes back from anywhere'}.`];
  }
  return others.map(
    (rest) =>
      `${who}: ${dropWords(rest.share, { starts })} it comes to rest ${restWords(rest)}; ${humpWords(rest, float.mass)}.`,
  );
}

const LEDGER_COLUMNS: readonly Column[] = [
  words('ledger'),
  words('kind'),
  numbers('g'),
  numbers('x'),
  numbers('y'),
  numbers('z'),
  words('from'),
];

function ledgerTable({ ledger }: CheckedLink, hung: readonly PlacedHung[]): readonly string[] {
  const lines = ledger.lines.map((line) => [line.name, line.kind, ...massAndPlace(line.mass, line.at), line.source]);
  const fixed = ['all that is fixed', '', ...massAndPlace(ledger.mass, ledger.centre), ''];
  const hanging = hung.map((item) => [item.name, 'hung', ...massAndPlace(item.mass, item.eye), 'pulls at its eye']);
  return textTable(LEDGER_COLUMNS, [...lines, fixed, ...hanging]);
}

const HUNG_COLUMNS: readonly Column[] = [
  words('what'),
  words('link'),
  numbers('g'),
  numbers('eye x'),
  numbers('y'),
  numbers('z'),
  numbers('hangs mm'),
  numbers('mm³'),
];

function hungLines({ hardware, links }: CheckedBait): readonly string[] {
  if (hardware.hung.length === 0) return ['nothing'];
  const rows = hardware.hung.map((item) => [
    item.name,
    links[item.link]?.spec.name ?? '',
    ...massAndPlace(item.mass, item.eye),
    formatNumber(item.hang),
    formatNumber(item.volume, { digits: 0 }),
  ]);
  return textTable(HUNG_COLUMNS, rows);
}

function warningLines({ warnings }: CheckedBait): readonly string[] {
  if (warnings.length === 0) return ['none'];
  return warnings.flatMap(({ text, fix }) => [text, ...(fix ? [`  One edit cures it: ${fix.says}.`] : [])]);
}

function trustLines({ assembledAccuracy }: CheckedBait): readonly string[] {
  const { mesh, film } = assembledAccuracy;
  const close = [
    'Too close to the film to call: the skin of the water alone can hold this bait up or let it go. Push it under, wet',
    'its back, let go, and believe that; a drop of soap in the tub takes the skin away.',
  ];
  return [
    'How far to trust it',
    ...indented([
      'The sums hold for the bait as drawn, and no bait is cut as drawn. By common practice a weighed blank and calipers',
      'leave a gram or two open on an 80 g bait: weigh and float the sealed links before the last hole is filled.',
      meshWords(mesh),
      'Film is the pull of clean fresh water along the wet edge, hooks left out: no more than that, and often far less.',
      ...(film.tooClose ? close : []),
    ]),
  ];
}

/** Of the bait as drawn; decimals that mean nothing are left out throughout. */
function meshWords(mesh: Accuracy['mesh']): string {
  if (mesh === null)
    return 'A coarser mesh of this bait floats another way, so nothing can be told of the error of the sums.';
  const lengths = mesh.draft === null ? '' : `draft ±${formatLength(mesh.draft, 'mm', { digits: 3 })}, `;
  const [trim, heel] = [mesh.trim, mesh.heel].map((angle) => formatAngle(angle, { digits: 3 }));
  return `The sums themselves, facets for curves: ${lengths}trim ±${trim}, heel ±${heel}, GM ±${formatLength(mesh.gm, 'mm', { digits: 3 })}.`;
}

function massAndPlace(weight: Gram, at: Vec3): readonly string[] {
  return [formatNumber(weight, { digits: 2 }), ...at.map((coordinate) => formatNumber(coordinate))];
}

function mass(weight: Gram): string {
  return formatMass(weight, 'g', { digits: 2 });
}

function point(at: Vec3): string {
  return `x ${formatNumber(at[0])}, y ${formatNumber(at[1])}, z ${formatNumber(at[2])}`;
}

function words(head: string): Column {
  return { head, right: false };
}

function numbers(head: string): Column {
  return { head, right: true };
}

function sum(parts: readonly number[]): number {
  return parts.reduce((total, part) => total + part, 0);
}

function indented(lines: readonly string[]): readonly string[] {
  return lines.map((line) => (line === '' ? '' : `  ${line}`));
}
