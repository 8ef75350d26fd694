import { type ReactNode, useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { Mm, Vec3 } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { PulledInWorld } from './Apart.tsx';
import { CentreSign, Follow, Label, Labels } from './Mark.tsx';
import { Metacentre } from './Metacentre.tsx';
import { reachAlong, type ShownBait, type ShownLink } from './shown.ts';

/** Clear of the back or flank, so that a number never lies on wood. */
const CLEAR_MM = 3;
/** A dozen words over a picture are enough: two centres and the water have theirs, links share the rest. */
const MOST_NUMBERS = 9;
/** Ranks of the links' numbers begin after those of G, B, M and the water's name. */
const FIRST_LINK = 4;
/** Half the length of the line through a centre. */
const PLUMB_MM = 9;

interface MarksProps {
  readonly bait: ShownBait;
  readonly waterEnd: Vec3;
  /** Links are pulled apart, and how far each goes then. */
  readonly apart: boolean;
  readonly shifts: readonly Mm[];
  /** More that is written over the picture. */
  readonly children: ReactNode;
}

/**
 * Numbers over the links, the two centres with the plumb line through each, and the name of the water's surface. Links
 * that are apart have no centres in common.
 */
export function Marks({ bait, waterEnd, apart, shifts, children }: MarksProps) {
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
    <Labels>
      {numbered.map((link) => (
        <PulledInWorld key={link.index} by={shifts[bait.links.indexOf(link)] ?? 0}>
          <Follow point={camera === 'top' ? besideFlank(link) : overBack(link)}>
            <Label className="link-number" rank={FIRST_LINK + link.index}>
              {link.index + 1}
            </Label>
          </Follow>
        </PulledInWorld>
      ))}
      {!apart && (
        <>
          <Follow point={bait.float.gravityCentre} line={plumb}>
            <Label className="centre weight" rank={0} sign={WEIGHT}>
              G
            </Label>
          </Follow>
          <Follow point={bait.float.buoyancyCentre} line={plumb}>
            <Label className="centre lift" rank={1} sign={LIFT}>
              B
            </Label>
          </Follow>
          {camera !== 'top' && <Metacentre float={bait.float} line={plumb} />}
        </>
      )}
      {level && (
        <group position={[...waterEnd]}>
          <Label className="water-name" rank={3}>
            still water
          </Label>
        </group>
      )}
      {children}
    </Labels>
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

/** The drafting mark: a circle with two opposite quarters filled. */
function CentreOfGravity() {
  return (
    <CentreSign>
      <path d="M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z" className="filled" />
    </CentreSign>
  );
}

/** Its counterpart: a circle with a cross, empty as water is. */
function CentreOfBuoyancy() {
  return (
    <CentreSign>
      <path d="M-7 0H7M0 -7V7" />
    </CentreSign>
  );
}

/** Each letter on its own side: the two centres often lie close over each other. */
const WEIGHT = { drawn: <CentreOfGravity />, wordsOn: 'right' } as const;
const LIFT = { drawn: <CentreOfBuoyancy />, wordsOn: 'left' } as const;
