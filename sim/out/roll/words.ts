import { type Digits, MOST_DIGITS } from '../../hydro/accuracy.ts';
import type { Steadiness } from '../../hydro/steadiness.ts';
import type { Arms, ArmsOver } from '../../roll/arms.ts';
import { OFF_CENTRE_MM } from '../../roll/off-centre.ts';
import type { BaitRoll, LeadMass, LeastLead, LinkRoll, Roll } from '../../roll/roll.ts';
import type { Radian } from '../../units/brand.ts';
import { degreeFromRadian } from '../../units/convert.ts';
import { formatAngle, formatLength, formatMass, formatNumber, formatPercent } from '../../units/format.ts';
import { gramMm } from '../other-rest.ts';

type RollDigits = Pick<Digits, 'gm' | 'heel'>;

/** The word for how it stands: `steady`, or why there is none. */
export function steadinessWords({ steadiness, arms }: Roll): string {
  if (steadiness === null) return 'on end';
  return arms === null ? 'no preferred way up' : steadiness;
}

/** What a word for how it stands means, for whoever meets it first. */
export const STEADINESS_MEANS: Readonly<Record<Steadiness, string>> = {
  'lays over': 'upright does not hold it',
  tender: 'a breath tips it',
  steady: 'it comes back by itself',
  stiff: 'it snaps back, and rolls hardly at all as it swims',
};

/**
 * How a link or the bait takes being rolled, in mm, g and degrees, as sentences without their full stops: how it stands and
 * by how much, how far over it comes back from, and what brings it back.
 */
export function rollWords(roll: Roll, digits: RollDigits = MOST_DIGITS): readonly string[] {
  if (roll.steadiness === null) return ['Roll: it stands on end or has gone over it, where roll means nothing'];
  const over = roll.arms === null ? [] : [armsWords(roll, roll.arms, digits)];
  return [`Roll: ${steadinessWords(roll)}, ${heightWords(roll, digits)}`, ...over];
}

function heightWords({ isAfloat, gm, width, loll }: Roll, digits: RollDigits): string {
  const height = formatLength(gm, 'mm', { digits: digits.gm });
  const share = `${formatPercent(gm / width, { digits: Math.abs(gm) < 0.1 * width ? 1 : 0 })} of its width`;
  const from = loll === null ? '' : ' held upright';
  return isAfloat ? `GM ${height}${from} (${share})` : `buoyancy ${height} over weight${from} (${share})`;
}

function armsWords({ isAfloat, loll, fromBellyUp }: Roll, arms: Arms, digits: RollDigits): string {
  if (!isAfloat) {
    const { arm } = arms.starboard.most;
    const to = loll === null ? '' : `turns over to ${lean(loll, digits.heel)}; `;
    return `Wholly under, ${to}its righting arm is ${formatLength(arm, 'mm', { digits: digits.gm })} times the sine of the heel from its rest, so it comes back from anywhere`;
  }
  return capital(
    [
      ...(loll === null ? [] : [`comes to ${lean(loll, digits.heel)}, its angle of loll`]),
      loll === null ? rangeWords(arms) : lollRangeWords(arms, loll),
      mostWords(arms),
      fromBellyUp === true ? 'let go belly up it comes back' : 'let go belly up it does not come back',
    ].join('; '),
  );
}

function lean(heel: Radian, digits: number): string {
  return `${formatAngle(Math.abs(heel), { digits })} to ${heel > 0 ? 'starboard' : 'port'}`;
}

/** How far over it comes back from; alike to both sides said once. */
function rangeWords({ starboard, port }: Arms): string {
  const [right, left] = [starboard, port].map(wayWords);
  if (right === left) return right.replace('%', 'either way');
  return `${right.replace('%', 'to starboard')}, ${left.replace('%', 'to port')}`;
}

/** Where upright does not hold it, it comes back from the side it leans to, and the other way goes over. */
function lollRangeWords({ starboard, port }: Arms, loll: Radian): string {
  const [own, other] = loll > 0 ? [starboard, port] : [port, starboard];
  const [side, away] = loll > 0 ? ['starboard', 'port'] : ['port', 'starboard'];
  const out = wayWords(own).replace('%', `to ${side}`);
  if (other.limit === null) return `${out}, ${wayWords(other).replace('%', `to ${away}`)}`;
  const past = heelWords(other.limit) === heelWords(0) ? 'upright' : heelWords(other.limit);
  return `${out}; rolled back past ${past} it goes over to ${away}`;
}

function wayWords({ limit, onEnd }: ArmsOver): string {
  if (limit !== null) return `comes back from up to ${heelWords(limit)} %`;
  if (onEnd !== null) return `comes back from all of ${heelWords(onEnd)} %, past which it swings up on end`;
  return 'comes back from however far it is rolled %';
}

/** To a degree: a limit is a matter of how gently it is let go. */
function heelWords(heel: Radian): string {
  return `${formatNumber(Math.abs(degreeFromRadian(heel)), { digits: 0 })}°`;
}

/** Of the stronger side: the side it leans to, where it does not stand upright. */
function mostWords({ starboard, port }: Arms): string {
  const { most, energy } = starboard.most.arm >= port.most.arm ? starboard : port;
  return `${gramMm(energy)} of work takes it there; most arm ${formatLength(most.arm)} at ${heelWords(most.heel)}`;
}

/** What a link's lead 3 mm off the middle does to it alone, and joined up; null: it has none. */
export function linkOffCentreWords(alone: LinkRoll['offCentre'], joined: Radian | null): string | null {
  if (alone === null) return null;
  const together = joined === null ? '' : ` alone, ${turn(joined)} joined up`;
  return `Its lead ${offBy()} off the middle heels it ${turn(alone)}${together}`;
}

/** What all of its lead 3 mm off the middle does to the whole bait; null: it has none. */
export function baitOffCentreWords({ offCentre }: Pick<BaitRoll, 'offCentre'>): string | null {
  return offCentre && `All lead ${offBy()} off the middle heels it ${turn(offCentre.all)}`;
}

function offBy(): string {
  return formatLength(OFF_CENTRE_MM, 'mm', { digits: 0 });
}

function turn(heel: Radian): string {
  return formatAngle(Math.abs(heel));
}

/** How much lead at one height stands a link up that has none; null: it stands on end. */
export function leastLeadWords({ least }: Pick<LinkRoll, 'least'>): string | null {
  if (least === null) return null;
  const { stands, steady } = least;
  const at = placeWords(least);
  if (stands === null) return `No weight of lead ${at} stands it up`;
  if (stands.net === 0) {
    return steady?.net === 0
      ? 'Without any lead it is steady'
      : `Without any lead it stands; ${steadyWords(steady)} ${at}`;
  }
  return `At least ${leadWords(stands)} ${at} stands it up; ${steadyWords(steady)}`;
}

function steadyWords(steady: LeadMass | null): string {
  return steady === null ? 'no weight there makes it steady' : `${leadWords(steady)} makes it steady`;
}

function leadWords({ net, lead }: LeadMass): string {
  const mass = (grams: number) => formatMass(grams, 'g', { digits: 1 });
  return lead === null ? `${mass(net)} more than the wood it replaces` : `${mass(lead)} of lead`;
}

function placeWords({ at, of }: LeastLead): string {
  const height = `${formatLength(Math.abs(at[2]))} ${at[2] < 0 ? 'below' : 'above'} the datum`;
  return {
    own: `where its lead is, ${height},`,
    plan: `where it is planned, ${height},`,
    keel: `low over the keel, ${height},`,
  }[of];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
