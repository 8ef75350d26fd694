import { useEffect, useMemo } from 'react';
import type { BufferGeometry } from 'three';
import type { PlacedHole } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
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

/**
 *   mouth        lead.from    lead.to = depth
 *     | plug         | lead        | point
 *     |______________|_____________|\
 *     |              |             | >   inward
 *     |______________|_____________|/      an air chamber lies where the lead would
 */
function Hole({ hole, rod, point }: HoleProps) {
  const { looks } = useTub();
  const { mouth, inward, diameter, depth, pointDepth, lead, air } = hole;
  const picks = `hole:${hole.name}`;
  const isPicked = useView((view) => view.selected === picks);
  const [ix, iy, iz] = inward;
  const turn = useMemo(() => turnTo([ix, iy, iz]), [ix, iy, iz]);
  const leadLook = isPicked ? looks.parts.pickedInside : looks.parts.lead;
  const plugEnd = lead ? lead.from : air ? air.from : depth;
  const radius = diameter / 2;
  return (
    <>
      <Part
        geometry={rod}
        look={looks.parts.plug}
        position={mouth}
        quaternion={turn}
        scale={[radius, radius, plugEnd]}
        picks={picks}
      />
      {air && (
        <Part
          geometry={rod}
          look={isPicked ? looks.parts.pickedInside : looks.parts.bore}
          position={along(mouth, inward, air.from)}
          quaternion={turn}
          scale={[radius, radius, depth - air.from]}
          picks={picks}
        />
      )}
      {lead && (
        <Part
          geometry={rod}
          look={leadLook}
          position={along(mouth, inward, lead.from)}
          quaternion={turn}
          scale={[lead.diameter / 2, lead.diameter / 2, lead.to - lead.from]}
          picks={picks}
        />
      )}
      {pointDepth > 0 && (
        <Part
          geometry={point}
          look={lead?.fillsPoint ? leadLook : looks.parts.bore}
          position={along(mouth, inward, depth)}
          quaternion={turn}
          scale={[radius, radius, pointDepth]}
        />
      )}
    </>
  );
}
