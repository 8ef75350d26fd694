import { equation, mechanics, type SymbolMeaning } from './equation.ts';

const cylinder = mechanics('volume of a cylinder times density');
const wire: SymbolMeaning = { unit: 'mm', means: 'thickness of the wire' };
const bore: SymbolMeaning = { unit: 'mm', means: 'inside of the loop' };
const neck: SymbolMeaning = { unit: 'mm', means: 'wire between the loop and the wood' };
const bit: SymbolMeaning = { unit: 'mm', means: 'diameter of the hole' };

export const woodOut = equation({
  id: 'wood-out',
  name: 'Wood taken out of the link',
  words: 'What holes, shanks, pin bores and tabs of fins take out, one after the other.',
  gives: { symbol: 'v_in', unit: 'mm^3', means: 'volume of wood drilled out or pushed aside' },
  formula: 'sum(v_i)',
  uses: { v_i: { unit: 'mm^3', means: 'volume of each hole, shank, bore and tab', list: true } },
  source: mechanics('a sum'),
  code: 'sim/mass/ledger.ts, woodLine',
});

export const woodMass = equation({
  id: 'wood-mass',
  name: 'The wood that is left',
  words:
    'Density of the wood, times the bare link without its slots, less what holes, shanks, pin bores and tabs take out.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the wood' },
  formula: 'rho_w * (v - v_in)',
  uses: {
    rho_w: { unit: 'g/mm^3', means: 'density of the wood' },
    v: { unit: 'mm^3', means: 'volume of the bare link without its slots' },
    v_in: { unit: 'mm^3', means: 'volume of wood drilled out or pushed aside' },
  },
  source: mechanics('mass is density times volume'),
  code: 'sim/mass/ledger.ts, woodLine',
});

export const soakShare = equation({
  id: 'soak-share',
  name: 'What soaks in, as a share of the wood',
  words: 'That share of what the wood weighs.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of what soaked in' },
  formula: 's * m_w',
  uses: { s: { unit: '1', means: 'share of the mass of the wood' }, m_w: { unit: 'g', means: 'mass of the wood' } },
  source: { source: 'common-practice', where: 'a soaked sealer goes by the weight of the wood' },
  code: 'sim/mass/ledger.ts, coatLines',
});

export const soakArea = equation({
  id: 'soak-area',
  name: 'What soaks in, by the area of bare wood',
  words: 'So much for each area, times all bare surfaces: outside, joint faces and slots.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of what soaked in' },
  formula: 'q * A_w',
  uses: {
    q: { unit: 'g/mm^2', means: 'what an area takes up (1 g/m² is 0.000001 g/mm²)' },
    A_w: { unit: 'mm^2', means: 'area of all bare wood' },
  },
  source: { source: 'common-practice', where: 'a brushed sealer goes by area' },
  code: 'sim/mass/ledger.ts, coatLines',
});

export const filmMass = equation({
  id: 'film-mass',
  name: 'A coat that stays on the outside',
  words: 'Density of the dry coat, times the volume by which it makes the link larger.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the coat' },
  formula: 'rho_c * v_c',
  uses: {
    rho_c: { unit: 'g/mm^3', means: 'density of the dry coat' },
    v_c: { unit: 'mm^3', means: 'volume the coat adds' },
  },
  source: mechanics('mass is density times volume'),
  code: 'sim/mass/ledger.ts, coatLines; sim/mesh/wetted.ts, wetLink',
});

export const finMass = equation({
  id: 'fin-mass',
  name: 'A fin, from its size',
  words: 'Density of the plate, times what stands outside the skin and what is let into the wood.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the fin' },
  formula: 'rho_f * (v_f + v_t)',
  uses: {
    rho_f: { unit: 'g/mm^3', means: 'density of the plate' },
    v_f: { unit: 'mm^3', means: 'volume of the plate outside the skin' },
    v_t: { unit: 'mm^3', means: 'volume of its tab in the wood' },
  },
  source: mechanics('mass is density times volume'),
  code: 'sim/mass/ledger.ts, finLine; sim/mass/fin.ts, placeFins',
});

export const eyeMass = equation({
  id: 'eye-mass',
  name: 'A screw eye, from its wire',
  words: 'Section of the wire, times its length: once round the loop along the middle of the wire, neck and shank.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the eye' },
  formula: 'rho_m * pi / 4 * w^2 * (pi * (b + w) + n + s)',
  uses: {
    rho_m: { unit: 'g/mm^3', means: 'density of the metal' },
    w: wire,
    b: bore,
    n: neck,
    s: { unit: 'mm', means: 'shank in the wood' },
  },
  source: mechanics('a ring of round wire holds its section times its middle circle'),
  code: 'sim/mass/place.ts, placeEye',
});

export const eyeOutside = equation({
  id: 'eye-outside',
  name: 'What of a screw eye stands in the water',
  words: 'The wire of loop and neck; the shank is in the wood.',
  gives: { symbol: 'v_out', unit: 'mm^3', means: 'volume in the water' },
  formula: 'pi / 4 * w^2 * (pi * (b + w) + n)',
  uses: { w: wire, b: bore, n: neck },
  source: mechanics('a ring of round wire holds its section times its middle circle'),
  code: 'sim/mass/place.ts, placeEye',
});

