import type { ShaderMaterial } from 'three';
import {
  makeCutDepthMaterial,
  makeEdgeMaterial,
  makeGhostMaterial,
  makeHiddenMaterial,
  makeKeepOutEdgeMaterial,
  makeKeepOutMaterial,
  makeMarkMaterial,
  makeOutlineMaterial,
  makePartMaterial,
  makeSurfaceMaterial,
  makeWallEdgeMaterial,
  makeWallGroundMaterial,
  makeWallOutMaterial,
  makeWashMaterial,
  type Shared,
  setPalette,
  setTint,
} from './materials.ts';
import { ORDER } from './order.ts';
import type { Palette } from './palette.ts';

/** A part in plain sight and seen through wood. */
export interface Look {
  readonly seen: ShaderMaterial;
  readonly hidden: ShaderMaterial;
  /** When it is drawn as hidden. */
  readonly hiddenOrder: number;
}

/** Kinds of part that are told apart by their colour. */
export type PartKind =
  | 'brass'
  | 'pin'
  | 'hook'
  | 'lead'
  | 'plug'
  | 'bore'
  | 'fin'
  | 'eye'
  | 'pupil'
  | 'bead'
  | 'tuft'
  | 'pickedMetal'
  | 'pickedInside';

/** Every material that is the same for a whole tub. */
export interface Looks {
  readonly outline: ShaderMaterial;
  readonly edge: ShaderMaterial;
  readonly finEdge: ShaderMaterial;
  readonly cutDepth: ShaderMaterial;
  readonly ghost: ShaderMaterial;
  /** Where no lead may go, and the line round it. */
  readonly keepOut: ShaderMaterial;
  readonly keepOutEdge: ShaderMaterial;
  /** The wall wanted round lead: where it is on the screen, its outline, and what of it comes out of the wood. */
  readonly wallGround: ShaderMaterial;
  readonly wallEdge: ShaderMaterial;
  readonly wallOut: ShaderMaterial;
  /** Lines drawn over everything. */
  readonly mark: ShaderMaterial;
  readonly surface: ShaderMaterial;
  readonly wash: ShaderMaterial;
  readonly parts: Readonly<Record<PartKind, Look>>;
}

/** How strongly a part fills its outline when seen through wood: lead is what one looks for, a plug is only wood. */
const FILL = { metal: 0.42, lead: 0.92, plug: 0.38, bore: 0.16 } as const;

/** Things keep their own colours by night; only lines and water follow the sheet. */
const BRASS = '#a87a24';
const EYE = '#d9b54a';
const PUPIL = '#181c20';
const BEAD = '#8d8f86';
const TUFT = '#75614c';
const LEAD = '#566069';
/** Blued steel; a hook is neither ink nor brass. */
const STEEL = '#4a565d';
/** Dowel and putty. */
const PLUG = '#7c5426';

/** Horn and sheet plastic. */
const FIN = '#8b8f6d';

export function makeLooks(shared: Shared): Looks {
  const metal = (): Look => ({
    seen: makePartMaterial(shared, STEEL, 1),
    hidden: makeHiddenMaterial(shared, STEEL, 'behind', FILL.metal),
    hiddenOrder: ORDER.hidden,
  });
  const inside = (fill: number, hiddenOrder: number = ORDER.hidden): Look => {
    const seen = makePartMaterial(shared, PLUG, 0);
    // never in plain sight but where the bait is cut away
    seen.visible = false;
    return { seen, hidden: makeHiddenMaterial(shared, PLUG, 'inside', fill), hiddenOrder };
  };
  return {
    outline: makeOutlineMaterial(shared),
    edge: makeEdgeMaterial(shared, 'wood'),
    finEdge: makeEdgeMaterial(shared, 'fin'),
    cutDepth: makeCutDepthMaterial(),
    ghost: makeGhostMaterial(shared),
    keepOut: makeKeepOutMaterial(shared),
    keepOutEdge: makeKeepOutEdgeMaterial(shared),
    wallGround: makeWallGroundMaterial(),
    wallEdge: makeWallEdgeMaterial(shared),
    wallOut: makeWallOutMaterial(shared),
    mark: makeMarkMaterial(shared),
    surface: makeSurfaceMaterial(shared),
    wash: makeWashMaterial(shared),
    parts: {
      brass: metal(),
      pin: metal(),
      hook: metal(),
      lead: inside(FILL.lead, ORDER.hiddenLead),
      plug: inside(FILL.plug),
      bore: inside(FILL.bore),
      fin: metal(),
      eye: metal(),
      pupil: metal(),
      bead: metal(),
      tuft: metal(),
      pickedMetal: metal(),
      pickedInside: inside(FILL.lead, ORDER.hiddenLead),
    },
  };
}

/** Puts the sheet's colours on everything. */
export function paintLooks(looks: Looks, shared: Shared, palette: Palette): void {
  setPalette(shared, palette);
  const tints: Readonly<Record<PartKind, string>> = {
    brass: BRASS,
    pin: BRASS,
    hook: STEEL,
    lead: LEAD,
    plug: PLUG,
    bore: palette.pencil,
    fin: FIN,
    eye: EYE,
    pupil: PUPIL,
    bead: BEAD,
    tuft: TUFT,
    pickedMetal: palette.picked,
    pickedInside: palette.picked,
  };
  for (const kind of Object.keys(tints) as PartKind[]) {
    const { seen, hidden } = looks.parts[kind];
    setTint(seen, tints[kind]);
    setTint(hidden, tints[kind]);
  }
}

/** What is inside the wood in plain sight, as it is when the bait is cut away, or hidden as ever. */
const INSIDE: readonly PartKind[] = ['lead', 'plug', 'bore', 'pickedInside'];

/** Shows the inside of a bait that is cut, or hides it again. */
export function openLooks(looks: Looks, isCut: boolean): void {
  for (const kind of INSIDE) looks.parts[kind].seen.visible = isCut;
  // the far side of the skin is now the cut face, and the outline lies on it: it may not stand in its way
  looks.outline.depthWrite = !isCut;
}

export function disposeLooks({ parts, ...lines }: Looks): void {
  const ofParts = Object.values(parts).flatMap(({ seen, hidden }) => [seen, hidden]);
  for (const material of [...Object.values(lines), ...ofParts]) material.dispose();
}
