import { type AdvisedBaitAnswers, restated, withEdit } from '../../../sim/index.ts';
import { makeEdit } from '../../document/commands.ts';
import { useAnswers } from '../../engine/answers.ts';
import { pick, useView } from '../../view/view.ts';
import { warnedPart } from './warned-part.ts';
import { warningsToMind } from './warnings-to-mind.ts';

type Warning = AdvisedBaitAnswers['warnings'][number];

/** More than three and none is read. */
const SHOWN_WARNINGS = 3;

/** What to mind, worst first, each with its part to pick and, where one is known, the edit that cures it. */
export function Warnings() {
  const all = useAnswers((answers) => answers.lastGood.bait.allWarnings);
  const early = useAnswers((answers) => answers.lastGood.bait.warnings);
  const warnings = warningsToMind({ ...(all && { allWarnings: all }), ...(early && { warnings: early }) });
  if (warnings.length === 0) return null;
  const lesser = warnings.slice(SHOWN_WARNINGS);
  return (
    <div className="warnings">
      <h3>Mind</h3>
      <WarningList warnings={warnings.slice(0, SHOWN_WARNINGS)} />
      {lesser.length > 0 && (
        <details>
          <summary>{lesser.length === 1 ? 'A lesser one' : `${lesser.length} lesser ones`}</summary>
          <WarningList warnings={lesser} />
        </details>
      )}
    </div>
  );
}

function WarningList({ warnings }: { readonly warnings: readonly Warning[] }) {
  return (
    <ul>
      {warnings.map((warning) => (
        <li key={`${warning.code} ${warning.where} ${warning.text}`}>
          <Words warning={warning} />
          {warning.fix !== null && <Cure fix={warning.fix} />}
        </li>
      ))}
    </ul>
  );
}

/** What it says; where there is a part to pick, a press on it picks that out. */
function Words({ warning }: { readonly warning: Warning }) {
  const units = useView((view) => view.units);
  const hardware = useAnswers((answers) => answers.lastGood.bait.hardware);
  const part = hardware === undefined ? null : warnedPart(warning, hardware);
  const isPicked = useView((view) => part !== null && view.selected === part);
  const words = restated(warning.text, units);
  if (part === null) return words;
  return (
    <button type="button" className="pickable" aria-pressed={isPicked} onClick={() => pick(isPicked ? null : part)}>
      {words}
    </button>
  );
}

/** Makes the edit. Not while the design has moved on: it was worked out for the one before. */
function Cure({ fix }: { readonly fix: NonNullable<Warning['fix']> }) {
  const units = useView((view) => view.units);
  const isCurrent = useAnswers(({ fresh, bait }) => fresh && bait.allWarnings?.status === 'ok');
  return (
    <button
      type="button"
      className="cure"
      disabled={!isCurrent}
      onClick={() => makeEdit(fix.says, (file) => withEdit(file, fix))}
    >
      Do it: {restated(fix.says, units)}
    </button>
  );
}
