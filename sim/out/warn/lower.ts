import type { Float } from '../../hydro/float.ts';
import { steadyFrom } from '../../hydro/steadiness.ts';
import type { Mm } from '../../units/brand.ts';
import { formatLength } from '../../units/format.ts';
import type { ProposedEdit } from '../../warnings.ts';
import { quoted } from './cure.ts';
import type { TrialFloat, WarnParts } from './parts.ts';
import { changedHoles } from './walls.ts';

/** A drill is set to half a millimetre; lead is let down by so much at most. */
const STEP_MM: Mm = 0.5;
const STEPS = 12;
/** Lead let down by h raises GM by its share of the weight times h, less what the wood goes up by: half of that is not enough to try. */
const HOPE = 0.5;

/**
 * The least change that lets the lead of one hole from the belly down until a link, or the whole bait (null), stands and
 * is no longer tender: its hole less deep. null: none does that and keeps its wall, the aim and all that was well.
 */
export function lowerLead(parts: WarnParts, refloat: TrialFloat, link: number | null): ProposedEdit | null {
  const { holes } = parts.hardware;
  const own = holes
    .map((hole, index) => ({ index, name: hole.name, link: hole.link, hole: hole.hole, lead: hole.lead?.mass ?? 0 }))
    .filter(({ hole, lead, link: held }) => hole.from === 'belly' && !hole.done && lead > 0 && (link ?? held) === held)
    .toSorted((a, b) => b.lead - a.lead);
  const float = link === null ? parts.assembled : parts.floats[link];
  const short = steadyFrom(float.width) - Math.min(float.gmUpright, float.gmMin);
  for (let step = 1; step <= STEPS; step++) {
    const by = step * STEP_MM;
    for (const { index, name, lead } of own) {
      if ((lead * by) / float.mass < HOPE * short) continue;
      const edit = changedHoles(parts, refloat, [index], {
        what: 'depth',
        by: -by,
        says: `drill ${quoted([name])} ${formatLength(by)} less deep`,
        cures: ({ floats, assembled }) => stands(link === null ? assembled : floats[link]),
      });
      if (edit) return edit;
    }
  }
  return null;
}

function stands({ tender, laysOver, mirrored }: Float): boolean {
  return !tender && !laysOver && !mirrored;
}
