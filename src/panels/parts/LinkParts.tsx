import {
  type Amounts,
  counted,
  type Hardware,
  type Ledger,
  type LinkSpec,
  type PlacedHole,
} from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';
import { pick, useView } from '../../view/view.ts';
import { placeWords } from '../numbers/float-rows.ts';
import { carriedBy } from './carried.ts';
import { LedgerTable } from './LedgerTable.tsx';

/** The ballast, hooks, pins and eyes of one link, one line each, and its ledger. */
export function LinkParts({
  spec,
  hardware,
  ledger,
}: {
  readonly spec: LinkSpec;
  readonly hardware: Hardware;
  readonly ledger: Ledger | undefined;
}) {
  const amounts = useAmounts();
  const { hung, holes, pins, eyes, fittings, fins } = carriedBy(hardware, spec.index);
  return (
    <section aria-labelledby={`parts-${spec.index}`}>
      <h3 id={`parts-${spec.index}`}>{spec.name}</h3>
      <ul>
        {holes.map((hole) => (
          <li key={`hole ${hole.name}`}>
            <Pickable kind="hole" name={hole.name} />: {holeWords(hole, amounts)}
          </li>
        ))}
        {hung.map((item) => (
          <li key={`hung ${item.name}`}>
            <Pickable kind="hung" name={item.name} />: {amounts.mass(item.mass)}, hangs {amounts.length(item.hang)} from
            its eye, {placeWords(item.eye[0], amounts)}
          </li>
        ))}
        {pins.map((pin) => (
          <li key={`pin ${pin.name}`}>
            {pin.name}: {amounts.length(pin.diameter)} thick, {amounts.length(pin.z[1] - pin.z[0])} long,{' '}
            {placeWords(pin.x, amounts)}
          </li>
        ))}
        {fittings.map((fitting) => (
          <li key={`${fitting.kind} ${fitting.name}`}>
            {fitting.name}: {amounts.mass(fitting.mass)}
            {fitting.kind === 'tail' ? ', limp' : ''}, {placeWords(fitting.at[0], amounts)}
          </li>
        ))}
        {fins.map((fin) => (
          <li key={`fin ${fin.name}`}>
            {fin.name}: fin {amounts.length(fin.thickness)} thick
            {fin.tab === null ? '' : `, let in ${amounts.length(fin.tab.depth)} deep`},{' '}
            {placeWords(fin.outsideCentre[0], amounts)}
          </li>
        ))}
        {eyes.length > 0 && (
          <li>
            {counted(eyes.length, 'screw eye')}: {eyes.map((eye) => eye.name).join('; ')}
          </li>
        )}
      </ul>
      {ledger !== undefined && (
        <details>
          <summary>
            Ledger of {spec.name}: {amounts.mass(ledger.mass)} fixed
          </summary>
          <LedgerTable name={spec.name} ledger={ledger} hung={hung} />
        </details>
      )}
    </section>
  );
}

/** A part that can be picked out, here as in the picture and the margin. */
function Pickable({ kind, name }: { readonly kind: 'hung' | 'hole'; readonly name: string }) {
  const key = `${kind}:${name}`;
  const picked = useView((view) => view.selected === key);
  return (
    <button type="button" className="pickable" aria-pressed={picked} onClick={() => pick(picked ? null : key)}>
      {name}
    </button>
  );
}

function holeWords(hole: PlacedHole, amounts: Amounts): string {
  const drilled = `${amounts.ruled(hole.diameter)} hole, ${amounts.ruled(hole.depth)} deep from the ${hole.hole.from}`;
  return `${fillWords(hole, amounts)} in a ${drilled}, ${placeWords(hole.mouth[0], amounts)}`;
}

/** What was put in goes by the maker's own word for it, since it need not be lead. */
function fillWords({ hole, lead, air }: PlacedHole, amounts: Amounts): string {
  if (air !== null) return 'air, sealed in,';
  return lead === null ? 'no ballast' : `${amounts.mass(lead.mass)} of ${hole.lead?.stock.name}`;
}
