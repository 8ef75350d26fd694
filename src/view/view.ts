import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { UnitSystem } from '../../sim/index.ts';

/** Where the viewer stands. free: wherever the user has turned it to. */
export type Camera = 'side' | 'top' | 'front' | 'waterline' | 'below' | 'free';

/** The sheet's one scale, which the tub and everything under it share. */
export interface Sheet {
  /** CSS pixels to a millimetre. */
  readonly scale: number;
  /** CSS pixels from the left edge of the tub to the nose tip. */
  readonly left: number;
}

/** What this window shows; not part of the design, never saved with it, never undone. */
export interface View {
  /** The whole bait as its pins hold it, or one link alone, counted from the nose, from 0. */
  readonly shown: 'whole' | number;
  readonly camera: Camera;
  readonly units: UnitSystem;
  /** The whole bait's links are pulled apart, so that joint faces are seen. */
  readonly apart: boolean;
  /** The part that is picked out: `hung:NAME`, `hole:NAME` or `hanger:NAME`. */
  readonly selected: string | null;
  /** Another way to rest, drawn as a ghost in the same water: its number among the others of what is shown. */
  readonly ghost: number | null;
  /** Another setup of the same bait, by name, drawn as a ghost in the same water. */
  readonly beside: string | null;
  /** Whether the metacentre is marked beside the centres of weight and of lift. */
  readonly metacentre: boolean;
  /** Whether it is drawn where no lead may go, and the wall that is wanted round the lead. */
  readonly keepOuts: boolean;
  /** Where the bait is cut away, in mm to starboard of its centre plane: wood nearer to the viewer is gone. null: whole. */
  readonly cut: number | null;
  /**
   * How the whole bait's joints stand: null straight, in one piece; 'loose' let go; a number folded, by that share of what
   * they reach, to starboard or (less than nothing) to port.
   */
  readonly bend: Bend;
  /** What is shown is let go in the tub and sinks out of sight. */
  readonly sinking: boolean;
  readonly sheet: Sheet;
}

export type Bend = null | 'loose' | number;

export const viewStore = createStore<View>()(() => ({
  shown: 'whole',
  camera: 'side',
  apart: false,
  units: 'mm-g',
  selected: null,
  ghost: null,
  beside: null,
  metacentre: false,
  keepOuts: false,
  cut: null,
  bend: null,
  sinking: false,
  sheet: { scale: 4, left: 24 },
}));

/** Reads the view inside a component, which is drawn anew only when what it reads has changed. */
export function useView<Part>(select: (view: View) => Part): Part {
  return useStore(viewStore, select);
}

/** Shows the whole bait or one link; a ghost belongs to what was shown before. */
export function show(shown: View['shown']): void {
  viewStore.setState((before) => (before.shown === shown ? { shown } : { shown, ghost: null }));
}

/** Draws another rest of the whole bait or of a link as a ghost beside it, or none any more. */
export function showGhost(shown: View['shown'], ghost: number | null): void {
  viewStore.setState({ shown, ghost });
}

/** Draws the bait in another setup as a ghost beside it; null for none. */
export function showBeside(beside: string | null): void {
  viewStore.setState({ beside });
}

/** Cuts the bait away at its centre plane, or makes it whole again. */
export function toggleCut(): void {
  viewStore.setState(({ cut }) => ({ cut: cut === null ? 0 : null }));
}

export function cutAt(cut: number): void {
  viewStore.setState({ cut });
}

/** Where a body of this width is cut: a plane set on a wider one stays within it. */
export function cutWithin(cut: number, width: number): number {
  return Math.min(width / 2, Math.max(-width / 2, cut));
}

/** Folds the bait at its joints under a slider, from straight, or stretches it again. */
export function toggleFold(): void {
  viewStore.setState(({ bend }) => ({ bend: typeof bend === 'number' ? null : 0, sinking: false }));
}

/** Lets the joints go, so that the bait curls if it does so by itself, or holds it straight again. */
export function toggleLetGo(): void {
  viewStore.setState(({ bend }) => ({ bend: bend === 'loose' ? null : 'loose', sinking: false }));
}

/** Folds by a share of what the joints reach, -1 to 1. */
export function foldTo(share: number): void {
  viewStore.setState({ bend: Math.min(1, Math.max(-1, share)) });
}

/** Lets what is shown sink in the tub, held straight, or takes it up again. */
export function letSink(sinking: boolean): void {
  viewStore.setState(sinking ? { sinking, bend: null } : { sinking });
}

export function lookFrom(camera: Camera): void {
  viewStore.setState({ camera });
}

/** Marks the metacentre, or no longer. */
export function toggleMetacentre(): void {
  viewStore.setState(({ metacentre }) => ({ metacentre: !metacentre }));
}

/** Draws where no lead may go, or no longer. */
export function toggleKeepOuts(): void {
  viewStore.setState(({ keepOuts }) => ({ keepOuts: !keepOuts }));
}

/** Pulls the links of the whole bait apart, or puts them together again. */
export function pullApart(apart: boolean): void {
  viewStore.setState({ apart });
}

export function showUnits(units: UnitSystem): void {
  viewStore.setState({ units });
}

export function pick(selected: string | null): void {
  viewStore.setState({ selected });
}

/** Sets the sheet's scale; an equal one changes nothing, so that measuring the page again redraws nothing. */
export function layOutSheet(sheet: Sheet): void {
  const { scale, left } = viewStore.getState().sheet;
  if (scale !== sheet.scale || left !== sheet.left) viewStore.setState({ sheet });
}
