import { useState } from 'react';
import { type Sinking, timedDropWords } from '../../../sim/index.ts';
import { cancelPreview, makeEdit, previewEdit } from '../../document/commands.ts';
import { useAnswers } from '../../engine/answers.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { type MeasureKind, measureOf } from '../../view/measures.ts';
import { useView } from '../../view/view.ts';
import { type DropNumbers, withDropNumber, withoutDrop } from './drop.ts';

interface TimedDropProps {
  readonly setup: number;
  readonly sinking: Sinking;
  /** As it is worked out; null: none was timed. */
  readonly drop: DropNumbers | null;
}

const FIELDS: readonly { readonly key: keyof DropNumbers; readonly label: string; readonly kind: MeasureKind }[] = [
  { key: 'distance_mm', label: 'Dropped by', kind: 'length' },
  { key: 'time_s', label: 'Took', kind: 'time' },
  { key: 'net_wet_g', label: 'Weighed in the water', kind: 'mass' },
];

/** A foot is what most tubs have. */
const FOOT_MM = 304.8;

/**
 * A drop that the maker has timed narrows the band. Until a time is typed, how deep it was dropped and what it weighed are
 * this panel's own affair; with the time they go into the design, in one undo step.
 */
export function TimedDrop({ setup, sinking, drop }: TimedDropProps) {
  const units = useView((view) => view.units);
  const fit = useAnswers(({ lastGood }) => lastGood.bait.drop);
  const [early, setEarly] = useState<Partial<DropNumbers>>({});
  const numbers: DropNumbers = drop ?? {
    distance_mm: early.distance_mm ?? FOOT_MM,
    time_s: sinking.firstFoot[1],
    // a scale shows hundredths at best
    net_wet_g: early.net_wet_g ?? Number(sinking.netWet.toFixed(2)),
  };
  const edit = (key: keyof DropNumbers, value: number) => withDropNumber(setup, key, value, numbers);
  const isOwn = (key: keyof DropNumbers) => drop === null && key !== 'time_s';
  return (
    <div className="timed-drop">
      <h3>A timed drop</h3>
      <p className="note">
        Hold it just under, let go, and time it to a depth: the deeper the better. It stretches the drag until the fall
        takes as long.
      </p>
      <div className="drop-fields">
        {FIELDS.map(({ key, label, kind }) => (
          <QuantityField
            key={key}
            label={label}
            measure={measureOf(kind, units)}
            value={drop === null && key === 'time_s' ? null : numbers[key]}
            note={null}
            complaint={null}
            onPreview={(value) =>
              isOwn(key) ? setEarly((known) => ({ ...known, [key]: value })) : previewEdit(edit(key, value))
            }
            onCommit={(value) => {
              if (isOwn(key)) setEarly((known) => ({ ...known, [key]: value }));
              else makeEdit('the timed drop', edit(key, value));
            }}
            onCancel={cancelPreview}
          />
        ))}
      </div>
      {fit && <p>{timedDropWords(fit)}</p>}
      {drop !== null && (
        <button type="button" className="act lesser" onClick={() => makeEdit('the timed drop', withoutDrop(setup))}>
          Forget the drop
        </button>
      )}
    </div>
  );
}
