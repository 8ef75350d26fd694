import { describe, expect, test } from 'vitest';
import type { Obstacle } from '../../../../sim/ballast/plan.ts';
import type { DesignFile, HoleEntry, SetupEntry } from '../../../../sim/design/file.ts';
import { length, subtract } from '../../../../sim/numerics/vec3.ts';
import { radianFromDegree } from '../../../../sim/units/convert.ts';
import { type DesignChanges, makeDesignFile } from '../../../support/make-design.ts';
import { plannedOf, withHoles } from '../../../support/planned-bait.ts';
import { answersOf, soundIssuesOf } from '../../../support/worked-bait.ts';

const DRILLS = [4, 5, 6, 8].map((diameter_mm) => ({ name: `${diameter_mm} mm`, diameter_mm }));
const LEAD = makeDesignFile().shop?.lead ?? [];
const WALL = 3;

interface Wish extends Omit<DesignChanges, 'setups'> {
  readonly setup?: Partial<SetupEntry>;
}

/** The plain bait with no ballast as yet, and drills to make some. */
function bareBait({ setup = {}, ...changes }: Wish = {}): DesignFile {
  const plain = makeDesignFile({ shop: { drills: DRILLS, lead: LEAD }, ...changes });
  return { ...plain, setups: [{ ...plain.setups[0], holes: [], ...setup }] };
}

/** A block of wood in the shape of an ellipsoid that stands by a weight at its keel; even from end to end. */
const EVEN: Wish = {
  pieces: 1,
  hangers: [],
  fittings: [{ name: 'keel', x_mm: 60, z_mm: -16, mass_g: 10, outside_mm3: 0 }],
};

/** The same with something heavy near the nose. */
const UNEVEN: Wish = {
  ...EVEN,
  fittings: [...(EVEN.fittings ?? []), { name: 'eyes', x_mm: 20, z_mm: 0, mass_g: 2, outside_mm3: 0 }],
};

function hung(net_wet_g: number): Partial<SetupEntry> {
  return { hung: [], target: { net_wet_g } };
}

/** How a bait floats as it is. */
function floatOf(file: DesignFile) {
  return answersOf(file, { detail: 'drag' }).bait.assembled;
}

function planOf(file: DesignFile) {
  return plannedOf(file).links;
}

function obstacle<Kind extends Obstacle['kind']>(why: Obstacle | null, kind: Kind) {
  expect(why?.kind).toBe(kind);
  return why as Extract<Obstacle, { kind: Kind }>;
}

function holeEntry(changes: Partial<HoleEntry> = {}): HoleEntry {
  const lead = { of: 'shot in epoxy', mass_g: 1 };
  return { name: 'hole', from: 'belly', x_mm: 80, diameter_mm: 6, depth_mm: 9, point_deg: 180, lead, ...changes };
}

