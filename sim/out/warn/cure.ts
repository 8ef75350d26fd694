import { ownerAt } from '../../links/cut.ts';
import { placeHole } from '../../mass/hole.ts';
import { placeHanger } from '../../mass/place.ts';
import type { Hardware, PlacedEye } from '../../mass/placed.ts';
import { soundIssues } from '../../mass/sound.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength } from '../../units/format.ts';
import type { WarnParts } from './parts.ts';

/**
 * Whether the bait can still be made with other eyes or holes. Eyes are those of every setup: one whose holes they would
 * meet counts as well, unless it cannot be made as it is.
 */
export function staysSound(parts: WarnParts, changed: Partial<Pick<Hardware, 'eyes' | 'holes'>>): boolean {
  const { hull, links, hardware, drawn } = parts;
  const isSound = (setup: number, with_: Partial<Hardware>) =>
    soundIssues(hull, links, drawn.joints, { ...hardware, ...with_ }, drawn.setups[setup].coats, setup).length === 0;
  if (!isSound(drawn.setup, changed)) return false;
  if (!changed.eyes) return true;
  return drawn.setups.every((setup, i) => {
    if (i === drawn.setup) return true;
    const holes = setup.holes.map((hole) => placeHole(hull, hole, ownerAt(drawn.joints, hole.x)));
    return isSound(i, { ...changed, holes }) || !isSound(i, { holes });
  });
}

/** The eyes of the hangers, in the order of the design. */
export function hangerEyes({ hardware }: WarnParts): readonly PlacedEye[] {
  return hardware.eyes.filter(({ kind }) => kind === 'hanger');
}

/** The eye of a hanger moved along belly or back; null where it would leave its link, or has no place along the body. */
export function movedEye(parts: WarnParts, hanger: number, by: Mm): PlacedEye | null {
  const { hull, drawn } = parts;
  const { on, at } = drawn.hangers[hanger];
  const x = at + by;
  if ((on !== 'belly' && on !== 'back') || x <= 0 || x >= hull.length) return null;
  const eye = placeHanger(hull, drawn.joints, { ...drawn.hangers[hanger], at: x });
  return eye.link === hangerEyes(parts)[hanger].link ? eye : null;
}

/** All eyes with that of one hanger exchanged. */
export function withEye(parts: WarnParts, hanger: number, eye: PlacedEye): readonly PlacedEye[] {
  const old = hangerEyes(parts)[hanger];
  return parts.hardware.eyes.map((each) => (each === old ? eye : each));
}

/** Steps of one size up to a greatest, the least first, each to either side. */
export function stepsTo(most: Mm, step: Mm): readonly Mm[] {
  return Array.from({ length: Math.round(most / step) }, (_, i) => (i + 1) * step).flatMap((size) => [-size, size]);
}

/** Names in quotes: `"a"`, or `"a" and "b"`. */
export function quoted(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(' and ');
}

/** `move "belly, fore" 4.0 mm aft` */
export function moveWords(names: readonly string[], by: Mm): string {
  return `move ${quoted(names)} ${formatLength(Math.abs(by))} ${by < 0 ? 'fore' : 'aft'}`;
}
