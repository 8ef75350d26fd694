import type { Band } from '../../sinking/drag-law.ts';
import type { Sinking } from '../../sinking/sink.ts';
import type { DropFit } from '../../sinking/timed-drop.ts';
import type { MmPerS, Radian, Second } from '../../units/brand.ts';
import { radianFromDegree } from '../../units/convert.ts';
import { formatAngle, formatNumber } from '../../units/format.ts';

/** A speed as a maker times it: `118 mm/s`, slow ones to a tenth. */
export function speedWords(speed: MmPerS): string {
  return `${formatNumber(speed, { digits: speed < 10 ? 1 : 0 })} mm/s`;
}

/** `98 to 126 mm/s`. */
export function speedBandWords([low, high]: readonly [MmPerS, MmPerS]): string {
  return `${formatNumber(low, { digits: low < 10 ? 1 : 0 })} to ${speedWords(high)}`;
}

/** A time in seconds, to the tenth that a watch in the hand is good for. */
export function secondsWords(time: Second): string {
  return `${formatNumber(time)} s`;
}

/** `3.3 s (3.1–3.6)`. */
export function timeBandWords([low, mid, high]: Band): string {
  return `${secondsWords(mid)} (${formatNumber(low)}–${formatNumber(high)})`;
}

/** How something falls, in one line without its subject: `sinks: first foot in 3.3 s (3.1–3.6), …`. */
export function sinkingWords(sinking: Sinking): string {
  const { firstFoot, firstMetre, speed } = sinking;
  const times = `first foot in ${timeBandWords(firstFoot)}, first metre in ${timeBandWords(firstMetre)}`;
  return `sinks: ${times}, ${speedWords(speed[1])} (${formatNumber(speed[0], { digits: 0 })}–${formatNumber(speed[2], { digits: 0 })}); ${fallWords(sinking)}`;
}

/** Time to the first foot, of two setups side by side: `in 3.3 s (3.1–3.6)`. */
export function firstFootWords(sinking: Sinking | null): string {
  return sinking ? `in ${timeBandWords(sinking.firstFoot)}` : 'does not sink';
}

/** How it lies as it falls. */
export function fallWords({
  trim,
  heel,
  neutral,
  settled,
}: Pick<Sinking, 'trim' | 'heel' | 'neutral' | 'settled'>): string {
  if (neutral) return 'nothing turns it: it falls as it is let go';
  const parts = [
    ...(isStill(trim) ? [] : [`${formatAngle(Math.abs(trim))} ${trim > 0 ? 'nose-down' : 'tail low'}`]),
    ...(isStill(heel) ? [] : [`${formatAngle(Math.abs(heel))} to ${heel > 0 ? 'starboard' : 'port'}`]),
  ];
  const lies = parts.length === 0 ? 'level' : parts.join(', ');
  return `${lies} as it falls${settled ? '' : ', as near as could be found'}`;
}

/** What is written 0.0° is none. */
function isStill(angle: Radian): boolean {
  return Math.abs(angle) < radianFromDegree(0.05);
}

/** What a timed drop makes of the drag, as one sentence. */
export function timedDropWords(fit: DropFit): string {
  switch (fit.kind) {
    case 'fitted': {
      const much = `The timed drop makes its drag ${formatNumber(fit.timed.factor, { digits: 2 })} times what its shape would have.`;
      return fit.isFar ? `${much} So much is not to be believed: time it again, and weigh it in the water.` : much;
    }
    case 'too-fast':
      return `The timed drop is faster than any: with next to no drag it takes ${formatNumber(fit.least, { digits: 2 })} s. It is left out.`;
    case 'too-slow':
      return `The timed drop is slower than any bait of this shape falls: more than ${secondsWords(fit.most)}. It is left out.`;
    case 'afloat':
      return 'The timed drop is left out: the bait as drawn does not sink. Say what it weighed in the water then.';
  }
}
