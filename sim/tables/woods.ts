import type { Cited, Spread } from '../sources/cite.ts';
import type { GramPerMm3 } from '../units/brand.ts';
import { gramPerMm3FromKgPerM3, shareFromPercent } from '../units/convert.ts';

/** A wood by the name makers use. density: at 12 % moisture, with one standard deviation to either side. */
export interface WoodSpecies {
  readonly name: string;
  readonly botanical: string;
  readonly density: Spread<GramPerMm3>;
  /** What is printed: specific gravity (oven-dry mass, volume at 12 % moisture), or the density itself. */
  readonly cited: Cited<number>;
}

/** Standard deviation of density within one species, as a share of its mean; a blank is worth weighing. */
export const WOOD_VARIATION: Cited<number> = {
  value: shareFromPercent(10),
  source: 'wood-handbook',
  where: 'chapter 4, density within a species, coefficient of variation',
  asPrinted: '10 %',
};

/** The handbook's table of American woods prints no botanical names; they are as usual for the common name. */
export const WOODS: readonly WoodSpecies[] = [
  fromGravity('basswood', 'Tilia americana', 'Basswood, American', '0.37'),
  fromGravity('western redcedar', 'Thuja plicata', 'Cedar, Western redcedar', '0.32'),
  fromGravity('northern white-cedar', 'Thuja occidentalis', 'Cedar, Northern white', '0.31'),
  fromGravity('Atlantic white-cedar', 'Chamaecyparis thyoides', 'Cedar, Atlantic white', '0.32'),
  fromGravity('eastern white pine', 'Pinus strobus', 'Pine, Eastern white', '0.35'),
  fromGravity('western white pine', 'Pinus monticola', 'Pine, Western white', '0.35'),
  fromGravity('sugar pine', 'Pinus lambertiana', 'Pine, Sugar', '0.36'),
  fromGravity('ponderosa pine', 'Pinus ponderosa', 'Pine, Ponderosa', '0.40'),
  fromGravity('Sitka spruce', 'Picea sitchensis', 'Spruce, Sitka', '0.40'),
  fromGravity('Engelmann spruce', 'Picea engelmannii', 'Spruce, Engelmann', '0.35'),
  fromGravity('white spruce', 'Picea glauca', 'Spruce, White', '0.36'),
  fromGravity('baldcypress', 'Taxodium distichum', 'Baldcypress', '0.46'),
  fromGravity('old-growth redwood', 'Sequoia sempervirens', 'Redwood, Old-growth', '0.40'),
  fromGravity('young-growth redwood', 'Sequoia sempervirens', 'Redwood, Young-growth', '0.35'),
  fromGravity('yellow-poplar', 'Liriodendron tulipifera', 'Yellow-poplar', '0.42'),
  fromGravity('quaking aspen', 'Populus tremuloides', 'Aspen, Quaking', '0.38'),
  fromGravity('black cherry', 'Prunus serotina', 'Cherry, black', '0.50'),
  fromGravity('paper birch', 'Betula papyrifera', 'Birch, Paper', '0.55'),
  fromGravity('yellow birch', 'Betula alleghaniensis', 'Birch, Yellow', '0.62'),
  fromGravity('white ash', 'Fraxinus americana', 'Ash, White', '0.60'),
  fromGravity('hard maple', 'Acer saccharum', 'Maple, Sugar', '0.63'),
  fromGravity('American beech', 'Fagus grandifolia', 'Beech, American', '0.64'),
  fromDensity('paulownia', 'Paulownia tomentosa', {
    value: 0.000317,
    source: 'akyildiz-2010',
    where: 'abstract, air-dry density',
    asPrinted: '0.317 g/cm³',
  }),
  fromDensity('obeche', 'Triplochiton scleroxylon', {
    value: 0.000385,
    source: 'wood-handbook',
    where: 'chapter 2, Obeche, air-dry wood',
    asPrinted: '385 kg/m³',
  }),
  fromDensity('jelutong', 'Dyera costulata', {
    value: 0.000465,
    source: 'wood-handbook',
    where: 'chapter 2, Jelutong, at 12 % moisture',
    asPrinted: '465 kg/m³',
  }),
];

/** The wood of that name, capitals aside; null if the table has none. */
export function woodNamed(name: string): WoodSpecies | null {
  const wanted = name.trim().toLowerCase();
  return WOODS.find((wood) => wood.name.toLowerCase() === wanted) ?? null;
}

/** All names of the table, from light to heavy, for a list of choices. */
export function woodNames(): readonly string[] {
  return [...WOODS].sort((a, b) => a.density.usual - b.density.usual).map((wood) => wood.name);
}

/**
 * A row of the handbook's table 5-3a. Density at 12 % moisture from specific gravity G at 12 %:
 *
 *   rho = 1000 kg/m^3 · G · (1 + 12/100)
 *
 * Wood handbook (2010), chapter 4, density from specific gravity and moisture content.
 */
function fromGravity(name: string, botanical: string, row: string, asPrinted: string): WoodSpecies {
  const value = Number(asPrinted);
  const where = `table 5-3a, ${row}, specific gravity at 12 % moisture`;
  const density = gramPerMm3FromKgPerM3(1000 * value * 1.12);
  return {
    name,
    botanical,
    density: withVariation(density),
    cited: { value, source: 'wood-handbook', where, asPrinted },
  };
}

function fromDensity(name: string, botanical: string, cited: Cited<GramPerMm3>): WoodSpecies {
  return { name, botanical, density: withVariation(cited.value), cited };
}

function withVariation(usual: GramPerMm3): Spread<GramPerMm3> {
  const deviation = usual * WOOD_VARIATION.value;
  return { low: usual - deviation, usual, high: usual + deviation };
}
