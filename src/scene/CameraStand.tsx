import { OrbitControls } from '@react-three/drei';
import { useThree } from '@react-three/fiber';
import { type ComponentRef, useLayoutEffect, useRef } from 'react';
import { type OrthographicCamera, Vector3 } from 'three';
import { lookFrom, type Sheet, useView } from '../view/view.ts';
import { toScene } from './frame.ts';
import { setViewport } from './materials.ts';
import { pivotHeight, type Room, STANDS, shiftOf } from './stand.ts';
import { useTub } from './tub.ts';

/** Far enough off that nothing is cut away, near enough that depth keeps its digits. */
const DISTANCE_MM = 2000;

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
  const invalidate = useThree((state) => state.invalidate);
  const stand = useView((view) => view.camera);
  const controls = useRef<ComponentRef<typeof OrbitControls>>(null);
  const isTurning = useRef(false);
  const target = useRef(new Vector3());

  useLayoutEffect(() => {
    setViewport(shared, size.width * pixelRatio, size.height * pixelRatio, pixelRatio);
    invalidate();
  }, [shared, size, pixelRatio, invalidate]);

  useLayoutEffect(() => {
    toScene(room.middle, 0, pivotHeight(room), target.current);
    if (stand !== 'free') {
      toScene(...STANDS[stand], camera.position)
        .multiplyScalar(DISTANCE_MM)
        .add(target.current);
      const [right, down] = shiftOf(stand, size, sheet, room);
      camera.setViewOffset(size.width, size.height, -right, -down, size.width, size.height);
    }
    camera.zoom = sheet.scale;
    camera.lookAt(target.current);
    camera.updateProjectionMatrix();
    controls.current?.target.copy(target.current);
    controls.current?.update();
    invalidate();
  }, [camera, stand, room, sheet, size, invalidate]);

  // the controls claim every touch for themselves; up and down belongs to the page
  useLayoutEffect(() => {
    gl.domElement.style.touchAction = 'pan-y';
  }, [gl]);

  return (
    <OrbitControls
      ref={controls}
      enableDamping={false}
      enablePan={false}
      enableZoom={false}
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
