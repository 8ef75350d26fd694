import { useEffect, useMemo } from 'react';
import { type BufferGeometry, Matrix4, Vector3 } from 'three';
import type { Float, Mm, PlacedHung } from '../../sim/index.ts';
import { Pulled } from './Apart.tsx';
import { Fins } from './Fins.tsx';
import { worldFromBody } from './frame.ts';
import { makeTreble } from './hook-shape.ts';
import { ORDER } from './order.ts';
import { poseOf, type ShownBait, type ShownLink } from './shown.ts';
import { useTub } from './tub.ts';
import { useAnswerGeometry } from './use-answer-geometry.ts';

interface GhostProps {
  readonly bait: ShownBait;
  /** How it rests: another way than the first, or as in another setup. */
  readonly float: Float;
  /** How far each link goes when links are pulled apart. */
  readonly shifts: readonly Mm[];
  /** What hangs from it is drawn too. */
  readonly withHooks?: boolean;
}

/** The same bait at another rest or in another setup, in the same water: a pale shape with its rims. */
export function Ghost({ bait, float, shifts, withHooks = false }: GhostProps) {
  const matrix = useMemo(() => {
    const { up, offset } = poseOf(float, bait.links, bait.fins);
    return worldFromBody(new Vector3(...up), offset, new Matrix4());
  }, [bait, float]);
  const shiftOf = (link: number) => shifts[bait.links.findIndex(({ index }) => index === link)] ?? 0;
  return (
    <>
      <group matrix={matrix} matrixAutoUpdate={false}>
        {bait.links.map((link, i) => (
          <Pulled key={link.index} by={shifts[i] ?? 0}>
            <GhostLink link={link} />
            <Fins fins={bait.fins.filter((fin) => fin.link === link.index)} pale />
          </Pulled>
        ))}
      </group>
      {withHooks && <GhostHooks hung={bait.hung} matrix={matrix} shiftOf={shiftOf} />}
    </>
  );
}

function GhostLink({ link }: { readonly link: ShownLink }) {
  const { looks } = useTub();
  const geometry = useAnswerGeometry(link.wetted.mesh);
  return (
    <>
      <mesh geometry={geometry.skin} material={looks.ghost} renderOrder={ORDER.marks} frustumCulled={false} />
      <lineSegments geometry={geometry.edges} material={looks.edge} renderOrder={ORDER.marks} frustumCulled={false} />
    </>
  );
}

interface GhostHooksProps {
  readonly hung: readonly PlacedHung[];
  readonly matrix: Matrix4;
  readonly shiftOf: (link: number) => Mm;
}

/** Plumb from their eyes, as in plain sight. */
function GhostHooks({ hung, matrix, shiftOf }: GhostHooksProps) {
  const treble = useMemo(makeTreble, []);
  useEffect(() => () => treble.dispose(), [treble]);
  return hung.map((item) => (
    <Pulled key={item.name} along={matrix} by={shiftOf(item.link)}>
      <GhostHook item={item} matrix={matrix} treble={treble} />
    </Pulled>
  ));
}

interface GhostHookProps {
  readonly item: PlacedHung;
  readonly matrix: Matrix4;
  readonly treble: BufferGeometry;
}

function GhostHook({ item, matrix, treble }: GhostHookProps) {
  const { looks } = useTub();
  const at = useMemo(() => new Vector3(...item.eye).applyMatrix4(matrix), [item, matrix]);
  return <mesh geometry={treble} material={looks.ghost} renderOrder={ORDER.marks} position={at} scale={item.hang} />;
}
