import { type Cure, restated } from '../../../sim/index.ts';
import { makeProposed } from '../../document/commands.ts';
import { answersStore, useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { useView } from '../../view/view.ts';
import { cureWords } from './ballast-words.ts';
import { useFilledUp } from './filled-up.ts';
import { isComplete } from './plan-state.ts';

interface CuresProps {
  readonly link: number;
  readonly cures: readonly Cure[] | undefined;
  /** What it lacks hangs on its neighbour already, once pinned. */
  readonly isBorne: boolean;
}

/** Changes of which any one lets the link be ballasted, each with what follows, as they are found. */
export function Cures({ link, cures, isBorne }: CuresProps) {
  const isNow = useAnswers(({ fresh, links }) => fresh && links[link]?.cures?.status === 'ok');
  const isAll = useAnswers(isComplete);
  const shown = useFilledUp(cures, isNow, isAll);
  const borne = isBorne && <p>Joined up, its neighbour bears the rest over the pin.</p>;
  if (isNow && isAll && shown.length === 0) return borne || <p>None of the changes that were tried cures it.</p>;
  return (
    <div className="cures">
      {borne}
      {shown.length > 0 && (
        <>
          <h4>Any one of these cures it</h4>
          <ul>
            {shown.map(({ item, isOld }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the list only grows, and its first ones stay the first
              <CureLine key={i} cure={item} link={link} isOld={isOld} />
            ))}
          </ul>
        </>
      )}
      {!(isNow && isAll) && <p className="note">Trying changes that could cure it …</p>}
    </div>
  );
}

function CureLine({ cure, link, isOld }: { readonly cure: Cure; readonly link: number; readonly isOld: boolean }) {
  const units = useView((view) => view.units);
  const amounts = useAmounts();
  const id = `cure-${link}-${cure.kind}`;
  return (
    <li className={isOld ? 'awaited' : undefined}>
      <button
        type="button"
        className="act"
        aria-describedby={id}
        aria-disabled={isOld}
        onClick={({ currentTarget }) => {
          // one of a design before has been worked out from other numbers
          const { fresh, links } = answersStore.getState();
          const known = links[link]?.cures;
          if (!fresh || known?.status !== 'ok' || !known.value.includes(cure)) return;
          // the button goes with what it cures
          currentTarget.closest('.plan-link')?.querySelector('h3')?.focus({ preventScroll: true });
          makeProposed(cure.edit);
        }}
      >
        Do it: {restated(cure.edit.says, units)}
      </button>
      <span id={id}>Then: {cureWords(cure, amounts)}.</span>
    </li>
  );
}
