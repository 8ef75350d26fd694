import { type DesignFile, type ProposedEdit, withEdit } from '../../sim/index.ts';
import { type Document, documentStore } from './store.ts';

/** A pure edit of the design. */
export type Edit = (file: DesignFile) => DesignFile;

/** The document as it was before the hand took hold of a number, or before what is tried; null between gestures. */
let before: Document | null = null;

/** Opens a design; its history begins here. */
export function openDesign(file: DesignFile, preset: string | null): void {
  before = null;
  const { pause, resume, clear } = documentStore.temporal.getState();
  pause();
  documentStore.setState({ file, setup: file.setups[0]?.name ?? null, edited: '', preset, tried: null });
  resume();
  clear();
}

/** What is tried belongs to the setup it was tried in, and is put back. */
export function chooseSetup(setup: string): void {
  putBackTried();
  documentStore.setState({ setup });
}

/** Shows an edit while the hand is still on it: seen and worked out at once, but not yet an undo step. */
export function previewEdit(edit: Edit): void {
  keepTried();
  show(edit);
}

/** Makes an edit, and one undo step of everything since the hand took hold. edited: what it changed, in words. */
export function makeEdit(edited: string, edit: Edit): void {
  keepTried();
  putBack();
  const { file } = documentStore.getState();
  if (file === null) return;
  const next = edit(file);
  if (next !== file) documentStore.setState({ file: next, edited });
}

/** Puts back what stood before the hand took hold; what is tried stays. */
export function cancelPreview(): void {
  if (documentStore.getState().tried === null) putBack();
}

/** Makes an edit that was proposed. */
export function makeProposed(edit: ProposedEdit): void {
  makeEdit(edit.says, (file) => withEdit(file, edit));
}

/**
 * Shows a proposed edit until it is kept or put back. Whoever changes a number meanwhile changes it in what is seen: then
 * it is kept first, as a step of its own. Undo, redo and another setup put it back.
 */
export function tryProposed(edit: ProposedEdit): void {
  keepTried();
  putBack();
  show((file) => withEdit(file, edit));
  documentStore.setState({ tried: edit });
}

/** Makes what is tried an undo step. */
export function keepTried(): void {
  const { tried } = documentStore.getState();
  if (tried === null) return;
  putBack();
  makeProposed(tried);
}

export function putBackTried(): void {
  if (documentStore.getState().tried !== null) putBack();
}

/** While something is tried, that is what there is to undo. */
export function undo(): void {
  const { tried } = documentStore.getState();
  putBack();
  if (tried === null) documentStore.temporal.getState().undo();
}

export function redo(): void {
  putBack();
  documentStore.temporal.getState().redo();
}

function show(edit: Edit): void {
  if (before === null) {
    before = documentStore.getState();
    documentStore.temporal.getState().pause();
  }
  if (before.file !== null) documentStore.setState({ file: edit(before.file) });
}

function putBack(): void {
  if (before === null) return;
  documentStore.setState({ file: before.file, tried: null });
  documentStore.temporal.getState().resume();
  before = null;
}
