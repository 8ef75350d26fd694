import { useAnswers } from '../../engine/answers.ts';
import { CAMERA_KEYS } from '../../view/keys.ts';
import { type Camera, lookFrom, show, toggleCut, toggleMetacentre, useView } from '../../view/view.ts';
import { CutSlider } from './CutSlider.tsx';
import { SavePicture } from './SavePicture.tsx';

const CAMERAS: readonly { readonly camera: Exclude<Camera, 'free'>; readonly text: string }[] = [
  { camera: 'side', text: 'Side' },
  { camera: 'top', text: 'Top' },
  { camera: 'front', text: 'Front' },
  { camera: 'waterline', text: 'Waterline' },
  { camera: 'below', text: 'From below' },
];

/** What is shown and from where, in words; each has a key that does the same. */
export function ViewBar() {
  const camera = useView((view) => view.camera);
  const shown = useView((view) => view.shown);
  const metacentre = useView((view) => view.metacentre);
  const isCut = useView((view) => view.cut !== null);
  const links = useAnswers((answers) => answers.lastGood.bait.links);
  return (
    <div className="view-bar">
      <fieldset>
        <legend className="visually-hidden">Shown</legend>
        <Word pressed={shown === 'whole'} keys="0" text="Whole bait" onPress={() => show('whole')} />
        {links?.map(({ index, name }) => (
          <Word
            key={index}
            pressed={shown === index}
            keys={String(index + 1)}
            text={`${index + 1} ${name}`}
            onPress={() => show(index)}
          />
        ))}
      </fieldset>
      <fieldset>
        <legend className="visually-hidden">Seen from</legend>
        {CAMERAS.map(({ camera: from, text }) => (
          <Word
            key={from}
            pressed={camera === from}
            keys={CAMERA_KEYS[from]}
            text={text}
            onPress={() => lookFrom(from)}
          />
        ))}
      </fieldset>
      <fieldset>
        <legend className="visually-hidden">Marked</legend>
        <Word pressed={metacentre} keys="m" text="Metacentre" onPress={toggleMetacentre} />
      </fieldset>
      <fieldset className="cut-away">
        <legend className="visually-hidden">Inside</legend>
        <Word pressed={isCut} keys="c" text="Cut away" onPress={toggleCut} />
        {isCut && <CutSlider />}
      </fieldset>
      <SavePicture />
    </div>
  );
}

interface WordProps {
  readonly pressed: boolean;
  readonly keys: string;
  readonly text: string;
  onPress(): void;
}

function Word({ pressed, keys, text, onPress }: WordProps) {
  return (
    <button
      type="button"
      aria-pressed={pressed}
      aria-keyshortcuts={keys}
      title={`Key ${keys.toUpperCase()}`}
      onClick={onPress}
    >
      {text}
    </button>
  );
}
