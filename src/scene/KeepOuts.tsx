import { useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { KeepOut, Mm, PlacedHole } from '../../sim/index.ts';
import { useAnswers } from '../engine/answers.ts';
import { useView } from '../view/view.ts';
import { ORDER } from './order.ts';
import { addRoundedBox, addWallShell, geometryOf, noTriangles } from './shells.ts';
import type { ShownLink } from './shown.ts';
import { useTub } from './tub.ts';

interface KeepOutsProps {
  readonly link: ShownLink;
  /** Where no lead may go, holes of the link included. */
  readonly keepOuts: readonly KeepOut[];
  readonly holes: readonly PlacedHole[];
}

/** Where no lead may go in a link, and the wall that is wanted round the lead that it has, when it is asked for. */
export function KeepOuts({ link, keepOuts, holes }: KeepOutsProps) {
  const asked = useView((view) => view.keepOuts);
  const wall = useAnswers(({ lastGood }) => lastGood.bait.design?.shop.wall);
  if (!asked) return null;
  return (
    <>
      <Barred keepOuts={keepOuts} holes={holes} />
      {wall !== undefined && <WantedWalls holes={holes} wall={wall + link.wetted.skinGrowth} />}
    </>
  );
}

/** Shanks, bores, slots and tabs with what they bar; holes are drawn as what they are. */
function Barred({ keepOuts, holes }: Omit<KeepOutsProps, 'link'>) {
  const { looks } = useTub();
  const shape = useShape(() => {
    const names = new Set(holes.map(({ name }) => `hole "${name}"`));
    const triangles = noTriangles();
    for (const keepOut of keepOuts) if (!names.has(keepOut.name)) addRoundedBox(triangles, keepOut);
    return geometryOf(triangles);
  }, [keepOuts, holes]);
  return (
    <>
      <mesh geometry={shape} material={looks.keepOut} renderOrder={ORDER.keepOuts} frustumCulled={false} />
      <mesh geometry={shape} material={looks.keepOutEdge} renderOrder={ORDER.keepOutEdges} frustumCulled={false} />
    </>
  );
}

/**
 * A shell round each slug, one wall away. wall: through the wood and the coats on it, so that the shell comes out of the
 * skin that is drawn where the wood is too thin.
 */
function WantedWalls({ holes, wall }: { readonly holes: readonly PlacedHole[]; readonly wall: Mm }) {
  const { looks } = useTub();
  const shape = useShape(() => {
    const triangles = noTriangles();
    for (const hole of holes) if (hole.lead) addWallShell(triangles, hole, wall);
    return geometryOf(triangles);
  }, [holes, wall]);
  return (
    <>
      <mesh geometry={shape} material={looks.wallGround} renderOrder={ORDER.keepOuts} frustumCulled={false} />
      <mesh geometry={shape} material={looks.wallOut} renderOrder={ORDER.keepOutEdges} frustumCulled={false} />
      <mesh geometry={shape} material={looks.wallEdge} renderOrder={ORDER.keepOutEdges} frustumCulled={false} />
    </>
  );
}

/** A geometry for as long as what it is made of stays the same. */
function useShape(make: () => BufferGeometry, of: readonly unknown[]): BufferGeometry {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the caller lists them
  const shape = useMemo(make, of);
  useEffect(() => () => shape.dispose(), [shape]);
  return shape;
}
