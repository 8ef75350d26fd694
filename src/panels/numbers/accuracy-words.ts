import {
  type Accuracy,
  degreeFromRadian,
  type Float,
  formatNumber,
  inchFromMm,
  ounceFromGram,
  type UnitSystem,
} from '../../../sim/index.ts';

/**
 * How far the sums may be off, the bait being as drawn, and what the skin of the water may add to its weight or take:
 * one line, such as `Sums good to ±0.01 mm, ±0.02°; film up to ±0.4 g`. Every number is rounded up.
 */
export function accuracyWords(accuracy: Accuracy, float: Float, units: UnitSystem): string {
  const film = `film up to ±${massUp(accuracy.film.force, units)}`;
  const { mesh, solver } = accuracy;
  if (mesh === null) return `How good these sums are cannot be told: it is on the edge of resting another way; ${film}`;
  const lengths = [mesh.draft, mesh.proud].flatMap((error) => (error === null ? [] : [error + (solver.draft ?? 0)]));
  const turns = [mesh.trim, mesh.heel].map((error) => error + (solver.angle ?? 0));
  const parts = [
    ...(lengths.length === 0 ? [] : [`±${lengthUp(Math.max(...lengths), units)}`]),
    // without a preferred way up the angles mean nothing
    ...(float.neutral || solver.angle === null ? [] : [`±${angleUp(Math.max(...turns))}`]),
  ];
  return parts.length === 0 ? capitalised(film) : `Sums good to ${parts.join(', ')}; ${film}`;
}

/** Where the film may move the bait to, in words; null where there is nothing to say. */
export function filmWords({ film }: Accuracy, units: UnitSystem): string | null {
  const parts = [
    ...(film.draft === null ? [] : [`draft by ±${lengthUp(film.draft, units)}`]),
    ...(film.heel === null ? [] : [`heel by ±${angleUp(film.heel)}`]),
    ...(film.trim === null ? [] : [`trim by ±${angleUp(film.trim)}`]),
  ];
  return parts.length === 0 ? null : `The skin of the water may move ${parts.join(', ')}, at most.`;
}

function lengthUp(length: number, units: UnitSystem): string {
  return units === 'mm-g' ? `${roundedUp(length, 2)} mm` : `${roundedUp(inchFromMm(length), 3)} in`;
}

function massUp(mass: number, units: UnitSystem): string {
  return units === 'mm-g' ? `${roundedUp(mass, 2)} g` : `${roundedUp(ounceFromGram(mass), 3)} oz`;
}

function angleUp(angle: number): string {
  return `${roundedUp(degreeFromRadian(angle), 2)}°`;
}

/** Upwards to this many decimals, one less where the number has ten of the last; never down to nothing. */
function roundedUp(size: number, digits: number): string {
  const kept = size * 10 ** digits < 10 ? digits : digits - 1;
  const steps = Math.max(1, Math.ceil(size * 10 ** kept - 1e-9));
  return formatNumber(steps / 10 ** kept, { digits: kept });
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
