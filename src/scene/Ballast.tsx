import { useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { PlacedHole } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { along } from './along.ts';
import { type BallastPiece, ballastPieces, rimDrops } from './ballast-pieces.ts';
import { Part } from './Part.tsx';
import type { ShownLink } from './shown.ts';
import { useTub } from './tub.ts';
import { makePlug, makePoint, makeRod, plugRim, turnTo } from './upright.ts';

/** Ballast holes as drilled and filled, in the body frame, seen through the wood. */
export function Ballast({ link, holes }: { readonly link: ShownLink; readonly holes: readonly PlacedHole[] }) {
  const [rod, point] = useMemo(() => [makeRod(), makePoint()] as const, []);
  useEffect(
    () => () => {
      rod.dispose();
      point.dispose();
    },
    [rod, point],
  );
  return holes.map((hole) => <Hole key={hole.name} link={link} hole={hole} rod={rod} point={point} />);
}

interface HoleProps {
  readonly link: ShownLink;
  readonly hole: PlacedHole;
  readonly rod: BufferGeometry;
  readonly point: BufferGeometry;
}

function Hole({ link, hole, rod, point }: HoleProps) {
  const { looks } = useTub();
  const { mouth, inward } = hole;
  const picks = `hole:${hole.name}`;
  const isPicked = useView((view) => view.selected === picks);
  const [ix, iy, iz] = inward;
  const turn = useMemo(() => turnTo([ix, iy, iz]), [ix, iy, iz]);
  const pieces = useMemo(() => ballastPieces(hole), [hole]);
  const plug = usePlug(link, hole);
  const shapes = { rod, point, plug } as const;
  const lookOf = ({ of, isCore }: BallastPiece) =>
    isPicked && isCore ? looks.parts.pickedInside : looks.parts[of === 'air' ? 'bore' : of];
  return pieces.map((piece) => (
    <Part
      key={`${piece.of} ${piece.shape}`}
      geometry={shapes[piece.shape]}
      look={lookOf(piece)}
      position={along(mouth, inward, piece.from)}
      quaternion={turn}
      scale={[piece.diameter / 2, piece.diameter / 2, piece.long]}
      picks={picks}
    />
  ));
}

/** A plug of radius 1 whose outer end follows the skin, z from 0 at the mouth to 1 where it ends. */
function usePlug({ wetted }: ShownLink, hole: PlacedHole): BufferGeometry {
  const { mesh, skinGrowth } = wetted;
  const plug = useMemo(() => {
    const long = ballastPieces(hole).find(({ shape }) => shape === 'plug')?.long;
    const drops = long === undefined ? [] : rimDrops(mesh, skinGrowth, hole, plugRim(hole.inward));
    return makePlug(drops.map((drop) => Math.min(1, drop / (long ?? 1))));
  }, [mesh, skinGrowth, hole]);
  useEffect(() => () => plug.dispose(), [plug]);
  return plug;
}
