import type { Cure } from '../../sim/ballast/advised.ts';
import type { PlacedHole } from '../../sim/mass/placed.ts';
import type { CheckedBait } from '../../sim/out/checked-bait.ts';
import { makeCheckedBait, makeFloat, makePlan } from './make-checked-bait.ts';
import { makeHole } from './make-hole.ts';

const DEGREE = Math.PI / 180;
const BAIT = makeCheckedBait();
const [HEAD, TAIL] = BAIT.links;

/** The one hole that is planned for the head. */
const HOLE = makeHole();
const SETTLED: PlacedHole = {
  name: HOLE.name,
  hole: HOLE,
  link: 0,
  mouth: [24, 0, -16],
  inward: [0, 0, 1],
  diameter: 8,
  depth: 10,
  pointDepth: 0,
  volume: 490,
  centre: [24, 0, -11],
  lead: { mass: 4, volume: 354, centre: [24, 0, -9.7], diameter: 7.8, from: 2.6, to: 10, fillsPoint: false },
  air: null,
  plug: { mass: 0.15, volume: 125, centre: [24, 0, -14] },
};

/** The plain bait with answers written down by hand: one hole planned for its head, none for its tail. */
export const PLANNED: CheckedBait = {
  ...BAIT,
  links: [
    {
      ...HEAD,
      forgiveness: {
        perMm: 0.5 * DEGREE,
        perGram: [2 * DEGREE, -3 * DEGREE],
        hung: [{ name: 'fore treble', trim: 1.5 * DEGREE, levelX: 44, levelMass: null }],
      },
    },
    TAIL,
  ],
  ballast: {
    links: [
      makePlan(0, 'head', {
        state: 'planned',
        need: { ...makePlan(0, 'head').need, net: 3.6 },
        place: [25.5, 0, -9],
        holes: [HOLE],
        lead: 4,
        leadHeight: -9,
        left: { trim: 0.4 * DEGREE, net: 0.03 },
        last: 'head, hole 1',
      }),
      makePlan(1, 'tail'),
    ],
    holes: [HOLE],
  },
  planned: { ...BAIT.planned, holes: [{ hole: SETTLED, wall: { thickness: 3.25, at: [24, 6, -12] } }] },
};

const CURES: readonly Cure[] = [
  {
    kind: 'neighbour',
    edit: { says: 'put the rest into head', sets: [{ path: 'setups.0.holes', value: [] }] },
    after: {
      link: makeFloat({ proud: 1.25, trim: 3 * DEGREE }),
      assembled: makeFloat({ proud: 2.5, netWet: -1.25 }),
      speeds: { link: [80, 95, 110], assembled: null },
      lead: 3,
      met: true,
      pin: { force: 0.4, moment: -12, curl: { yaw: 0.5, heel: -0.25 } },
    },
  },
  {
    kind: 'waterline',
    edit: { says: 'let it ride 1.5 mm lower', sets: [] },
    after: {
      link: makeFloat(),
      assembled: makeFloat({ netWet: -2 }),
      speeds: { link: null, assembled: null },
      lead: 2.5,
      met: false,
      pin: null,
    },
  },
];

/** The same where the tail cannot be ballasted, and two changes cure that. */
export const CANNOT: CheckedBait = {
  ...PLANNED,
  links: [PLANNED.links[0], { ...TAIL, cures: CURES }],
  ballast: {
    ...PLANNED.ballast,
    links: [
      PLANNED.ballast.links[0],
      makePlan(1, 'tail', {
        state: 'cannot',
        place: [61, 0, -4],
        left: null,
        why: { kind: 'outside', x: 61, from: 66, to: 104 },
      }),
    ],
  },
};
