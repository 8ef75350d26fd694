import type { Hole } from '../../design/design.ts';
import { type Amounts, amountsIn } from '../../units/amounts.ts';
import { formatAngle } from '../../units/format.ts';
import { holeWords } from '../ballast/words.ts';
import type { Comparison, HoleChange } from './compare.ts';

const METRIC = amountsIn('mm-g');
const SMALL = 1e-6;

/** What differs about one hole at the bench. null: nothing does. */
export function changeWords(
  change: HoleChange,
  setups: Comparison['setups'],
  amounts: Amounts = METRIC,
): string | null {
  if (change.kind === 'same') return null;
  if (change.kind === 'only') return `in ${setups[change.in]} only: ${holeWords(change.hole, amounts)}`;
  const { from, to, moved, deeper, lead } = change;
  const across = to.across - from.across;
  const isWider = Math.abs(to.diameter - from.diameter) > SMALL;
  const isOtherLead = from.lead !== null && to.lead !== null && from.lead.stock.name !== to.lead.stock.name;
  const parts = [
    ...(Math.abs(moved) < SMALL ? [] : [`${amounts.length(Math.abs(moved))} further ${moved > 0 ? 'aft' : 'forward'}`]),
    ...(Math.abs(across) < SMALL ? [] : [`${amounts.length(Math.abs(across))} further ${acrossWord(to, across)}`]),
    ...(isWider ? [`${amounts.length(to.diameter)} wide for ${amounts.length(from.diameter)}`] : []),
    ...(Math.abs(to.point - from.point) < SMALL ? [] : [`a point of ${angle(to.point)} for ${angle(from.point)}`]),
    ...(isOtherLead ? [`${to.lead?.stock.name} for ${from.lead?.stock.name}`] : []),
    ...(Math.abs(deeper) < SMALL ? [] : [`${amounts.length(Math.abs(deeper))} ${deeper > 0 ? 'deeper' : 'less deep'}`]),
    ...(Math.abs(lead) < SMALL ? [] : [`${amounts.mass(Math.abs(lead))} ${lead > 0 ? 'more' : 'less'} lead`]),
    ...(from.air?.plug === to.air?.plug
      ? []
      : [to.air ? `air under a plug of ${amounts.length(to.air.plug)}` : 'no air']),
  ];
  return `${from.name}: ${parts.join(', ')}`;
}

/** What it takes at the bench to make the second setup of the first, as one sentence. */
export function benchWords({ links, lead, setups }: Comparison, amounts: Amounts = METRIC): string {
  const changes = links.flatMap(({ holes }) => holes).filter(({ kind }) => kind !== 'same');
  const more = lead[1] - lead[0];
  const grams = `${amounts.mass(Math.abs(more))} ${more < 0 ? 'less' : 'more'} lead`;
  if (changes.length === 0) return `${setups[1]} is drilled as ${setups[0]} is.`;
  const one = changes.length === 1;
  const count = `${changes.length} hole${one ? '' : 's'}`;
  const isDeeper = (sign: 1 | -1) =>
    changes.every(
      (change) =>
        // what is drilled and filled can be drilled deeper and filled further, and neither can be undone
        change.kind === 'changed' && change.inPlace && Math.min(sign * change.deeper, sign * change.lead) > -SMALL,
    );
  if (isDeeper(1))
    return `${capital(setups[1])} is ${setups[0]} with ${count} drilled deeper or filled further: ${grams}.`;
  if (isDeeper(-1)) {
    return `Drill for ${setups[1]} first: ${setups[0]} is the same with ${count} drilled deeper or filled further, ${amounts.mass(Math.abs(more))} ${more < 0 ? 'more' : 'less'} lead.`;
  }
  return `${count} differ${one ? 's' : ''} for ${setups[1]}: ${grams}.`;
}

function angle(point: Hole['point']): string {
  return formatAngle(point, { digits: 0 });
}

/** Across the belly or back a hole moves to a side, across a flank up or down. */
function acrossWord({ from }: Hole, across: number): string {
  if (from === 'belly' || from === 'back') return across > 0 ? 'to starboard' : 'to port';
  return across > 0 ? 'up' : 'down';
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
