declare const unit: unique symbol;

/**
 * A number that remembers its unit at compile time and costs nothing at run time. Plain arithmetic results may be
 * given a unit freely; one named unit can never stand where another is wanted.
 */
type Unit<Name extends string> = number & { readonly [unit]?: Name };

/** Millimetres. */
export type Mm = Unit<'mm'>;
/** Square millimetres. */
export type Mm2 = Unit<'mm2'>;
/** Cubic millimetres. */
export type Mm3 = Unit<'mm3'>;
/** Grams; forces too are written as the mass they balance. */
export type Gram = Unit<'g'>;
/** Grams per cubic millimetre: fresh water is about 0.001. */
export type GramPerMm3 = Unit<'g/mm3'>;
/** Grams per square millimetre. */
export type GramPerMm2 = Unit<'g/mm2'>;
/** Gram millimetres: moments and energies, divided by the acceleration of free fall. */
export type GramMm = Unit<'g mm'>;
/** Radians. */
export type Radian = Unit<'rad'>;
/** Degrees Celsius. */
export type Celsius = Unit<'degC'>;
/** Salinity in grams of salt per kilogram of water. */
export type GramPerKg = Unit<'g/kg'>;
/** Seconds. */
export type Second = Unit<'s'>;
/** Millimetres a second. */
export type MmPerS = Unit<'mm/s'>;
/** Square millimetres a second: kinematic viscosity. */
export type Mm2PerS = Unit<'mm2/s'>;
