import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type Mesh, measureReach } from '../../../sim/index.ts';
import { type Answers, floatingOf, useAnswers } from '../../engine/answers.ts';
import { useBeside } from '../../engine/beside.ts';
import { layOutSheet, useView } from '../../view/view.ts';
import { ApartNote } from './ApartNote.tsx';
import { BesideNote } from './BesideNote.tsx';
import { KeepOutNote } from './KeepOutNote.tsx';
import { besideNeeds, layOutTub, type Room } from './lay-out.ts';
import { Ruler } from './Ruler.tsx';
import { ViewBar } from './ViewBar.tsx';

/** The tub: the picture at the top of the sheet, which sets the sheet's scale by its size. */
export function Tub({ children }: { readonly children: ReactNode }) {
  const [size, measured] = useSize();
  const length = useAnswers((answers) => roomFor(answers)?.length);
  const height = useAnswers((answers) => roomFor(answers)?.height);
  const hang = useAnswers((answers) => roomFor(answers)?.hang);
  const past = useAnswers((answers) => roomFor(answers)?.past);
  const beside = useBesideNeeds();
  useEffect(() => {
    if (length === undefined || height === undefined || hang === undefined || past === undefined || size === null)
      return;
    layOutSheet(layOutTub(size.width, size.height, { length, height, hang, past, beside }));
  }, [size, length, height, hang, past, beside]);
  return (
    <section className="tub" aria-label="The bait in the water">
      <ViewBar />
      <div ref={measured} className="water">
        {children}
        <Ruler />
        <ApartNote />
        <div className="tub-notes">
          <BesideNote />
          <KeepOutNote />
        </div>
      </div>
    </section>
  );
}

/** What the setup that is drawn beside needs more up and down, as the whole bait or as one link; null for none. */
function useBesideNeeds(): number | null {
  const shown = useView((view) => view.shown);
  const setup = useView((view) => view.beside);
  const own = useAnswers(({ lastGood }) => floatingOf(lastGood, shown).float?.proud);
  const other = useBeside(setup, ({ known }) => floatingOf(known, shown).float?.proud);
  const fins = useAnswers(({ lastGood: { bait, links } }) => {
    const top = (meshes: readonly Mesh[]) =>
      Math.max(...meshes.map(({ positions }) => measureReach(positions, [0, 0, 1])[1]));
    if (setup === null || bait.hardware === undefined || bait.hardware.fins.length === 0) return 0;
    const wood = links.flatMap(({ wetted }) => (wetted === undefined ? [] : [wetted.mesh]));
    return Math.max(0, top(bait.hardware.fins.map(({ mesh }) => mesh)) - top(wood));
  });
  return own === undefined || other === undefined ? null : besideNeeds(own, other, fins);
}

function roomFor({ lastGood: { bait } }: Answers): Omit<Room, 'beside'> | null {
  if (bait.design === undefined) return null;
  const { length, height } = bait.design.body;
  const hang = Math.max(0, ...(bait.hardware?.hung.map((item) => item.hang) ?? []));
  const tips = (bait.hardware?.fins ?? []).map(({ mesh }) => measureReach(mesh.positions, [1, 0, 0])[1]);
  return { length, height, hang, past: Math.max(0, ...tips.map((tip) => tip - length)) };
}

function useSize() {
  const measured = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<{ readonly width: number; readonly height: number } | null>(null);
  useEffect(() => {
    const element = measured.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setSize({ width: element.clientWidth, height: element.clientHeight }));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [size, measured] as const;
}
