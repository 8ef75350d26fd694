import { memo, useMemo } from 'react';
import type { Arms, Roll } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { WideTable } from '../ballast/WideTable.tsx';
import { armRows, type Label, layOutArms, type Mark, SIZE } from './arms-figure.ts';

interface ArmsFigureProps {
  readonly roll: Roll;
  readonly arms: Arms;
  /** Whose they are, and what they come to, in words. */
  readonly name: string;
  readonly says: string;
}

/** The righting arms right round as a curve, and as a table for who would rather read. */
export const ArmsFigure = memo(({ roll, arms, name, says }: ArmsFigureProps) => {
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  const {
    curve,
    kept,
    level,
    heels,
    arms: ticks,
    marks,
  } = useMemo(() => layOutArms(roll, arms, units, amounts), [roll, arms, units, amounts]);
  const rows = useMemo(() => armRows(arms, amounts), [arms, amounts]);
  return (
    <figure className="arms">
      <figcaption>Righting arm over heel, {units === 'mm-g' ? 'mm' : 'in'}; above the line it turns to port</figcaption>
      <svg viewBox={`0 0 ${SIZE.width} ${SIZE.height}`} role="img" aria-label={`Righting arms of ${name}. ${says}`}>
        <path className="frame" d={`M36 22V196M36 ${level.toFixed(1)}H364`} />
        {ticks.map((tick) => (
          <path key={tick.text} className="tick" d={`M33 ${(tick.y - 4).toFixed(1)}H36`} />
        ))}
        {kept.map((path, i) => (
          <path key={i === 0 ? 'starboard' : 'port'} className="kept" d={path} />
        ))}
        <path className="curve" d={curve} />
        {heels.map((heel) => (
          <path key={heel.x} className="tick" d={`M${heel.x.toFixed(1)} 196v4`} />
        ))}
        {[...heels, ...ticks].map((label) => (
          <Words key={`${label.x} ${label.y}`} label={label} />
        ))}
        <text className="side" x="36" y="230" textAnchor="start">
          ← heeled to port
        </text>
        <text className="side" x="364" y="230" textAnchor="end">
          heeled to starboard →
        </text>
        {marks.map((mark) => (
          <Marked key={`${mark.kind} ${mark.x}`} mark={mark} />
        ))}
      </svg>
      <details>
        <summary>The arms in numbers</summary>
        <WideTable label={`Righting arms of ${name}`}>
          <thead>
            <tr>
              <th scope="col">Heel</th>
              <th scope="col">Brings it back from starboard</th>
              <th scope="col">From port</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ heel, starboard, port }) => (
              <tr key={heel}>
                <th scope="row">{heel}</th>
                <td>{starboard}</td>
                <td>{port}</td>
              </tr>
            ))}
          </tbody>
        </WideTable>
      </details>
    </figure>
  );
});

function Words({ label: { x, y, text, anchor } }: { readonly label: Label }) {
  return (
    <text x={x} y={y} textAnchor={anchor}>
      {text}
    </text>
  );
}

/** A disc where it rests, a triangle on the longest arm, an upright stroke at a limit, a cross where it goes on end. */
const SHAPES: Readonly<Record<Mark['kind'], string>> = {
  rest: 'M-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z',
  most: 'M0 -5L4.5 3H-4.5Z',
  limit: 'M0 -9V9',
  end: 'M-4 -4L4 4M4 -4L-4 4',
};

function Marked({ mark: { kind, x, y, label } }: { readonly mark: Mark }) {
  return (
    <g className={kind}>
      <path d={SHAPES[kind]} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`} />
      {label !== null && <Words label={label} />}
    </g>
  );
}
