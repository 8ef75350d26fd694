import { Matrix4, Quaternion, Vector3 } from 'three';
import type { LinkPose } from '../../sim/index.ts';
import { createEase } from './ease.ts';
import type { Moving } from './motion.ts';

/** How one link of a folded bait moves from place to place: it turns the shorter way while it goes. */
interface Turning extends Moving {
  /** Sets out for a place; the first one, and any while still, is taken up at once. */
  aim(place: Matrix4, now_ms: number, still: boolean): void;
}

const WHOLE = new Vector3(1, 1, 1);

export function createTurning(): Turning {
  const matrix = new Matrix4();
  const [from, to, drawn] = [0, 1, 2].map(() => ({ at: new Vector3(), turn: new Quaternion() })) as [
    Place,
    Place,
    Place,
  ];
  let aimed = false;
  const ease = createEase((share) => {
    drawn.at.lerpVectors(from.at, to.at, share);
    drawn.turn.slerpQuaternions(from.turn, to.turn, share);
    return matrix.compose(drawn.at, drawn.turn, WHOLE);
  }, matrix);
  return {
    matrix,
    aim(place, now_ms, still) {
      from.at.copy(drawn.at);
      from.turn.copy(drawn.turn);
      place.decompose(to.at, to.turn, new Vector3());
      ease.begin(now_ms, still || !aimed);
      aimed = true;
    },
    step: ease.step,
    listen: ease.listen,
  };
}

interface Place {
  readonly at: Vector3;
  readonly turn: Quaternion;
}

/** World from link, raised by so much. */
export function matrixOf({ x, y, z, origin }: LinkPose, raised: number): Matrix4 {
  return new Matrix4().set(
    x[0],
    y[0],
    z[0],
    origin[0],
    x[1],
    y[1],
    z[1],
    origin[1],
    x[2],
    y[2],
    z[2],
    origin[2] + raised,
    0,
    0,
    0,
    1,
  );
}

/** A place between two others, as a share of the way. */
export function between(from: Matrix4, to: Matrix4, share: number): Matrix4 {
  const [a, b] = [new Vector3(), new Vector3()];
  const [p, q] = [new Quaternion(), new Quaternion()];
  const size = new Vector3();
  from.decompose(a, p, size);
  to.decompose(b, q, size);
  return new Matrix4().compose(a.lerp(b, share), p.slerp(q, share), WHOLE);
}
