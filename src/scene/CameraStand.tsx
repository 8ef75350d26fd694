import { OrbitControls } from '@react-three/drei';
import { useThree } from '@react-three/fiber';
import { type ComponentRef, useEffect, useLayoutEffect, useRef } from 'react';
import { type OrthographicCamera, Vector3 } from 'three';
import { lookFrom, type Sheet, useView } from '../view/view.ts';
import { toScene } from './frame.ts';
import { setViewport } from './materials.ts';
import { pivotHeight, type Room, STANDS, shiftOf } from './stand.ts';
import { useTub } from './tub.ts';

/** Far enough off that nothing is cut away, near enough that depth keeps its digits. */
const DISTANCE_MM = 2000;

/** In times the sheet's scale. */
const NEAREST = 8;
const FARTHEST = 0.5;
/** The controls would turn once round over the tub's height, and a tub is low. */
const TURN_SPEED = 0.45;

interface CameraStandProps {
  readonly room: Room;
  readonly sheet: Sheet;
}

/**
 * Puts the viewer where the view says, at the sheet's scale; a hand that turns the picture sets the view free. The
 * picture turns about the middle of what is shown, which keeps its place on the sheet.
 */
export function CameraStand({ room, sheet }: CameraStandProps) {
  const { shared } = useTub();
  const camera = useThree((state) => state.camera) as OrthographicCamera;
  const size = useThree((state) => state.size);
  const pixelRatio = useThree((state) => state.viewport.dpr);
  const gl = useThree((state) => state.gl);
  const connected: unknown = useThree((state) => state.events.connected);
  const invalidate = useThree((state) => state.invalidate);
  const stand = useView((view) => view.camera);
  const controls = useRef<ComponentRef<typeof OrbitControls>>(null);
  const isTurning = useRef(false);
  const target = useRef(new Vector3());
  const shift = useRef<readonly [number, number]>([0, 0]);

  useLayoutEffect(() => {
    setViewport(shared, size.width * pixelRatio, size.height * pixelRatio, pixelRatio);
    invalidate();
  }, [shared, size, pixelRatio, invalidate]);

  useLayoutEffect(() => {
    // a view that was turned by hand keeps its direction and its size when the bait changes under it
    camera.position.sub(target.current);
    toScene(room.middle, 0, pivotHeight(room), target.current);
    if (stand !== 'free') {
      toScene(...STANDS[stand], camera.position).multiplyScalar(DISTANCE_MM);
      camera.zoom = sheet.scale;
      shift.current = shiftOf(stand, size, sheet, room);
    }
    camera.position.add(target.current);
    const [right, down] = shift.current;
    camera.setViewOffset(size.width, size.height, -right, -down, size.width, size.height);
    camera.lookAt(target.current);
    camera.updateProjectionMatrix();
    controls.current?.target.copy(target.current);
    controls.current?.update();
    invalidate();
  }, [camera, stand, room, sheet, size, invalidate]);

  // a bare wheel scrolls the page; only with Ctrl, or two fingers, does it come nearer
  useLayoutEffect(() => {
    const canvas = gl.domElement;
    const allow = (zooming: boolean) => {
      if (controls.current) controls.current.enableZoom = zooming;
    };
    const onWheel = (event: WheelEvent) => allow(event.ctrlKey || event.metaKey);
    const onPointerDown = (event: PointerEvent) => allow(event.pointerType === 'touch');
    // on the canvas itself, and so before the controls, which listen on the element around it
    canvas.addEventListener('wheel', onWheel, { passive: true });
    canvas.addEventListener('pointerdown', onPointerDown);
    return () => {
      canvas.removeEventListener('wheel', onWheel);
      canvas.removeEventListener('pointerdown', onPointerDown);
    };
  }, [gl]);

  // the controls claim every touch on what they listen to; up and down belongs to the page, sideways turns the bait
  useEffect(() => {
    const element = controls.current?.domElement;
    if (element && element === connected) element.style.touchAction = 'pan-y';
  }, [connected]);

  return (
    <OrbitControls
      ref={controls}
      enableDamping={false}
      enablePan={false}
      enableZoom={false}
      minZoom={FARTHEST * sheet.scale}
      maxZoom={NEAREST * sheet.scale}
      rotateSpeed={TURN_SPEED}
      onStart={() => {
        isTurning.current = true;
      }}
      onEnd={() => {
        isTurning.current = false;
      }}
      onChange={() => {
        if (isTurning.current) lookFrom('free');
      }}
    />
  );
}
