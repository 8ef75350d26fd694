import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import type { BufferGeometry, Group } from 'three';
import type { PlacedHung } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { makeTreble } from './hook-shape.ts';
import { Part } from './Part.tsx';
import { useTub } from './tub.ts';

/** Hung items, in the world frame: they hang plumb from their eyes however the bait lies. */
export function Hooks({ hung }: { readonly hung: readonly PlacedHung[] }) {
  const treble = useMemo(makeTreble, []);
  useEffect(() => () => treble.dispose(), [treble]);
  return hung.map((item) => <Hook key={item.name} item={item} treble={treble} />);
}

function Hook({ item, treble }: { readonly item: PlacedHung; readonly treble: BufferGeometry }) {
  const { looks, motion } = useTub();
  const group = useRef<Group>(null);
  const picks = `hung:${item.name}`;
  const isPicked = useView((view) => view.selected === picks);
  const [x, y, z] = item.eye;

  useLayoutEffect(
    () => motion.listen((worldFromBody) => group.current?.position.set(x, y, z).applyMatrix4(worldFromBody)),
    [motion, x, y, z],
  );

  return (
    <group ref={group}>
      <Part
        geometry={treble}
        look={isPicked ? looks.parts.pickedMetal : looks.parts.hook}
        scale={item.hang}
        picks={picks}
      />
    </group>
  );
}
