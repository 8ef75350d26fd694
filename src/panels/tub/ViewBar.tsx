import { useAnswers } from '../../engine/answers.ts';
import {
  APART_KEY,
  CAMERA_KEYS,
  CUT_KEY,
  FOLD_KEY,
  KEEP_OUTS_KEY,
  LET_GO_KEY,
  METACENTRE_KEY,
} from '../../view/keys.ts';
import {
  type Camera,
  lookFrom,
  pullApart,
  show,
  toggleCut,
  toggleFold,
  toggleKeepOuts,
  toggleLetGo,
  toggleMetacentre,
  useView,
} from '../../view/view.ts';
import { CutSlider } from './CutSlider.tsx';
import { FoldSlider } from './FoldSlider.tsx';
import { SavePicture } from './SavePicture.tsx';
import { useIsApart } from './use-is-apart.ts';

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
  const keepOuts = useView((view) => view.keepOuts);
  const isCut = useView((view) => view.cut !== null);
  const links = useAnswers((answers) => answers.lastGood.bait.links);
  const apart = useIsApart();
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
        {links !== undefined && links.length > 1 && (
          <Word
            pressed={apart}
            keys={APART_KEY}
            text="Apart"
            disabled={shown !== 'whole'}
            onPress={() => pullApart(!apart)}
          />
        )}
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
        <Word pressed={metacentre} keys={METACENTRE_KEY} text="Metacentre" onPress={toggleMetacentre} />
        <Word pressed={keepOuts} keys={KEEP_OUTS_KEY} text="Keep-outs" onPress={toggleKeepOuts} />
      </fieldset>
      <fieldset className="cut-away">
        <legend className="visually-hidden">Inside</legend>
        <Word pressed={isCut} keys={CUT_KEY} text="Cut away" onPress={toggleCut} />
        {isCut && <CutSlider />}
      </fieldset>
      {links !== undefined && links.length > 1 && <Joints disabled={shown !== 'whole'} />}
      <SavePicture />
    </div>
  );
}

/** The whole bait's joints in play: folded under a slider, or let go. */
function Joints({ disabled }: { readonly disabled: boolean }) {
  const bend = useView((view) => view.bend);
  return (
    <fieldset className="cut-away">
      <legend className="visually-hidden">Joints</legend>
      <Word
        pressed={!disabled && typeof bend === 'number'}
        keys={FOLD_KEY}
        text="Fold"
        disabled={disabled}
        onPress={toggleFold}
      />
      <Word
        pressed={!disabled && bend === 'loose'}
        keys={LET_GO_KEY}
        text="Let go"
        disabled={disabled}
        onPress={toggleLetGo}
      />
      {!disabled && bend !== null && <FoldSlider />}
    </fieldset>
  );
}

interface WordProps {
  readonly pressed: boolean;
  readonly keys: string;
  readonly text: string;
  readonly disabled?: boolean;
  onPress(): void;
}

function Word({ pressed, keys, text, disabled = false, onPress }: WordProps) {
  return (
    <button
      type="button"
      aria-pressed={pressed}
      aria-keyshortcuts={keys}
      disabled={disabled}
      title={disabled ? 'Only with the whole bait' : `Key ${keys.toUpperCase()}`}
      onClick={onPress}
    >
      {text}
    </button>
  );
}
