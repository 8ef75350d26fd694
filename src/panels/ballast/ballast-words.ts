import {
  type Amounts,
  type Cure,
  type Forgiveness,
  gramFromOunce,
  type Hole,
  type HoleChange,
  type LinkPlan,
  mmFromInch,
  pinWords,
  type SettledPlan,
  trimWords,
  type UnitSystem,
} from '../../../sim/index.ts';

/** A planned hole as a row of the table to drill by. */
export interface HoleRow {
  readonly name: string;
  readonly side: Hole['from'];
  readonly x: string;
  /** Empty on the middle line of belly or back. */
  readonly across: string;
  readonly drill: string;
  readonly depth: string;
  readonly lead: string;
  readonly stock: string;
  readonly wall: string;
}

/** The holes that are planned for a link, with the wood that they leave. */
export function holeRows(
  { holes }: Pick<LinkPlan, 'holes'>,
  { holes: settled }: Pick<SettledPlan, 'holes'>,
  amounts: Amounts,
): readonly HoleRow[] {
  return holes.map((hole) => {
    const wall = settled.find((each) => each.hole.name === hole.name && each.hole.hole.x === hole.x)?.wall;
    return {
      name: hole.name,
      side: hole.from,
      x: amounts.ruled(hole.x),
      across: acrossWords(hole, amounts),
      drill: amounts.ruled(hole.diameter),
      depth: amounts.ruled(hole.depth),
      lead: hole.lead === null ? '' : amounts.mass(hole.lead.mass),
      stock: hole.lead?.stock.name ?? '',
      wall: wall === undefined ? '' : amounts.length(wall.thickness),
    };
  });
}

/** Where the hole stands off the line that it is marked out from. */
function acrossWords({ from, across }: Hole, amounts: Amounts): string {
  const off = amounts.ruled(Math.abs(across));
  if (from === 'port' || from === 'starboard') return `${off} ${across < 0 ? 'under' : 'over'} the datum`;
  return across === 0 ? '' : `${off} to ${across > 0 ? 'starboard' : 'port'}`;
}

/** Whether depths are measured to a shoulder, over the point that the drill leaves. */
export function isPointed({ holes }: Pick<LinkPlan, 'holes'>): boolean {
  return holes.some(({ point }) => point < Math.PI);
}

/** How bait and link rest after a cure, as clauses. */
export function cureWords({ after }: Cure, amounts: Amounts): string {
  const { link, assembled, lead, met, pin } = after;
  return [
    `alone ${trimWords(link.trim)}`,
    `whole bait ${trimWords(assembled.trim)}, ${amounts.mass(assembled.netWet, { digits: 2, signed: true })} in the water`,
    `aim ${met ? 'met' : 'missed'}`,
    ...(lead > 0 ? [`${amounts.mass(lead)} of lead in it`] : []),
    ...(pin === null ? [] : [pinWords(pin, amounts)]),
  ].join('; ');
}

/** Small steps by which a maker reckons, in mm and g. */
const STEPS: Readonly<Record<UnitSystem, { mm: number; length: string; gram: number; mass: string }>> = {
  'mm-g': { mm: 1, length: 'mm', gram: 1, mass: 'a gram' },
  'in-oz': { mm: mmFromInch(1 / 32), length: '1/32 in', gram: gramFromOunce(1 / 20), mass: '1/20 oz' },
};

/** What a little more at a place does to the trim, to first order. */
export function forgivingWords({ perMm, perGram: [nose, tail] }: Forgiveness, units: UnitSystem): string {
  const { mm, length, gram, mass } = STEPS[units];
  return `${trimWords(perMm * mm)} for each ${length} that its weight lies further forward; ${mass} more at its nose ${trimWords(nose * gram)}, at its tail ${trimWords(tail * gram)}.`;
}

/** Every change of a link's holes has its own line. */
export function changeKey(change: HoleChange): string {
  return change.kind === 'changed' ? `${change.from.name} ${change.to.name}` : `${change.kind} ${change.hole.name}`;
}