describe('a link that cannot have the ballast that it lacks', () => {
  test('is too heavy by what it weighs in water over its aim, holes that may still change left out', () => {
    const { netWet } = floatOf(bareBait({ ...EVEN, setup: hung(0) }));
    const holes = [holeEntry({ x_mm: 50 })];
    const [plan] = planOf(bareBait({ ...EVEN, setup: { ...hung(netWet - 1.7), holes } }));
    expect(plan).toMatchObject({ state: 'cannot', holes: [], lead: 0, left: null, last: null });
    expect(obstacle(plan.why, 'too-heavy').over).toBeCloseTo(1.7, 6);
  });

  test('is out of level with no weight left when next to nothing may be added to put that right', () => {
    const bare = bareBait({ ...UNEVEN, setup: hung(0), wood: { density_g_cm3: 0.85 } });
    const { netWet, mass, gravityCentre: G } = floatOf(bare);
    const [plan] = planOf({ ...bare, setups: [{ ...bare.setups[0], ...hung(netWet + 0.15) }] });
    expect(plan.state).toBe('cannot');
    const { net, moment } = obstacle(plan.why, 'no-weight-left');
    expect(net).toBeCloseTo(0.15, 6);
    // held level and so deep, it is pulled nose-down by what lies ahead of the middle: the body is even about x = 60
    expect(moment).toBeCloseTo(mass * (60 - G[0]), 1);
    expect(moment).toBeGreaterThan(40);
  });

  test.each([
    ['drills', { lead: LEAD }],
    ['lead', { drills: DRILLS }],
    ['drills that take the lead', { drills: DRILLS.slice(0, 3), lead: LEAD.slice(0, 1) }],
    ['drills that take the lead', { drills: [{ name: '9 mm', diameter_mm: 9 }], lead: LEAD.slice(0, 1) }],
  ])('finds no %s in the shop', (lacks, shop) => {
    const plans = planOf(bareBait({ shop }));
    for (const { state, why } of plans) {
      expect(state).toBe('cannot');
      expect(obstacle(why, 'empty-shop').lacks).toBe(lacks);
    }
  });

  test('would want it outside of where holes fit, and is told where that is and where they do', () => {
    // of three links the tail is light, and a hook hangs from it
    const file = bareBait({ pieces: 3 });
    const { links, parts } = plannedOf(file);
    const { need, why, place } = links[2];
    const { x, from, to } = obstacle(why, 'outside');
    expect(x).toBeCloseTo(need.about[0] + need.moment.along / need.net, 9);
    expect(x).toBe(place?.[0]);
    expect(x).toBeGreaterThan(to);
    const { span } = parts.links[2].spec;
    expect(from).toBeGreaterThan(span[0] + WALL);
    // the hindmost place can be drilled
    const thin = holeEntry({
      name: 'thin',
      x_mm: to,
      diameter_mm: 4,
      depth_mm: 5,
      lead: { of: 'shot in epoxy', mass_g: 0.2 },
    });
    expect(soundIssuesOf({ ...file, setups: [{ ...file.setups[0], holes: [thin] }] })).toEqual([]);
  });

  test('has no room for so much, and is told how much there is room for', () => {
    const [plan] = planOf(
      bareBait({
        ...EVEN,
        setup: hung(0),
        wood: { density_g_cm3: 0.3 },
        shop: { drills: DRILLS.slice(0, 1), lead: LEAD },
      }),
    );
    const { wanted, most } = obstacle(plan.why, 'no-room');
    expect(wanted).toBeCloseTo(plan.need.net, 12);
    expect(most).toBeGreaterThan(3);
    expect(most).toBeLessThan(wanted);
  });

  test('has no room at all where every wall would be too thin', () => {
    const [plan] = planOf(bareBait({ ...EVEN, setup: hung(0), shop: { drills: DRILLS, lead: LEAD, wall_mm: 8.1 } }));
    expect(obstacle(plan.why, 'no-room').most).toBe(0);
  });

  test('has room, and yet none that makes it stand', () => {
    // as much as 1.5 g may be added to a tall light body, whose lead would have to weigh much more to right it
    const shop = { drills: DRILLS.slice(3), lead: LEAD.slice(0, 1) };
    const file = bareBait({ pieces: 1, hangers: [], shop, setup: { hung: [], target: { net_wet_g: 0 } } });
    const { netWet, gm } = floatOf(file);
    expect(gm).toBeGreaterThan(0);
    const [plan] = planOf({ ...file, setups: [{ ...file.setups[0], ...hung(netWet + 1.5) }] });
    expect(plan.need.stiffness.heel).toBeLessThan(0);
    expect(plan.why).toEqual({ kind: 'not-level' });
  });

  test('is not level where it hardly stands, and rows on half millimetres tip it over by more than a float test lets pass', () => {
    const planOff = (place: number) => {
      const fittings = [
        { name: 'keel', x_mm: 60, z_mm: -16, mass_g: 1, outside_mm3: 0 },
        // 6 g of ballast balance it as far off to port
        { name: 'rattle', x_mm: 60, y_mm: (6 * place) / 2, z_mm: 0, mass_g: 2, outside_mm3: 0 },
      ];
      const bare = { ...EVEN, fittings };
      const { netWet } = floatOf(bareBait({ ...bare, setup: hung(0) }));
      return plannedOf(bareBait({ ...bare, setup: hung(netWet + 6) }));
    };
    for (const place of [0, 0.5]) {
      const { links, settled } = planOff(place);
      expect([place, links[0].state, links[0].holes[0]?.across]).toEqual([place, 'planned', 0 - place]);
      expect(Math.abs(settled.floats[0].heel)).toBeLessThan(radianFromDegree(0.2));
    }
    expect(planOff(0.24).links[0]).toMatchObject({ state: 'cannot', holes: [], why: { kind: 'not-level' } });
  });
});

