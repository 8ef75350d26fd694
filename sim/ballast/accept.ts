import type { Design, Hole, Setup } from '../design/design.ts';
import type { ProposedEdit } from '../design/edit.ts';
import { EXPRESSION_LIMITS } from '../design/expression-limits.ts';
import type { DesignFile, HoleEntry, Num } from '../design/file.ts';
import { isSame } from '../flow/share.ts';
import { degreeFromRadian, gramPerCm3FromGramPerMm3 } from '../units/convert.ts';

/** Room for brackets, a sign and a number. */
const SHIFT_CHARACTERS = 24;
/** Numbers in the file carry no dust of binary fractions. */
const DECIMALS = 6;

/**
 * A plan as one edit: its holes take the place of the setup's. Holes that the setup has already keep what is written of
 * them. Where the nearest joint stands at an expression, a new hole is written as a distance from it, so that it goes
 * along when the bait is made longer.
 */
export function acceptHoles(
  file: DesignFile,
  design: Design,
  setup: Setup,
  holes: readonly Hole[],
  says = `drill "${setup.name}" as planned`,
): ProposedEdit {
  const index = design.setups.findIndex(({ name }) => name === setup.name);
  const entries = file.setups[index]?.holes ?? [];
  // one that is as it was keeps what is written of it; by what it is, since answers are copied on their way to the page
  const writtenAs = (hole: Hole) => entries[setup.holes.findIndex((each) => isSame(each, hole))];
  const value = holes.map((hole): HoleEntry => writtenAs(hole) ?? entryOf(file, design, hole));
  return { says, sets: [{ path: `setups.${index}.holes`, value }] };
}

function entryOf(file: DesignFile, { joints }: Design, hole: Hole): HoleEntry {
  const { name, from, x, across, diameter, depth, point, lead, plugDensity } = hole;
  return {
    name,
    from,
    x_mm: fromNearestJoint(file, joints, x),
    ...(across === 0 ? {} : { across_mm: plain(across) }),
    diameter_mm: plain(diameter),
    depth_mm: plain(depth),
    point_deg: plain(degreeFromRadian(point)),
    ...(lead ? { lead: { of: lead.stock.name, mass_g: plain(lead.mass) } } : {}),
    ...(hole.air ? { air: { plug_mm: plain(hole.air.plug) } } : {}),
    plug_g_cm3: plain(gramPerCm3FromGramPerMm3(plugDensity)),
  };
}

function fromNearestJoint(file: DesignFile, joints: Design['joints'], x: number): Num {
  const distances = joints.map((joint) => Math.abs(joint.x - x));
  const nearest = distances.indexOf(Math.min(...distances));
  const written = file.joints[nearest]?.x_mm;
  if (typeof written !== 'string' || written.length > EXPRESSION_LIMITS.characters - SHIFT_CHARACTERS) return plain(x);
  const off = plain(x - joints[nearest].x);
  const base = /^\w+$/.test(written) ? written : `(${written})`;
  return `${base} ${off < 0 ? '-' : '+'} ${Math.abs(off)}`;
}

function plain(value: number): number {
  return Number(value.toFixed(DECIMALS)) + 0;
}
