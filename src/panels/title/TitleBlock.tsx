import { baitVerdict, formatDensity, formatNumber, type WaterAnswer } from '../../../sim/index.ts';
import { useDocument } from '../../document/store.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';

/** The title block of the sheet: what is drawn, for which water, at what scale, and what it comes to. */
export function TitleBlock() {
  const file = useDocument((document) => document.file);
  const setup = useDocument((document) => document.setup);
  const bait = useAnswers((answers) => answers.lastGood.bait);
  const scale = useView((view) => view.sheet.scale);
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  if (file === null) return null;
  const { assembled, assembledAccuracy, water } = bait;
  const entries: readonly (readonly [string, string])[] = [
    ['Setup', setup ?? ''],
    ['Total mass', assembled === undefined ? '' : amounts.mass(assembled.mass)],
    ['Water', water === undefined ? '' : waterWords(water)],
    ['Scale', scaleWords(scale)],
    ['Units', units === 'mm-g' ? 'mm, g' : 'in, oz'],
    ['Date', today()],
  ];
  return (
    <section className="title-block" aria-labelledby="bait">
      <h2 id="bait">{file.name}</h2>
      <p>{assembled === undefined ? '' : baitVerdict(assembled, assembledAccuracy?.digits, amounts)}</p>
      <dl>
        {entries.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function waterWords({ temperature, salinity, density }: WaterAnswer): string {
  const dense = formatDensity(density, { digits: 4 });
  if (temperature === null || salinity === null) return `measured, ${dense}`;
  const salt = salinity === 0 ? 'fresh' : `${formatNumber(salinity)} g/kg salt`;
  return `${formatNumber(temperature)} °C, ${salt}, ${dense}`;
}

/** CSS defines its pixel as 1/96 of an inch: so many to the millimetre are life size. */
const LIFE_SIZE_PX_PER_MM = 96 / 25.4;

/** As drawings have it: `1.2 : 1` enlarged, `1 : 1.6` reduced. On glass it is as true as the glass says its pixels are. */
function scaleWords(scale: number): string {
  const ratio = scale / LIFE_SIZE_PX_PER_MM;
  return ratio >= 1 ? `${formatNumber(ratio, { digits: 2 })} : 1` : `1 : ${formatNumber(1 / ratio, { digits: 2 })}`;
}

// making one takes longer than drawing the block
const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

function today(): string {
  return DAY.format(new Date());
}
