import { describe, expect, test } from 'vitest';
import type { DesignFile, FinEntry } from '../../../../sim/design/file.ts';
import type { Outcome } from '../../../../sim/flow/outcome.ts';
import type { Hardware, PlacedFin } from '../../../../sim/mass/placed.ts';
import { measureReach } from '../../../../sim/mesh/measure.ts';
import { linkSolids } from '../../../../sim/out/solids.ts';
import { wetAt } from '../../../../sim/out/sums/wet-at.ts';
import { createPipeline } from '../../../../sim/pipeline.ts';
import { changed, goodOf } from '../../../support/change-file.ts';
import { makeDesignFile } from '../../../support/make-design.ts';
import { openEdgesOf, readStl, volumeOf } from '../../../support/read-stl.ts';
import { type AllAnswers, answersOf, outcomesOf } from '../../../support/worked-bait.ts';

/** One piece of bare wood: an ellipsoid of semi-axes 60, 10, 18, or with a back that runs level from 40 to 80. */
const ROUND = makeDesignFile({ pieces: 1, coats: [] });
const LEVEL = makeDesignFile({ pieces: 1, coats: [], body: { deepest_x_mm: [40, 80] } });
const LEVEL_UNDRILLED = { ...LEVEL, setups: LEVEL.setups.map((setup) => ({ ...setup, holes: [] })) };
/** Its belly eye stands on 8 mm of wire, 18 mm under the middle of the body. */
const ROUND_ON_STALK: DesignFile = {
  ...ROUND,
  hangers: ROUND.hangers?.map((hanger) => (hanger.name === 'belly, fore' ? { ...hanger, stand_mm: 10 } : hanger)),
};
const JOINTED = makeDesignFile({ coats: [] });

/** 20 mm long and 10 mm over the level back, 2 mm thick. */
const PLATE: FinEntry = {
  name: 'keel board',
  on: 'back',
  edge_mm: [
    [50, 28],
    [70, 28],
  ],
  thickness_mm: 2,
  density_g_cm3: 1.2,
};

function withFins(file: DesignFile, ...fins: readonly Partial<FinEntry>[]): DesignFile {
  return { ...file, fins: fins.map((fin, i) => ({ ...PLATE, name: `fin ${i + 1}`, ...fin })) };
}

function piecesOf(answers: AllAnswers): readonly PlacedFin[] {
  return answers.bait.hardware.fins;
}

function volumeOn(file: DesignFile, fin: Partial<FinEntry> = {}): number {
  return piecesOf(answersOf(withFins(file, fin))).reduce((sum, piece) => sum + piece.outsideVolume, 0);
}

/** Area under the back of the round body from one distance to another of its middle: a quarter ellipse's integral. */
function underBack(from: number, to: number): number {
  const upTo = (u: number) => {
    const t = u / 60;
    return (18 * 60 * (t * Math.sqrt(1 - t * t) + Math.asin(t))) / 2;
  };
  return upTo(to) - upTo(from);
}

