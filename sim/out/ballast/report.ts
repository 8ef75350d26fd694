import type { Cure, WhatIfRow } from '../../ballast/advised.ts';
import type { LinkPlan } from '../../ballast/plan.ts';
import type { SettledPlan } from '../../ballast/settle.ts';
import { formatLength, formatMass, formatNumber } from '../../units/format.ts';
import type { CheckedBait, CheckedLink } from '../checked-bait.ts';
import { type Column, textTable } from '../table.ts';
import { targetLine } from '../target-line.ts';
import { baitVerdict, linkVerdict } from '../verdict.ts';
import { hungWords, pinWords, planWords, trimWords, whatIfWords } from './words.ts';

/**
 * The ballast plan of a setup as text: what each link wants, the holes to drill, how the bait rests with them as rounded,
 * what cures a link that cannot be ballasted, how forgiving it is, and what becomes of it in other conditions.
 */
export function ballastReport(bait: CheckedBait): string {
  const { design, setup, planned, whatIfs } = bait;
  const blocks = [
    [`${design.name}: ${setup.name}, ballast plan`, ...CAUTION],
    ...bait.links.map((link, i) => linkBlock(bait, link, i)),
    [
      'Whole bait with this plan, as rounded, held straight',
      ...indented([baitVerdict(planned.assembled), ...planned.target.checks.map((check) => targetLine(check))]),
    ],
    ['What if (against the setup as it stands in the file)', ...indented(whatIfTable(whatIfs))],
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const CAUTION = [
  'Lead is poisonous: gloves, no dust, wash before you eat, and your local rules before you fish with it. Never let a',
  'drill near a screw eye; go by the data sheets of what you glue and plug with.',
];

function linkBlock(
  { planned, ballast }: CheckedBait,
  { spec, cures, forgiveness }: CheckedLink,
  i: number,
): readonly string[] {
  const plan = ballast.links[i];
  const need = plan.place ? `wants ${gram(plan.need.net)} net at x ${formatNumber(plan.place[0])}` : 'wants nothing';
  return [
    `Link ${i + 1}: ${spec.name}, ${need}`,
    ...indented([
      planWords(plan),
      ...holeTable(plan, planned),
      ...(plan.last === null ? [] : [`Fill "${plan.last}" last, when the sealed link has been weighed.`]),
      `With the plan: ${linkVerdict(spec.name, planned.floats[i])}`,
      ...cureLines(
        plan,
        cures,
        ballast.links.some(({ state }) => state === 'kept'),
      ),
      ...(forgiveness === null
        ? ['As it stands now it has no trim that a little more would change a little.']
        : [
            `As it stands now: ${angle(forgiveness.perMm)} for each mm its weight lies further forward; a gram more at its nose ${trimWords(forgiveness.perGram[0])}, at its tail ${trimWords(forgiveness.perGram[1])}.`,
            ...forgiveness.hung.map((effect) => `${hungWords(effect)}.`),
          ]),
    ]),
  ];
}

const HOLES: readonly Column[] = [
  { head: 'hole', right: false },
  { head: 'from', right: false },
  { head: 'x', right: true },
  { head: 'across', right: true },
  { head: 'drill', right: true },
  { head: 'deep', right: true },
  { head: 'lead g', right: true },
  { head: 'of', right: false },
  { head: 'wall', right: true },
];

function holeTable({ holes }: LinkPlan, { holes: settled }: SettledPlan): readonly string[] {
  if (holes.length === 0) return [];
  const rows = holes.map((hole) => {
    const wall = settled.find((each) => each.hole.hole === hole)?.wall.thickness;
    return [
      hole.name,
      hole.from,
      formatNumber(hole.x),
      formatNumber(hole.across),
      formatNumber(hole.diameter),
      formatNumber(hole.depth),
      hole.lead ? formatNumber(hole.lead.mass) : '',
      hole.lead?.stock.name ?? (hole.air ? `air under ${formatLength(hole.air.plug)} of plug` : ''),
      wall === undefined ? '' : formatNumber(wall),
    ];
  });
  return textTable(HOLES, rows);
}

function cureLines({ state }: LinkPlan, cures: readonly Cure[], isBorne: boolean): readonly string[] {
  if (state !== 'cannot') return [];
  const borne = isBorne ? ['Joined up, its neighbour bears the rest over the pin.'] : [];
  if (cures.length === 0) return isBorne ? borne : ['None of the changes that were tried cures it.'];
  return [
    ...borne,
    'Any one of these cures it:',
    ...cures.map(({ edit, after }) => {
      const parts = [
        `alone ${trimWords(after.link.trim)}`,
        `whole bait ${trimWords(after.assembled.trim)}, ${gram(after.assembled.netWet)} in the water`,
        ...(after.pin ? [pinWords(after.pin)] : []),
      ];
      return `  ${edit.says} (${parts.join('; ')})`;
    }),
  ];
}

const WHAT_IFS: readonly Column[] = [
  { head: 'what if', right: false },
  { head: 'net g', right: true },
  { head: 'trim', right: false },
  { head: 'proud', right: true },
  { head: 'the change', right: false },
];

function whatIfTable(rows: readonly WhatIfRow[]): readonly string[] {
  return textTable(
    WHAT_IFS,
    rows.map((row) => [
      row.name,
      formatNumber(row.netWet, { digits: 2 }),
      trimWords(row.trim),
      row.proud === null ? '' : formatNumber(row.proud),
      whatIfWords(row),
    ]),
  );
}

function gram(mass: number): string {
  return formatMass(mass, 'g', { digits: 2, signed: true });
}

function angle(trim: number): string {
  return trimWords(trim);
}

function indented(lines: readonly string[]): readonly string[] {
  return lines.map((line) => `  ${line}`);
}