describe('a link that needs no ballast', () => {
  test('has enough where a tenth of a gram is all that it lacks, and is told what', () => {
    const { netWet } = floatOf(bareBait({ ...EVEN, setup: hung(0) }));
    for (const lacks of [0.09, -0.09]) {
      const [plan] = planOf(bareBait({ ...EVEN, setup: hung(netWet + lacks) }));
      expect(plan).toMatchObject({ state: 'enough', holes: [], lead: 0, why: null, last: null });
      expect(plan.left?.net).toBeCloseTo(lacks, 6);
      expect(plan.left?.trim).toBeCloseTo(0, 3);
    }
    const [more] = planOf(bareBait({ ...EVEN, setup: hung(netWet + 0.11) }));
    expect(more.state).not.toBe('enough');
  });

  test('has not enough where it lies over to one side by more than a float test lets pass', () => {
    const leaning = (y_mm: number): Wish => ({
      ...EVEN,
      fittings: [...(EVEN.fittings ?? []), { name: 'rattle', x_mm: 60, y_mm, z_mm: 0, mass_g: 2, outside_mm3: 0 }],
    });
    for (const [y, state] of [
      [0.5, 'enough'],
      [4, 'cannot'],
    ] as const) {
      const { netWet, heel } = floatOf(bareBait({ ...leaning(y), setup: hung(0) }));
      const [plan] = planOf(bareBait({ ...leaning(y), setup: hung(netWet) }));
      expect([y, heel > radianFromDegree(2)]).toEqual([y, state === 'cannot']);
      expect([y, plan.state]).toEqual([y, state]);
    }
  });

  test('loses the holes that it has, unless they are done', () => {
    const done = holeEntry({ name: 'done', x_mm: 60, lead: { of: 'shot in epoxy', mass_g: 0.4 }, done: true });
    const bare = bareBait({ ...EVEN, setup: { ...hung(0), holes: [done] } });
    const { netWet } = floatOf(bare);
    const holes = [done, holeEntry({ name: 'idle', x_mm: 40 })];
    const { plan, links } = plannedOf({ ...bare, setups: [{ ...bare.setups[0], ...hung(netWet), holes }] });
    expect(links[0].state).toBe('enough');
    expect(plan.holes.map(({ name }) => name)).toEqual(['done']);
  });
});

describe('a hole that is drilled and glued', () => {
  const done = holeEntry({ name: 'tail 1', x_mm: 84, done: true });
  const file = bareBait({ setup: { holes: [done, holeEntry({ name: 'head 1', x_mm: 40 })] } });
  const { plan, links, settled, parts } = plannedOf(file);

  test('stays, first among those of its link, while what may change is planned anew', () => {
    const names = plan.holes.map(({ name }) => name);
    expect(plan.holes.filter((hole) => hole.done).map(({ name, x }) => [name, x])).toEqual([['tail 1', 84]]);
    expect(names.indexOf('tail 1')).toBe(plan.holes.findIndex(({ x }) => x > 60));
    expect(new Set(names).size).toBe(names.length);
    expect(links[1].holes.map(({ name }) => name)).toEqual(links[1].holes.map((_, i) => `tail ${i + 2}`));
  });

  test('is paid for by those beside it: its lead and plug less its wood and sealer need not be added', () => {
    const [, without] = planOf(bareBait());
    const [hole] = settled.holes.filter((each) => each.hole.name === 'tail 1');
    const { lead, plug, volume } = hole.hole;
    // 4 % of sealer go out with the wood
    const brings = (lead?.mass ?? 0) + plug.mass - 1.04 * volume * parts.wood.density;
    expect(without.need.net - links[1].need.net).toBeCloseTo(brings, 9);
  });

  test('keeps its distance to new ones', () => {
    for (const { x, diameter } of links[1].holes) {
      expect(Math.abs(x - 84) - diameter / 2 - 3).toBeGreaterThanOrEqual((2 / 3) * WALL - 1e-9);
    }
  });
});

