import { equation, mechanics, type SymbolMeaning } from './equation.ts';

const mass: SymbolMeaning = { unit: 'g', means: 'mass of everything' };
const water: SymbolMeaning = { unit: 'g/mm^3', means: 'density of the water' };
const upward = (way: string): SymbolMeaning => ({ unit: '1', means: `how far up points ${way}, -1 to 1` });
const pointAt = (point: string, axis: string): SymbolMeaning => ({ unit: 'mm', means: `${axis} of ${point}` });
const lowest: SymbolMeaning = { unit: 'mm', means: 'height of the lowest point of the body, from the nose tip' };

export const floatingVolume = equation({
  id: 'floating-volume',
  name: 'Volume under water when it floats',
  words: 'It sinks in until it has pushed away its own weight of water.',
  gives: { symbol: 'V', unit: 'mm^3', means: 'volume under water, hooks too' },
  formula: 'm / rho',
  uses: { m: mass, rho: water },
  source: mechanics('Archimedes'),
  code: 'sim/hydro/draft.ts, draftAt; sim/hydro/equilibrium.ts, restFrom',
});

export const hungWet = equation({
  id: 'hung-wet',
  name: 'What of a hanging part is under water',
  words: 'Its volume, by the length of it that is under.',
  gives: { symbol: 'v', unit: 'mm^3', means: 'volume under water' },
  formula: 'v_h * l / h',
  uses: {
    v_h: { unit: 'mm^3', means: 'volume of all of it' },
    l: { unit: 'mm', means: 'length of it that is under water' },
    h: { unit: 'mm', means: 'length from its eye to its lowest point' },
  },
  source: mechanics('spread evenly over its length'),
  code: 'sim/hydro/potential.ts, potentialAt',
});

export const waterMoment = equation({
  id: 'water-moment',
  name: 'Moment of what is under water',
  words: 'Its volume, times where its middle is: what hangs lifts at its eye.',
  gives: { symbol: 'N', unit: 'mm^4', means: 'moment of the volume about the nose tip' },
  formula: 'v * x',
  uses: {
    v: { unit: 'mm^3', means: 'volume under water' },
    x: { unit: 'mm', means: 'place of its own middle: x, y or z in turn' },
  },
  source: mechanics('moments'),
  code: 'sim/hydro/potential.ts, potentialAt; sim/hydro/body.ts, totalsOf',
});

export const waterTotal = equation({
  id: 'water-total',
  name: 'All that is under water',
  words: 'The volumes, one after the other.',
  gives: { symbol: 'V', unit: 'mm^3', means: 'volume under water, hooks too' },
  formula: 'sum(v_i)',
  uses: { v_i: { unit: 'mm^3', means: 'volume of each part under water', list: true } },
  source: mechanics('a sum'),
  code: 'sim/hydro/potential.ts, potentialAt; sim/hydro/body.ts, totalsOf',
});

export const waterMomentTotal = equation({
  id: 'water-moment-total',
  name: 'All moments of what is under water',
  words: 'The moments, one after the other.',
  gives: { symbol: 'N', unit: 'mm^4', means: 'moment of all that is under water' },
  formula: 'sum(N_i)',
  uses: { N_i: { unit: 'mm^4', means: 'moment of each part', list: true } },
  source: mechanics('a sum'),
  code: 'sim/hydro/potential.ts, potentialAt; sim/hydro/body.ts, totalsOf',
});

export const buoyancyCentre = equation({
  id: 'buoyancy-centre',
  name: 'Centre of buoyancy B: the middle of all that is under water, where the water may be thought to lift',
  words: 'The moments, shared by the volume.',
  gives: { symbol: 'B', unit: 'mm', means: 'place of B: x, y or z in turn' },
  formula: 'N / V',
  uses: {
    N: { unit: 'mm^4', means: 'moment of all that is under water' },
    V: { unit: 'mm^3', means: 'volume under water' },
  },
  source: mechanics('middle of a volume'),
  code: 'sim/hydro/potential.ts, potentialAt; sim/hydro/body.ts, totalsOf',
});

const heightUses = (point: string) => ({
  u_x: upward('aft'),
  u_y: upward('to starboard'),
  u_z: upward('along z'),
  x: pointAt(point, 'x'),
  y: pointAt(point, 'y'),
  z: pointAt(point, 'z'),
  k: lowest,
});

export const KB = equation({
  id: 'KB',
  name: 'KB: height of B over K, the lowest point of the body as it floats',
  words: 'Height of B, less height of K.',
  gives: { symbol: 'KB', unit: 'mm', means: 'height of B over K' },
  formula: 'u_x * x + u_y * y + u_z * z - k',
  uses: heightUses('B'),
  source: mechanics('height along up'),
  code: 'sim/hydro/potential.ts, potentialAt',
});

export const KG = equation({
  id: 'KG',
  name: 'KG: height of G over K',
  words: 'Height of G, less height of K.',
  gives: { symbol: 'KG', unit: 'mm', means: 'height of G over K' },
  formula: 'u_x * x + u_y * y + u_z * z - k',
  uses: heightUses('G'),
  source: mechanics('height along up'),
  code: 'sim/hydro/potential.ts, potentialAt',
});