describe('a fin', () => {
  test('on a level back is a box: area times thickness, its middle half way up', () => {
    const [piece] = piecesOf(answersOf(withFins(LEVEL, {})));
    expect(piece.outsideVolume).toBeCloseTo(20 * 10 * 2, 6);
    expect(piece.outsideCentre).toEqual([expect.closeTo(60, 9), expect.closeTo(0, 12), expect.closeTo(23, 6)]);
  });

  test('on a round back leaves out what the back bulges into it', () => {
    const wanted = 2 * (20 * 28 - underBack(-10, 10));
    expect(Math.abs(volumeOn(ROUND) - wanted) / wanted).toBeLessThan(1e-4);
    const long = {
      edge_mm: [
        [0, 28],
        [120, 28],
      ],
    } as const;
    const whole = 2 * (120 * 28 - (Math.PI / 2) * 60 * 18);
    expect(Math.abs(volumeOn(ROUND, long) - whole) / whole).toBeLessThan(1e-4);
  });

  test('is the same whether its edge starts on the skin, in the wood or above it, and drawn from either end', () => {
    const edges = [
      [
        [50, 18],
        [50, 28],
        [70, 28],
        [70, 18],
      ],
      [
        [50, 5],
        [50, 28],
        [70, 28],
        [70, -3],
      ],
      [
        [70, 28],
        [50, 28],
      ],
    ] as const;
    for (const edge_mm of edges) expect(volumeOn(LEVEL, { edge_mm })).toBeCloseTo(400, 6);
  });

  test('may be raked over the back, and ends where its edge comes down to the skin', () => {
    // a parallelogram 10 high on a foot of 10: the overhang counts whole
    const raked: FinEntry['edge_mm'] = [
      [45, 18],
      [60, 28],
      [70, 28],
      [55, 18],
    ];
    expect(volumeOn(LEVEL, { edge_mm: raked })).toBeCloseTo(200, 5);
    // a triangle whose sides go on into the wood: 10 high over a foot of 10
    const peaked: FinEntry['edge_mm'] = [
      [50, 8],
      [60, 28],
      [70, 8],
    ];
    expect(volumeOn(LEVEL, { edge_mm: peaked })).toBeCloseTo(100, 5);
  });

  test('whose edge dips into the back stands there as two plates', () => {
    const edge_mm: FinEntry['edge_mm'] = [
      [45, 28],
      [50, 28],
      [60, 8],
      [70, 28],
      [75, 28],
    ];
    // 5 by 10 and half of 5 by 10, twice
    expect(volumeOn(LEVEL, { edge_mm })).toBeCloseTo(2 * 2 * 75, 5);
  });

  test('behind the tail runs from top to bottom and is closed by it', () => {
    // a stem 8 mm deep, its corners all but square
    const tail = { depth_mm: 8, width_mm: 4, round_mm: 0.1 };
    const stemmed = makeDesignFile({ pieces: 1, coats: [], body: { tail } });
    const edge_mm: FinEntry['edge_mm'] = [
      [120, 4],
      [140, 14],
      [140, -14],
      [120, -4],
    ];
    const wanted = (2 * 20 * (8 + 28)) / 2;
    const [piece] = piecesOf(answersOf(withFins(stemmed, { on: 'tail', edge_mm, tab_mm: 6 })));
    // what the corners lack of square is fin
    expect(piece.outsideVolume).toBeGreaterThan(wanted);
    expect(piece.outsideVolume).toBeLessThan(wanted + 2 * 8 * 0.1);
    expect(piece.tab?.volume).toBeCloseTo(8 * 6 * 2, 6);
    expect(piece.tab?.centre).toEqual([expect.closeTo(117, 1), 0, expect.closeTo(0, 6)]);
    const beyond: FinEntry['edge_mm'] = [
      [125, 4],
      [125, -4],
    ];
    expect(Math.abs(volumeOn(stemmed, { on: 'tail', edge_mm: beyond }) - 2 * 5 * 8)).toBeLessThan(2 * 8 * 0.1);
  });

  test('weighs its plate and its tab, and takes the tab’s wood away', () => {
    const plain = answersOf(LEVEL);
    const finned = answersOf(withFins(LEVEL, { tab_mm: 4 }));
    const [piece] = piecesOf(finned);
    expect(piece.tab?.volume).toBeCloseTo(20 * 4 * 2, 6);
    const [line] = finned.links[0].ledger.lines.filter(({ kind }) => kind === 'fin');
    expect(line.mass).toBeCloseTo(560e-3 * 1.2, 6);
    // 400 mm³ with its middle at 23 and 160 at 16
    expect(line.at[2]).toBeCloseTo(21, 5);
    const woodOf = ({ links }: AllAnswers) => links[0].ledger.lines[0].mass;
    expect(woodOf(plain) - woodOf(finned)).toBeCloseTo(160e-3 * 0.6, 6);
    const apart = finned.bait.assembled.netWet - plain.bait.assembled.netWet;
    expect(apart).toBeCloseTo(560e-3 * 1.2 - 160e-3 * 0.6 - 400 * finned.bait.water.density, 5);
  });

  test('is bare of coats: coats weigh as without it, and it adds its own volume and mass alone', () => {
    const coats: DesignFile['coats'] = [
      { name: 'primer', thickness_mm: 0.1, density_g_cm3: 1.4 },
      { name: 'varnish', thickness_mm: 0.3, density_g_cm3: 1.1, covers: 'skin' },
    ];
    const [plain, finned] = [[], [{}]].map((fins) => answersOf(withFins({ ...LEVEL, coats }, ...fins)));
    const coatsOf = ({ links }: AllAnswers) => links[0].ledger.lines.filter(({ kind }) => kind === 'coat');
    expect(coatsOf(finned)).toEqual(coatsOf(plain));
    expect(coatsOf(finned)).toHaveLength(2);
    expect(finned.links[0].ledger.mass - plain.links[0].ledger.mass).toBeCloseTo(400e-3 * 1.2, 6);
    // all under water: the plate from the bare skin up, its foot of 20 by 2 by 0.4 in the coats as well
    const apart = finned.bait.assembled.netWet - plain.bait.assembled.netWet;
    expect(apart).toBeCloseTo(400e-3 * 1.2 - 400 * finned.bait.water.density, 5);
  });

  test('buoys by what of it is under water: none, half, all', () => {
    const [{ mesh }] = piecesOf(answersOf(withFins(LEVEL, {})));
    const wet = (offset: number) => wetAt({ meshes: [mesh], outside: [], hung: [] }, [0, 0, 1], offset);
    expect(wet(17).volume).toBe(0);
    expect(wet(23).volume).toBeCloseTo(200, 6);
    expect(wet(23).centre[2]).toBeCloseTo(20.5, 6);
    // a waterplane 20 by 2: 20·2³/12 leaning across, 2·20³/12 along
    expect(wet(23).across).toBeCloseTo((20 * 8) / 12, 6);
    expect(wet(23).along).toBeCloseTo((2 * 8000) / 12, 5);
    expect(wet(40).volume).toBeCloseTo(400, 6);
  });

  test('that stays dry floats the bait just as a fitting of its mass and place', () => {
    const finned = answersOf(withFins(LEVEL, {})).bait.assembled;
    const fitted = answersOf({
      ...LEVEL,
      fittings: [{ name: 'weight', x_mm: 60, z_mm: 23, mass_g: 0.48 }],
    }).bait.assembled;
    for (const name of ['draft', 'proud', 'trim', 'gm', 'gmLong'] as const) {
      expect(finned[name]).toBeCloseTo(fitted[name] as number, 6);
    }
  });

  test('that is all under water trims the bait just as a fitting of its mass, volume and place', () => {
    const low: Partial<FinEntry> = {
      on: 'belly',
      density_g_cm3: 8,
      edge_mm: [
        [70, -24],
        [80, -24],
      ],
    };
    const finned = answersOf(withFins(LEVEL, low));
    const [{ outsideVolume, outsideCentre }] = piecesOf(finned);
    expect(outsideVolume).toBeCloseTo(10 * 6 * 2, 6);
    const fitted = answersOf({
      ...LEVEL,
      fittings: [{ name: 'weight', x_mm: 75, z_mm: outsideCentre[2], mass_g: 0.96, outside_mm3: 120 }],
    });
    const [a, b] = [finned.bait.assembled, fitted.bait.assembled];
    for (const name of ['draft', 'proud', 'trim', 'gm', 'gmLong', 'netWet'] as const) {
      expect(a[name]).toBeCloseTo(b[name] as number, 6);
    }
    expect(a.trim).not.toBeCloseTo(answersOf(LEVEL).bait.assembled.trim, 3);
    expect(Math.abs(a.heel)).toBeLessThan(1e-9);
  });

  test('of heavy plate at the tail trims by its moment over weight times GM', () => {
    // a body and a load that are the same to both sides of its middle: it floats level, about the middle
    const even: DesignFile = {
      ...ROUND,
      hangers: [],
      setups: ROUND.setups.map((s) => ({ ...s, hung: [], holes: [] })),
    };
    const keel: FinEntry['edge_mm'] = [
      [40, -24],
      [80, -24],
    ];
    const fins = (...tail: readonly Partial<FinEntry>[]) =>
      answersOf(withFins(even, { on: 'belly', edge_mm: keel, density_g_cm3: 10 }, ...tail));
    const plain = fins().bait.assembled;
    expect(Math.abs(plain.trim)).toBeLessThan(1e-6);
    const edge_mm: FinEntry['edge_mm'] = [
      [110, -9],
      [118, -14],
      [118, -3],
    ];
    const { bait } = fins({ on: 'tail', thickness_mm: 0.2, density_g_cm3: 8, edge_mm });
    const piece = bait.hardware.fins[1];
    const down = piece.outsideVolume * (8e-3 - bait.water.density);
    const lever = piece.outsideCentre[0] - 60;
    // trim after loading: w d / (Δ GM_L), from memory; under water all of it, so the weight counts less its buoyancy
    const wanted = (-down * lever) / (bait.assembled.mass * bait.assembled.gmLong);
    expect(bait.assembled.trim / wanted).toBeCloseTo(1, 2);
    expect(bait.assembled.trim).toBeLessThan(-0.001);
  });

  test('does not count for what stands proud', () => {
    const { bait, links } = answersOf(withFins(LEVEL, { density_g_cm3: 0.1 }));
    const tall = bait.assembled;
    const plain = answersOf(LEVEL).bait.assembled;
    expect((tall.proud as number) - (plain.proud as number)).toBeLessThan(0);
    const [low, high] = measureReach(links[0].wetted.mesh.positions, tall.up);
    expect((tall.proud as number) + (tall.draft as number)).toBeCloseTo(high - low, 9);
  });

  test('across a joint is cut to either side of the gap, each piece on its own link', () => {
    const across: Partial<FinEntry> = {
      edge_mm: [
        [45, 28],
        [75, 28],
      ],
      tab_mm: 2,
    };
    const pieces = piecesOf(answersOf(withFins(JOINTED, across)));
    const [gap] = JOINTED.joints.map(({ gap_mm }) => Number(gap_mm));
    expect(pieces.map(({ link }) => link)).toEqual([0, 1]);
    const inGap = volumeOn(ROUND, {
      edge_mm: [
        [60 - gap / 2, 28],
        [60 + gap / 2, 28],
      ],
    });
    const sum = pieces.reduce((total, { outsideVolume }) => total + outsideVolume, 0);
    // the two outlines have their stations elsewhere near the gap
    expect(sum).toBeCloseTo(volumeOn(ROUND, across) - inGap, 3);
    const tabs = pieces.map(({ tab }) => tab?.volume ?? 0);
    expect(tabs[0] + tabs[1]).toBeCloseTo((30 - gap) * 2 * 2, 6);
  });

  test('is in the exported solid of its link, as a closed shell that adds its volume', () => {
    const { bait, links } = answersOf(
      withFins(JOINTED, {
        edge_mm: [
          [30, 28],
          [45, 26],
        ],
      }),
    );
    const checked = {
      design: goodOf(outcomesOf(JOINTED, {}).bait.design),
      setup: bait.setup,
      hardware: bait.hardware,
      links: bait.links.map((spec, i) => ({ spec, ...links[i] })),
    } as unknown as Parameters<typeof linkSolids>[0];
    const solids = linkSolids(checked).map(({ name, bytes }) => ({ name, triangles: readStl(bytes) }));
    const volumes = Object.fromEntries(solids.map(({ name, triangles }) => [name, volumeOf(triangles)]));
    expect(solids.flatMap(({ triangles }) => openEdgesOf(triangles))).toEqual([]);
    const [piece] = bait.hardware.fins;
    const net = volumes['1-head.stl'] - (volumes['1-head.flooded.stl'] ?? 0);
    expect(net - links[0].wetted.volume - piece.outsideVolume).toBeCloseTo(0, 2);
  });
});

