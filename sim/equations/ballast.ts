import { equation, mechanics } from './equation.ts';

export const ballastNet = equation({
  id: 'ballast-net',
  name: 'What a filled hole brings, against plain wood',
  words: 'Lead heavier than the wood it replaces, and a plug heavier than the wood it replaces.',
  gives: { symbol: 'n', unit: 'g', means: 'mass the hole brings' },
  formula: '(rho_l - rho_w) * v_l + (rho_p - rho_w) * v_p',
  uses: {
    rho_l: { unit: 'g/mm^3', means: 'density of the lead' },
    rho_w: { unit: 'g/mm^3', means: 'density of the wood' },
    v_l: { unit: 'mm^3', means: 'volume of the lead' },
    rho_p: { unit: 'g/mm^3', means: 'density of the plug' },
    v_p: { unit: 'mm^3', means: 'volume of the plug' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/mass/hole.ts, placeHole; sim/mass/ledger.ts, woodLine',
});

export const chamberNet = equation({
  id: 'chamber-net',
  name: 'What a sealed air chamber brings, against plain wood',
  words: 'The plug over the wood it replaces, less the wood that stood where there is air now.',
  gives: { symbol: 'n', unit: 'g', means: 'mass the hole brings; less than nothing, since it lifts' },
  formula: '(rho_p - rho_w) * v_p - rho_w * v_a',
  uses: {
    rho_p: { unit: 'g/mm^3', means: 'density of the plug' },
    rho_w: { unit: 'g/mm^3', means: 'density of the wood' },
    v_p: { unit: 'mm^3', means: 'volume of the plug' },
    v_a: { unit: 'mm^3', means: 'volume of the air' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/mass/hole.ts, placeHole; sim/mass/ledger.ts, woodLine',
});

export const ballastSum = equation({
  id: 'ballast-sum',
  name: 'What all filled holes bring',
  words: 'One hole after the other.',
  gives: { symbol: 'n', unit: 'g', means: 'mass all holes bring' },
  formula: 'sum(n_i)',
  uses: { n_i: { unit: 'g', means: 'mass each hole brings', list: true } },
  source: mechanics('a sum'),
  code: 'sim/mass/ledger.ts, writeLedger',
});

export const lineMass = equation({
  id: 'line-mass',
  name: 'Mass that would ride at the wanted waterline',
  words: 'Density of the water, times what is under that waterline.',
  gives: { symbol: 'm_a', unit: 'g', means: 'mass wanted' },
  formula: 'rho * V_a',
  uses: {
    rho: { unit: 'g/mm^3', means: 'density of the water' },
    V_a: { unit: 'mm^3', means: 'volume under the wanted waterline, hooks too' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/ballast/target.ts, aimOf; sim/hydro/submerge.ts, submerge',
});

export const netMass = equation({
  id: 'net-mass',
  name: 'Mass that would have the wanted net weight',
  words: 'What all of it pushes away, and the net weight wanted on top.',
  gives: { symbol: 'm_a', unit: 'g', means: 'mass wanted' },
  formula: 'rho * V_all + w_a',
  uses: {
    rho: { unit: 'g/mm^3', means: 'density of the water' },
    V_all: { unit: 'mm^3', means: 'volume of all that can be under water' },
    w_a: { unit: 'g', means: 'net weight wanted: a minus floats' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/ballast/target.ts, netOf; sim/hydro/float.ts, floatBody',
});

export const restMass = equation({
  id: 'rest-mass',
  name: 'Mass without ballast: its holes still plain wood',
  words: 'All that weighs, less what the filled holes bring.',
  gives: { symbol: 'm_r', unit: 'g', means: 'mass without ballast' },
  formula: 'm - n',
  uses: { m: { unit: 'g', means: 'mass of everything' }, n: { unit: 'g', means: 'mass all holes bring' } },
  source: mechanics('a difference'),
  code: 'sim/mass/ledger.ts, writeLedger',
});

export const ballastWanted = equation({
  id: 'ballast-wanted',
  name: 'Ballast wanted, against plain wood',
  words: 'Mass wanted, less mass without ballast.',
  gives: { symbol: 'n_a', unit: 'g', means: 'mass the holes should bring' },
  formula: 'm_a - m_r',
  uses: { m_a: { unit: 'g', means: 'mass wanted' }, m_r: { unit: 'g', means: 'mass without ballast' } },
  source: mechanics('a difference'),
  code: 'sim/ballast/target.ts, checkTarget',
});

export const leadMore = equation({
  id: 'lead-more',
  name: 'Lead to add; a minus takes away',
  words: 'What is wanted less what is there, over the share that lead counts for.',
  gives: { symbol: 'm_l', unit: 'g', means: 'lead to add' },
  formula: '(n_a - n) / k',
  uses: {
    n_a: { unit: 'g', means: 'mass the holes should bring' },
    n: { unit: 'g', means: 'mass the holes bring' },
    k: { unit: '1', means: 'share that lead counts for in this wood' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/mass/ledger.ts, woodLine',
});

export const restStation = equation({
  id: 'rest-station',
  name: 'Where the mass without ballast stands, along the level',
  words: 'Moments: all of it less the ballast, shared by the mass that is left.',
  gives: { symbol: 'x_r', unit: 'mm', means: 'station of the mass without ballast' },
  formula: '(m * x_G - n * x_n) / m_r',
  uses: {
    m: { unit: 'g', means: 'mass of everything' },
    x_G: { unit: 'mm', means: 'station of G' },
    n: { unit: 'g', means: 'mass the holes bring' },
    x_n: { unit: 'mm', means: 'station where they bring it' },
    m_r: { unit: 'g', means: 'mass without ballast' },
  },
  source: mechanics('moments'),
  code: 'sim/mass/ledger.ts, writeLedger',
});

export const ballastStation = equation({
  id: 'ballast-station',
  name: 'Where all ballast together should stand: so that G comes to stand plumb under or over B',
  words: 'Moments about the nose: what the water lifts, less the rest, shared by the ballast.',
  gives: { symbol: 'x_a', unit: 'mm', means: 'station of the ballast' },
  formula: '(m_a * x_B - m_r * x_r) / n_a',
  uses: {
    m_a: { unit: 'g', means: 'mass wanted' },
    x_B: { unit: 'mm', means: 'station of B at the wanted waterline and trim' },
    m_r: { unit: 'g', means: 'mass without ballast' },
    x_r: { unit: 'mm', means: 'station of the mass without ballast' },
    n_a: { unit: 'g', means: 'mass the ballast should bring' },
  },
  source: mechanics('moments'),
  code: 'sim/hydro/equilibrium.ts, restFrom; sim/hydro/float.ts, under',
});

export const BALLAST_EQUATIONS = [
  ballastNet,
  chamberNet,
  ballastSum,
  lineMass,
  netMass,
  restMass,
  ballastWanted,
  leadMore,
  restStation,
  ballastStation,
] as const;
