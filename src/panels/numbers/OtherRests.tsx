import type { Attitudes, Float } from '../../../sim/index.ts';
import { useView, type View } from '../../view/view.ts';
import { GhostButton } from './GhostButton.tsx';
import { restLines } from './rest-lines.ts';

/** How else it can come to rest, under its verdict; nothing where it comes back from anywhere. isOld: of the design before. */
export function OtherRests({
  of,
  attitudes,
  float,
  isOld,
}: {
  /** Whose ways to rest they are. */
  readonly of: View['shown'];
  readonly attitudes: Attitudes | undefined;
  readonly float: Float;
  readonly isOld: boolean;
}) {
  const units = useView((view) => view.units);
  if (attitudes === undefined) return null;
  const { lines, neutral, more, otherSide } = restLines(attitudes, float, units);
  if (lines.length === 0 && neutral === null && otherSide === null) return null;
  return (
    <ul className={isOld ? 'rests awaited' : 'rests'}>
      {neutral !== null && <li>{neutral}</li>}
      {lines.map(({ rest, where, push }) => (
        <li key={`${where} ${push}`}>
          {where}; <span className="push">{push}</span> <Ghost of={of} rest={rest} where={where} />
        </li>
      ))}
      {otherSide !== null && (
        <li>
          On its other side <Ghost of={of} rest={otherSide} where="on its other side" />
        </li>
      )}
      {more > 0 && <li>{more === 1 ? 'And one more way' : `And ${more} more ways`}</li>}
    </ul>
  );
}

function Ghost({ of, rest, where }: { readonly of: View['shown']; readonly rest: number; readonly where: string }) {
  return <GhostButton of={of} rest={rest} label={`Draw in the tub: ${where}`} words={['draw', 'drawn']} />;
}
