import type { BaitParts, LinkParts } from '../ballast/plan.ts';
import { ledgerWith } from '../ballast/plan.ts';
import { bodyOf } from '../hydro/bait-body.ts';
import type { FloatingBody } from '../hydro/body.ts';
import { restFrom } from '../hydro/equilibrium.ts';
import { type Float, floatAt, floatBody } from '../hydro/float.ts';
import type { Ledger } from '../mass/ledger.ts';
import type { PlacedHole } from '../mass/placed.ts';
import { add, type Vec3 } from '../numerics/vec3.ts';
import type { Mm, Radian } from '../units/brand.ts';

/** What is asked of lead that is not in the middle: a drill that wanders across a 20 mm bait by a sixth of it. */
export const OFF_CENTRE_MM: Mm = 3;

/** The ledger of a link with its lead, holes and plugs that much further to starboard; null where it has no lead. */
export function ledgerOffCentre(bait: BaitParts, link: LinkParts): Ledger | null {
  const { holes } = link.hardware;
  if (holes.every(({ lead }) => lead === null)) return null;
  return ledgerWith(bait, link, { ...link.hardware, holes: holes.map(moved) });
}

function moved(hole: PlacedHole): PlacedHole {
  const { lead, plug } = hole;
  if (lead === null) return hole;
  const across = (at: Vec3): Vec3 => add(at, [0, OFF_CENTRE_MM, 0]);
  return {
    ...hole,
    centre: across(hole.centre),
    lead: { ...lead, centre: across(lead.centre) },
    plug: { ...plug, centre: across(plug.centre) },
  };
}

/** How much further to starboard links held as one piece rest with other ledgers than they have. */
export function heelBy(bait: BaitParts, links: readonly LinkParts[], ledgers: readonly Ledger[], float: Float): Radian {
  const body = bodyOf(
    links.map(({ trees }) => trees),
    ledgers,
    links.flatMap(({ hung }) => hung),
    bait.water,
  );
  const turned = restingNear(body, float).heel - float.heel;
  return turned - 2 * Math.PI * Math.round(turned / (2 * Math.PI));
}

/** The rest that a body goes to from where one that is nearly the same rested. */
function restingNear(body: FloatingBody, float: Float): Float {
  return float.state === 'floats' ? floatAt(body, restFrom(body, float.up, float)) : floatBody(body);
}
