import { type KeyboardEvent, useRef, useState } from 'react';
import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';
import { readDecimal, stepped, writeDecimal } from './decimal.ts';
import { Stepper } from './Stepper.tsx';

export interface QuantityFieldProps {
  readonly label: string;
  /** As shown behind the number. */
  readonly unit: string;
  /** In the unit shown; null: not known yet. */
  readonly value: number | null;
  /** Decimals that always stand, and the most that are shown. */
  readonly digits: readonly [number, number];
  /** What an arrow key or a stepper adds; the page keys add ten of it. */
  readonly step: number;
  /** Where the value comes from, if it was not typed. */
  readonly note: string | null;
  /** What is wrong with the value, and its cure. */
  readonly complaint: string | null;
  /** While a hand is on it. */
  onPreview(value: number): void;
  /** When the hand lets go, or a typed number is entered. */
  onCommit(value: number): void;
  /** Put back what stood before. */
  onCancel(): void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/**
 * A number with its unit. What is being typed is the field's own affair: it becomes a value on Enter or when the field
 * is left, if it reads as a plain number, and Escape puts back what stood before. Arrow keys and the steppers change the
 * value at once; however long they are held, that is one change. The wheel does nothing.
 */
export function QuantityField(props: QuantityFieldProps) {
  const { label, unit, value, digits, step } = props;
  const [draft, setDraft] = useState<string | null>(null);
  const [complaint, setComplaint] = useState<string | null>(null);
  // the value under the hand; ahead of `value` until the page has drawn it
  const held = useRef<number | null>(null);
  const shown = value === null ? '' : writeDecimal(value, digits);

  // a value from elsewhere (undo, another bait) is newer than what was typed and what was said about it
  const [seen, setSeen] = useState(shown);
  if (seen !== shown) {
    setSeen(shown);
    forget();
  }

  function enter() {
    if (draft === null || draft.trim() === shown) return forget();
    const typed = readDecimal(draft, unit);
    if (!typed.ok) return setComplaint(typed.message);
    forget();
    props.onCommit(typed.value);
  }

  function forget() {
    setDraft(null);
    setComplaint(null);
  }

  function stepBy(by: number) {
    const typed = draft === null ? null : readDecimal(draft, unit);
    const from = held.current ?? (typed?.ok ? typed.value : value);
    if (from === null) return;
    held.current = stepped(from, step, by);
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
    } else if (draft !== null && (event.ctrlKey || event.metaKey)) {
      // undo while typing is the field's, not the design's
      event.stopPropagation();
    }
  }

  const said = complaint ?? props.complaint;
  return (
    <TextField
      className="quantity"
      isInvalid={said !== null}
      validationBehavior="aria"
      value={draft ?? shown}
      onChange={setDraft}
      onBlur={() => {
        letGo();
        enter();
      }}
    >
      <Label>
        {label}
        <span className="visually-hidden">, {unit}</span>
      </Label>
      <span className="quantity-entry">
        <Stepper word={`Less ${label.toLowerCase()}`} sign="−" onStep={() => stepBy(-1)} onLetGo={letGo} />
        <Input inputMode="decimal" autoComplete="off" spellCheck={false} onKeyDown={onKeyDown} onKeyUp={letGo} />
        <span className="unit" aria-hidden="true">
          {unit}
        </span>
        <Stepper word={`More ${label.toLowerCase()}`} sign="+" onStep={() => stepBy(1)} onLetGo={letGo} />
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
