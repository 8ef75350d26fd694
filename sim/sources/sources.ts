/** An outside source. seen: whether the document itself was open, or a copy that names it. */
export interface Source {
  readonly author: string;
  readonly title: string;
  /** null: the copy did not say, or there is no document. */
  readonly year: number | null;
  /** Publisher, volume, pages or number; how to find it. */
  readonly where: string;
  readonly seen: 'document' | 'copy' | 'nowhere';
}

/** Every outside source, once. */
export const SOURCES = {
  'tanaka-2001': {
    author: 'Tanaka, Girard, Davis, Peuto, Bignell',
    title: 'Recommended table for the density of water between 0 °C and 40 °C based on recent experimental reports',
    year: 2001,
    where: 'Metrologia 38, 301–309, doi 10.1088/0026-1394/38/4/3',
    seen: 'copy',
  },
  'unesco-44': {
    author: 'Fofonoff, Millard',
    title: 'Algorithms for computation of fundamental properties of seawater',
    year: 1983,
    where: 'UNESCO Technical Papers in Marine Science 44',
    seen: 'document',
  },
  'teos-10-start': {
    author: 'McDougall, Barker',
    title: 'Getting started with TEOS-10 and the Gibbs Seawater (GSW) Oceanographic Toolbox',
    year: 2011,
    where: 'SCOR/IAPSO WG127, ISBN 978-0-646-55621-5; the toolbox itself: TEOS-10/GSW-C',
    seen: 'copy',
  },
  'iapws-sr6': {
    author: 'IAPWS',
    title: 'Supplementary release on properties of liquid water at 0.1 MPa',
    year: 2011,
    where: 'SR6-08(2011)',
    seen: 'copy',
  },
  'wood-handbook': {
    author: 'Forest Products Laboratory',
    title: 'Wood handbook: wood as an engineering material',
    year: 2010,
    where: 'General Technical Report FPL-GTR-190, USDA Forest Service',
    seen: 'copy',
  },
  'akyildiz-2010': {
    author: 'Akyildiz, Kol',
    title: 'Some technological properties and uses of paulownia (Paulownia tomentosa Steud.) wood',
    year: 2010,
    where: 'Journal of Environmental Biology 31, 351–355',
    seen: 'document',
  },
  'larsen-2015': {
    author: 'Larsen',
    title: 'Wood density calculation',
    year: 2015,
    where: 'worked example to the Wood handbook, chapter 4',
    seen: 'copy',
  },
  'alden-1995': {
    author: 'Alden',
    title: 'Hardwoods of North America',
    year: 1995,
    where: 'General Technical Report FPL-GTR-83, USDA Forest Service',
    seen: 'copy',
  },
  'chudnoff-obeche': {
    author: 'Forest Products Laboratory (Chudnoff)',
    title: 'Wood technical fact sheet: Triplochiton scleroxylon',
    year: null,
    where: 'USDA Forest Service, fpl.fs.fed.us, TechSheets/Chudnoff',
    seen: 'document',
  },
  'frim-jelutong': {
    author: 'Forest Research Institute Malaysia',
    title: 'Properties and uses: jelutong',
    year: null,
    where: 'info.frim.gov.my, woodid',
    seen: 'document',
  },
  callister: {
    author: 'Callister',
    title: 'Materials science and engineering: an introduction',
    year: null,
    where: 'appendix B, properties of selected engineering materials',
    seen: 'copy',
  },
  'crc-80': {
    author: 'Lide (ed.)',
    title: 'CRC handbook of chemistry and physics, 80th edition',
    year: 1999,
    where: 'CRC Press',
    seen: 'copy',
  },
  gere: {
    author: 'Gere',
    title: 'Mechanics of materials, 5th edition',
    year: null,
    where: 'tables of material properties',
    seen: 'copy',
  },
  'brown-2003': {
    author: 'Brown, Lawler',
    title: 'Sphere drag and settling velocity revisited',
    year: 2003,
    where: 'Journal of Environmental Engineering 129, equation 19',
    seen: 'copy',
  },
  'white-viscous': {
    author: 'White',
    title: 'Viscous fluid flow',
    year: null,
    where: 'cylinder across the flow, 1 < Re < 2·10⁵',
    seen: 'copy',
  },
  'holzer-2008': {
    author: 'Hölzer, Sommerfeld',
    title: 'New simple correlation formula for the drag coefficient of non-spherical particles',
    year: 2008,
    where: 'Powder Technology 184',
    seen: 'copy',
  },
  'munk-1924': {
    author: 'Munk',
    title: 'The aerodynamic forces on airship hulls',
    year: 1924,
    where: 'NACA technical report 184',
    seen: 'copy',
  },
  'gpsa-13': {
    author: 'Gas Processors Suppliers Association',
    title: 'Engineering data book, 13th edition',
    year: null,
    where: 'example 7-1',
    seen: 'copy',
  },
  'rushton-1996': {
    author: 'Rushton, Ward, Holdich',
    title: 'Solid-liquid filtration and separation technology',
    year: 1996,
    where: 'worked examples of settling',
    seen: 'copy',
  },
  mechanics: {
    author: 'Textbook mechanics',
    title: 'Statics and hydrostatics common to all textbooks, derived here; no document was followed',
    year: null,
    where: 'sim/equations, with tests that hold them to the code',
    seen: 'nowhere',
  },
  'common-practice': {
    author: 'Common practice',
    title: 'What makers of baits go by; no document. Your own scale and calipers know better',
    year: null,
    where: 'none',
    seen: 'nowhere',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
