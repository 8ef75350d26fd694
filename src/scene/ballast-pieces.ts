import type { Mm, PlacedHole } from '../../sim/index.ts';

/** A piece of what a hole holds, on its axis: a rod, or a cone that ends in a tip. Distances from the mouth, inward. */
export interface BallastPiece {
  readonly of: 'plug' | 'lead' | 'air';
  readonly shape: 'rod' | 'point';
  readonly from: Mm;
  readonly long: Mm;
  readonly diameter: Mm;
  /** What the hole was drilled for: lead, or a chamber, or the plug where there is nothing else. */
  readonly isCore: boolean;
}

/**
 * What is drawn of a hole, from the mouth inward.
 *
 *   mouth        lead.from         depth
 *     | plug         | lead        | point: of lead that fills it, of the chamber it belongs to, else of the plug
 *     |______________|_____________|\
 *     |              |             | >   inward
 *     |______________|_____________|/      an air chamber lies where the lead would
 *
 * Lead may fill no more than the tip of the point. What of the plug stands round a thinner slug, or over such a tip in
 * the point, is left out: it would hide the lead.
 */
export function ballastPieces({ diameter, depth, pointDepth, lead, air }: PlacedHole): readonly BallastPiece[] {
  const core = lead ? 'lead' : air ? 'air' : 'plug';
  const coreFrom = Math.min(lead?.from ?? air?.from ?? depth, depth);
  const apex = depth + pointDepth;
  const pieces: BallastPiece[] = [];
  const add = (of: BallastPiece['of'], shape: BallastPiece['shape'], from: Mm, to: Mm, wide: Mm = diameter) => {
    if (to > from) pieces.push({ of, shape, from, long: to - from, diameter: wide, isCore: of === core });
  };
  add('plug', 'rod', 0, coreFrom);
  if (lead) add('lead', 'rod', coreFrom, depth, lead.diameter);
  else if (air) add('air', 'rod', coreFrom, depth);
  if (lead?.fillsPoint) {
    const share = Math.min(1, (apex - lead.from) / pointDepth);
    add('lead', 'point', apex - share * pointDepth, apex, share * diameter);
  } else {
    add(air && !lead ? 'air' : 'plug', 'point', depth, apex);
  }
  return pieces;
}