describe('names of planned holes', () => {
  /** A tail that cannot be ballasted, and so keeps its hole; a head that is planned. */
  const kept = (name: string) =>
    bareBait({
      pieces: 3,
      setup: {
        holes: [
          holeEntry({ name, x_mm: 103, diameter_mm: 4, depth_mm: 7, lead: { of: 'shot in epoxy', mass_g: 0.3 } }),
        ],
      },
    });

  test('count up from the nose', () => {
    const { links } = plannedOf(bareBait());
    expect(links.map(({ holes }) => holes.map(({ name }) => name))).toEqual([
      ['head 1', 'head 2'],
      ['tail 1', 'tail 2'],
    ]);
    const [first, second] = links[0].holes.map(({ x }) => x);
    expect(first).toBeLessThan(second);
  });

  test('keep clear of a hole that stays in another link', () => {
    const { links, plan } = plannedOf(kept('head 1'));
    expect(links[2].state).toBe('cannot');
    const names = plan.holes.map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(['head 1', 'head 2', 'head 3']));
    expect(new Set(names).size).toBe(names.length);
    expect(links[0].holes.map(({ name }) => name)).toContain(links[0].last);
  });

  test('are no longer than a name may be, however long the name of the link', () => {
    const links = ['h', 't'].map((letter) => ({ name: letter.repeat(60) }));
    const file = bareBait({ links });
    const { plan } = plannedOf(file);
    expect(plan.holes.length).toBeGreaterThan(2);
    expect(() => answersOf(withHoles(file, plan.holes), { detail: 'drag' })).not.toThrow();
  });
});

describe('a bait of which one link cannot be ballasted', () => {
  const own = holeEntry({
    name: 'own',
    x_mm: 103,
    diameter_mm: 4,
    depth_mm: 7,
    lead: { of: 'shot in epoxy', mass_g: 0.3 },
  });
  const { plan, links, settled } = plannedOf(bareBait({ pieces: 3, setup: { holes: [own] } }));

  test('keeps the holes of that link as they are, after the planned ones of the others', () => {
    expect(links.map(({ state }) => state)).toEqual(['planned', 'planned', 'cannot']);
    expect(plan.holes.at(-1)).toMatchObject({ name: 'own', x: 103, depth: 7, done: false });
    expect(plan.holes.slice(0, -1)).toEqual(links.flatMap(({ holes }) => holes));
  });

  test('floats with them in that link', () => {
    const last = settled.holes.at(-1)?.hole;
    expect(last).toMatchObject({ name: 'own', link: 2 });
  });
});

describe('what rounding to tenths of a gram leaves', () => {
  test.each([2, 3, 5.03, 6.41])('of all links together is within 0.06 g of %d g of reserve', (reserve_g) => {
    const { links, settled } = plannedOf(bareBait({ setup: { target: { reserve_g } } }));
    expect(links.map(({ state }) => state)).toEqual(['planned', 'planned']);
    const rest = settled.assembled.netWet + reserve_g;
    expect(Math.abs(rest)).toBeLessThan(0.06);
    expect(rest).toBeCloseTo(-sumOf(links.map(({ left }) => left?.net ?? Number.NaN)), 6);
    const { floats, target } = settled;
    // one waterline for all, near enough for a tenth of a gram
    for (const [i, { offset }] of floats.entries()) {
      expect(Math.abs((offset ?? Number.NaN) - (target.links[i].offset ?? Number.NaN))).toBeLessThan(0.3);
    }
  });

  test('tips no bait that hangs: links that leave most are planned closer', () => {
    const { links, settled } = plannedOf(bareBait({ setup: { target: { net_wet_g: 0 } } }));
    expect(links.map(({ state }) => state)).toEqual(['planned', 'planned']);
    expect(Math.abs(settled.assembled.netWet)).toBeLessThan(0.1);
    expect(Math.abs(settled.assembled.trim)).toBeLessThan((1 * Math.PI) / 180);
  });
});

