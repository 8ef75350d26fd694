import type { Hole, LeadStock } from '../../sim/design/design.ts';

/** Rod that holes of tests are filled with. */
const ROD: LeadStock = { name: '8 mm rod', kind: 'slug', diameter: 7.8, density: 0.0113 };

/** A flat hole of 8 mm from the belly with 4 g of rod in it. Fields given replace these. */
export function makeHole(changes: Partial<Hole> = {}): Hole {
  return {
    name: 'head, hole 1',
    from: 'belly',
    x: 24,
    across: 0,
    diameter: 8,
    depth: 10,
    point: Math.PI,
    lead: { stock: ROD, mass: 4 },
    air: null,
    plugDensity: 0.0012,
    done: false,
    ...changes,
  };
}
