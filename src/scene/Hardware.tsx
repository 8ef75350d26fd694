import { useEffect, useMemo } from 'react';
import { type BufferGeometry, TorusGeometry } from 'three';
import type { PlacedEye, PlacedPin } from '../../sim/index.ts';
import { useView } from '../view/view.ts';
import { along } from './along.ts';
import { Part } from './Part.tsx';
import { useTub } from './tub.ts';
import { makeRod, turnTo } from './upright.ts';

interface HardwareProps {
  readonly eyes: readonly PlacedEye[];
  readonly pins: readonly PlacedPin[];
}

/** Screw eyes and hinge pins, in the body frame. */
export function Hardware({ eyes, pins }: HardwareProps) {
  const rod = useMemo(makeRod, []);
  useEffect(() => () => rod.dispose(), [rod]);
  return (
    <>
      {eyes.map((eye) => (
        <Eye key={`${eye.kind} ${eye.name}`} eye={eye} rod={rod} />
      ))}
      {pins.map((pin) => (
        <Pin key={pin.name} pin={pin} rod={rod} />
      ))}
    </>
  );
}

/** A loop, and a shank that starts at its wire and ends in the wood. */
function Eye({ eye, rod }: { readonly eye: PlacedEye; readonly rod: BufferGeometry }) {
  const { looks } = useTub();
  const { bore, wire, loop, inward, axis, entry, shank } = eye;
  const name = `hanger:${eye.name}`;
  const isPicked = useView((view) => eye.kind === 'hanger' && view.selected === name);
  const ring = useMemo(() => new TorusGeometry((bore + wire) / 2, wire / 2, 10, 36), [bore, wire]);
  useEffect(() => () => ring.dispose(), [ring]);
  const [ax, ay, az] = axis;
  const ringTurn = useMemo(() => turnTo([ax, ay, az]), [ax, ay, az]);
  const [ix, iy, iz] = inward;
  const shankTurn = useMemo(() => turnTo([ix, iy, iz]), [ix, iy, iz]);
  const toWood = (entry[0] - loop[0]) * ix + (entry[1] - loop[1]) * iy + (entry[2] - loop[2]) * iz;
  const start = (bore + wire) / 2;
  const look = isPicked ? looks.parts.pickedMetal : looks.parts.brass;
  const picks = eye.kind === 'hanger' ? { picks: name } : {};
  return (
    <>
      <Part geometry={ring} look={look} position={loop} quaternion={ringTurn} {...picks} />
      <Part
        geometry={rod}
        look={look}
        position={along(loop, inward, start)}
        quaternion={shankTurn}
        scale={[wire / 2, wire / 2, Math.max(toWood + shank - start, wire)]}
        {...picks}
      />
    </>
  );
}

function Pin({ pin, rod }: { readonly pin: PlacedPin; readonly rod: BufferGeometry }) {
  const { looks } = useTub();
  const [low, high] = pin.z;
  return (
    <Part
      geometry={rod}
      look={looks.parts.pin}
      position={[pin.x, 0, low]}
      scale={[pin.diameter / 2, pin.diameter / 2, high - low]}
    />
  );
}
