import type { LoadedPin, WhatIfRow } from '../../ballast/advised.ts';
import type { HungEffect } from '../../ballast/forgiveness.ts';
import { ENOUGH_G, type LinkPlan, type Obstacle } from '../../ballast/plan.ts';
import type { Hole } from '../../design/design.ts';
import { type Amounts, amountsIn } from '../../units/amounts.ts';
import type { Radian, Second } from '../../units/brand.ts';
import { radianFromDegree } from '../../units/convert.ts';
import { formatAngle, formatNumber } from '../../units/format.ts';

const METRIC = amountsIn('mm-g');
const LACKING: Readonly<Record<Extract<Obstacle, { kind: 'empty-shop' }>['lacks'], string>> = {
  drills: 'no drills',
  lead: 'no lead',
  'drills that take the lead': 'no drill that takes its lead (at most 1 mm wider than the rod)',
};

/** Why a link cannot be ballasted on its own, as one sentence with its numbers. */
export function obstacleWords(name: string, why: Obstacle, amounts: Amounts = METRIC): string {
  const grams = (mass: number) => amounts.mass(mass, { digits: 2 });
  switch (why.kind) {
    case 'too-heavy':
      if (why.over <= ENOUGH_G) return `Without any lead ${name} has its weight already, and is not level.`;
      return `Without any lead ${name} is ${grams(why.over)} too heavy already.`;
    case 'no-weight-left':
      return `Only ${grams(why.net)} may be added to ${name}: too little to level it with.`;
    case 'empty-shop':
      return `The shop's lists have ${LACKING[why.lacks]}.`;
    case 'outside': {
      const where = `${amounts.length(why.x)} from the nose tip`;
      return `Lead for ${name} would have to stand ${where}; its holes fit from ${amounts.length(why.from)} to ${amounts.length(why.to)}.`;
    }
    case 'no-room':
      if (why.most <= 0)
        return `No hole of any drill on the list keeps its wall in ${name}, which wants ${grams(why.wanted)} more.`;
      return `${capital(name)} wants ${grams(why.wanted)} more, and its holes hold about ${grams(why.most)}.`;
    case 'not-level':
      return `No holes that fit into ${name} bring it within 2° of level and upright.`;
  }
}

/** What stands about a planned link in a line: how much lead, and what its rounding leaves. */
export function planWords({ name, state, lead, left, why }: LinkPlan, amounts: Amounts = METRIC): string {
  if (why) return obstacleWords(name, why, amounts);
  if (state === 'kept') {
    return `${capital(name)} keeps its ${amounts.mass(lead)} of lead: over the pin it bears what its neighbour cannot.`;
  }
  if (state === 'enough') return `${capital(name)} rests as it should without lead.`;
  const rest = left === null ? '' : `, ${trimWords(left.trim)} as rounded`;
  return `${amounts.mass(lead)} of lead in ${name}${rest}.`;
}

/** A hole as it is marked out and drilled. */
export function holeWords(hole: Hole, amounts: Amounts = METRIC): string {
  const { from, x, across, diameter, depth, point, lead, air } = hole;
  const row =
    from === 'belly' || from === 'back'
      ? across === 0
        ? ''
        : `, ${amounts.length(Math.abs(across))} to ${across > 0 ? 'starboard' : 'port'}`
      : `, ${amounts.length(Math.abs(across))} ${across < 0 ? 'below' : 'above'} the datum`;
  const tip = point >= Math.PI ? '' : ' to its shoulder';
  const filled = lead
    ? `, ${amounts.mass(lead.mass)} of ${lead.stock.name}`
    : air
      ? `, air under a plug of ${amounts.length(air.plug)}`
      : '';
  return `${hole.name}: from the ${from} at ${amounts.length(x)}${row}, ${amounts.length(diameter)} wide, ${amounts.length(depth)} deep${tip}${filled}`;
}

/** What the pin has to carry where a neighbour bears the rest, and what that makes of the bait when it is let go. */
export function pinWords({ force, moment, curl }: LoadedPin, amounts: Amounts = METRIC): string {
  const carries = `the pin carries ${amounts.mass(Math.abs(force), { digits: 2 })} and ${formatNumber(Math.abs(moment), { digits: 0 })} g mm`;
  if (curl === null) return `${carries}; let go it stays straight`;
  const [yaw, heel] = [curl.yaw, curl.heel].map((angle) => formatAngle(Math.abs(angle), { digits: 0 }));
  return `${carries}; let go it curls by ${yaw} and heels by ${heel}`;
}

const LEVEL: Radian = radianFromDegree(0.05);

/** `0.3° nose-down`, or `level`. */
export function trimWords(trim: Radian): string {
  if (Math.abs(trim) < LEVEL) return 'level';
  return `${formatAngle(Math.abs(trim), { digits: 1 })} ${trim > 0 ? 'nose-down' : 'tail low'}`;
}

/** What a hung item does to its link, and what would undo that. */
export function hungWords({ name, trim, levelX, levelMass }: HungEffect, amounts: Amounts = METRIC): string {
  const cures = [
    ...(levelX === null ? [] : [`its eye at ${amounts.length(levelX)}`]),
    ...(levelMass === null ? [] : [`a mass of ${amounts.mass(levelMass)}`]),
  ];
  const cure = cures.length === 0 ? '' : `; level with ${cures.join(', or ')}`;
  return `${name} trims it ${trimWords(trim)}${cure}`;
}

/** What differs in one row: `+0.52 g in the water, 0.2° tail low, 0.4 mm lower`. */
export function whatIfWords({ change, lead }: WhatIfRow, amounts: Amounts = METRIC): string {
  if (lead) return `${amounts.mass(lead.change, { signed: true })} of lead, ${amounts.mass(lead.mass)} in all`;
  const weight = `${amounts.mass(change.netWet, { digits: 2, signed: true })} in the water`;
  const turned = trimWords(change.trim) === 'level' ? [] : [`turns ${trimWords(change.trim)}`];
  const height =
    change.proud === null || Math.abs(change.proud) < 0.05
      ? []
      : [`${amounts.length(Math.abs(change.proud))} ${change.proud < 0 ? 'lower' : 'higher'}`];
  const foot = change.firstFoot === null || Math.abs(change.firstFoot) < 0.05 ? [] : [footWords(change.firstFoot)];
  return [weight, ...height, ...turned, ...foot].join(', ');
}

function footWords(change: Second): string {
  return `its first foot ${formatNumber(Math.abs(change))} s ${change < 0 ? 'sooner' : 'later'}`;
}

function capital(name: string): string {
  const [first = ''] = name;
  return first.toUpperCase() + name.slice(first.length);
}