describe('a fin that cannot stand', () => {
  const refused: readonly (readonly [string, DesignFile, readonly Partial<FinEntry>[], string, string])[] = [
    [
      'ends off the body',
      ROUND,
      [
        {
          edge_mm: [
            [50, 28],
            [130, 10],
          ],
        },
      ],
      'fins/off-the-body',
      'fins.0.edge_mm',
    ],
    [
      'crosses itself',
      ROUND,
      [
        {
          edge_mm: [
            [50, 25],
            [70, 35],
            [70, 25],
            [50, 35],
          ],
        },
      ],
      'fins/edge-crosses',
      'fins.0.edge_mm',
    ],
    [
      'lies in the wood',
      ROUND,
      [
        {
          edge_mm: [
            [50, 5],
            [70, 5],
          ],
        },
      ],
      'fins/inside-the-body',
      'fins.0.edge_mm',
    ],
    ['is on the other side', ROUND, [{ on: 'belly' }], 'fins/wrong-side', 'fins.0.edge_mm'],
    [
      'stands in a gap',
      JOINTED,
      [
        {
          edge_mm: [
            [59.9, 28],
            [60.1, 28],
          ],
        },
      ],
      'hardware/in-a-gap',
      'fins.0.edge_mm',
    ],
    [
      'hangs over a joint',
      JOINTED,
      [
        {
          edge_mm: [
            [40, 17],
            [55, 40],
            [70, 40],
            [50, 17],
          ],
        },
      ],
      'fins/loose-piece',
      'fins.0.edge_mm',
    ],
    [
      'is a tail over a joint',
      JOINTED,
      [
        {
          on: 'tail',
          edge_mm: [
            [50, 28],
            [130, 20],
            [110, -10],
          ],
        },
      ],
      'fins/over-a-joint',
      'fins.0.edge_mm',
    ],
    [
      'has a tab through the body',
      ROUND,
      [
        {
          edge_mm: [
            [8, 28],
            [20, 28],
          ],
          tab_mm: 20,
        },
      ],
      'fins/tab-too-deep',
      'fins.0.tab_mm',
    ],
    [
      'has its tab in a shank',
      ROUND,
      [
        {
          on: 'belly',
          edge_mm: [
            [30, -26],
            [40, -26],
          ],
          tab_mm: 4,
        },
      ],
      'hardware/parts-meet',
      'fins.0.tab_mm',
    ],
    [
      'has the loop of a hanger in its plate',
      ROUND,
      [
        {
          on: 'belly',
          edge_mm: [
            [30, -26],
            [40, -26],
          ],
        },
      ],
      'hardware/parts-meet',
      'hangers.1',
    ],
    [
      'has the shank of a hanger in its plate, the loop clear over it',
      ROUND_ON_STALK,
      [
        {
          on: 'belly',
          edge_mm: [
            [30, -20],
            [40, -20],
          ],
        },
      ],
      'hardware/parts-meet',
      'hangers.1',
    ],
    [
      'has its tab in that of another',
      LEVEL_UNDRILLED,
      [
        { tab_mm: 20 },
        {
          on: 'belly',
          edge_mm: [
            [55, -24],
            [65, -24],
          ],
          tab_mm: 17,
        },
      ],
      'hardware/parts-meet',
      'fins.1.tab_mm',
    ],
    [
      'stands in another',
      ROUND,
      [
        {},
        {
          edge_mm: [
            [65, 25],
            [80, 25],
          ],
        },
      ],
      'fins/meet',
      'fins.1.edge_mm',
    ],
  ];
  test.each(refused)('because it %s is refused at its place', (_, file, fins, code, path) => {
    const { sound } = outcomesOf(withFins(file, ...fins), {}).bait;
    // a tab in a shank has the shank's loop in its plate as well
    expect(sound).toMatchObject({
      status: 'failed',
      issues: expect.arrayContaining([expect.objectContaining({ code, path })]),
    });
  });

  test('because of a loop is let stand where the loop just clears it, ahead or beside', () => {
    const { eyes } = answersOf(ROUND).bait.hardware;
    const { loop, bore, wire } = eyes.find(({ kind, inward }) => kind === 'hanger' && inward[2] === 1) ?? eyes[0];
    const radius = bore / 2 + wire;
    const soundWith = (gap: number) => {
      const from = loop[0] + radius + gap;
      const fin: Partial<FinEntry> = {
        on: 'belly',
        edge_mm: [
          [from, -26],
          [from + 10, -26],
        ],
      };
      return outcomesOf(withFins(ROUND, fin), {}).bait.sound.status;
    };
    expect(soundWith(0.01)).toBe('ok');
    expect(soundWith(-0.01)).toBe('failed');
  });
});

test('a design without fins and one with an empty list float alike, to the last digit', () => {
  const [empty, without] = [{ ...JOINTED, fins: [] }, JOINTED].map((file) => {
    const { bait, links } = answersOf(file);
    // the design says what was written, which is not the same
    return { bait: { ...bait, design: null }, links };
  });
  expect(empty).toEqual(without);
});

test('a hole that is moved leaves fins and their meshes as they were', () => {
  const pipeline = createPipeline();
  const finsOf = (file: DesignFile) => {
    const steps = [...pipeline.steps(file, { setup: null, detail: 'drag' })];
    const step = steps.find(({ name }) => name === 'hardware');
    return goodOf(step?.outcome as Outcome<Hardware>).fins;
  };
  const file = withFins(LEVEL, {});
  const [before] = finsOf(file);
  const [after] = finsOf(changed(file, 'setups.0.holes.0.depth_mm', 9) as DesignFile);
  expect(after).toBe(before);
});
