import type { ThreeEvent } from '@react-three/fiber';
import type { BufferGeometry, Quaternion } from 'three';
import type { Vec3 } from '../../sim/index.ts';
import { pick } from '../view/view.ts';
import type { Look } from './looks.ts';
import { ORDER } from './order.ts';

interface PartProps {
  readonly geometry: BufferGeometry;
  readonly look: Look;
  readonly position?: Vec3;
  readonly quaternion?: Quaternion;
  readonly scale?: Vec3 | number;
  /** What is picked out when this is clicked, as the view names it. */
  readonly picks?: string;
}

/** A click that moved further than this was a turn of the view. */
const CLICK_PX = 4;

/** A piece of hardware, drawn in plain sight and once more as it shows through the wood. */
export function Part({ geometry, look, position = [0, 0, 0], quaternion, scale = 1, picks }: PartProps) {
  const choose = (event: ThreeEvent<MouseEvent>) => {
    if (picks === undefined || event.delta > CLICK_PX) return;
    event.stopPropagation();
    pick(picks);
  };
  return (
    <group
      position={[...position]}
      scale={typeof scale === 'number' ? scale : [...scale]}
      {...(quaternion === undefined ? {} : { quaternion })}
      {...(picks === undefined ? {} : { onClick: choose })}
    >
      <mesh geometry={geometry} material={look.seen} renderOrder={ORDER.parts} />
      <mesh geometry={geometry} material={look.hidden} renderOrder={look.hiddenOrder} />
    </group>
  );
}
