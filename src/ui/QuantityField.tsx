import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { Stepper } from './Stepper.tsx';

/** How a quantity is written, read and stepped; what unit its values are in is its own affair. */
export interface FieldMeasure {
  /** As shown behind the number. */
  readonly unit: string;
  write(value: number): string;
  read(text: string): Reading;
  stepped(value: number, by: number): number;
}

/** What was typed as it was understood, and whether that is plain to see; or why it is refused. */
type Reading =
  | { readonly ok: true; readonly value: number; readonly understood: string; readonly plain: boolean }
  | { readonly ok: false; readonly message: string };

export interface QuantityFieldProps {
  readonly label: string;
  readonly measure: FieldMeasure;
  /** null: not known yet. */
  readonly value: number | null;
  /** Where the value comes from, if it was not typed. */
  readonly note: string | null;
  /** What is wrong with the value, and its cure. */
  readonly complaint: string | null;
  /** While a hand is on it. */
  onPreview(value: number): void;
  /** When the hand lets go, or a typed quantity is entered. */
  onCommit(value: number): void;
  /** Put back what stood before. */
  onCancel(): void;
}

/** A quantity that was typed and entered. */
interface Entered {
  readonly text: string;
  /** How it was understood, where that is not plain to see. */
  readonly echo: string | null;
  /** The value as the field shows it, with its unit: what was typed stands for this one alone. */
  readonly shown: string;
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/**
 * A quantity with its unit. What is being typed is the field's own affair: it becomes a value on Enter or when the field
 * is left, if it can be read, and Escape puts back what stood before. What was typed stays as it was typed while the
 * field has the focus, and how it was understood stands beside it. Arrow keys and the steppers change the value at
 * once; however long they are held, that is one change. The wheel does nothing.
 */
export function QuantityField(props: QuantityFieldProps) {
  const { label, measure, value } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const [entered, setEntered] = useState<Entered | null>(null);
  const [complaint, setComplaint] = useState<string | null>(null);
  const echoId = useId();
  // the value under the hand; ahead of `value` until the page has drawn it
  const held = useRef<number | null>(null);
  const text = value === null ? '' : measure.write(value);
  const shown = `${text} ${measure.unit}`;

  // a value from elsewhere (undo, another bait) is newer than what was typed and what was said about it
  const [seen, setSeen] = useState(shown);
  if (seen !== shown) {
    setSeen(shown);
    if (entered?.shown !== shown) forget();
  }

  /** Makes a value of what was typed; false: it cannot be read and stays to be mended. */
  function enter(): boolean {
    if (draft === null) return true;
    const read = draft.trim() === text || draft === entered?.text ? null : measure.read(draft);
    setComplaint(read?.ok === false ? read.message : null);
    if (read === null) return true;
    if (!read.ok) return false;
    setEntered({
      text: draft,
      echo: read.plain ? null : read.understood,
      shown: `${measure.write(read.value)} ${measure.unit}`,
    });
    if (read.value !== value) props.onCommit(read.value);
    return true;
  }

  function forget() {
    setDraft(null);
    setEntered(null);
    setComplaint(null);
  }

  function stepBy(by: number) {
    const typed = draft === null || draft === entered?.text ? null : measure.read(draft);
    const from = held.current ?? (typed?.ok ? typed.value : value);
    if (from === null) return;
    held.current = measure.stepped(from, by);
    forget();
    props.onPreview(held.current);
  }

  function letGo() {
    if (held.current === null) return;
    const value = held.current;
    held.current = null;
    props.onCommit(value);
  }

  function onKeyDown(event: KeyboardEvent) {
    const by = STEPS[event.key];
    if (by !== undefined) {
      event.preventDefault();
      stepBy(by);
    } else if (event.key === 'Enter') {
      enter();
    } else if (event.key === 'Escape') {
      held.current = null;
      forget();
      props.onCancel();
    } else if (draft !== null && draft !== entered?.text && (event.ctrlKey || event.metaKey)) {
      // undo while typing is the field's, not the design's
      event.stopPropagation();
    }
  }

  function leave() {
    letGo();
    if (enter()) setDraft(null);
  }

  const said = complaint ?? props.complaint;
  const echo = entered?.shown === shown ? entered.echo : null;
  return (
    <TextField
      className="quantity"
      isInvalid={said !== null}
      validationBehavior="aria"
      aria-describedby={echoId}
      value={draft ?? text}
      onChange={setDraft}
      onBlur={leave}
    >
      <Label>
        {label}
        {measure.unit !== '' && <span className="visually-hidden">, {measure.unit}</span>}
      </Label>
      <span className="quantity-entry">
        <Stepper word={`Less ${label.toLowerCase()}`} sign="−" onStep={() => stepBy(-1)} onLetGo={letGo} />
        <Input
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          enterKeyHint="done"
          onKeyDown={onKeyDown}
          onKeyUp={letGo}
        />
        <span className="unit" aria-hidden="true">
          {measure.unit}
        </span>
        <Stepper word={`More ${label.toLowerCase()}`} sign="+" onStep={() => stepBy(1)} onLetGo={letGo} />
      </span>
      <span className="note" id={echoId} aria-live="polite">
        {echo}
      </span>
      {props.note !== null && (
        <Text slot="description" className="note">
          {props.note}
        </Text>
      )}
      <FieldError className="complaint">{said}</FieldError>
    </TextField>
  );
}
