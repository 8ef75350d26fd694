import { type ReactNode, useEffect, useRef, useState } from 'react';
import { measureReach } from '../../../sim/index.ts';
import { type Answers, useAnswers } from '../../engine/answers.ts';
import { layOutSheet } from '../../view/view.ts';
import { ApartNote } from './ApartNote.tsx';
import { BesideNote } from './BesideNote.tsx';
import { layOutTub, type Room } from './lay-out.ts';
import { Ruler } from './Ruler.tsx';
import { ViewBar } from './ViewBar.tsx';

/** The tub: the picture at the top of the sheet, which sets the sheet's scale by its size. */
export function Tub({ children }: { readonly children: ReactNode }) {
  const [size, measured] = useSize();
  const length = useAnswers((answers) => roomFor(answers)?.length);
  const height = useAnswers((answers) => roomFor(answers)?.height);
  const hang = useAnswers((answers) => roomFor(answers)?.hang);
  const past = useAnswers((answers) => roomFor(answers)?.past);
  useEffect(() => {
    if (length === undefined || height === undefined || hang === undefined || past === undefined || size === null)
      return;
    layOutSheet(layOutTub(size.width, size.height, { length, height, hang, past }));
  }, [size, length, height, hang, past]);
  return (
    <section className="tub" aria-label="The bait in the water">
      <ViewBar />
      <div ref={measured} className="water">
        {children}
        <Ruler />
        <ApartNote />
        <BesideNote />
      </div>
    </section>
  );
}

function roomFor({ lastGood: { bait } }: Answers): Room | null {
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