describe('a bait planned to sink at a speed', () => {
  test.each([
    [1, 70],
    [1, 110],
    [2, 90],
  ] as const)('of %d links sinks at %d mm/s, level as it falls', (pieces, sink_mm_s) => {
    const { links, settled } = plannedOf(bareBait({ pieces, setup: { hung: [], target: { sink_mm_s } } }));
    const { assembledSinking: sinking, target } = settled;
    for (const { state } of links) expect(state).toBe('planned');
    // lead comes in tenths of a gram: a tenth of what these weigh in the water
    expect(Math.abs((sinking?.speed[1] ?? 0) / sink_mm_s - 1)).toBeLessThan(0.06);
    expect(Math.abs(sinking?.trim ?? 9)).toBeLessThan((1.2 * Math.PI) / 180);
    expect(target.met).toBe(true);
  });

  test('lies level as it falls and not at rest: its drag is borne where it acts', () => {
    const uneven = bareBait({ ...UNEVEN, setup: { hung: [], target: { sink_mm_s: 250 } } });
    const { links, settled } = plannedOf(uneven);
    expect(links[0].state).toBe('planned');
    expect(Math.abs(settled.assembledSinking?.trim ?? 9)).toBeLessThan((0.5 * Math.PI) / 180);
  });
});

function sumOf(parts: readonly number[]): number {
  return parts.reduce((sum, part) => sum + part, 0);
}

describe('a plan that is accepted', () => {
  const done = holeEntry({ name: 'head 1', x_mm: 24, done: true });
  const cases: readonly (readonly [string, DesignFile])[] = [
    ['of a bait that stands proud', bareBait()],
    ['of one that lies nose-down', bareBait({ setup: { target: { proud_mm: 3, trim_deg: 5 } } })],
    ['of one that hangs tail-down', bareBait({ setup: { target: { net_wet_g: 0, trim_deg: -8 } } })],
    ['of one that keeps a fifth of its weight', bareBait({ setup: { target: { reserve_percent: 20 } } })],
    ['of one that sinks, in one piece', bareBait({ pieces: 1, setup: { target: { net_wet_g: 1.2 } } })],
    ['of one that sinks at a speed', bareBait({ pieces: 1, setup: { target: { sink_mm_s: 90 } } })],
    ['beside a hole that is done', bareBait({ setup: { holes: [done] } })],
    [
      'of three links, one of which cannot be ballasted',
      bareBait({
        pieces: 3,
        setup: {
          holes: [
            holeEntry({
              name: 'own',
              x_mm: 103,
              diameter_mm: 4,
              depth_mm: 7,
              lead: { of: 'shot in epoxy', mass_g: 0.3 },
            }),
          ],
        },
      }),
    ],
    ['of a slab that is drilled from its flanks', slab()],
  ];

  test.each(cases)('%s makes the bait that it told of', (_, file) => {
    const before = answersOf(file);
    const { ballast: plan, planned } = before.bait;
    expect(plan.links.some(({ state }) => state === 'planned')).toBe(true);
    const edited = withHoles(file, plan.holes);
    expect(soundIssuesOf(edited)).toEqual([]);
    const after = answersOf(edited);
    [after.bait.assembled, ...after.links.map(({ float }) => float)].forEach((float, i) => {
      const told = i === 0 ? planned.assembled : planned.floats[i - 1];
      for (const key of ['mass', 'trim', 'heel', 'draft', 'proud', 'gm', 'gmLong', 'netWet', 'offset'] as const) {
        expect([key, float[key]]).toEqual([key, told[key] === null ? null : expect.closeTo(told[key], 8)]);
      }
      expect(length(subtract(float.up, told.up))).toBeLessThan(1e-9);
      expect(length(subtract(float.gravityCentre, told.gravityCentre))).toBeLessThan(1e-9);
    });
    expect(after.bait.target.met).toBe(planned.target.met);
    // planned once more it comes to the same
    expect(after.bait.ballast.holes.map(same)).toEqual(plan.holes.map(same));
    expect(after.bait.ballast.links.map(({ state, last }) => [state, last])).toEqual(
      plan.links.map(({ state, last }) => [state, last]),
    );
  });

  test('from the flanks is in pairs, each pair with one number and one lead', () => {
    const [{ holes }] = planOf(slab());
    expect(holes.length % 2).toBe(0);
    for (let i = 0; i < holes.length; i += 2) {
      const [starboard, port] = [holes[i], holes[i + 1]];
      expect([starboard.from, port.from]).toEqual(['starboard', 'port']);
      expect(port).toEqual({ ...starboard, from: 'port', name: `whole ${i / 2 + 1}, port` });
      expect(starboard.name).toBe(`whole ${i / 2 + 1}, starboard`);
    }
  });

  test('of a done pair counts on from its number', () => {
    const file = slab();
    const { plan } = plannedOf(file);
    const pair = plan.holes.slice(0, 2).map((hole) => ({ ...hole, done: true }));
    const again = plannedOf(withHoles(file, pair));
    const names = again.plan.holes.map(({ name }) => name);
    expect(names.slice(0, 2)).toEqual(['whole 1, starboard', 'whole 1, port']);
    expect(names.length).toBeGreaterThan(2);
    expect(new Set(names).size).toBe(names.length);
  });
});

