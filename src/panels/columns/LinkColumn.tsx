import { type Issue, type LinkSpec, linkVerdict } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { useAmounts } from '../../view/amounts.ts';
import { show, useView } from '../../view/view.ts';
import { Numbers } from '../numbers/Numbers.tsx';
import { OtherRests } from '../numbers/OtherRests.tsx';
import { StateMark } from '../numbers/StateMark.tsx';
import { issueWords } from '../trouble/issue-words.ts';

/** What one link does when it floats alone, hooks hung: the verdict first, then its few numbers. */
export function LinkColumn({ spec }: { readonly spec: LinkSpec }) {
  const { index, name, span } = spec;
  const outcome = useAnswers((answers) => answers.links[index]?.float);
  const before = useAnswers((answers) => answers.lastGood.links[index]?.float);
  const known = useAnswers((answers) => answers.lastGood.links[index]?.accuracy);
  const attitudes = useAnswers((answers) => answers.lastGood.links[index]?.attitudes);
  const isAwaited = useAnswers((answers) => answers.links[index]?.attitudes?.status !== 'ok');
  const shown = useView((view) => view.shown);
  const amounts = useAmounts();
  const float = outcome?.status === 'ok' ? outcome.value : before;
  const isOld = outcome?.status !== 'ok';
  const alone = shown === index;
  return (
    <section
      className={`link${isOld ? ' old' : ''}${alone ? ' alone' : ''}`}
      style={{ gridColumnStart: `link-${index}` }}
      aria-labelledby={`link-${index}`}
    >
      <h2 id={`link-${index}`}>
        <button type="button" aria-pressed={alone} onClick={() => show(alone ? 'whole' : index)}>
          <span className="ordinal">{index + 1}</span> {name}
        </button>
      </h2>
      <div>
        {outcome?.status === 'failed' && <Reasons issues={outcome.issues} />}
        {float === undefined ? (
          <p className="verdict">Not worked out yet</p>
        ) : (
          <>
            <p className="verdict">
              <StateMark state={float.state} />
              <span>{linkVerdict(name, float, known?.digits, amounts)}</span>
            </p>
            <OtherRests of={index} attitudes={attitudes} float={float} isOld={isAwaited} />
          </>
        )}
      </div>
      {float === undefined ? <div /> : <Numbers float={float} accuracy={known} />}
      <p className="span">
        {amounts.ruled(span[0])} to {amounts.ruled(span[1])}
      </p>
    </section>
  );
}

function Reasons({ issues }: { readonly issues: readonly Issue[] }) {
  const units = useView((view) => view.units);
  return (
    <ul className="complaints">
      {issues.map((issue) => (
        <li key={`${issue.path} ${issue.message}`}>{issueWords(issue, units)}</li>
      ))}
    </ul>
  );
}
