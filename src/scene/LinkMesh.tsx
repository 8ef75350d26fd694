import type { ThreeEvent } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import { show, useView, viewStore } from '../view/view.ts';
import { makeCutFaceMaterial, makeLinkMaterial, setSheen, setSlots } from './materials.ts';
import { ORDER } from './order.ts';
import type { ShownLink } from './shown.ts';
import { useTub } from './tub.ts';
import { useAnswerGeometry } from './use-answer-geometry.ts';

/** Neighbours differ in shade: pale, dark and middling heartwood by turns. */
const WOODS = ['#e2c496', '#bd9059', '#d2ab72'] as const;

/** One link: coated wood, its outline, and the rims of its joint faces. A double click shows it alone, another all. */
export function LinkMesh({ link }: { readonly link: ShownLink }) {
  const { shared, looks } = useTub();
  const { mesh, slots, skinGrowth } = link.wetted;
  const geometry = useAnswerGeometry(mesh);
  const tint = WOODS[link.index % WOODS.length] ?? WOODS[0];
  const wood = useMemo(() => makeLinkMaterial(shared, tint), [shared, tint]);
  const cutFace = useMemo(() => makeCutFaceMaterial(wood), [wood]);
  useEffect(
    () => () => {
      wood.dispose();
      cutFace.dispose();
    },
    [wood, cutFace],
  );
  const isCut = useView((view) => view.cut !== null);
  useLayoutEffect(() => setSlots(wood, slots), [wood, slots]);
  useLayoutEffect(() => setSheen(wood, skinGrowth), [wood, skinGrowth]);

  const focus = (event: ThreeEvent<MouseEvent>) => {
    event.stopPropagation();
    show(viewStore.getState().shown === link.index ? 'whole' : link.index);
  };
  // never culled: the buffers are rewritten in place, and all of the bait is in sight anyway
  return (
    <>
      <mesh
        geometry={geometry.whole}
        material={wood}
        renderOrder={ORDER.wood}
        frustumCulled={false}
        {...{ onDoubleClick: focus }}
      />
      {isCut && <mesh geometry={geometry.whole} material={cutFace} renderOrder={ORDER.cutFace} frustumCulled={false} />}
      <mesh geometry={geometry.skin} material={looks.outline} renderOrder={ORDER.wood} frustumCulled={false} />
      <lineSegments geometry={geometry.edges} material={looks.edge} renderOrder={ORDER.edges} frustumCulled={false} />
    </>
  );
}
