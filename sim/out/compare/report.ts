import type { Float } from '../../hydro/float.ts';
import { formatAngle, formatLength, formatMass } from '../../units/format.ts';
import { firstFootWords } from '../sinking/words.ts';
import { type Column, textTable } from '../table.ts';
import { baitVerdict, linkVerdict } from '../verdict.ts';
import type { Comparison } from './compare.ts';
import { benchWords, changeWords } from './words.ts';

/** Two setups side by side as text: how each sits, in grams, and what differs at the bench. */
export function compareReport(comparison: Comparison): string {
  const { design, setups, floats, sinkings, lead, hung, links } = comparison;
  const falls = sinkings.some((sinking) => sinking !== null);
  const gram = (mass: number) => formatMass(mass, 'g', { digits: 2, signed: true });
  const rows = [
    row('in the water', floats, ({ netWet }) => gram(netWet)),
    row('proud', floats, ({ proud }) => (proud === null ? 'under water' : formatLength(proud))),
    row('trim, nose-down', floats, ({ trim }) => formatAngle(trim)),
    row('heel, to starboard', floats, ({ heel }) => formatAngle(heel)),
    row('GM', floats, ({ gm }) => formatLength(gm)),
    row('mass', floats, ({ mass }) => formatMass(mass)),
    ...(falls ? [['first foot', ...sinkings.map(firstFootWords)]] : []),
    ['lead', ...lead.map((mass) => formatMass(mass))],
    ['hung', ...hung.map((mass) => formatMass(mass))],
  ];
  const columns: readonly Column[] = ['', ...setups].map((head, i) => ({ head, right: i > 0 }));
  const blocks = [
    [`${design}: ${setups[0]} and ${setups[1]}`],
    [
      'Whole bait, held straight',
      ...textTable(columns, rows),
      ...setups.map((name, i) => `${name}: ${baitVerdict(floats[i])}`),
    ].map((line, i) => (i === 0 ? line : `  ${line}`)),
    ['At the bench', `  ${benchWords(comparison)}`],
    ...links.map(({ name, holes, floats: alone, lead: own }) => [
      `Link ${name}: ${formatMass(own[0])} of lead, ${formatMass(own[1])}`,
      ...holes.flatMap((change) => {
        const words = changeWords(change, setups);
        return words === null ? [] : [`  ${words}`];
      }),
      ...setups.map((setup, i) => `  ${setup}, alone: ${linkVerdict(name, alone[i])}`),
    ]),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function row(name: string, floats: readonly Float[], say: (float: Float) => string): readonly string[] {
  return [name, ...floats.map(say)];
}
