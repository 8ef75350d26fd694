import { type KeyboardEvent, useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';

export interface NameFieldProps {
  readonly label: string;
  readonly value: string;
  /** What is wrong with the name that stands. */
  readonly complaint: string | null;
  /** Why a name is refused; null: it is not. */
  refuse(name: string): string | null;
  onCommit(name: string): void;
}

/**
 * A name. What is being typed is the field's own affair: it becomes the name on Enter or when the field is left, unless it
 * is refused; then it stays to be mended, and Escape puts back what stood before.
 */
export function NameField({ label, value, complaint, refuse, onCommit }: NameFieldProps) {
  const [draft, setDraft] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  // a name from elsewhere (undo, another bait) is newer than what was typed
  const [seen, setSeen] = useState(value);
  if (seen !== value) {
    setSeen(value);
    forget();
  }

  function forget() {
    setDraft(null);
    setRefused(null);
  }

  function enter() {
    const typed = draft?.trim() ?? value;
    const why = typed === value ? null : refuse(typed);
    setRefused(why);
    if (why !== null) return;
    setDraft(null);
    if (typed !== value) onCommit(typed);
  }

  function onKeyDown(event: KeyboardEvent) {
    if (event.key === 'Enter') enter();
    else if (event.key === 'Escape') forget();
    // undo while typing is the field's, not the design's
    else if (draft !== null && (event.ctrlKey || event.metaKey)) event.stopPropagation();
  }

  const said = refused ?? complaint;
  return (
    <TextField
      className="naming"
      isInvalid={said !== null}
      validationBehavior="aria"
      value={draft ?? value}
      onChange={setDraft}
      onBlur={enter}
    >
      <Label>{label}</Label>
      <Input autoComplete="off" spellCheck={false} enterKeyHint="done" onKeyDown={onKeyDown} />
      <FieldError className="complaint">{said}</FieldError>
    </TextField>
  );
}
