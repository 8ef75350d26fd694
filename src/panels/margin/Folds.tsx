import { type ReactNode, useState } from 'react';
import type { Issue } from '../../../sim/index.ts';
import type { Field } from './field.ts';
import type { Fold } from './more-fields.ts';

interface FoldsProps {
  readonly folds: readonly Fold[];
  readonly issues: ReadonlyMap<Field, Issue>;
  numbers(fields: readonly Field[]): ReactNode;
}

/** Numbers that are seldom changed, each group folded away under its heading. */
export function Folds({ folds, issues, numbers }: FoldsProps) {
  return folds.map(({ title, fields }) => (
    <FoldedAway key={title} title={title} isWrong={fields.some((field) => issues.has(field))}>
      {() => numbers(fields)}
    </FoldedAway>
  ));
}

interface FoldedAwayProps {
  readonly title: string;
  /** Something in it is to be mended: it stands open by itself. */
  readonly isWrong: boolean;
  /** It stands open when it first appears. */
  readonly startsOpen?: boolean;
  /** Made only while it is open: a design has a hundred numbers. */
  children(): ReactNode;
}

export function FoldedAway({ title, isWrong, startsOpen = false, children }: FoldedAwayProps) {
  const [isOpen, setOpen] = useState(startsOpen);
  const shown = isOpen || isWrong;
  return (
    <details className="fold" open={shown} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {shown && children()}
    </details>
  );
}
