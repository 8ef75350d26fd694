import type { Issue } from '../../../sim/index.ts';
import { cancelPreview, makeEdit, previewEdit } from '../../document/commands.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { measureOf } from '../../view/measures.ts';
import { useView } from '../../view/view.ts';
import { issueWords } from '../trouble/issue-words.ts';
import type { Field } from './fields.ts';

/** One number of the design, in the units shown, with what stands against it. */
export function MeasureField({ field, issue }: { readonly field: Field; readonly issue: Issue | undefined }) {
  const units = useView((view) => view.units);
  const measure = measureOf(field.kind, units);
  return (
    <QuantityField
      label={field.label}
      unit={measure.unit}
      value={field.value === null ? null : measure.shown(field.value)}
      digits={measure.digits}
      step={measure.step}
      note={field.note}
      complaint={issue === undefined ? null : issueWords(issue, units)}
      onPreview={(shown) => previewEdit(field.edit(measure.stored(shown)))}
      onCommit={(shown) => makeEdit(field.edited, field.edit(measure.stored(shown)))}
      onCancel={cancelPreview}
    />
  );
}
