import { type Attitudes, dropWords, type Float, humpWords, restWords, wayUpWords } from '../../../sim/index.ts';
import { useView, type View } from '../../view/view.ts';
import { GhostButton } from '../numbers/GhostButton.tsx';
import { inUnits } from '../numbers/rest-lines.ts';
import { Globe, Swatch } from './Globe.tsx';
import { letterOf } from './globe.ts';

interface RestsProps {
  /** Whose ways to rest they are. */
  readonly of: View['shown'];
  readonly name: string;
  readonly attitudes: Attitudes;
  readonly float: Float;
}

/** Every way it can rest: on a map of all ways up to let it go from, and as a list with what lies between. */
export function Rests({ of, name, attitudes, float }: RestsProps) {
  const units = useView((view) => view.units);
  const { others, firstShare, firstIsNeutral, drops } = attitudes;
  if (drops.length === 0) {
    return (
      <p>
        {firstIsNeutral
          ? 'Wholly under, it has no preferred way up.'
          : 'Wholly under, it has one way to rest, and comes to it from anywhere.'}
      </p>
    );
  }
  return (
    <figure className="ways">
      <figcaption>
        Let go from any way up, where does it end? The bait from above, nose to the left; a place stands towards the
        side that is down
      </figcaption>
      <Globe attitudes={attitudes} float={float} name={name} />
      <ul>
        <li>
          <Swatch rest={0} />
          <span>
            <b>{letterOf(0)}</b> {dropWords(firstShare, attitudes)} it comes to rest {wayUpWords(float)}, as in the tub
            {firstIsNeutral ? '; it has no preference among the ways up near it' : ''}.
          </span>
        </li>
        {others.map((rest, i) => (
          <li key={letterOf(i + 1)}>
            <Swatch rest={i + 1} />
            <span>
              <b>{letterOf(i + 1)}</b> {dropWords(rest.share, attitudes)} it comes to rest {restWords(rest)};{' '}
              {inUnits(humpWords(rest, float.mass), units)}. <Ghost of={of} rest={i} name={letterOf(i + 1)} />
            </span>
          </li>
        ))}
      </ul>
      <p className="note">
        Drops are {attitudes.starts} ways up spread evenly, let go at rest: not a forecast of throws. The error is that
        of so few.
      </p>
    </figure>
  );
}

function Ghost({ of, rest, name }: { readonly of: View['shown']; readonly rest: number; readonly name: string }) {
  const words = ['Show in the tub', 'Shown in the tub'] as const;
  return <GhostButton of={of} rest={rest} label={`Show rest ${name} in the tub`} words={words} />;
}
