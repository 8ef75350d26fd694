import type { Stretch } from './place-columns.ts';

const HEIGHT = 30;

/** From the ends of each link's span down to the edges of its column, as extension lines lead to a dimension. */
export function LeaderLines({
  spans,
  columns,
  width,
}: {
  readonly spans: readonly Stretch[];
  readonly columns: readonly Stretch[];
  readonly width: number;
}) {
  const lines = spans.flatMap((span, index) => {
    const column = columns[index] ?? span;
    return [
      lead(span.left, column.left),
      lead(span.left + span.width, column.left + column.width),
      `M${span.left} 4.5H${span.left + span.width}`,
    ];
  });
  return (
    <svg className="leader-lines" width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <path d={lines.join('')} />
    </svg>
  );
}

function lead(from: number, to: number): string {
  return `M${from} 0V8L${to} ${HEIGHT - 6}V${HEIGHT}`;
}