export const BM = equation({
  id: 'BM',
  name: 'BM: how far the metacentre M lies over B; M is the point round which B swings as it leans a little',
  words: 'How wide the waterplane is, over how much is under water: a wide flat bait has a long BM.',
  gives: { symbol: 'BM', unit: 'mm', means: 'height of M over B' },
  formula: 'I / V',
  uses: {
    I: { unit: 'mm^4', means: 'second moment of the waterplane about its middle: each bit by its distance squared' },
    V: { unit: 'mm^3', means: 'volume under water' },
  },
  source: mechanics('the metacentre of a floating body'),
  code: 'sim/hydro/submerge.ts, submerge; sim/hydro/potential.ts, potentialAt',
});

export const GM = equation({
  id: 'GM',
  name: 'GM: height of M over G, the metacentric height; it stands up when this is over nothing',
  words: 'Up from K to B, on to M, back down to G.',
  gives: { symbol: 'GM', unit: 'mm', means: 'metacentric height' },
  formula: 'KB + BM - KG',
  uses: {
    KB: { unit: 'mm', means: 'height of B over K' },
    BM: { unit: 'mm', means: 'height of M over B' },
    KG: { unit: 'mm', means: 'height of G over K' },
  },
  source: mechanics('the metacentre of a floating body'),
  code: 'sim/hydro/float.ts, afloat',
});

export const leastGM = equation({
  id: 'least-GM',
  name: 'Least GM: whichever way it tips most easily',
  words: 'Of leaning across and along, and all ways between, the weakest.',
  gives: { symbol: 'GM_min', unit: 'mm', means: 'least metacentric height' },
  formula: '(GM + GM_l) / 2 - sqrt(((GM - GM_l) / 2)^2 + (J / V)^2)',
  uses: {
    GM: { unit: 'mm', means: 'metacentric height, leaning across' },
    GM_l: { unit: 'mm', means: 'metacentric height, leaning along' },
    J: { unit: 'mm^4', means: 'mixed moment of the waterplane: 0 when it has two equal sides' },
    V: { unit: 'mm^3', means: 'volume under water' },
  },
  source: mechanics('principal values of a 2 by 2 form'),
  code: 'sim/hydro/equilibrium.ts, principalAxes',
});

export const BG = equation({
  id: 'BG',
  name: 'BG: distance from G to B; under water there is no waterplane, and this alone rights it',
  words: 'Pythagoras over the three differences.',
  gives: { symbol: 'BG', unit: 'mm', means: 'distance from G to B' },
  formula: 'sqrt((x_B - x_G)^2 + (y_B - y_G)^2 + (z_B - z_G)^2)',
  uses: {
    x_B: pointAt('B', 'x'),
    x_G: pointAt('G', 'x'),
    y_B: pointAt('B', 'y'),
    y_G: pointAt('G', 'y'),
    z_B: pointAt('B', 'z'),
    z_G: pointAt('G', 'z'),
  },
  source: mechanics('Pythagoras'),
  code: 'sim/hydro/float.ts, under',
});

export const restTrim = equation({
  id: 'rest-trim',
  name: 'Trim at rest, nose-down +: G and B come to stand on one plumb line',
  words: 'Tangent of the trim: how far B is aft of G, by how far it is over it, as drawn.',
  gives: { symbol: 'trim', unit: 'deg', means: 'nose-down trim' },
  formula: 'atan((x_B - x_G) / (z_B - z_G) * cos(heel))',
  uses: {
    x_B: pointAt('B', 'x'),
    x_G: pointAt('G', 'x'),
    z_B: pointAt('B', 'z'),
    z_G: pointAt('G', 'z'),
    heel: { unit: 'deg', means: 'heel, starboard side down' },
  },
  source: mechanics('two equal and opposite forces rest in one line'),
  code: 'sim/hydro/float.ts, under; sim/hydro/equilibrium.ts, restFrom; sim/frames.ts, trimOf',
});

export const restHeel = equation({
  id: 'rest-heel',
  name: 'Heel at rest, starboard side down +',
  words: 'Tangent of the heel: how far B is to port of G, by how far it is over it, as drawn.',
  gives: { symbol: 'heel', unit: 'deg', means: 'heel, starboard side down' },
  formula: 'atan((y_G - y_B) / (z_B - z_G))',
  uses: {
    y_B: pointAt('B', 'y'),
    y_G: pointAt('G', 'y'),
    z_B: pointAt('B', 'z'),
    z_G: pointAt('G', 'z'),
  },
  source: mechanics('two equal and opposite forces rest in one line'),
  code: 'sim/hydro/float.ts, under; sim/hydro/equilibrium.ts, restFrom; sim/frames.ts, heelOf',
});

export const tipAngle = equation({
  id: 'tip-angle',
  name: 'How far a weight off the middle tips it, near enough while the angle is small',
  words: 'Tangent of the angle: the weight in water times its lever, over all the mass times what rights it.',
  gives: { symbol: 'tip', unit: 'deg', means: 'what it tips: nose-down +' },
  formula: 'atan(w * d / (m * R))',
  uses: {
    w: { unit: 'g', means: 'what the part counts for in water' },
    d: { unit: 'mm', means: 'how far its eye is ahead of the middle it tips about' },
    m: mass,
    R: { unit: 'mm', means: 'what rights it: GM along when it floats, BG under water' },
  },
  source: mechanics('moment over stiffness'),
  code: 'sim/hydro/potential.ts, potentialAt: slope over curvature',
});

export const FLOATING_EQUATIONS = [
  floatingVolume,
  hungWet,
  waterMoment,
  waterTotal,
  waterMomentTotal,
  buoyancyCentre,
  KB,
  KG,
  BM,
  GM,
  leastGM,
  BG,
  restTrim,
  restHeel,
  tipAngle,
] as const;