/** A tall narrow board in one piece that is to hang low: rows along its flanks lie lower than holes that stand. */
function slab(): DesignFile {
  return bareBait({
    pieces: 1,
    hangers: [],
    body: { height_mm: 44, width_mm: 20, section: { kind: 'board', back_edge_mm: 3, belly_edge_mm: 3 } },
    wood: { density_g_cm3: 0.93 },
    shop: { drills: DRILLS.slice(1, 2), lead: LEAD.slice(1) },
    setup: { hung: [], target: { net_wet_g: 0 } },
  });
}

/** A hole without the dust of degrees turned to radians and back. */
function same({ point, ...hole }: { readonly point: number }) {
  return { ...hole, point: Number(point.toFixed(9)) };
}

describe('a planned link', () => {
  const file = bareBait();
  const { links, settled } = plannedOf(file);

  test('is told what lead it takes, and which hole to fill last: the one nearest to the centre of buoyancy', () => {
    for (const { holes, lead, last, need } of links) {
      expect(lead).toBeCloseTo(
        holes.reduce((sum, hole) => sum + (hole.lead?.mass ?? 0), 0),
        12,
      );
      const far = ({ x }: { readonly x: number }) => Math.abs(x - need.buoyancy[0]);
      const nearest = holes.toSorted((a, b) => far(a) - far(b))[0];
      expect(last).toBe(nearest.name);
    }
  });

  test('is told what rounding leaves: so it floats, to what the second order makes of it', () => {
    links.forEach(({ left, need }, i) => {
      expect(settled.floats[i].trim - (left?.trim ?? Number.NaN)).toBeCloseTo(0, 3);
      expect(Math.abs(left?.trim ?? Number.NaN)).toBeLessThan(radianFromDegree(0.3));
      expect(Math.abs(left?.net ?? Number.NaN)).toBeLessThan(0.05);
      expect(need.net).toBeGreaterThan(4);
    });
  });

  test('has lead of whole tenths of a gram at whole millimetres and half millimetres of depth', () => {
    for (const { x, depth, lead } of links.flatMap(({ holes }) => holes)) {
      expect(x).toBe(Math.round(x));
      expect(2 * depth).toBe(Math.round(2 * depth));
      expect(lead?.mass).toBe(Math.round(10 * (lead?.mass ?? 0)) / 10);
    }
  });

  test('keeps its wall round all lead', () => {
    for (const { wall } of settled.holes) expect(wall.thickness).toBeGreaterThan(WALL - 0.05);
  });

  test('off the middle by what hangs to one side has its lead off the other way, and stands', () => {
    const [leaning] = planOf(
      bareBait({
        ...EVEN,
        fittings: [...(EVEN.fittings ?? []), { name: 'rattle', x_mm: 60, y_mm: 4, z_mm: 0, mass_g: 2, outside_mm3: 0 }],
        setup: hung(0),
      }),
    );
    const { place, holes } = leaning;
    // 2 g at y = 4, balanced by the lead's net weight
    expect(place?.[1]).toBeCloseTo((-2 * 4) / leaning.need.net, 6);
    for (const { across } of holes) expect(across).toBeCloseTo(Math.round(2 * (place?.[1] ?? 0)) / 2, 12);
    expect(holes.length).toBeGreaterThan(0);
  });
});
