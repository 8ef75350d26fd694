import { equation, mechanics } from './equation.ts';

export const partMoment = equation({
  id: 'part-moment',
  name: 'Moment of a part',
  words: 'What it weighs, times where it stands: what hangs counts at its eye.',
  gives: { symbol: 'M', unit: 'g mm', means: 'moment of the part about the nose tip' },
  formula: 'm * x',
  uses: {
    m: { unit: 'g', means: 'mass of the part' },
    x: { unit: 'mm', means: 'place of its own middle: x, y or z in turn' },
  },
  source: mechanics('moments; a hanging weight pulls where it hangs'),
  code: 'sim/mass/ledger.ts, writeLedger; sim/hydro/body.ts, totalsOf',
});

export const massTotal = equation({
  id: 'mass-total',
  name: 'All that weighs',
  words: 'The masses of all parts, one after the other.',
  gives: { symbol: 'm', unit: 'g', means: 'mass of everything' },
  formula: 'sum(m_i)',
  uses: { m_i: { unit: 'g', means: 'mass of each part', list: true } },
  source: mechanics('a sum'),
  code: 'sim/hydro/body.ts, totalsOf',
});

export const momentTotal = equation({
  id: 'moment-total',
  name: 'All moments',
  words: 'The moments of all parts, one after the other.',
  gives: { symbol: 'M', unit: 'g mm', means: 'moment of everything' },
  formula: 'sum(M_i)',
  uses: { M_i: { unit: 'g mm', means: 'moment of each part', list: true } },
  source: mechanics('a sum'),
  code: 'sim/hydro/body.ts, totalsOf',
});

export const gravityCentre = equation({
  id: 'gravity-centre',
  name: 'Centre of gravity G: the point where all the weight may be thought to pull',
  words: 'The moments, shared by the mass.',
  gives: { symbol: 'G', unit: 'mm', means: 'place of G: x, y or z in turn' },
  formula: 'M / m',
  uses: {
    M: { unit: 'g mm', means: 'moment of everything' },
    m: { unit: 'g', means: 'mass of everything' },
  },
  source: mechanics('centre of a set of weights'),
  code: 'sim/mass/ledger.ts, writeLedger; sim/hydro/body.ts, totalsOf',
});

export const countsFor = equation({
  id: 'counts-for',
  name: 'What a part counts for in water',
  words: 'Its mass, less the water it stands in place of, less the wood it stands in place of.',
  gives: { symbol: 'w', unit: 'g', means: 'what it takes from the reserve; a minus gives' },
  formula: 'm - rho * v_out - rho_w * v_in',
  uses: {
    m: { unit: 'g', means: 'mass of the part' },
    rho: { unit: 'g/mm^3', means: 'density of the water' },
    v_out: { unit: 'mm^3', means: 'what of it is in the water, outside the wood' },
    rho_w: { unit: 'g/mm^3', means: 'density of the wood' },
    v_in: { unit: 'mm^3', means: 'what of it is in the wood; soaked in takes no room' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/hydro/float.ts, floatBody; sim/mass/ledger.ts, woodLine',
});

export const partShare = equation({
  id: 'part-share',
  name: 'Share of its weight that a part counts for',
  words: 'What it counts for, over what it weighs.',
  gives: { symbol: 'k', unit: '1', means: 'share of its weight' },
  formula: 'w / m',
  uses: {
    w: { unit: 'g', means: 'what the part counts for' },
    m: { unit: 'g', means: 'mass of the part' },
  },
  source: mechanics('a ratio'),
  code: 'sim/hydro/float.ts, floatBody',
});

export const netTotal = equation({
  id: 'net-total',
  name: 'Net weight, everything under water',
  words: 'What all parts count for, one after the other.',
  gives: { symbol: 'w', unit: 'g', means: 'net weight: a minus floats' },
  formula: 'sum(w_i)',
  uses: { w_i: { unit: 'g', means: 'what each part counts for', list: true } },
  source: mechanics('a sum'),
  code: 'sim/hydro/float.ts, floatBody',
});

export const leadShare = equation({
  id: 'lead-share',
  name: 'Share that lead counts for in this wood',
  words: 'A gram of lead brings in a gram and takes out the wood that was there.',
  gives: { symbol: 'k', unit: '1', means: 'share of its weight' },
  formula: '(rho_l - rho_w) / rho_l',
  uses: {
    rho_l: { unit: 'g/mm^3', means: 'density of the lead' },
    rho_w: { unit: 'g/mm^3', means: 'density of the wood' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/mass/ledger.ts, woodLine',
});

export const hungShare = equation({
  id: 'hung-share',
  name: 'Share that something hung in the water counts for',
  words: 'The water takes its own density off.',
  gives: { symbol: 'k', unit: '1', means: 'share of its weight' },
  formula: '(rho_h - rho) / rho_h',
  uses: {
    rho_h: { unit: 'g/mm^3', means: 'density of what hangs' },
    rho: { unit: 'g/mm^3', means: 'density of the water' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/hydro/body.ts, totalsOf',
});

export const reserve = equation({
  id: 'reserve',
  name: 'Reserve: what it could still carry before it goes under',
  words: 'The water that everything together can push away, less what everything weighs.',
  gives: { symbol: 'r', unit: 'g', means: 'reserve; a minus sinks' },
  formula: 'rho * V_all - m',
  uses: {
    rho: { unit: 'g/mm^3', means: 'density of the water' },
    V_all: { unit: 'mm^3', means: 'volume of all that can be under water' },
    m: { unit: 'g', means: 'mass of everything' },
  },
  source: mechanics('Archimedes'),
  code: 'sim/hydro/float.ts, floatBody',
});

export const BALANCE_EQUATIONS = [
  partMoment,
  massTotal,
  momentTotal,
  gravityCentre,
  countsFor,
  partShare,
  netTotal,
  leadShare,
  hungShare,
  reserve,
] as const;
