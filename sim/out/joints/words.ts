import { type Assembled, type JointRest, mostHeel } from '../../chain/assemble.ts';
import type { Folded, FoldWay } from '../../chain/fold.ts';
import type { PinLoad } from '../../chain/loads.ts';
import { type Amounts, amountsIn } from '../../units/amounts.ts';
import type { Gram, GramMm, Radian } from '../../units/brand.ts';
import { radianFromDegree } from '../../units/convert.ts';
import { formatAngle } from '../../units/format.ts';
import { gramMm } from '../other-rest.ts';
import { listed } from '../warn/cure.ts';

const METRIC = amountsIn('mm-g');
/** Less than a scale shows, and less than the film of the water holds on a pin: as good as nothing. */
const NO_LOAD_G: Gram = 0.05;
const NO_MOMENT: GramMm = 1;
const NOTHING = 'next to nothing';
/** Less than a maker sees. */
const NO_TURN: Radian = radianFromDegree(0.1);
const NO_YAW: Radian = radianFromDegree(1);

/** What a pin carries while the bait is held straight: `0.53 g down and 27 g mm of sag`. */
export function pinLoadWords({ shear, moment, twist }: PinLoad, amounts: Amounts = METRIC): string {
  const parts = [
    // what floats up before the pin is pulled down by what is behind it
    ...(Math.abs(shear) < NO_LOAD_G
      ? []
      : [
          `${amounts.mass(Math.abs(shear), { digits: 2 })} ${shear > 0 ? 'holding the fore link down' : 'holding the fore link up'}`,
        ]),
    ...(Math.abs(moment) < NO_MOMENT ? [] : [`${gramMm(Math.abs(moment))} of ${moment > 0 ? 'sag' : 'arch'}`]),
    ...(Math.abs(twist) < NO_MOMENT ? [] : [`${gramMm(Math.abs(twist))} of twist`]),
  ];
  return parts.length === 0 ? NOTHING : listed(parts);
}

/** How a joint stands held straight: how far it gives, what it carries, and what it leans on with that. */
export function jointWords(joint: JointRest, amounts: Amounts = METRIC): string {
  const carried = pinLoadWords(joint.load, amounts);
  const against = carried === NOTHING ? [] : joint.stops.map((stop) => STOPS[stop]);
  const leans = against.length === 0 ? '' : `, against ${listed(against)}`;
  return `${postureWords(joint)}; it carries ${carried}${leans}`;
}

const STOPS: Readonly<Record<JointRest['stops'][number], string>> = {
  loops: 'the pin in its loops',
  'slot floor': 'the floor of its slot',
  'slot roof': 'the roof of its slot',
  port: 'its stop to port',
  starboard: 'its stop to starboard',
};

/** How the play of a joint shows: `sags 1.2°, leans 0.5° to port`, or `straight`. */
export function postureWords({ sag, lean }: Pick<JointRest, 'sag' | 'lean'>): string {
  const parts = [
    ...(Math.abs(sag) < NO_TURN ? [] : [`${sag > 0 ? 'sags' : 'arches'} ${angle(sag)}`]),
    ...(Math.abs(lean) < NO_TURN ? [] : [`leans ${angle(lean)} to ${sideOf(lean)}`]),
  ];
  return parts.length === 0 ? 'straight' : parts.join(', ');
}

/** Whether a bait that is let go stays straight, or how it curls. */
export function looseWords({ straight, loose, friction }: Assembled): string {
  if (loose === null) return 'Let go it stays straight.';
  const turned = loose.joints.flatMap(({ yaw, stops }, j) => {
    if (Math.abs(yaw) < NO_YAW) return [];
    const stop = stops.includes('port') || stops.includes('starboard') ? ', as far as it goes' : '';
    return [`joint ${j + 1} by ${angle(yaw, 0)} to ${sideOf(yaw)}${stop}`];
  });
  if (turned.length === 0) return 'Let go it stays straight.';
  const heel = mostHeel(loose);
  const tips = Math.abs(heel) < NO_YAW ? '' : `; it then heels ${angle(heel)} to ${sideOf(heel)}`;
  return `Let go it curls by itself: ${listed(turned)}${tips}.${frictionWords(friction, mostHeel(straight), heel)}`;
}

/** Steel on steel does not turn under a small push. */
function frictionWords(friction: Assembled['friction'], straight: Radian, curled: Radian): string {
  const known = friction.filter((band) => band !== null);
  if (known.length === 0) return '';
  const least = Math.min(...known);
  if (Math.max(Math.abs(straight), Math.abs(curled)) < least) {
    return ` Rust and friction may well keep it straight: they do where it would heel less than about ${angle(least)}.`;
  }
  return ` Friction in its eyes holds it only where it would heel less than about ${angle(least)}.`;
}

/** How a bait heels as it is folded right round, to the side where it does so more. */
export function foldedWords(folded: Folded): string {
  const { side: way, way: worse } = worseWay(folded);
  const { most } = worse;
  const end = worse.points.at(-1)?.fold ?? 0;
  if (worse.rollsFrom !== null) {
    return `Folded to ${way} it rolls: past ${angle(worse.rollsFrom, 0)} of fold it lies over by more than 30°, by ${angle(most.heel)} at most.`;
  }
  if (Math.abs(most.heel) < NO_YAW) return `Folded as far as it goes, ${angle(end, 0)} in all, it stays upright.`;
  return `Folded to ${way} it heels ${angle(most.heel)} at most, at ${angle(most.fold, 0)} of fold.`;
}

/** The way in which a bait heels more when it is folded. */
export function worseWay({ port, starboard }: Folded): { readonly side: 'port' | 'starboard'; readonly way: FoldWay } {
  return Math.abs(port.most.heel) > Math.abs(starboard.most.heel)
    ? { side: 'port', way: port }
    : { side: 'starboard', way: starboard };
}

function angle(of: Radian, digits = 1): string {
  return formatAngle(Math.abs(of), { digits });
}

/** Of what turns, heels or leans: more than nothing is to starboard. */
function sideOf(of: Radian): 'port' | 'starboard' {
  return of > 0 ? 'starboard' : 'port';
}
