import type { Issue } from '../../../sim/index.ts';
import { cancelPreview, makeEdit, previewEdit } from '../../document/commands.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { measureOf } from '../../view/measures.ts';
import { useView } from '../../view/view.ts';
import { issueWords } from '../trouble/issue-words.ts';
import type { Field } from './field.ts';

/** One number of the design, in the units shown, with what stands against it. */
export function MeasureField({ field, issue }: { readonly field: Field; readonly issue: Issue | undefined }) {
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
