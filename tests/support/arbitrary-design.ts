import fc from 'fast-check';
import type {
  BodyEntry,
  CoatEntry,
  DesignFile,
  HangerEntry,
  HoleEntry,
  JointEntry,
  LeadEntry,
  Num,
  SetupEntry,
  SideEntry,
  TargetEntry,
  WaterEntry,
} from '../../sim/design/file.ts';

/** Sizes that everything else on a random bait is measured by. */
interface Size {
  readonly length: number;
  readonly height: number;
  readonly width: number;
}

const LEADS: readonly LeadEntry[] = [
  { name: 'rod', kind: 'slug', diameter_mm: 4, density_g_cm3: 11.3 },
  { name: 'shot in epoxy', kind: 'filled', density_g_cm3: 7.3 },
];

/**
 * Random designs of 1 to 5 links whose numbers and names all pass `evaluateDesign`: flat and bevelled faces, slots,
 * hangers, hung items, holes, coats, some numbers as expressions. Parts keep to the scale of the body, but nothing
 * keeps them out of each other or inside the skin: some of these baits cannot be made.
 */
export function arbitraryDesignFile(): fc.Arbitrary<DesignFile> {
  const size: fc.Arbitrary<Size> = fc
    .record({ length: decimal(60, 300), tallness: decimal(0.15, 0.45), leanness: decimal(0.35, 1) })
    .map(({ length, tallness, leanness }) => {
      const height = rounded(length * tallness);
      return { length, height, width: rounded(Math.max(4, height * leanness)) };
    });
  return size.chain((bait) =>
    fc.integer({ min: 1, max: 5 }).chain((links) =>
      fc
        .record({
          body: body(bait),
          weights: fc.array(decimal(1, 2), { minLength: links, maxLength: links }),
          densities: fc.array(maybe(decimal(0.2, 0.8)), { minLength: links, maxLength: links }),
          joints: fc.array(joint(bait), { minLength: links - 1, maxLength: links - 1 }),
          wood: decimal(0.15, 0.9),
          coats: fc.array(coat(), { maxLength: 3 }),
          hangers: hangers(bait),
          kerf: maybe(decimal(0, 2)),
        })
        .chain(({ body, weights, densities, joints, wood, coats, hangers, kerf }) => {
          const names = weights.map((_, index) => `link ${index + 1}`);
          return fc.array(setup(bait, names, hangers), { minLength: 1, maxLength: 2 }).map(
            (setups): DesignFile => ({
              format: 'floatwright-design',
              version: 1,
              name: 'Random Reed',
              dimensions: { half_mm: 'length_mm / 2' },
              body,
              links: names.map((name, index) => ({ name, ...present('density_g_cm3', densities[index]) })),
              joints: joints.map((shape, index) => shape(cutAt(weights, index, bait.length))),
              wood: { density_g_cm3: wood },
              coats,
              hangers,
              shop: { lead: LEADS, ...present('kerf_mm', kerf) },
              setups: setups.map((one, index) => ({ ...one, name: `setup ${index + 1}` })),
            }),
          );
        }),
    ),
  );
}

function body({ length, height, width }: Size): fc.Arbitrary<BodyEntry> {
  const fullness = fc.record({ nose_fullness: decimal(0.73, 0.87), tail_fullness: decimal(0.73, 0.87) });
  const lean = fc.record({ nose_fullness: decimal(0.73, 0.87), tail_fullness: decimal(0.55, 0.87) });
  const station = fc.oneof(
    decimal(0.15, 0.8).map((share): Num => rounded(share * length)),
    decimal(0.15, 0.8).map((share): Num => `length_mm * ${share}`),
  );
  const shape = {
    back: decimal(0.35, 0.65),
    deepest: maybe(station),
    widest: maybe(station),
    above: decimal(1.6, 4),
    below: decimal(1.6, 4),
    breadth: maybe(decimal(0.3, 0.7)),
  };
  const plain = fc.record({ ...shape, outlines: fc.tuple(maybe(fullness), maybe(fullness), maybe(fullness)) });
  const stemmed = fc.record({
    ...shape,
    outlines: fc.tuple(maybe(lean), maybe(lean), maybe(lean)),
    tail: fc.record({
      z_mm: decimal(-0.1, 0.1).map((share) => rounded(share * height)),
      depth_mm: decimal(0.05, 0.4).map((share) => rounded(share * height)),
      width_mm: decimal(0.1, 0.5).map((share) => rounded(share * width)),
    }),
  });
  return fc
    .oneof(
      plain.map((one) => ({ ...one, tail: undefined })),
      stemmed,
    )
    .map(
      ({ back, deepest, widest, above, below, breadth, outlines, tail }): BodyEntry => ({
        length_mm: length,
        height_mm: height,
        width_mm: width,
        back_mm: `height_mm * ${back}`,
        ...present('deepest_x_mm', deepest),
        ...present('widest_x_mm', widest),
        ...present('back', outlines[0]),
        ...present('belly', outlines[1]),
        ...present('plan', outlines[2]),
        ...present('tail', tail),
        section: { kind: 'oval', above, below, ...present('breadth', breadth) },
      }),
    );
}

