import { Matrix4, Vector3 } from 'three';
import type { Mm, Vec3 } from '../../sim/index.ts';
import { createEase } from './ease.ts';
import { worldFromBody } from './frame.ts';

/** How a body stands in still water: `up` in the body frame, the water where up·p < offset. */
export interface Pose {
  readonly up: Vec3;
  readonly offset: Mm;
}

/** Called with world from body whenever the picture's pose has changed. */
export type PoseListener = (worldFromBody: Matrix4) => void;

/** Something on its way, with those that draw by it. */
export interface Moving {
  /** World from body as drawn now; rewritten in place. */
  readonly matrix: Matrix4;
  /** Moves on to a time; true while there is more to come. */
  step(now_ms: number): boolean;
  /** Calls back at once and at every move; the answer ends that. */
  listen(listener: PoseListener): () => void;
}

/** The pose that is drawn, on its way to the pose that was found. */
export interface Motion extends Moving {
  /** Sets out for a pose; the first one, and any while still, is taken up at once. */
  aim(pose: Pose, now_ms: number, still: boolean): void;
}

/** Two ups that nearly oppose each other have no way between them: the pose jumps. */
const OPPOSITE = -0.999;

/** Eases from pose to pose by mutation, so that frames make no garbage and React is not told of them. */
export function createMotion(): Motion {
  const matrix = new Matrix4();
  const [from, to, up] = [new Vector3(0, 0, 1), new Vector3(0, 0, 1), new Vector3(0, 0, 1)];
  const offset = { from: 0, to: 0, drawn: 0 };
  let aimed = false;

  const ease = createEase((share) => {
    up.lerpVectors(from, to, share).normalize();
    offset.drawn = offset.from + (offset.to - offset.from) * share;
    worldFromBody(up, offset.drawn, matrix);
    return matrix;
  }, matrix);

  return {
    matrix,
    aim(pose, now_ms, still) {
      from.copy(up);
      offset.from = offset.drawn;
      to.set(...pose.up);
      offset.to = pose.offset;
      const jumps = !aimed || still || from.dot(to) <= OPPOSITE;
      aimed = true;
      ease.begin(now_ms, jumps);
    },
    step: ease.step,
    listen: ease.listen,
  };
}
