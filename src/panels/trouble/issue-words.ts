import { type Issue, restated, type UnitSystem } from '../../../sim/index.ts';

/** What is wrong, and the cure, in the units that the page shows. */
export function issueWords({ message, hint }: Issue, units: UnitSystem): string {
  return restated(hint === undefined ? message : `${message}: ${hint}`, units);
}

/** The units that the file's keys end in; the number beside the name has its own. */
const UNIT_ENDING = /_(g_cm3|g_m2|g_kg|mm_s|mm3|percent|mm|deg|c|g)$/;

/** A place in the design file as a maker reads it: `joints.0.gap_mm` is `Joint 1, gap`. */
export function pathWords(path: string): string {
  if (path === '') return 'The design';
  const words: string[] = [];
  for (const key of path.split('.')) {
    // a number counts within the list named before it
    if (/^\d+$/.test(key)) words.push(`${singular(words.pop() ?? '')} ${Number(key) + 1}`.trim());
    else words.push(key.replace(UNIT_ENDING, '').replaceAll('_', ' '));
  }
  const [first = '', ...rest] = words.length > 1 && words[0] === 'body' ? words.slice(1) : words;
  return [first.charAt(0).toUpperCase() + first.slice(1), ...rest].join(', ');
}

function singular(list: string): string {
  return list.replace(/s$/, '');
}
