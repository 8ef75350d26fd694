import { formatNumber, type Ledger, type PlacedHung, type Vec3 } from '../../../sim/index.ts';
import { useAmounts } from '../../view/amounts.ts';

const FINE = { digits: 2 } as const;

/** Everything that weighs, one line each, with its place and where the number comes from. Places in mm in any units. */
export function LedgerTable({
  name,
  ledger,
  hung,
}: {
  readonly name: string;
  readonly ledger: Ledger;
  readonly hung: readonly PlacedHung[];
}) {
  const amounts = useAmounts();
  return (
    <table className="ledger" aria-label={`Ledger of ${name}`}>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Kind</th>
          <th scope="col">Mass</th>
          <th scope="col">x, y, z mm</th>
          <th scope="col">From</th>
        </tr>
      </thead>
      <tbody>
        {ledger.lines.map((line) => (
          <tr key={`${line.kind} ${line.name} ${line.at}`}>
            <th scope="row">{line.name}</th>
            <td>{line.kind}</td>
            <td>{amounts.mass(line.mass, FINE)}</td>
            <td>{placeText(line.at)}</td>
            <td>{line.source}</td>
          </tr>
        ))}
        <tr className="sum">
          <th scope="row">All that is fixed</th>
          <td />
          <td>{amounts.mass(ledger.mass, FINE)}</td>
          <td>{placeText(ledger.centre)}</td>
          <td>sum of the above</td>
        </tr>
        {hung.map((item) => (
          <tr key={`hung ${item.name}`}>
            <th scope="row">{item.name}</th>
            <td>hung</td>
            <td>{amounts.mass(item.mass, FINE)}</td>
            <td>{placeText(item.eye)}</td>
            <td>pulls at its eye</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function placeText(point: Vec3): string {
  return point.map((value) => formatNumber(value)).join(', ');
}