/** Everything of a joint but its place: eyes in one link, slots and pin in the other, a slot opposite each eye. */
function joint({ height }: Size): fc.Arbitrary<(x_mm: number) => JointEntry> {
  return fc
    .record({
      gap: decimal(0.5, 3),
      bevel: maybe(fc.tuple(decimal(0, 40), decimal(0, 40))),
      wire: decimal(0.8, 1.8),
      bore: decimal(1.5, 3.5),
      shank: decimal(4, 12),
      eyesIn: fc.constantFrom<SideEntry>('fore', 'aft'),
      heights: fc.constantFrom([0], [0.2, -0.2], [0.15, -0.25]),
      slack: decimal(0.2, 1.5),
    })
    .map(({ gap, bevel, wire, bore, shank, eyesIn, heights, slack }) => (x_mm: number) => {
      const loop = bore / 2 + wire;
      const slotsIn: SideEntry = eyesIn === 'fore' ? 'aft' : 'fore';
      const offset = gap / 2 + loop + slack;
      const eyes = heights.map((share) => rounded(share * height));
      return {
        x_mm,
        gap_mm: gap,
        faces: bevel === undefined ? { kind: 'flat' } : { kind: 'bevel', fore_deg: bevel[0], aft_deg: bevel[1] },
        hinge: {
          kind: 'pin',
          eyes: eyes.map((z_mm) => ({ in: eyesIn, z_mm })),
          wire_mm: wire,
          bore_mm: bore,
          shank_mm: shank,
          pin: {
            diameter_mm: rounded(bore * 0.7),
            z_mm: [rounded(-0.3 * height), rounded(0.3 * height)],
            x_mm: rounded(slotsIn === 'fore' ? x_mm - offset : x_mm + offset),
            held_by: slotsIn,
          },
        },
        slots: eyes.map((z_mm) => ({
          in: slotsIn,
          width_mm: rounded(2 * loop + slack),
          depth_mm: rounded(2 * loop + 2 * slack),
          z_mm: [rounded(z_mm - wire / 2 - 0.3), rounded(z_mm + wire / 2 + 0.3)],
        })),
      };
    });
}

function hangers({ length }: Size): fc.Arbitrary<HangerEntry[]> {
  const wire = { wire_mm: decimal(0.8, 1.8), bore_mm: decimal(1.5, 3.5), shank_mm: decimal(5, 15) };
  const along = fc.record({
    on: fc.constantFrom('belly' as const, 'belly' as const, 'back' as const),
    x_mm: decimal(0.12, 0.9).map((share) => rounded(share * length)),
    ...wire,
  });
  const atEnd = fc.record({ on: fc.constantFrom('nose' as const, 'tail' as const), z_mm: decimal(-1, 1), ...wire });
  return fc
    .array(fc.oneof({ weight: 2, arbitrary: along }, { weight: 1, arbitrary: atEnd }), { maxLength: 4 })
    .map((all) => all.map((one, index) => ({ name: `eye ${index + 1}`, ...one })));
}

function coat(): fc.Arbitrary<CoatEntry> {
  return fc.oneof(
    fc.record({
      name: fc.constant('film'),
      thickness_mm: decimal(0.02, 0.6),
      density_g_cm3: decimal(1, 1.5),
      covers: fc.constantFrom('all' as const, 'skin' as const),
    }),
    fc.record({ name: fc.constant('sealer'), soak_percent: decimal(0, 10) }),
    fc.record({ name: fc.constant('brushed sealer'), soak_g_m2: decimal(0, 60) }),
  );
}

