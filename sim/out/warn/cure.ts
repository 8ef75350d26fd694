import type { OtherParts } from '../../ballast/refloat.ts';
import { ownerAt } from '../../links/cut.ts';
import { placeHole } from '../../mass/hole.ts';
import { placeHanger } from '../../mass/place.ts';
import type { PlacedEye } from '../../mass/placed.ts';
import { soundIssues } from '../../mass/sound.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength } from '../../units/format.ts';
import type { Warning } from '../../warnings.ts';
import { floatWarnings } from './float.ts';
import type { TrialFloat, WarnParts } from './parts.ts';

/** Whether the bait can be made with other parts, and then neither misses nor rests worse than it did. */
export function isBetter(parts: WarnParts, refloat: TrialFloat, other: OtherParts): boolean {
  if (!staysSound(parts, other)) return false;
  const next = refloat(other);
  if (!next) return false;
  const said = new Set(floatWarnings(parts).map(keyOf));
  return floatWarnings({ ...parts, ...next }).every((warning) => said.has(keyOf(warning)));
}

/** A missed proud and a missed trim are two things. */
function keyOf({ code, where, unit }: Warning): string {
  return `${code} ${where} ${unit}`;
}

/** Eyes are those of every setup: one whose holes they would meet counts as well, unless it cannot be made as it is. */
function staysSound(parts: WarnParts, other: OtherParts): boolean {
  const { hull, links, hardware, drawn } = parts;
  const isSound = (setup: number, changed: OtherParts) =>
    soundIssues(hull, links, drawn.joints, { ...hardware, ...changed }, drawn.setups[setup].coats, setup).length === 0;
  if (!isSound(drawn.setup, other)) return false;
  if (!other.eyes) return true;
  return drawn.setups.every((setup, i) => {
    if (i === drawn.setup) return true;
    const holes = setup.holes.map((hole) => placeHole(hull, hole, ownerAt(drawn.joints, hole.x)));
    return isSound(i, { ...other, holes }) || !isSound(i, { holes });
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

/** All eyes with that of one hanger exchanged, and what hangs from it gone with it. */
export function withEye(parts: WarnParts, hanger: number, eye: PlacedEye): OtherParts {
  const { hardware, drawn } = parts;
  const old = hangerEyes(parts)[hanger];
  const own = new Set(drawn.setups[drawn.setup].hung.flatMap(({ name, from }) => (from === old.name ? [name] : [])));
  return {
    eyes: hardware.eyes.map((each) => (each === old ? eye : each)),
    hung: hardware.hung.map((item) => (own.has(item.name) ? { ...item, eye: eye.loop } : item)),
  };
}

/** Steps of one size up to a greatest, the least first, each to either side. */
export function stepsTo(most: Mm, step: Mm): readonly Mm[] {
  return Array.from({ length: Math.round(most / step) }, (_, i) => (i + 1) * step).flatMap((size) => [-size, size]);
}

/** `a`, `a and b`, `a, b and c` */
export function listed(names: readonly string[]): string {
  const [first, last] = [names.slice(0, -1), names.slice(-1)];
  return [...(first.length === 0 ? [] : [first.join(', ')]), ...last].join(' and ');
}

/** Names in quotes: `"a"`, or `"a" and "b"`. */
export function quoted(names: readonly string[]): string {
  return listed(names.map((name) => `"${name}"`));
}

/** `move "belly, fore" 4.0 mm aft` */
export function moveWords(names: readonly string[], by: Mm): string {
  return `move ${quoted(names)} ${formatLength(Math.abs(by))} ${by < 0 ? 'fore' : 'aft'}`;
}
