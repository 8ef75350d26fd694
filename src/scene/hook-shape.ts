import {
  type BufferGeometry,
  CatmullRomCurve3,
  ConeGeometry,
  CylinderGeometry,
  TorusGeometry,
  TubeGeometry,
  Vector3,
} from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';

/*
 * A treble hook of length 1, hanging from a loop at the origin, z up:
 *
 *      o   0        loop of the screw eye
 *      O            split ring
 *      o            eye of the hook
 *      |            shank
 *   \  |  /
 *    \_|_/          three bends, a third of a turn apart
 *         -1        lowest point
 *
 * Proportions as trebles commonly have them (common practice); the look only, nothing is weighed by it.
 */
const RING = { radius: 0.07, wire: 0.009, turns: 2 } as const;
const EYE = { radius: 0.036, wire: 0.018 } as const;
const WIRE = 0.02;
const BEND_RADIUS = 0.13;
const POINT_RISE = 0.22;
const PRONGS = 3;

/** Shape of every hung item, in lengths of its own hang. The caller disposes of it. */
export function makeTreble(): BufferGeometry {
  const ring = makeSplitRing().translate(0, 0, -RING.radius);
  const eyeTop = -2 * RING.radius + RING.wire;
  const eye = new TorusGeometry(EYE.radius, EYE.wire, 8, 20).rotateY(Math.PI / 2).translate(0, 0, eyeTop - EYE.radius);
  const shankTop = eyeTop - 2 * EYE.radius;
  const bendAt = -(1 - BEND_RADIUS - WIRE);
  const shank = new CylinderGeometry(WIRE, WIRE, shankTop - bendAt, 10).rotateX(Math.PI / 2);
  shank.translate(0, 0, (shankTop + bendAt) / 2);
  const prongs = Array.from({ length: PRONGS }, (_, i) => makeProng(bendAt, (i * 2 * Math.PI) / PRONGS)).flat();
  const parts = [ring, eye, shank, ...prongs];
  const merged = mergeGeometries(parts);
  for (const part of parts) part.dispose();
  return merged;
}

/** Two turns of wire side by side, its axis along y: what tells a split ring from a welded one. */
function makeSplitRing(): BufferGeometry {
  const STEPS = 24;
  const places = Array.from({ length: RING.turns * STEPS + 1 }, (_, i) => {
    const turn = i / STEPS;
    const angle = 2 * Math.PI * turn;
    const aside = 2 * RING.wire * (turn - RING.turns / 2);
    return new Vector3(RING.radius * Math.cos(angle), aside, RING.radius * Math.sin(angle));
  });
  return new TubeGeometry(new CatmullRomCurve3(places), 2 * places.length, RING.wire, 6);
}

/** A bend and its point, in the half plane that `turn` names. */
function makeProng(bendAt: number, turn: number): BufferGeometry[] {
  const places: Vector3[] = [];
  const STEPS = 8;
  for (let i = 0; i <= STEPS; i++) {
    const angle = Math.PI * (1 + i / STEPS);
    places.push(new Vector3(BEND_RADIUS * (1 + Math.cos(angle)), 0, bendAt + BEND_RADIUS * Math.sin(angle)));
  }
  const tip = new Vector3(1.9 * BEND_RADIUS, 0, bendAt + POINT_RISE);
  places.push(tip);
  const bend = new TubeGeometry(new CatmullRomCurve3(places), 28, WIRE * 0.92, 8);
  const point = new ConeGeometry(WIRE * 0.92, 3 * WIRE, 8).rotateX(Math.PI / 2).translate(0, 0, 1.5 * WIRE);
  point.translate(tip.x, tip.y, tip.z);
  return [bend.rotateZ(turn), point.rotateZ(turn)];
}
