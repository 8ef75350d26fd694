import { type Amounts, type Digits, degreeFromRadian, type Float, formatAngle, type Mm } from '../../../sim/index.ts';

/**
 * How a bait rests in another setup as against how it rests in this one, such as `floats; 6.2 g lighter, 3.4 mm higher`.
 * digits: decimals that are meant of both.
 */
export function besideWords(own: Float, other: Float, digits: Digits, amounts: Amounts): string {
  const changes = [
    massWords(other.mass - own.mass, amounts),
    other.draft === null || own.draft === null ? null : heightWords(own.draft - other.draft, digits.draft, amounts),
    turnWords(other.trim - own.trim, digits.trim, 'more nose-down', 'more tail low'),
    turnWords(other.heel - own.heel, digits.heel, 'more to starboard', 'more to port'),
  ].filter((words) => words !== null);
  return `${other.state}; ${changes.length === 0 ? 'no different' : changes.join(', ')}`;
}

function massWords(more: number, amounts: Amounts): string | null {
  const mass = amounts.mass(Math.abs(more));
  if (mass === amounts.mass(0)) return null;
  return `${mass} ${more > 0 ? 'heavier' : 'lighter'}`;
}

function heightWords(higher: Mm, digits: number, amounts: Amounts): string | null {
  const length = amounts.length(Math.abs(higher), { digits });
  if (length === amounts.length(0, { digits })) return null;
  return `${length} ${higher > 0 ? 'higher' : 'lower'}`;
}

function turnWords(turn: Float['trim'], digits: number, more: string, less: string): string | null {
  if (Math.abs(degreeFromRadian(turn)) < 0.5 / 10 ** digits) return null;
  return `${formatAngle(Math.abs(turn), { digits })} ${turn > 0 ? more : less}`;
}
