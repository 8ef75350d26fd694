import { useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { PlacedHole } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { type BallastPiece, ballastPieces } from './ballast-pieces.ts';
import { Part } from './Part.tsx';
import { useTub } from './tub.ts';
import { along, makePoint, makeRod, turnTo } from './upright.ts';

/** Ballast holes as drilled and filled, in the body frame, seen through the wood. */
export function Ballast({ holes }: { readonly holes: readonly PlacedHole[] }) {
  const [rod, point] = useMemo(() => [makeRod(), makePoint()] as const, []);
  useEffect(
    () => () => {
      rod.dispose();
      point.dispose();
    },
    [rod, point],
  );
  return holes.map((hole) => <Hole key={hole.name} hole={hole} rod={rod} point={point} />);
}

interface HoleProps {
  readonly hole: PlacedHole;
  readonly rod: BufferGeometry;
  readonly point: BufferGeometry;
}

function Hole({ hole, rod, point }: HoleProps) {
  const { looks } = useTub();
  const { mouth, inward } = hole;
  const picks = `hole:${hole.name}`;
  const isPicked = useView((view) => view.selected === picks);
  const [ix, iy, iz] = inward;
  const turn = useMemo(() => turnTo([ix, iy, iz]), [ix, iy, iz]);
  const pieces = useMemo(() => ballastPieces(hole), [hole]);
  const lookOf = ({ of, isCore }: BallastPiece) =>
    isPicked && isCore ? looks.parts.pickedInside : looks.parts[of === 'air' ? 'bore' : of];
  return pieces.map((piece) => (
    <Part
      key={`${piece.of} ${piece.shape}`}
      geometry={piece.shape === 'rod' ? rod : point}
      look={lookOf(piece)}
      position={along(mouth, inward, piece.from)}
      quaternion={turn}
      scale={[piece.diameter / 2, piece.diameter / 2, piece.long]}
      picks={picks}
    />
  ));
}
