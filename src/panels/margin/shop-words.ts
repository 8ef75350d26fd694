import type { Amounts, ShopList, StockChoice, StockUser } from '../../../sim/index.ts';

/** More holes or setups than that are counted, not named. */
const NAMED = 3;

/** What one thing on each list is called. */
export const THING: Readonly<Record<ShopList, string>> = { drills: 'drill', lead: 'stock' };

/** Why stock cannot go, by the holes that hold it, and what lets it go; null where no hole does. */
export function stayWords(name: string, users: readonly StockUser[]): string | null {
  if (users.length === 0) return null;
  const setups = [...new Set(users.map(({ setup }) => setup))];
  const places = setups.slice(0, NAMED).map((setup) => {
    const holes = users.filter((user) => user.setup === setup).map(({ hole }) => hole);
    return `${listed(holes, 'more')} of ${setup}`;
  });
  const rest = setups.length - places.length;
  const more = rest === 0 ? [] : [`${rest} more ${rest === 1 ? 'setup' : 'setups'}`];
  const cure = users.some(({ isDone }) => isDone)
    ? 'What is drilled and glued keeps its stock on the list.'
    : `Fill ${users.length === 1 ? 'it' : 'them'} with other stock first.`;
  return `“${name}” stays: it is in ${[...places, ...more].join('; ')}. ${cure}`;
}

function listed(names: readonly string[], word: string): string {
  const shown = names.slice(0, NAMED);
  const rest = names.length - shown.length;
  if (rest > 0) return `${shown.join(', ')} and ${rest} ${word}`;
  return shown.length < 2 ? shown.join() : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

/** What a choice of stock adds, for its button. */
export function choiceWords({ kind, entry }: StockChoice): string {
  if (kind === 'rod') return `Lead rod: ${entry.name}`;
  return entry.name.charAt(0).toUpperCase() + entry.name.slice(1);
}

/** What a maker should know before choosing it. */
export function choiceNote({ kind, entry, drill }: StockChoice, amounts: Amounts): string {
  const density = `${entry.density_g_cm3} g/cm³`;
  if (kind === 'putty') return `makes differ: weigh a lump, ${density} until then`;
  if (drill === null) return `fills a hole of any width, ${density}`;
  const rod = `${amounts.length(Number(entry.diameter_mm))} thick, ${density}`;
  return drill.isThere
    ? `${rod}; drops into a hole of the ${drill.name} drill`
    : `${rod}; wants a drill of ${drill.name}`;
}

/** What is said when something has come onto a list. */
export function addedWords(name: string, kind: StockChoice['kind'] | 'drill'): string {
  const tail = kind === 'putty' || kind === 'filling' ? ' Weigh yours, and type its density.' : '';
  return `“${name}” added.${tail}`;
}
