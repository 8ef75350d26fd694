import {
  CELSIUS_PER_FAHRENHEIT,
  degreeFromRadian,
  FAHRENHEIT_AT_0_CELSIUS,
  GRAM_PER_CM3_IN_OUNCE_PER_IN3,
  GRAM_PER_CM3_IN_POUND_PER_FT3,
  GRAM_PER_GRAIN,
  GRAM_PER_OUNCE,
  GRAM_PER_POUND,
  KELVIN_AT_0_CELSIUS,
  MM_PER_FOOT,
  MM_PER_INCH,
} from './convert.ts';

/** The kinds of number that a maker types. The first unit of each in `UNITS` is the file's. */
export type QuantityKind =
  | 'length'
  | 'mass'
  | 'density'
  | 'angle'
  | 'temperature'
  | 'salinity'
  | 'percent'
  | 'spread'
  | 'volume'
  | 'speed'
  | 'time'
  | 'ratio';

/** A unit as it may be typed. */
export interface TypedUnit {
  /** As it is written back. */
  readonly symbol: string;
  /** The file's units in one of it. */
  readonly times: number;
  /** What it reads where the file's unit reads nothing; 0 for all but temperatures. */
  readonly zero: number;
  /** Decimals that are worth writing back. */
  readonly digits: number;
  /** In lower case, powers as plain digits: what may be typed for it. */
  readonly spellings: readonly string[];
  /** The unit that may follow it in one quantity, as inches follow feet, and how many of those make one of it. */
  readonly parts?: { readonly symbol: string; readonly count: number };
}

function unit(symbol: string, times: number, digits: number, ...spellings: readonly string[]): TypedUnit {
  return { symbol, times, zero: 0, digits, spellings: [symbol.toLowerCase(), ...spellings] };
}

// what a keyboard, a phone and a word processor make of the marks for feet and inches
const PRIMES = ["'", '′', '’', '‘', 'ʼ', 'ʹ', '´', '`'];
const DOUBLE_PRIMES = ['"', '″', '”', '“', '„', 'ʺ', ...PRIMES.map((mark) => mark + mark)];

