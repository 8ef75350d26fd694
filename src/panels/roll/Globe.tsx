import { memo, useId, useMemo } from 'react';
import { type Attitudes, dropCells, type Float } from '../../../sim/index.ts';
import { layOutGlobe, letterOf, MIDDLES, type Place, placeOf, RADIUS, SIZE } from './globe.ts';

/** Tints and hatchings in turn; the letter tells those apart that come round again. */
const LOOKS = 6;
const HATCHES: readonly string[] = [
  '',
  'M0 8L8 0M-2 2L2 -2M6 10L10 6',
  'M4 0V8',
  'M0 4H8M4 0V8',
  'M0 0L8 8M-2 6L2 10M6 -2L10 2',
  'M0 4H8',
];

interface GlobeProps {
  readonly attitudes: Attitudes;
  readonly float: Float;
  readonly name: string;
}

/** Every way up at once: which rest a bait ends at when it is let go there, with the rests and the passes between. */
export const Globe = memo(({ attitudes, float, name }: GlobeProps) => {
  const id = useId();
  const { regions, borders } = useMemo(() => layOutGlobe(attitudes.drops, dropCells(attitudes)), [attitudes]);
  const rests = [float.up, ...attitudes.others.map((other) => other.float.up)];
  return (
    <svg
      className="globe"
      viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
      role="img"
      aria-label={`Where ${name} ends when it is let go from any way up; the list says the same.`}
    >
      <defs>
        {HATCHES.map((path, look) => (
          <pattern key={path} id={`${id}${look}`} width="8" height="8" patternUnits="userSpaceOnUse">
            <rect className={`tint look-${look}`} width="8" height="8" />
            <path className={`hatch look-${look}`} d={path} />
          </pattern>
        ))}
      </defs>
      {regions.map(({ rest, path }) => (
        <path key={rest} className="region" d={path} fill={`url(#${id}${rest % LOOKS})`} />
      ))}
      <path className="border" d={borders} />
      {MIDDLES.map(({ x, y }, half) => (
        <g key={x}>
          <circle className="rim" cx={x} cy={y} r={RADIUS} />
          <path className="cross" d={`M${x - 3} ${y}h6M${x} ${y - 3}v6`} />
          <text className="half" x={x} y="12">
            {half === 0 ? 'let go back up' : 'let go belly up'}
          </text>
          <text x={x} y={y - RADIUS - 5}>
            starboard down
          </text>
          <text x={x} y={y + RADIUS + 13}>
            port down
          </text>
        </g>
      ))}
      <text className="turned" transform={`translate(8 ${MIDDLES[0].y}) rotate(-90)`}>
        nose down
      </text>
      <text className="turned" transform={`translate(186 ${MIDDLES[0].y}) rotate(-90)`}>
        tail down · nose down
      </text>
      <text className="turned" transform={`translate(364 ${MIDDLES[0].y}) rotate(90)`}>
        tail down
      </text>
      {attitudes.others.map(
        ({ over }, i) =>
          over !== null && <Pass key={letterOf(i + 1)} at={placeOf(over)} name={`to ${letterOf(i + 1)}`} />,
      )}
      {rests.map((up, rest) => (
        <Rest key={letterOf(rest)} at={placeOf(up)} name={letterOf(rest)} />
      ))}
    </svg>
  );
});

function Rest({ at: { x, y }, name }: { readonly at: Place; readonly name: string }) {
  return (
    <g className="rest" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <circle r="8" />
      <text y="4">{name}</text>
    </g>
  );
}

/** A gap between two hills: the name is of the rest that the lowest way over it leads to. */
function Pass({ at: { x, y }, name }: { readonly at: Place; readonly name: string }) {
  return (
    <g className="pass" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <path d="M-5 -4C-2 0 -2 0 -5 4M5 -4C2 0 2 0 5 4" />
      <text x="8" y="4">
        {name}
      </text>
    </g>
  );
}

/** The look of a rest on the map, beside its words. */
export function Swatch({ rest }: { readonly rest: number }) {
  const look = rest % LOOKS;
  return (
    <svg className="swatch" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
      <rect className={`tint look-${look}`} width="16" height="16" />
      <path className={`hatch look-${look}`} d={HATCHES[look]} transform="scale(2)" />
    </svg>
  );
}
