import { useEffect, useRef, useState } from 'react';
import type { LinkSpec } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useView } from '../../view/view.ts';
import { LeaderLines } from './LeaderLines.tsx';
import { LinkColumn } from './LinkColumn.tsx';
import { placeColumns, type Stretch } from './place-columns.ts';

/** Under each link of the picture its column, nose to tail; on a narrow sheet cards one under the other. */
export function Columns() {
  const specs = useAnswers((answers) => answers.lastGood.bait.links ?? NO_LINKS);
  const { scale, left } = useView((view) => view.sheet);
  const [width, measured] = useWidth();
  const spans = specs.map(({ span: [from, to] }) => ({ left: left + from * scale, width: (to - from) * scale }));
  const columns = placeColumns(spans, width);
  return (
    <div ref={measured} className={columns === null ? 'cards' : 'columns'}>
      {columns !== null && <LeaderLines spans={spans} columns={columns} width={width} />}
      <div className="links" style={columns === null ? undefined : { gridTemplateColumns: gridOf(columns) }}>
        {specs.map((spec) => (
          <LinkColumn key={spec.index} spec={spec} />
        ))}
      </div>
    </div>
  );
}

const NO_LINKS: readonly LinkSpec[] = [];

/** Column lines with the gaps between columns as empty tracks. */
function gridOf(columns: readonly Stretch[]): string {
  let edge = 0;
  const tracks = columns.map(({ left, width }, index) => {
    const gap = left - edge;
    edge = left + width;
    return `[gap-${index}] ${gap}px [link-${index}] ${width}px`;
  });
  return tracks.join(' ');
}

function useWidth(): readonly [number, React.RefObject<HTMLDivElement | null>] {
  const measured = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = measured.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [width, measured];
}
