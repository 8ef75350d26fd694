/** The units that a key of the design file may end in, longest first, and how a maker reads them. */
const UNITS: readonly (readonly [suffix: string, unit: string])[] = [
  ['_g_cm3', 'g/cm³'],
  ['_g_m2', 'g/m²'],
  ['_g_kg', 'g/kg'],
  ['_percent', '%'],
  ['_mm_s', 'mm/s'],
  ['_mm3', 'mm³'],
  ['_deg', '°'],
  ['_mm', 'mm'],
  ['_c', '°C'],
  ['_g', 'g'],
  ['_s', 's'],
];

/** The keys whose numbers have no unit: exponents, shares. */
const PLAIN = new Set(['above', 'below', 'breadth', 'nose_fullness', 'tail_fullness']);

/** Whether the values under this key of a design file are numbers (or expressions): every such key ends in its unit. */
export function isNumberKey(key: string): boolean {
  return PLAIN.has(key) || unitOfKey(key) !== '';
}

/** The unit that the key names, as printed after a number: `mm`, `g/cm³`; empty where there is none. */
export function unitOfKey(key: string): string {
  return UNITS.find(([suffix]) => key.endsWith(suffix))?.[1] ?? '';
}

/** A number with the unit its key names: `12.5 mm`, `20°`, `0.8`. */
export function withUnit(value: number, key: string): string {
  const unit = unitOfKey(key);
  const shown = String(Number(value.toPrecision(10)));
  if (unit === '') return shown;
  return unit === '°' || unit === '%' ? `${shown}${unit}` : `${shown} ${unit}`;
}