/** Every unit that may be typed. The first of a kind is the file's. */
export const UNITS: Readonly<Record<QuantityKind, readonly TypedUnit[]>> = {
  length: [
    unit('mm', 1, 3, 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
    unit('cm', 10, 4, 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
    unit('m', 1000, 6, 'metre', 'metres', 'meter', 'meters'),
    unit('in', MM_PER_INCH, 4, 'in.', 'inch', 'inches', ...DOUBLE_PRIMES),
    {
      ...unit('ft', MM_PER_FOOT, 5, 'ft.', 'foot', 'feet', ...PRIMES),
      parts: { symbol: 'in', count: 12 },
    },
    unit('thou', MM_PER_INCH / 1000, 1),
  ],
  mass: [
    unit('g', 1, 3, 'gram', 'grams', 'gramme', 'grammes', 'gm', 'gms'),
    unit('kg', 1000, 6, 'kilo', 'kilos', 'kgs', 'kilogram', 'kilograms'),
    unit('mg', 0.001, 0, 'milligram', 'milligrams'),
    unit('oz', GRAM_PER_OUNCE, 4, 'oz.', 'ounce', 'ounces'),
    {
      ...unit('lb', GRAM_PER_POUND, 5, 'lb.', 'lbs', 'lbs.', 'pound', 'pounds'),
      parts: { symbol: 'oz', count: 16 },
    },
    unit('grains', GRAM_PER_GRAIN, 1, 'grain'),
  ],
  density: [
    unit('g/cm³', 1, 5, 'g/cm3', 'g/cc', 'g/ccm', 'g/ml', 'kg/l', 'kg/dm3', 'g·cm⁻³', 'g cm⁻³'),
    unit('kg/m³', 0.001, 2, 'kg/m3', 'kg/cubic metre', 'kg/cubic meter', 'g/l', 'kg·m⁻³', 'kg m⁻³'),
    unit(
      'lb/ft³',
      GRAM_PER_CM3_IN_POUND_PER_FT3,
      3,
      'lb/ft3',
      'lbs/ft3',
      'lb/cu ft',
      'lbs/cu ft',
      'lb/cuft',
      'lb/cu. ft.',
      'lb/cubic foot',
      'lbs/cubic foot',
      'pounds/cubic foot',
      'pcf',
    ),
    unit('oz/in³', GRAM_PER_CM3_IN_OUNCE_PER_IN3, 4, 'oz/in3', 'oz/cu in', 'oz/cubic inch'),
    unit('lb/in³', 16 * GRAM_PER_CM3_IN_OUNCE_PER_IN3, 5, 'lb/in3', 'lbs/in3', 'lb/cu in', 'lb/cubic inch'),
  ],
  angle: [
    {
      ...unit('°', 1, 3, 'deg', 'deg.', 'degree', 'degrees'),
      parts: { symbol: '′', count: 60 },
    },
    {
      ...unit('′', 1 / 60, 2, ...PRIMES, 'arcmin'),
      parts: { symbol: '″', count: 60 },
    },
    unit('″', 1 / 3600, 1, ...DOUBLE_PRIMES, 'arcsec'),
    unit('rad', degreeFromRadian(1), 6, 'radian', 'radians'),
  ],
  temperature: [
    unit('°C', 1, 2, 'c', 'degc', 'deg c', 'deg. c', 'degrees c', 'celsius', 'degrees celsius'),
    {
      ...unit(
        '°F',
        CELSIUS_PER_FAHRENHEIT,
        2,
        'f',
        'degf',
        'deg f',
        'deg. f',
        'degrees f',
        'fahrenheit',
        'degrees fahrenheit',
      ),
      zero: FAHRENHEIT_AT_0_CELSIUS,
    },
    { ...unit('K', 1, 2, 'kelvin'), zero: KELVIN_AT_0_CELSIUS },
  ],
  salinity: [unit('g/kg', 1, 3, '‰', 'ppt'), unit('%', 10, 4, 'percent', 'per cent')],
  percent: [unit('%', 1, 3, 'percent', 'per cent')],
  spread: [unit('g/m²', 1, 2, 'g/m2')],
  volume: [unit('mm³', 1, 1, 'mm3'), unit('cm³', 1000, 4, 'cm3', 'cc', 'ml')],
  speed: [
    unit('mm/s', 1, 1, 'mm/sec'),
    unit('cm/s', 10, 2, 'cm/sec'),
    unit('m/s', 1000, 4, 'm/sec'),
    unit('in/s', MM_PER_INCH, 3, 'in/sec', 'ips'),
    unit('ft/s', MM_PER_FOOT, 4, 'ft/sec', 'fps'),
  ],
  time: [unit('s', 1, 2, 'sec', 'secs', 'second', 'seconds'), unit('min', 60, 4, 'minute', 'minutes')],
  // of two lengths, or an exponent: no unit, but a share may be given in hundredths
  ratio: [unit('', 1, 4), unit('%', 0.01, 2, 'percent', 'per cent')],
};

/** Spellings that mean two things, and which: a guess would be out by a factor of 15, or of 25. */
const TWO_MEANINGS: Readonly<Partial<Record<QuantityKind, Readonly<Record<string, string>>>>> = {
  length: { mil: 'a thousandth of an inch to some and a millimetre to others; type thou or mm' },
  mass: { gr: 'grains to some and grams to others; type grains or g' },
};

/** What stands at the beginning of a text: a unit and how long it is, or words for why there is none. */
export type UnitFound =
  | { readonly unit: TypedUnit; readonly length: number }
  | { readonly unit: null; readonly because: string };

/** The unit of this kind that a normalised text begins with. shown: what a bare degree means of a temperature. */
export function unitAt(text: string, kind: QuantityKind, shown: TypedUnit): UnitFound {
  const own = longest(text, UNITS[kind]);
  if (own !== null) return own;
  const degree = kind === 'temperature' ? /^(?:°|deg(?:rees?)?(?![a-z]))/.exec(text) : null;
  if (degree !== null) return { unit: shown, length: degree[0].length };
  const word = /^(?:[^\s\d]+\d?|.)/u.exec(text)?.[0] ?? text;
  const meanings = TWO_MEANINGS[kind]?.[word];
  if (meanings !== undefined) return { unit: null, because: `"${word}" is ${meanings}` };
  return { unit: null, because: `"${word}" is no unit of ${kind}; type ${unitList(kind)}` };
}

/** The unit of a kind that is written back so; undefined where there is none. */
export function unitNamed(kind: QuantityKind, symbol: string): TypedUnit | undefined {
  return UNITS[kind].find((unit) => unit.symbol === symbol);
}

/** The units of a kind as a list in words. */
export function unitList(kind: QuantityKind): string {
  const symbols = UNITS[kind].map(({ symbol }) => (symbol === '' ? 'no unit' : symbol));
  return symbols.length === 1 ? symbols.join('') : `${symbols.slice(0, -1).join(', ')} or ${symbols.at(-1)}`;
}

/** The longest spelling wins, so that two primes are inches and not feet; a word must end where the spelling does. */
function longest(text: string, units: readonly TypedUnit[]): { unit: TypedUnit; length: number } | null {
  let best: { unit: TypedUnit; length: number } | null = null;
  for (const unit of units) {
    for (const spelling of unit.spellings) {
      // 1'2" and 1ft2in are feet and inches, 1ft2 might be square feet
      const more = /[a-z\d]$/.test(spelling) ? /^[\p{L}/]|^\d[^\p{L}]*$/u : /^\p{L}/u;
      const ends = !more.test(text.slice(spelling.length));
      if (spelling !== '' && text.startsWith(spelling) && ends && spelling.length > (best?.length ?? 0)) {
        best = { unit, length: spelling.length };
      }
    }
  }
  return best;
}
