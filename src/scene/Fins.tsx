import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, EdgesGeometry } from 'three';
import type { Mesh, PlacedFin } from '../../sim/index.ts';
import { ORDER } from './order.ts';
import { Part } from './Part.tsx';
import { useTub } from './tub.ts';

interface FinsProps {
  readonly fins: readonly PlacedFin[];
  /** As a ghost has them. */
  readonly pale?: boolean;
}

/** Fins as they stand outside the skin, in the body frame. */
export function Fins({ fins, pale = false }: FinsProps) {
  return fins.map((fin) => <Fin key={`${fin.link} ${fin.name}`} mesh={fin.mesh} pale={pale} />);
}

/** A flat plate and the lines round it. */
function Fin({ mesh, pale }: { readonly mesh: Mesh; readonly pale: boolean }) {
  const { looks } = useTub();
  const plate = useMemo(() => plateGeometry(mesh), [mesh]);
  const lines = useMemo(() => new EdgesGeometry(plate, CORNER_DEG), [plate]);
  useEffect(
    () => () => {
      plate.dispose();
      lines.dispose();
    },
    [plate, lines],
  );
  return (
    <>
      {pale ? (
        <mesh geometry={plate} material={looks.ghost} renderOrder={ORDER.marks} />
      ) : (
        <Part geometry={plate} look={looks.parts.fin} />
      )}
      <lineSegments geometry={lines} material={looks.finEdge} renderOrder={pale ? ORDER.marks : ORDER.edges} />
    </>
  );
}

/** Facets that meet at less than this are one surface to the eye. */
const CORNER_DEG = 30;

/** Every facet with corners of its own: a plate is flat up to its sharp rim. */
function plateGeometry({ topology, positions }: Mesh): BufferGeometry {
  const corners = Float32Array.from(
    { length: 3 * topology.index.length },
    (_, i) => positions[3 * topology.index[Math.floor(i / 3)] + (i % 3)],
  );
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners, 3));
  geometry.computeVertexNormals();
  return geometry;
}
