import { Canvas, useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo, useState } from 'react';
import type { Float, Mm } from '../../sim/index.ts';
import { floatingOf, useAnswers } from '../engine/answers.ts';
import { useBeside } from '../engine/beside.ts';
import { cutWithin, pick, useView } from '../view/view.ts';
import { PulledInWorld, SpreadDriver } from './Apart.tsx';
import { createSpread, shiftsOf, shrunkSheet } from './apart.ts';
import { BesideLine } from './BesideLine.tsx';
import { placesOf, roomBent } from './bent.ts';
import { CameraStand } from './CameraStand.tsx';
import { CutPlane } from './CutPlane.tsx';
import { FallDriver } from './FallDriver.tsx';
import { SCENE_FROM_WORLD } from './frame.ts';
import { Ghost } from './Ghost.tsx';
import { Hooks } from './Hooks.tsx';
import { JointedLinks } from './JointedLinks.tsx';
import { LinkAndParts } from './LinkAndParts.tsx';
import { disposeLooks, makeLooks, paintLooks } from './looks.ts';
import { Marks } from './Marks.tsx';
import { MotionDriver } from './MotionDriver.tsx';
import { makeShared } from './materials.ts';
import { createMotion, type Motion } from './motion.ts';
import { PictureTaker } from './PictureTaker.tsx';
import { Posed } from './Posed.tsx';
import { readPalette } from './palette.ts';
import { roomForBoth, roomOf } from './room.ts';
import { type ShownBait, shownBait } from './shown.ts';
import { waterAt } from './stand.ts';
import { TargetLine } from './TargetLine.tsx';
import { type Tub, TubContext } from './tub.ts';
import { WallMarks } from './WallMarks.tsx';
import { Water } from './Water.tsx';
import './scene.css';

interface SceneProps {
  /** Reduced motion: nothing eases and nothing ripples. */
  readonly still: boolean;
}

/** The tub in three dimensions. A lost drawing context is made anew. */
export function Scene({ still }: SceneProps) {
  const [life, setLife] = useState(0);
  const bait = useAnswers((answers) => answers.bait);
  const links = useAnswers((answers) => answers.links);
  const lastGood = useAnswers((answers) => answers.lastGood);
  const shown = useView((view) => view.shown);
  const picture = useMemo(() => shownBait({ bait, links, lastGood }, shown), [bait, links, lastGood, shown]);
  if (picture === null) return null;
  return (
    <Canvas
      key={life}
      className={picture.kept ? 'scene kept' : 'scene'}
      orthographic
      flat
      frameloop="demand"
      dpr={[1, 2]}
      camera={{ near: 1, far: 4000 }}
      gl={{ alpha: true, antialias: true, stencil: true }}
      onPointerMissed={() => pick(null)}
      aria-hidden="true"
    >
      <ContextKeeper onLost={() => setLife(life + 1)} />
      <TubView picture={picture} still={still} />
    </Canvas>
  );
}

/** Watches the drawing context: a phone takes it away when it needs the memory. */
function ContextKeeper({ onLost }: { readonly onLost: () => void }) {
  const gl = useThree((state) => state.gl);
  useEffect(() => {
    const canvas = gl.domElement;
    canvas.addEventListener('webglcontextlost', onLost);
    return () => canvas.removeEventListener('webglcontextlost', onLost);
  }, [gl, onLost]);
  return null;
}

function TubView({ picture, still }: { readonly picture: ShownBait; readonly still: boolean }) {
  const tub = useTubParts();
  const ghost = useGhost();
  const beside = useShownBeside();
  const cut = useCut();
  // the side that is turned away from the viewer of the side view; starboard unless the bait lies on its back
  const kept = picture.pose.up[2] < 0 ? -1 : 1;
  // what is glued to wood that is gone goes with it
  const left = useMemo(
    () => ({ ...picture, fittings: picture.fittings.filter(({ at }) => cut === null || kept * (at[1] - cut) >= 0) }),
    [picture, cut, kept],
  );
  const size = useThree((state) => state.size);
  const apart = useView((view) => view.apart) && picture.links.length > 1;
  const shifts = useMemo(() => shiftsOf(picture), [picture]);
  const places = useBentPlaces(picture);
  const room = useMemo(() => {
    const spread = apart ? shifts : [];
    if (places) return roomBent(roomOf(picture), places, picture);
    return beside ? roomForBoth(roomOf(picture, spread), roomOf(beside, spread)) : roomOf(picture, spread);
  }, [picture, places, beside, apart, shifts]);
  const laidOut = useView((view) => view.sheet);
  const needsRoom = apart || places !== null;
  const sheet = useMemo(
    () => (needsRoom ? shrunkSheet(laidOut, size, room) : laidOut),
    [needsRoom, laidOut, size, room],
  );
  const waterline = waterAt(size, room, sheet.scale);
  const halfView = [size.width / 2 / sheet.scale, (size.height - waterline) / sheet.scale] as const;
  const rightEdge = (size.width - sheet.left) / sheet.scale;
  useWaterlineNote(waterline);
  return (
    <TubContext value={tub}>
      <MotionDriver motion={tub.motion} pose={picture.pose} still={still} />
      <FallDriver motion={tub.motion} pose={picture.pose} floor={halfView[1]} still={still} />
      <SpreadDriver apart={apart} still={still} />
      <CameraStand room={room} sheet={sheet} />
      <PictureTaker />
      <group matrix={SCENE_FROM_WORLD} matrixAutoUpdate={false}>
        {places ? (
          <JointedLinks bait={left} places={places} still={still} />
        ) : (
          <StraightLinks bait={left} shifts={shifts} cut={cut} kept={kept} />
        )}
        {ghost && !places && <Ghost bait={picture} float={ghost} shifts={shifts} />}
        {beside && !places && <Ghost bait={beside} float={beside.float} shifts={shifts} withHooks />}
        <Water middle={room.middle} length={room.length} halfView={halfView} still={still} />
        {/* what is marked belongs to the straight bait */}
        {!places && (
          <Marks
            bait={picture}
            waterEnd={[rightEdge - WATER_NAME_PX / sheet.scale, 0, WATER_NAME_UP_PX / sheet.scale]}
            apart={apart}
            shifts={shifts}
          >
            <TargetLine />
            <WallMarks bait={picture} shifts={shifts} />
            <BesideLine bait={picture} />
          </Marks>
        )}
      </group>
    </TubContext>
  );
}

