import type { Cited, Spread } from '../sources/cite.ts';
import type { GramPerMm3 } from '../units/brand.ts';
import { gramPerMm3FromGramPerCm3 } from '../units/convert.ts';

/** Cured epoxy without filler: plugs over the lead, unless the design says otherwise, and clear coats. */
export const EPOXY = fromPractice('cured epoxy, unfilled', [1.1, 1.15, 1.2], '1.10–1.20 g/cm³, usually 1.15');

/** Densities of dry films to start a coat from; no document stands behind them, and makes differ. */
export const FINISHES = {
  epoxy: EPOXY,
  'UV resin': fromPractice('cured acrylate resin', [1.1, 1.18, 1.25], '1.10–1.25 g/cm³, usually 1.18'),
  urethane: fromPractice('clear urethane, dry film', [1.05, 1.1, 1.2], '1.05–1.20 g/cm³, usually 1.10'),
  paint: fromPractice('acrylic paint, dry film', [1.2, 1.4, 1.6], '1.2–1.6 g/cm³, usually 1.4'),
} as const satisfies Record<string, Cited<Spread<GramPerMm3>>>;

/** lowUsualHigh: in g/cm^3. */
function fromPractice(
  where: string,
  lowUsualHigh: readonly [number, number, number],
  asPrinted: string,
): Cited<Spread<GramPerMm3>> {
  const [low, usual, high] = lowUsualHigh;
  const value = {
    low: gramPerMm3FromGramPerCm3(low),
    usual: gramPerMm3FromGramPerCm3(usual),
    high: gramPerMm3FromGramPerCm3(high),
  };
  return { value, source: 'common-practice', where, asPrinted };
}
