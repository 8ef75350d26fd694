import { type Assembled, mostHeel } from '../../chain/assemble.ts';
import type { Folded } from '../../chain/fold.ts';
import { ROLLED_RAD } from '../../chain/fold.ts';
import type { GramMm, Radian } from '../../units/brand.ts';
import { degreeFromRadian, radianFromDegree } from '../../units/convert.ts';
import { formatAngle } from '../../units/format.ts';
import { type Warning, WORDS_ALONE } from '../../warnings.ts';
import { foldedWords, looseWords, pinLoadWords, postureWords, worseWay } from '../joints/words.ts';
import { type WarnParts, WHOLE_BAIT } from './parts.ts';

/** A bait that curls by less looks straight. */
const CURL_RAD: Radian = radianFromDegree(10);
/** A pin that carries less is as good as free: its link is out by a tenth of a gram at 50 mm. */
const LOADED: GramMm = 5;

/** What the joints do that the maker does not mean: roll when folded, curl by themselves, sag to the end of their play. */
export function jointWarnings(parts: WarnParts, jointed: Assembled | null, folded: Folded | null): readonly Warning[] {
  if (jointed === null || folded === null) return [];
  return [
    ...unsettledWarnings(jointed, folded),
    ...rollWarnings(folded),
    ...curlWarnings(jointed),
    ...sagWarnings(parts, jointed),
  ];
}

/** Sums that did not come to an end are told, and not believed. */
function unsettledWarnings({ straight, loose }: Assembled, { port, starboard }: Folded): readonly Warning[] {
  const rests = [
    straight,
    ...(loose ? [loose] : []),
    ...[port, starboard].flatMap((way) => way.points.map(({ bait }) => bait)),
  ];
  if (rests.every(({ converged }) => converged)) return [];
  const text = 'The sums did not settle for the bait on its joints: what is said of its pins and folds is rough.';
  return [{ ...WORDS_ALONE, code: 'not-settled', where: WHOLE_BAIT, text }];
}

function rollWarnings(folded: Folded): readonly Warning[] {
  const { way } = worseWay(folded);
  if (way.rollsFrom === null) return [];
  return [
    {
      ...WORDS_ALONE,
      code: 'rolls-folded',
      where: WHOLE_BAIT,
      text: `${foldedWords(folded)} Links that are balanced each alone do not.`,
      number: degreeFromRadian(Math.abs(way.most.heel)),
      limit: degreeFromRadian(ROLLED_RAD),
      unit: 'deg',
    },
  ];
}

function curlWarnings(jointed: Assembled): readonly Warning[] {
  const { loose, friction } = jointed;
  if (loose === null) return [];
  const most = Math.max(...loose.joints.map(({ yaw }) => Math.abs(yaw)));
  const bands = friction.filter((band) => band !== null);
  // where friction holds it, it does not
  if (most < CURL_RAD || (bands.length > 0 && Math.abs(mostHeel(loose)) < Math.min(...bands))) return [];
  const text = `${looseWords(jointed)} Balanced each alone, its links have no reason to.`;
  const number = degreeFromRadian(most);
  return [
    { ...WORDS_ALONE, code: 'curls', where: WHOLE_BAIT, text, number, limit: degreeFromRadian(CURL_RAD), unit: 'deg' },
  ];
}

/** A pin whose play is used up, the most loaded first. */
function sagWarnings({ hardware }: WarnParts, { straight }: Assembled): readonly Warning[] {
  const loaded = straight.joints
    .map((joint, j) => ({ joint, j }))
    .filter(({ joint: { load, stops, slop } }) => {
      return slop !== null && stops.includes('loops') && Math.abs(load.moment) >= LOADED;
    })
    .toSorted((a, b) => Math.abs(b.joint.load.moment) - Math.abs(a.joint.load.moment));
  return loaded.map(({ joint, j }): Warning => {
    const pin = hardware.pins.find((each) => each.joint === j);
    const play = joint.slop === null ? '' : `, all that its play of ${formatAngle(joint.slop, { digits: 1 })} lets it`;
    return {
      ...WORDS_ALONE,
      code: 'pin-loaded',
      where: `joint ${j + 1}`,
      text: `Joint ${j + 1} ${postureWords(joint)}${play}: its pin carries ${pinLoadWords(joint.load)}. Links that are balanced each alone load no pin.`,
      at: pin ? [pin.x, 0, (pin.z[0] + pin.z[1]) / 2] : null,
      number: degreeFromRadian(Math.abs(joint.sag)),
      limit: joint.slop === null ? null : degreeFromRadian(joint.slop),
      unit: 'deg',
    };
  });
}