interface StraightLinksProps {
  readonly bait: ShownBait;
  readonly shifts: readonly Mm[];
  readonly cut: Mm | null;
  readonly kept: 1 | -1;
}

/** All links in one piece, or pulled apart along it. */
function StraightLinks({ bait, shifts, cut, kept }: StraightLinksProps) {
  return (
    <>
      <Posed>
        {bait.links.map((link, i) => (
          <LinkAndParts key={link.index} link={link} bait={bait} shift={shifts[i] ?? 0} />
        ))}
        <CutPlane cut={cut} kept={kept} />
      </Posed>
      {bait.links.map(({ index }, i) => (
        <PulledInWorld key={index} by={shifts[i] ?? 0}>
          <Hooks hung={bait.hung.filter(({ link }) => link === index)} />
        </PulledInWorld>
      ))}
    </>
  );
}

/** Where the links of the whole bait are with its joints in play; null: straight, or one link alone. */
function useBentPlaces(picture: ShownBait) {
  const bend = useView((view) => (view.shown === 'whole' ? view.bend : null));
  const jointed = useAnswers(({ lastGood }) => lastGood.bait.jointed);
  const folded = useAnswers(({ lastGood }) => lastGood.bait.folded);
  return useMemo(
    () => placesOf(bend, { ...(jointed && { jointed }), ...(folded && { folded }) }, picture),
    [bend, jointed, folded, picture],
  );
}

/** Where what is shown is cut, within the newest body. */
function useCut(): Mm | null {
  const cut = useView((view) => view.cut);
  const width = useAnswers(({ lastGood }) => lastGood.bait.design?.body.width);
  return cut === null || width === undefined ? cut : cutWithin(cut, width);
}

/** The other rest that is to be drawn too, of what is shown; null for none. */
function useGhost(): Float | null {
  const shown = useView((view) => view.shown);
  const ghost = useView((view) => view.ghost);
  return useAnswers(({ lastGood }) => {
    const { attitudes } = floatingOf(lastGood, shown);
    return (ghost === null ? undefined : attitudes?.others[ghost]?.float) ?? null;
  });
}

/** The bait in the setup that is drawn beside it; null for none, or before it is worked out. */
function useShownBeside(): ShownBait | null {
  const shown = useView((view) => view.shown);
  const setup = useView((view) => view.beside);
  const known = useBeside(setup, (beside) => beside.known);
  return useMemo(() => shownBait({ bait: {}, links: [], lastGood: known }, shown), [known, shown]);
}

/** Where the water's name stands: from the tub's right edge, and over the line. */
const WATER_NAME_PX = 44;
const WATER_NAME_UP_PX = 9;

/** Says on the canvas where still water is drawn in a level view, in CSS pixels from its top: for tests and tools. */
function useWaterlineNote(waterline: number): void {
  const gl = useThree((state) => state.gl);
  useEffect(() => {
    gl.domElement.dataset.waterlinePx = waterline.toFixed(2);
  }, [gl, waterline]);
}

/** Materials and motion of this tub, in the sheet's colours by day and by night. */
function useTubParts(): Tub & { readonly motion: Motion } {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  const tub = useMemo(() => {
    const shared = makeShared();
    return { shared, looks: makeLooks(shared), motion: createMotion(), spread: createSpread() };
  }, []);
  // before the first frame, which would else be drawn in no colours
  useLayoutEffect(() => {
    const paint = () => {
      paintLooks(tub.looks, tub.shared, readPalette(gl.domElement));
      invalidate();
    };
    paint();
    const night = window.matchMedia('(prefers-color-scheme: dark)');
    night.addEventListener('change', paint);
    return () => night.removeEventListener('change', paint);
  }, [tub, gl, invalidate]);
  useEffect(() => () => disposeLooks(tub.looks), [tub]);
  return tub;
}