export const roundVolume = equation({
  id: 'round-volume',
  name: 'Volume of round stock: a shank, or a run of a pin',
  words: 'Section times length.',
  gives: { symbol: 'v', unit: 'mm^3', means: 'volume' },
  formula: 'pi / 4 * d^2 * l',
  uses: { d: { unit: 'mm', means: 'diameter' }, l: { unit: 'mm', means: 'length' } },
  source: mechanics('volume of a cylinder'),
  code: 'sim/mass/place.ts, placeEye; sim/mass/ledger.ts, pinLine',
});

export const pinMass = equation({
  id: 'pin-mass',
  name: 'A hinge pin',
  words: 'Density times section times length.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the pin' },
  formula: 'rho_m * pi / 4 * d^2 * l',
  uses: {
    rho_m: { unit: 'g/mm^3', means: 'density of the pin' },
    d: { unit: 'mm', means: 'diameter of the pin' },
    l: { unit: 'mm', means: 'length of the pin' },
  },
  source: cylinder,
  code: 'sim/mass/ledger.ts, pinLine',
});

export const slugMass = equation({
  id: 'slug-mass',
  name: 'Lead in a straight hole: a slug, or poured on a flat floor',
  words: 'Density of the stock, times its section, times how high it stands.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the lead' },
  formula: 'rho_l * pi / 4 * d^2 * h',
  uses: {
    rho_l: { unit: 'g/mm^3', means: 'density of the lead or what stands for it' },
    d: { unit: 'mm', means: 'diameter of the slug, or of the hole when it is filled' },
    h: { unit: 'mm', means: 'height of the lead in the hole' },
  },
  source: cylinder,
  code: 'sim/mass/hole.ts, placeLead',
});

export const pointHeight = equation({
  id: 'point-height',
  name: 'How much deeper the point of the drill goes',
  words: 'Half the diameter, over the tangent of half the angle of the point.',
  gives: { symbol: 'p', unit: 'mm', means: 'height of the drill point' },
  formula: 'd / 2 / tan(alpha / 2)',
  uses: { d: bit, alpha: { unit: 'deg', means: 'full angle of the drill point' } },
  source: mechanics('a right-angled triangle'),
  code: 'sim/mass/hole.ts, pointHeight',
});

export const pointVolume = equation({
  id: 'point-volume',
  name: 'Volume of the cone under the drill point',
  words: 'A third of the cylinder of that height.',
  gives: { symbol: 'v_p', unit: 'mm^3', means: 'volume of the cone' },
  formula: 'pi / 12 * d^2 * p',
  uses: { d: bit, p: { unit: 'mm', means: 'height of the drill point' } },
  source: mechanics('volume of a cone'),
  code: 'sim/mass/hole.ts, placeHole',
});

export const pouredMass = equation({
  id: 'poured-mass',
  name: 'Lead poured into a hole with a drill point',
  words: 'Density of what is poured, times the cone and the straight part above it.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the lead' },
  formula: 'rho_l * (v_p + pi / 4 * d^2 * h)',
  uses: {
    rho_l: { unit: 'g/mm^3', means: 'density of what is poured' },
    v_p: { unit: 'mm^3', means: 'volume of the cone' },
    d: bit,
    h: { unit: 'mm', means: 'height of the lead over the shoulder of the hole' },
  },
  source: mechanics('a cone and a cylinder'),
  code: 'sim/mass/hole.ts, placeLead',
});

export const pouredPoint = equation({
  id: 'poured-point',
  name: 'Lead that does not fill the drill point',
  words: 'The cone shrinks with the cube of its height.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the lead' },
  formula: 'rho_l * v_p * (h / p)^3',
  uses: {
    rho_l: { unit: 'g/mm^3', means: 'density of what is poured' },
    v_p: { unit: 'mm^3', means: 'volume of the whole cone' },
    h: { unit: 'mm', means: 'height of the lead in the cone' },
    p: { unit: 'mm', means: 'height of the drill point' },
  },
  source: mechanics('similar cones'),
  code: 'sim/mass/hole.ts, placeLead',
});

export const plugMass = equation({
  id: 'plug-mass',
  name: 'The plug over the lead, or over sealed air',
  words: 'Density of the plug, times what lead or air leaves of the hole, up to the bare skin.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of the plug' },
  formula: 'rho_p * (v_h - v_l)',
  uses: {
    rho_p: { unit: 'g/mm^3', means: 'density of the plug' },
    v_h: { unit: 'mm^3', means: 'volume of the hole, followed over the round of the skin' },
    v_l: { unit: 'mm^3', means: 'volume of the lead or the air' },
  },
  source: mechanics('mass is density times volume'),
  code: 'sim/mass/hole.ts, placeHole',
});

export const massVolume = equation({
  id: 'mass-volume',
  name: 'Volume of something weighed',
  words: 'Its mass over its density.',
  gives: { symbol: 'v', unit: 'mm^3', means: 'volume' },
  formula: 'm / rho_i',
  uses: { m: { unit: 'g', means: 'mass' }, rho_i: { unit: 'g/mm^3', means: 'density of what it is made of' } },
  source: mechanics('mass is density times volume'),
  code: 'sim/mass/place.ts, placeHardware; sim/mass/hole.ts, placeLead',
});

export const PART_EQUATIONS = [
  woodOut,
  woodMass,
  soakShare,
  soakArea,
  filmMass,
  finMass,
  eyeMass,
  eyeOutside,
  roundVolume,
  pinMass,
  slugMass,
  pointHeight,
  pointVolume,
  pouredMass,
  pouredPoint,
  plugMass,
  massVolume,
] as const;
