import type { Attitudes, Float } from '../../../sim/index.ts';
import { useView } from '../../view/view.ts';
import { restLines } from './rest-lines.ts';

/** How else it can come to rest, under its verdict; nothing where it comes back from anywhere. isOld: of the design before. */
export function OtherRests({
  attitudes,
  float,
  isOld,
}: {
  readonly attitudes: Attitudes | undefined;
  readonly float: Float;
  readonly isOld: boolean;
}) {
  const units = useView((view) => view.units);
  if (attitudes === undefined) return null;
  const { lines, neutral, more } = restLines(attitudes, float, units);
  if (lines.length === 0 && neutral === null) return null;
  return (
    <ul className={isOld ? 'rests awaited' : 'rests'}>
      {neutral !== null && <li>{neutral}</li>}
      {lines.map(({ where, push }) => (
        <li key={`${where} ${push}`}>
          {where}; <span className="push">{push}</span>
        </li>
      ))}
      {more > 0 && <li>{more === 1 ? 'And one more way' : `And ${more} more ways`}</li>}
    </ul>
  );
}
