import { memo } from 'react';
import type { Issue } from '../../../sim/index.ts';
import { cancelPreview, makeEdit, previewEdit } from '../../document/commands.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { measureOf } from '../../view/measures.ts';
import { useView } from '../../view/view.ts';
import { issueWords } from '../trouble/issue-words.ts';
import { type Field, isSame } from './field.ts';

interface MeasureFieldProps {
  readonly field: Field;
  readonly issue: Issue | undefined;
}

/**
 * One number of the design, in the units shown, with what stands against it. Every edit makes all fields anew, most of
 * them as they were: those are not drawn again.
 */
export const MeasureField = memo(DrawnField, isSameField);

function isSameField(before: MeasureFieldProps, now: MeasureFieldProps): boolean {
  return before.issue === now.issue && isSame(before.field, now.field);
}

function DrawnField({ field, issue }: MeasureFieldProps) {
  const units = useView((view) => view.units);
  return (
    <QuantityField
      label={field.label}
      measure={measureOf(field.kind, units)}
      value={field.value}
      note={field.note}
      complaint={issue === undefined ? null : issueWords(issue, units)}
      onPreview={(value) => previewEdit(field.edit(value))}
      onCommit={(value) => makeEdit(field.edited, field.edit(value))}
      onCancel={cancelPreview}
    />
  );
}
