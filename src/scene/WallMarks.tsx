import { useEffect, useMemo } from 'react';
import { BufferGeometry, Float32BufferAttribute } from 'three';
import type { Mm } from '../../sim/index.ts';
import { useAnswers } from '../engine/answers.ts';
import { useAmounts } from '../view/amounts.ts';
import { useView } from '../view/view.ts';
import { isThin } from '../view/walls.ts';
import { Pulled, PulledInWorld } from './Apart.tsx';
import { Follow, Label } from './Mark.tsx';
import { ORDER } from './order.ts';
import { Posed } from './Posed.tsx';
import type { ShownBait } from './shown.ts';
import { useTub } from './tub.ts';
import { dimensionLines, type HoleWall, markedWalls, nearestOnCore } from './wall-mark.ts';

/** Before the water's marks: it was asked for. */
const RANK = 18;
/** From the line's end to the words. */
const UNDER_PX = -14;

interface WallMarksProps {
  readonly bait: ShownBait;
  readonly shifts: readonly Mm[];
}

/** The tightest wall of all that is shown, and that of the hole that is picked, each with its number. */
export function WallMarks({ bait, shifts }: WallMarksProps) {
  const keepOuts = useView((view) => view.keepOuts);
  const selected = useView((view) => view.selected);
  return markedWalls(bait.walls, { keepOuts, selected }).map((marked, i) => (
    <WallMark
      key={marked.hole.name}
      marked={marked}
      rank={RANK + i}
      shift={shifts[bait.links.findIndex(({ index }) => index === marked.hole.link)] ?? 0}
    />
  ));
}

interface WallMarkProps {
  readonly marked: HoleWall;
  readonly rank: number;
  readonly shift: Mm;
}

/** A dimension from the lead to the skin. */
function WallMark({ marked: { hole, wall }, rank, shift }: WallMarkProps) {
  const { looks } = useTub();
  const amounts = useAmounts();
  const wanted = useAnswers(({ lastGood }) => lastGood.bait.design?.shop.wall);
  const scale = useView((view) => view.sheet.scale);
  const lines = useMemo(() => {
    const ends = dimensionLines(nearestOnCore(hole, wall.at), wall.at, scale);
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute(ends.flat(), 3));
    return geometry;
  }, [hole, wall, scale]);
  useEffect(() => () => lines.dispose(), [lines]);
  const thin = wanted !== undefined && isThin(wall.thickness, wanted);
  return (
    <>
      <Posed>
        <Pulled by={shift}>
          <lineSegments geometry={lines} material={looks.mark} renderOrder={ORDER.marks} frustumCulled={false} />
        </Pulled>
      </Posed>
      <PulledInWorld by={shift}>
        <Follow point={wall.at}>
          <Label className={thin ? 'wall thin' : 'wall'} rank={rank} rise={UNDER_PX}>
            {`wall ${amounts.length(wall.thickness)}${thin ? ', thin' : ''}`}
          </Label>
        </Follow>
      </PulledInWorld>
    </>
  );
}
