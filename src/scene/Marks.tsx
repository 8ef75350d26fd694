import { Html } from '@react-three/drei';
import { type ReactNode, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { BufferGeometry, Float32BufferAttribute, type Group } from 'three';
import type { Mm, Vec3 } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { PulledInWorld } from './Apart.tsx';
import { ORDER } from './order.ts';
import { reachAlong, type ShownBait, type ShownLink } from './shown.ts';
import { useTub } from './tub.ts';

/** Under the page's own lists and messages. */
const LAYERS: [number, number] = [10, 0];
/** Clear of the back or flank, so that a number never lies on wood. */
const CLEAR_MM = 3;
/** A dozen words over a picture are enough: two centres and the water have theirs, links share the rest. */
const MOST_NUMBERS = 9;
/** Half the length of the line through a centre. */
const PLUMB_MM = 9;

interface MarksProps {
  readonly bait: ShownBait;
  readonly waterEnd: Vec3;
  /** Links are pulled apart, and how far each goes then. */
  readonly apart: boolean;
  readonly shifts: readonly Mm[];
}

/**
 * Numbers over the links, the two centres with the plumb line through each, and the name of the water's surface. Links
 * that are apart have no centres in common.
 */
export function Marks({ bait, waterEnd, apart, shifts }: MarksProps) {
  const plumb = useMemo(() => {
    const line = new BufferGeometry();
    line.setAttribute('position', new Float32BufferAttribute([0, 0, -PLUMB_MM, 0, 0, PLUMB_MM], 3));
    return line;
  }, []);
  useEffect(() => () => plumb.dispose(), [plumb]);
  const camera = useView((view) => view.camera);
  // from the front all links stand behind the first; from the top the surface has no edge to write at
  const step = Math.ceil(bait.links.length / MOST_NUMBERS);
  const numbered = camera === 'front' ? bait.links.slice(0, 1) : bait.links.filter((_, i) => i % step === 0);
  const level = camera === 'side';
  return (
    <>
      {numbered.map((link) => (
        <PulledInWorld key={link.index} by={shifts[bait.links.indexOf(link)] ?? 0}>
          <Follow point={camera === 'top' ? besideFlank(link) : overBack(link)}>
            <Label className="link-number">{link.index + 1}</Label>
          </Follow>
        </PulledInWorld>
      ))}
      {!apart && (
        <>
          <Follow point={bait.float.gravityCentre} line={plumb}>
            <Label className="centre weight">
              <CentreOfGravity />
              <span>G</span>
            </Label>
          </Follow>
          <Follow point={bait.float.buoyancyCentre} line={plumb}>
            <Label className="centre lift">
              <CentreOfBuoyancy />
              <span>B</span>
            </Label>
          </Follow>
        </>
      )}
      {level && (
        <group position={[...waterEnd]}>
          <Label className="water-name">still water</Label>
        </group>
      )}
    </>
  );
}

function overBack(link: ShownLink): Vec3 {
  return [middleOf(link), 0, reachAlong([link], [0, 0, 1]) + CLEAR_MM];
}

/** Starboard: up on the screen when seen from the top. */
function besideFlank(link: ShownLink): Vec3 {
  return [middleOf(link), reachAlong([link], [0, 1, 0]) + CLEAR_MM, 0];
}

function middleOf(link: ShownLink): number {
  return (reachAlong([link], [1, 0, 0]) - reachAlong([link], [-1, 0, 0])) / 2;
}

interface FollowProps {
  /** In the body frame. */
  readonly point: Vec3;
  readonly line?: BufferGeometry;
  readonly children: ReactNode;
}

/** Stands upright in the world at a point of the body, wherever the body goes. */
export function Follow({ point, line, children }: FollowProps) {
  const { looks, motion } = useTub();
  const group = useRef<Group>(null);
  const [x, y, z] = point;
  useLayoutEffect(
    () => motion.listen((worldFromBody) => group.current?.position.set(x, y, z).applyMatrix4(worldFromBody)),
    [motion, x, y, z],
  );
  return (
    <group ref={group}>
      {line && <lineSegments geometry={line} material={looks.mark} renderOrder={ORDER.marks} frustumCulled={false} />}
      {children}
    </group>
  );
}

export function Label({ className, children }: { readonly className: string; readonly children: ReactNode }) {
  return (
    <Html center zIndexRange={LAYERS} className={`mark ${className}`} pointerEvents="none">
      {children}
    </Html>
  );
}

/** The drafting mark: a circle with two opposite quarters filled. */
function CentreOfGravity() {
  return (
    <svg viewBox="-8 -8 16 16" aria-hidden="true">
      <circle r="7" />
      <path d="M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z" className="filled" />
    </svg>
  );
}

/** Its counterpart: a circle with a cross, empty as water is. */
function CentreOfBuoyancy() {
  return (
    <svg viewBox="-8 -8 16 16" aria-hidden="true">
      <circle r="7" />
      <path d="M-7 0H7M0 -7V7" />
    </svg>
  );
}
