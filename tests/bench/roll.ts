import { findAttitudes } from '../../sim/hydro/attitudes.ts';
import type { FloatingBody } from '../../sim/hydro/body.ts';
import { floatBody } from '../../sim/hydro/float.ts';
import { rightingCurve } from '../../sim/hydro/righting-arm.ts';
import { rollOfBait, rollOfLink } from '../../sim/roll/roll.ts';
import { ballastPartsOf } from '../support/planned-bait.ts';
import type { AllAnswers } from '../support/worked-bait.ts';
import { bodyAt, ENGINE, meshAt, SIZES } from './demo.ts';
import { atLeast, atMost, type Row, timeRow, valueRow } from './rows.ts';
import { timeInTurn, timeOf } from './timing.ts';
import { createVectorClip } from './vector-clip.ts';

const HEAD = 0;
/** A heel takes a plane to find the draft and one to see that it was found, were trim free of cost. */
const PLANES_A_HEEL = 2;

/** How the head and the whole bait take being rolled: arms right round, where every drop ends, and all that is said of it. */
export function rollRows(answers: AllAnswers): readonly Row[] {
  const [coarse] = SIZES;
  const size = SIZES.find(({ name }) => name === ENGINE) ?? coarse;
  const whole = wholeAt(answers, size);
  const rough = wholeAt(answers, coarse);
  const first = floatBody(whole);
  const mesh = meshAt(answers, HEAD, size);
  const head = bodyAt(answers, HEAD, mesh);
  const { up } = floatBody(head);
  const clip = createVectorClip(mesh);
  const { points } = rightingCurve(head, up);
  const [ours, byVectors] = timeInTurn([() => rightingCurve(head, up), () => clip(up, 0)]);
  const bait = ballastPartsOf(answers);
  const { float } = answers.links[HEAD];
  return [
    timeRow(
      `${ENGINE} a link: where 162 drops of the whole bait end`,
      timeOf(() => findAttitudes(whole, rough, first)),
      'ms',
      atMost(200),
    ),
    timeRow(
      `${ENGINE} a link: righting arms of the whole bait, right round`,
      timeOf(() => rightingCurve(whole, first.up)),
      'ms',
      null,
    ),
    timeRow(`${ENGINE}: righting arms of the head, right round (${points.length} heels)`, ours, 'ms', atMost(6)),
    valueRow(
      `${ENGINE}: vector class, ${PLANES_A_HEEL} planes a heel alone, over ours`,
      (byVectors.least * PLANES_A_HEEL * points.length) / ours.least,
      '×',
      atLeast(5),
    ),
    timeRow(
      'all that is said of the head’s roll, least lead too',
      timeOf(() => rollOfLink(bait, bait.links[HEAD], float, [])),
      'ms',
      null,
    ),
    timeRow(
      'all that is said of the whole bait’s roll',
      timeOf(() => rollOfBait(bait, bait.links, answers.bait.assembled)),
      'ms',
      null,
    ),
  ];
}

/** The links as one piece, its weights by the ledger whatever the mesh. */
function wholeAt(answers: AllAnswers, size: (typeof SIZES)[number]): FloatingBody {
  const links = answers.links.map((_, link) => bodyAt(answers, link, meshAt(answers, link, size)));
  const mass = links.reduce((sum, link) => sum + link.mass, 0);
  const [x, y, z] = [0, 1, 2].map((axis) => links.reduce((sum, link) => sum + link.mass * link.centre[axis], 0) / mass);
  return {
    trees: links.flatMap(({ trees }) => trees),
    waterDensity: answers.bait.water.density,
    mass,
    centre: [x, y, z],
    outside: links.flatMap(({ outside }) => outside),
    hung: links.flatMap(({ hung }) => hung),
  };
}
