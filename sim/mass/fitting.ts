import type { Design } from '../design/design.ts';
import { ownerAt } from '../links/cut.ts';
import type { PlacedFitting } from './placed.ts';

/** What is fixed on at a point, each with the link on its side of the joints: a pair is two, and a tail is its root. */
export function placeFittings(
  joints: Design['joints'],
  fittings: Design['fittings'],
  tails: Design['tails'],
): readonly PlacedFitting[] {
  const fixed = fittings.flatMap(({ name, x, y, z, mass, outside, pair }, i): readonly PlacedFitting[] => {
    const one = (side: string, across: number): PlacedFitting => ({
      name: `${name}${side}`,
      kind: 'fitting',
      link: ownerAt(joints, x),
      at: [x, across, z],
      mass,
      outsideVolume: outside,
      outsideSpread: 0,
      path: `fittings.${i}`,
    });
    if (!pair) return [one('', y)];
    return [one(', starboard', Math.abs(y)), one(', port', -Math.abs(y))];
  });
  const trailing = tails.map(({ name, x, y, z, mass, density, air: [least, most] }, i): PlacedFitting => {
    return {
      name,
      kind: 'tail',
      link: ownerAt(joints, x),
      at: [x, y, z],
      mass,
      outsideVolume: mass / density + (least + most) / 2,
      outsideSpread: (most - least) / 2,
      path: `tails.${i}`,
    };
  });
  return [...fixed, ...trailing];
}
