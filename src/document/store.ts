import { type TemporalState, temporal } from 'zundo';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { DesignFile, ProposedEdit } from '../../sim/index.ts';

/** The one thing the user owns: the design as written, expressions and all. */
export interface Document {
  /** null until the first design has been read. */
  readonly file: DesignFile | null;
  /** The setup that is looked at, by name; null: the first. */
  readonly setup: string | null;
  /** What the last edit changed, in the maker's words; names the undo step. */
  readonly edited: string;
  /** The file of the presets folder that it came from. */
  readonly preset: string | null;
  /** What is proposed and tried: the file has it already, the history not yet. null: nothing is. */
  readonly tried: ProposedEdit | null;
}

/** Undo steps kept; a design is a few kilobytes, so this is no more than a picture. */
const UNDO_STEPS = 200;

type Remembered = Pick<Document, 'file' | 'setup' | 'edited'>;

/**
 * The document and its history. Only another file makes an undo step: choosing a setup is looking, not editing, but
 * undoing an edit brings back the setup in which it was made.
 */
export const documentStore = createStore<Document>()(
  temporal((): Document => ({ file: null, setup: null, edited: '', preset: null, tried: null }), {
    limit: UNDO_STEPS,
    partialize: ({ file, setup, edited }): Remembered => ({ file, setup, edited }),
    equality: (past, current) => past.file === current.file,
  }),
);

/** Reads the document inside a component, which is drawn anew only when what it reads has changed. */
export function useDocument<Part>(select: (document: Document) => Part): Part {
  return useStore(documentStore, select);
}

/** Reads the history inside a component. */
export function useHistory<Part>(select: (history: TemporalState<Remembered>) => Part): Part {
  return useStore(documentStore.temporal, select);
}
