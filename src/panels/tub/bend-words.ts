import { type Assembled, type Folded, formatAngle, mostHeel } from '../../../sim/index.ts';
import { around } from '../../view/around.ts';
import type { Bend } from '../../view/view.ts';

/** A bait that heels less than that is upright to the eye. */
const UPRIGHT_DEG = 0.5;
const DEGREE = Math.PI / 180;

/** How the bait in the tub is bent, and how it then heels: `38° to starboard, heels 4.2° to port`. */
export function bendWords(bend: Exclude<Bend, null>, jointed: Assembled, folded: Folded): string {
  if (bend === 'loose') {
    const { loose } = jointed;
    if (!loose) return 'stays straight';
    const turned = loose.joints.reduce((sum, { yaw }) => sum + yaw, 0);
    return `curls ${angle(turned, 0)} to ${side(turned)}, ${heelWords(mostHeel(loose))}`;
  }
  if (bend === 0) return 'straight';
  const { points } = bend < 0 ? folded.port : folded.starboard;
  const { from, to, part } = around(points, Math.abs(bend));
  const mix = (pick: (point: typeof from) => number) => pick(from) + part * (pick(to) - pick(from));
  const fold = mix((point) => point.fold);
  return `${angle(fold, 0)} to ${side(bend)}, ${heelWords(mix((point) => point.heel))}`;
}

function heelWords(heel: number): string {
  return Math.abs(heel) < UPRIGHT_DEG * DEGREE ? 'upright' : `heels ${angle(heel, 1)} to ${side(heel)}`;
}

function angle(of: number, digits: number): string {
  return formatAngle(Math.abs(of), { digits });
}

function side(of: number): string {
  return of > 0 ? 'starboard' : 'port';
}