function setup(
  size: Size,
  links: readonly string[],
  eyes: readonly HangerEntry[],
): fc.Arbitrary<Omit<SetupEntry, 'name'>> {
  return fc
    .record({
      water: water(),
      target: target(size),
      linkTarget: maybe(fc.tuple(fc.constantFrom(...links), target(size))),
      hooks: fc.tuple(...eyes.map(({ name }) => maybe(hook(name)))),
      holes: fc.array(hole(size), { maxLength: 6 }),
      coats: maybe(fc.array(coat(), { maxLength: 2 })),
    })
    .map(({ water, target, linkTarget, hooks, holes, coats }) => ({
      water,
      target,
      ...present('link_targets', linkTarget && Object.fromEntries([linkTarget])),
      hung: hooks.filter((one) => one !== undefined),
      holes: holes.map((one, index) => ({ ...one, name: `hole ${index + 1}` })),
      ...present('coats', coats),
    }));
}

function hook(from: string) {
  return fc.record({
    name: fc.constant(`hook of ${from}`),
    from: fc.constant(from),
    mass_g: decimal(0.3, 6),
    hang_mm: decimal(10, 45),
  });
}

function hole({ length, height }: Size): fc.Arbitrary<Omit<HoleEntry, 'name'>> {
  const share = decimal(0.1, 0.9);
  return fc
    .record({
      from: fc.constantFrom('belly' as const, 'belly' as const, 'belly' as const, 'back' as const, 'port' as const),
      share: share,
      diameter: decimal(4, 10),
      depth: decimal(0.1, 0.45),
      point: maybe(fc.constantFrom(90, 118, 135, 180)),
      lead: maybe(fc.tuple(fc.constantFrom(...LEADS.map(({ name }) => name)), decimal(0.2, 6))),
      done: maybe(fc.boolean()),
    })
    .map(({ from, share, diameter, depth, point, lead, done }) => ({
      from,
      x_mm: rounded(share * length),
      diameter_mm: diameter,
      depth_mm: rounded(depth * height),
      ...present('point_deg', point),
      ...present('lead', lead && { of: lead[0], mass_g: lead[1] }),
      ...present('done', done),
    }));
}

function water(): fc.Arbitrary<WaterEntry> {
  return fc.oneof(
    fc.record({ temperature_c: decimal(0, 30), salinity_g_kg: decimal(0, 38) }),
    fc.record({ measured_g_cm3: decimal(0.99, 1.03, 4) }),
  );
}

function target({ height }: Size): fc.Arbitrary<TargetEntry> {
  return fc.oneof(
    fc.record({ proud_mm: decimal(0, 0.4).map((share) => rounded(share * height)) }),
    fc.record({ waterline_z_mm: decimal(-0.2, 0.4).map((share) => rounded(share * height)) }),
    fc.record({ reserve_g: decimal(-3, 10), trim_deg: decimal(-10, 20) }),
    fc.record({ reserve_percent: decimal(-5, 30) }),
    fc.record({ net_wet_g: decimal(-2, 5), trim_deg: decimal(-10, 20) }),
  );
}

/** Middle of the cut after the piece of this index, from the share of the length that each piece has. */
function cutAt(weights: readonly number[], index: number, length: number): number {
  const sum = (some: readonly number[]) => some.reduce((total, weight) => total + weight, 0);
  return rounded((sum(weights.slice(0, index + 1)) / sum(weights)) * length);
}

/** Numbers as a maker writes them: a few decimals, no -0. */
function decimal(low: number, high: number, digits = 2): fc.Arbitrary<number> {
  const scale = 10 ** digits;
  return fc.integer({ min: Math.round(low * scale), max: Math.round(high * scale) }).map((count) => count / scale);
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}

function maybe<Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | undefined> {
  return fc.option(value, { nil: undefined });
}

/** A field, or no field at all where there is no value. */
function present<Key extends string, Value>(key: Key, value: Value | undefined): { readonly [Name in Key]?: Value } {
  return (value === undefined ? {} : { [key]: value }) as { readonly [Name in Key]?: Value };
}
