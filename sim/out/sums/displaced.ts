import type { Amount } from '../../equations/worked.ts';
import type { LedgerLine } from '../../mass/ledger.ts';
import type { Hardware, PlacedHole, PlacedPin } from '../../mass/placed.ts';
import type { Mm3 } from '../../units/brand.ts';
import type { CheckedLink } from '../checked-bait.ts';
import { worked } from './block.ts';

/** A hole with the numbers that several sums share. */
export interface Filled {
  readonly hole: PlacedHole;
  readonly leadVolume: Amount | null;
  /** Volume and height of the cone under the drill point; 0 for a flat floor. */
  readonly point: Amount;
  readonly pointHeight: Amount;
}

export function fillOf(hole: PlacedHole): Filled {
  const cone = (Math.PI / 12) * hole.diameter ** 2 * hole.pointDepth;
  return {
    hole,
    leadVolume: hole.lead && worked('mm^3', hole.lead.volume),
    point: worked('mm^3', cone),
    pointHeight: worked('mm', hole.pointDepth),
  };
}

/** Wood that each shank, bore, hole and tab of a fin takes out of a link. */
export function woodTaken({ eyes, pins, holes, fins }: Hardware, link: number): readonly Mm3[] {
  return [
    ...eyes.filter((eye) => eye.link === link).map((eye) => eye.shankVolume),
    ...pins.filter((pin) => pin.link === link).map(boredVolume),
    ...holes.filter((hole) => hole.link === link).map((hole) => hole.volume),
    ...fins.filter((fin) => fin.link === link).map(({ tab }) => tab?.volume ?? 0),
  ].filter((volume) => volume > 0);
}

/** Where a ledger line's part is: in the water outside the bare wood, or in the place of wood. */
export interface Displaced {
  readonly out: Mm3;
  readonly in: Mm3;
}

/** What each line of a link's ledger displaces. The wood itself is not among them. */
export function displacedBy(line: LedgerLine, link: CheckedLink, { eyes, pins, holes, fins }: Hardware): Displaced {
  const named = <Item extends { readonly name: string; readonly link: number }>(items: readonly Item[], name: string) =>
    items.find((item) => item.link === link.spec.index && item.name === name);
  const out = line.outsideVolume;
  const coatLines = link.ledger.lines.filter(({ kind }) => kind === 'coat');
  switch (line.kind) {
    case 'coat':
      // coats may share a name: they are told apart by their order
      return { out: link.wetted.films[coatLines.indexOf(line)]?.volume ?? 0, in: 0 };
    case 'eye':
    case 'hanger': {
      const kind = line.kind === 'eye' ? 'hinge' : 'hanger';
      const eye = named(
        eyes.filter((each) => each.kind === kind),
        line.name,
      );
      return { out, in: eye?.shankVolume ?? 0 };
    }
    case 'pin': {
      const pin = named(pins, line.name);
      return { out, in: pin ? boredVolume(pin) : 0 };
    }
    case 'lead':
      return { out, in: named(holes, line.name)?.lead?.volume ?? 0 };
    case 'plug':
      return { out, in: holes.find((hole) => line.name === `${hole.name}, plug`)?.plug.volume ?? 0 };
    case 'air':
      return { out, in: holes.find((hole) => line.name === `${hole.name}, air`)?.air?.volume ?? 0 };
    case 'fin': {
      const fin = named(fins, line.name);
      return { out: fin?.outsideVolume ?? 0, in: fin?.tab?.volume ?? 0 };
    }
    default:
      return { out, in: 0 };
  }
}

function boredVolume(pin: PlacedPin): Mm3 {
  const section = (Math.PI / 4) * pin.diameter ** 2;
  return pin.bored.reduce((sum, [from, to]) => sum + (to - from) * section, 0);
}
