import type { Cited, Spread } from '../sources/cite.ts';
import type { GramPerMm3 } from '../units/brand.ts';
import { gramPerMm3FromGramPerCm3, gramPerMm3FromKgPerM3 } from '../units/convert.ts';

/** Plain carbon steel: screw eyes, pins and hooks, unless the design says otherwise. */
export const STEEL: Cited<GramPerMm3> = {
  value: gramPerMm3FromGramPerCm3(7.85),
  source: 'callister',
  where: 'table B.1, steel alloy 1040',
  asPrinted: '7.85 g/cm³',
};

/** Densities of the metals a maker meets; ballast is best weighed. */
export const METALS = {
  steel: STEEL,
  'stainless steel': {
    value: gramPerMm3FromGramPerCm3(8),
    source: 'callister',
    where: 'table B.1, stainless alloy 304',
    asPrinted: '8.00 g/cm³',
  },
  brass: {
    value: {
      low: gramPerMm3FromKgPerM3(8400),
      usual: gramPerMm3FromKgPerM3(8500),
      high: gramPerMm3FromKgPerM3(8600),
    },
    source: 'gere',
    where: 'density, brass',
    asPrinted: '8,400–8,600 kg/m³',
  },
  lead: element(11.35, 'Pb', '11.35 g/cm³'),
  bismuth: element(9.747, 'Bi', '9.747 g/cm³'),
  tin: element(7.31, 'Sn', '7.31 g/cm³'),
  tungsten: element(19.3, 'W', '19.3 g/cm³'),
} as const satisfies Record<string, Cited<GramPerMm3 | Spread<GramPerMm3>>>;

function element(gramPerCm3: number, symbol: string, asPrinted: string): Cited<GramPerMm3> {
  const where = `density of the elements, ${symbol}`;
  return { value: gramPerMm3FromGramPerCm3(gramPerCm3), source: 'crc-80', where, asPrinted };
}
