import type { DesignFile } from '../../sim/index.ts';
import { type Document, documentStore } from './store.ts';

/** A pure edit of the design. */
export type Edit = (file: DesignFile) => DesignFile;

/** The document as it was before the hand took hold of a number; null between gestures. */
let before: Document | null = null;

/** Opens a design; its history begins here. */
export function openDesign(file: DesignFile, preset: string | null): void {
  before = null;
  const { pause, resume, clear } = documentStore.temporal.getState();
  pause();
  documentStore.setState({ file, setup: file.setups[0]?.name ?? null, edited: '', preset });
  resume();
  clear();
}

export function chooseSetup(setup: string): void {
  documentStore.setState({ setup });
}

/** Shows an edit while the hand is still on it: seen and worked out at once, but not yet an undo step. */
export function previewEdit(edit: Edit): void {
  const { pause } = documentStore.temporal.getState();
  if (before === null) {
    before = documentStore.getState();
    pause();
  }
  if (before.file !== null) documentStore.setState({ file: edit(before.file) });
}

/** Makes an edit, and one undo step of everything since the hand took hold. edited: what it changed, in words. */
export function makeEdit(edited: string, edit: Edit): void {
  cancelPreview();
  const { file } = documentStore.getState();
  if (file === null) return;
  const next = edit(file);
  if (next !== file) documentStore.setState({ file: next, edited });
}

/** Puts back what stood before the hand took hold. */
export function cancelPreview(): void {
  if (before === null) return;
  documentStore.setState({ file: before.file });
  documentStore.temporal.getState().resume();
  before = null;
}

export function undo(): void {
  cancelPreview();
  documentStore.temporal.getState().undo();
}

export function redo(): void {
  cancelPreview();
  documentStore.temporal.getState().redo();
}
