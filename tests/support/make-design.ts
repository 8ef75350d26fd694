import type { BodyEntry, DesignFile, JointEntry } from '../../sim/design/file.ts';

/** What a test wants different from the plain bait. pieces: how many links, 2 unless told otherwise. */
export type DesignChanges = Partial<Omit<DesignFile, 'body'>> & {
  readonly pieces?: 1 | 2 | 3;
  readonly body?: Partial<BodyEntry>;
};

/** Where the plain bait is sawn, for each number of pieces. */
const CUTS_MM = { 1: [], 2: [60], 3: [50, 84] } as const;
const PIECES = ['head', 'middle', 'tail'] as const;

/**
 * A plain invented bait: an exact ellipsoid of semi-axes 60, 10 and 18 mm before it is sawn, flat faces, eyes in slots,
 * two hooks, two ballast holes, everything clear of everything else. About 45 cm³ and 40 g, so it floats. Fields
 * given replace the plain ones whole; those of the body one by one.
 */
export function makeDesignFile({ pieces = 2, body = {}, ...changes }: DesignChanges = {}): DesignFile {
  return {
    format: 'floatwright-design',
    version: 1,
    name: 'Boathouse Plain',
    body: {
      length_mm: 120,
      height_mm: 36,
      width_mm: 20,
      deepest_x_mm: 60,
      widest_x_mm: 60,
      section: { kind: 'oval', above: 2, below: 2 },
      ...body,
    },
    links: linkNames(pieces).map((name) => ({ name })),
    joints: CUTS_MM[pieces].map(plainJoint),
    wood: { density_g_cm3: 0.6 },
    coats: [
      { name: 'sealer', soak_percent: 4 },
      { name: 'epoxy', thickness_mm: 0.2, density_g_cm3: 1.15, covers: 'skin' },
    ],
    hangers: [
      { name: 'line tie', on: 'nose', z_mm: 0, wire_mm: 1.5, bore_mm: 3, shank_mm: 12 },
      { name: 'belly, fore', on: 'belly', x_mm: 36, wire_mm: 1.5, bore_mm: 3, shank_mm: 12 },
      { name: 'belly, aft', on: 'belly', x_mm: 96, wire_mm: 1.5, bore_mm: 3, shank_mm: 10 },
    ],
    shop: {
      lead: [
        { name: '8 mm rod', kind: 'slug', diameter_mm: 7.8, density_g_cm3: 11.3 },
        { name: 'shot in epoxy', kind: 'filled', density_g_cm3: 7.3 },
      ],
    },
    setups: [
      {
        name: 'still pond',
        water: { temperature_c: 20, salinity_g_kg: 0 },
        target: { proud_mm: 3 },
        hung: [
          { name: 'fore treble', from: 'belly, fore', mass_g: 2, hang_mm: 30 },
          { name: 'aft treble', from: 'belly, aft', mass_g: 2, hang_mm: 30 },
        ],
        holes: [
          {
            name: 'head hole',
            from: 'belly',
            x_mm: 24,
            diameter_mm: 8,
            depth_mm: 10,
            point_deg: 180,
            lead: { of: '8 mm rod', mass_g: 4 },
          },
          {
            name: 'middle hole',
            from: 'belly',
            // between the shanks of the first hinge and the belly eye, or the slots of the second
            x_mm: pieces === 2 ? 80 : 72,
            diameter_mm: 6,
            depth_mm: 6,
            lead: { of: 'shot in epoxy', mass_g: 1 },
          },
        ],
      },
    ],
    ...changes,
  };
}

/** The plain bait of two links. */
export const PLAIN_DESIGN = makeDesignFile();

function linkNames(pieces: 1 | 2 | 3): readonly string[] {
  return pieces === 3 ? PIECES : pieces === 2 ? ['head', 'tail'] : ['whole'];
}

/** Eyes of the aft link reach into slots of the fore link, where the pin is held. */
function plainJoint(x_mm: number): JointEntry {
  return {
    x_mm,
    gap_mm: 2,
    faces: { kind: 'flat' },
    hinge: {
      kind: 'pin',
      eyes: [
        { in: 'aft', z_mm: 8 },
        { in: 'aft', z_mm: -8 },
      ],
      wire_mm: 1.5,
      bore_mm: 3,
      shank_mm: 8,
      pin: { diameter_mm: 2, z_mm: [-12, 12], x_mm: x_mm - 4, held_by: 'fore' },
    },
    slots: [
      { in: 'fore', width_mm: 7.5, depth_mm: 7.5, z_mm: [6.75, 9.25] },
      { in: 'fore', width_mm: 7.5, depth_mm: 7.5, z_mm: [-9.25, -6.75] },
    ],
  };
}

/** The plain bait on a knuckle of 12 mm in its tail: eyes of the head reach round its axis, 73 from the nose. */
export const KNUCKLE_DESIGN = jointed({
  x_mm: 60,
  gap_mm: 2,
  faces: { kind: 'knuckle', on: 'aft', radius_mm: 12 },
  hinge: {
    kind: 'pin',
    eyes: [
      { in: 'fore', z_mm: 8 },
      { in: 'fore', z_mm: -8 },
    ],
    wire_mm: 1.5,
    bore_mm: 3,
    shank_mm: 8,
    pin: { diameter_mm: 2, z_mm: [-12, 12], held_by: 'aft' },
  },
  slots: [
    { in: 'aft', width_mm: 7.5, depth_mm: 16, z_mm: [6.75, 9.25] },
    { in: 'aft', width_mm: 7.5, depth_mm: 16, z_mm: [-9.25, -6.75] },
  ],
});

/** The plain bait on two pairs of linked eyes, each loop in a slot of its own link. */
export const LINKED_DESIGN = jointed({
  x_mm: 60,
  gap_mm: 2,
  faces: { kind: 'flat' },
  hinge: { kind: 'linked-eyes', z_mm: [8, -8], wire_mm: 1.5, bore_mm: 3, shank_mm: 8 },
  slots: (['fore', 'aft'] as const).flatMap((side) => [
    { in: side, width_mm: 7, depth_mm: 5, z_mm: [4.5, 11.5] as const },
    { in: side, width_mm: 7, depth_mm: 5, z_mm: [-11.5, -4.5] as const },
  ]),
});

/** The plain bait of two links with another joint, the hole of its tail moved out of the way. */
function jointed(joint: JointEntry): DesignFile {
  const file = makeDesignFile({ joints: [joint] });
  const setups = file.setups.map((setup) => ({
    ...setup,
    holes: setup.holes.map((hole) => (hole.name === 'middle hole' ? { ...hole, x_mm: 86 } : hole)),
  }));
  return { ...file, setups };
}
