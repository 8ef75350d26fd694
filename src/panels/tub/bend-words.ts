import { type Assembled, type Folded, formatAngle } from '../../../sim/index.ts';
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
    const heel = loose.links.reduce((most, link) => (Math.abs(link.heel) > Math.abs(most) ? link.heel : most), 0);
    return `curls ${angle(turned, 0)} to ${side(turned)}, ${heelWords(heel)}`;
  }
  if (bend === 0) return 'straight';
  const { points } = bend < 0 ? folded.port : folded.starboard;
  const at = Math.abs(bend) * (points.length - 1);
  const k = Math.min(points.length - 2, Math.floor(at));
  const mix = (pick: (point: (typeof points)[number]) => number) => {
    const [from, to] = [points[k], points[k + 1]];
    return from && to ? pick(from) + (at - k) * (pick(to) - pick(from)) : 0;
  };
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
