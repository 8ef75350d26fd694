import { formatNumber } from './format.ts';

/** A number with at least so many decimals, and more only where it has them. */
export function formatDecimal(value: number, [least, most]: readonly [number, number]): string {
  const [whole = '', decimals = ''] = formatNumber(value, { digits: most }).split('.');
  const kept = decimals.replace(/0+$/, '').padEnd(least, '0');
  return kept === '' ? whole : `${whole}.${kept}`;
}
