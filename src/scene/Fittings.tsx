import { useEffect, useMemo } from 'react';
import { type BufferGeometry, CylinderGeometry, SphereGeometry } from 'three';
import type { Mm, PlacedFitting } from '../../sim/index.ts';
import { along } from './along.ts';
import { Part } from './Part.tsx';
import type { ShownLink } from './shown.ts';
import { flankAt } from './skin.ts';
import { useTub } from './tub.ts';
import { turnTo } from './upright.ts';

/** Glass and resin in g/mm³, common practice: how large an eye of a mass is. */
const EYE_DENSITY = 0.0025;
/** How far a dome bulges, and how large its pupil is, in radii. */
const BULGE = 0.45;
const PUPIL = 0.5;
/** Of what is no eye only weight and place are known: a small ball stands for it. */
const BEAD_MM = 1.6;
/** A limp tail's own shape is not known: a few strands hang from its root. */
const STRAND_MM = 10;
/** Up and down from the root, radians. */
const STRANDS = [-0.35, -0.175, 0, 0.175, 0.35] as const;
const STRAND_SAG = 0.15;

/** What is glued and tied on: eyes as eyes, all else as a bead at its place, limp tails as strands at their root. */
export function Fittings({
  fittings,
  links,
}: {
  readonly fittings: readonly PlacedFitting[];
  readonly links: readonly ShownLink[];
}) {
  const [dome, disc, bead, strand] = useMemo(
    () => [makeDome(), makeDisc(), new SphereGeometry(1, 16, 12), makeStrand()] as const,
    [],
  );
  useEffect(
    () => () => {
      for (const shape of [dome, disc, bead, strand]) shape.dispose();
    },
    [dome, disc, bead, strand],
  );
  return fittings.map((fitting, i) => {
    const key = `${fitting.path} ${i}`;
    if (fitting.kind === 'tail') return <Tuft key={key} fitting={fitting} strand={strand} />;
    const link = links.find(({ index }) => index === fitting.link);
    return isEye(fitting) && link ? (
      <Eye key={key} fitting={fitting} link={link} dome={dome} disc={disc} />
    ) : (
      <Bead key={key} fitting={fitting} bead={bead} />
    );
  });
}

/** By its name: nothing else in a design says what a fitting is. */
function isEye({ name }: PlacedFitting): boolean {
  return /\beyes?\b/i.test(name);
}

/** Radius of a half ball of an eye's mass. */
export function eyeRadius(mass: number): Mm {
  return Math.cbrt((3 * mass) / (2 * Math.PI * EYE_DENSITY));
}

interface EyeProps {
  readonly fitting: PlacedFitting;
  readonly link: ShownLink;
  readonly dome: BufferGeometry;
  readonly disc: BufferGeometry;
}

/** A dome on the flank that the fitting stands at, its pupil on top. */
function Eye({ fitting, link, dome, disc }: EyeProps) {
  const { looks } = useTub();
  const [x, y, z] = fitting.at;
  const { mesh } = link.wetted;
  const place = useMemo(() => flankAt(mesh, x, z, y < 0 ? -1 : 1), [mesh, x, y, z]);
  const turn = useMemo(() => (place === null ? null : turnTo(place.outward)), [place]);
  if (place === null || turn === null) return null;
  const radius = eyeRadius(fitting.mass);
  return (
    <>
      <Part geometry={dome} look={looks.parts.eye} position={place.at} quaternion={turn} scale={radius} />
      <Part
        geometry={disc}
        look={looks.parts.pupil}
        position={along(place.at, place.outward, radius * BULGE * 0.88)}
        quaternion={turn}
        scale={radius * PUPIL}
      />
    </>
  );
}

function Bead({ fitting, bead }: { readonly fitting: PlacedFitting; readonly bead: BufferGeometry }) {
  const { looks } = useTub();
  return <Part geometry={bead} look={looks.parts.bead} position={fitting.at} scale={BEAD_MM} />;
}

function Tuft({ fitting, strand }: { readonly fitting: PlacedFitting; readonly strand: BufferGeometry }) {
  const { looks } = useTub();
  return STRANDS.map((spread) => (
    <Part
      key={spread}
      geometry={strand}
      look={looks.parts.tuft}
      position={fitting.at}
      quaternion={turnTo([Math.cos(spread), 0, Math.sin(spread) - STRAND_SAG])}
      scale={STRAND_MM * (1 - 0.7 * Math.abs(spread))}
    />
  ));
}

/** Of radius 1 about z, bulging to z = BULGE. */
function makeDome(): BufferGeometry {
  return new SphereGeometry(1, 24, 8, 0, 2 * Math.PI, 0, Math.PI / 2).rotateX(Math.PI / 2).scale(1, 1, BULGE);
}

function makeDisc(): BufferGeometry {
  return new CylinderGeometry(1, 1, 0.25, 24).rotateX(Math.PI / 2);
}

/** From z = 0 to 1, thin and tapering. */
function makeStrand(): BufferGeometry {
  return new CylinderGeometry(0.008, 0.035, 1, 6).rotateX(Math.PI / 2).translate(0, 0, 0.5);
}
