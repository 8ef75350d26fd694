import { Matrix4, Vector3 } from 'three';
import type { AdvisedBaitAnswers, Assembly } from '../../sim/index.ts';
import { around } from '../view/around.ts';
import type { Bend } from '../view/view.ts';
import type { ShownBait } from './shown.ts';
import type { Room } from './stand.ts';
import { between, matrixOf } from './turning.ts';

/** What is known of a bait's joints. */
export type JointAnswers = Partial<Pick<AdvisedBaitAnswers, 'jointed' | 'folded'>>;

/**
 * World from link for each link of a bait whose joints are in play, nose to tail; null where it is straight, or nothing is
 * known of its joints. It is turned on the water so that it lies evenly about where it lay.
 */
export function placesOf(bend: Bend, { jointed, folded }: JointAnswers, bait: ShownBait): readonly Matrix4[] | null {
  if (bend === null || !jointed || !folded || jointed.straight.poses.length !== bait.links.length) return null;
  // how deep a bait lies that is wholly under has no answer: it is drawn where it is drawn straight
  const raised = -bait.pose.offset - (jointed.straight.poses[0]?.origin[2] ?? 0);
  const matrices = ({ poses }: Assembly) => poses.map((pose) => matrixOf(pose, raised));
  if (bend === 'loose') {
    const rest = jointed.loose ?? jointed.straight;
    const turned = rest.joints.reduce((sum, { yaw }) => sum + yaw, 0);
    return evenly(matrices(rest), turned, bait);
  }
  const way = bend < 0 ? folded.port : folded.starboard;
  const { from, to, part } = around(way.points, Math.abs(bend));
  const [start, end] = [matrices(from.bait), matrices(to.bait)];
  const fold = from.fold + part * (to.fold - from.fold);
  return evenly(
    start.map((place, i) => between(place, end[i] as Matrix4, part)),
    Math.sign(bend) * fold,
    bait,
  );
}

/** Turned back by half the fold about the bait's middle. */
function evenly(places: readonly Matrix4[], fold: number, { links }: ShownBait): readonly Matrix4[] {
  const ends = links.flatMap(({ wetted: { mesh } }) => [mesh.positions[0] ?? 0, mesh.positions.at(-3) ?? 0]);
  const middle = (Math.min(...ends) + Math.max(...ends)) / 2;
  const turn = new Matrix4().makeTranslation(middle, 0, 0);
  turn.multiply(new Matrix4().makeRotationZ(-fold / 2)).multiply(new Matrix4().makeTranslation(-middle, 0, 0));
  return places.map((place) => turn.clone().multiply(place));
}

/** What a bent bait takes up, seen from the side as from above. */
export function roomBent(straight: Room, places: readonly Matrix4[], { links }: ShownBait): Room {
  const [low, high] = [new Vector3(1, 1, 1).multiplyScalar(1e9), new Vector3(1, 1, 1).multiplyScalar(-1e9)];
  const point = new Vector3();
  links.forEach(({ wetted: { mesh } }, i) => {
    const place = places[i];
    if (!place) return;
    const { positions } = mesh;
    for (let k = 0; k < positions.length; k += 3) {
      point.fromArray(positions as unknown as number[], k).applyMatrix4(place);
      low.min(point);
      high.max(point);
    }
  });
  const wide = Math.max(-low.y, high.y);
  return {
    ...straight,
    above: Math.max(straight.above, high.z, wide),
    below: Math.max(straight.below, -low.z, wide),
    middle: (low.x + high.x) / 2,
    length: high.x - low.x,
  };
}
