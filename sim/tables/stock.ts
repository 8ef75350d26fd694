import type { Cited, Spread } from '../sources/cite.ts';
import type { GramPerMm3 } from '../units/brand.ts';
import { gramPerCm3FromGramPerMm3, gramPerMm3FromGramPerCm3 } from '../units/convert.ts';
import { EPOXY } from './finishes.ts';
import { METALS } from './metals.ts';

/** Shot that is poured into a hole and tapped down fills about so much of it. Common practice. */
const PACKED = 0.6;

/** Densities of what fills a hole to start from, until the maker has weighed what lies in his own. */
export const FILLINGS = {
  'shot in epoxy': inEpoxy(METALS.lead.value),
  'poured lead': METALS.lead.value,
  'tungsten shot in epoxy': inEpoxy(METALS.tungsten.value),
} as const satisfies Record<string, GramPerMm3>;

/** Heavy putty is bought by its make, and makes differ by half. */
export const PUTTY: Cited<Spread<GramPerMm3>> = {
  value: {
    low: gramPerMm3FromGramPerCm3(6),
    usual: gramPerMm3FromGramPerCm3(8),
    high: gramPerMm3FromGramPerCm3(11),
  },
  source: 'common-practice',
  where: 'heavy putty, to be weighed',
  asPrinted: '6–11 g/cm³, usually 8',
};

/** To a tenth of a gram per cm³: how tightly it lies is not known better. */
function inEpoxy(metal: GramPerMm3): GramPerMm3 {
  const mixed = gramPerCm3FromGramPerMm3(PACKED * metal + (1 - PACKED) * EPOXY.value.usual);
  return gramPerMm3FromGramPerCm3(Number(mixed.toFixed(1)));
}
