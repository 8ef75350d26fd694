import type { Issue } from '../../../sim/index.ts';
import { useAnswers } from '../../engine/answers.ts';
import { issuesOf } from '../../engine/issues.ts';
import { useView } from '../../view/view.ts';
import { issueWords, pathWords } from './issue-words.ts';

/** More than this at once and none is mended. */
const SHOWN_ISSUES = 3;

/** Says why the picture is not of the numbers beside it. */
export function Trouble() {
  const answers = useAnswers((held) => held);
  if (answers.fault !== null) {
    return (
      <div className="trouble" role="alert">
        <h2>The sums broke</h2>
        <p>
          This is a fault of the program, not of your bait: {answers.fault}. Undo the last change, or load the page
          again.
        </p>
      </div>
    );
  }
  const issues = issuesOf(answers);
  if (issues.length === 0) return null;
  const rest = issues.slice(SHOWN_ISSUES);
  return (
    <div className="trouble" role="alert">
      <h2>{issues.length === 1 ? 'One thing to mend' : `${issues.length} things to mend`}</h2>
      <IssueList issues={issues.slice(0, SHOWN_ISSUES)} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length === 1 ? 'One more' : `${rest.length} more`}</summary>
          <IssueList issues={rest} />
        </details>
      )}
      <p className="note">What could not be worked out is shown as it last was, dimmed.</p>
    </div>
  );
}

function IssueList({ issues }: { readonly issues: readonly Issue[] }) {
  const units = useView((view) => view.units);
  return (
    <ul>
      {issues.map((issue) => (
        <li key={`${issue.path} ${issue.message}`}>
          <b>{pathWords(issue.path)}</b>: {issueWords(issue, units)}
        </li>
      ))}
    </ul>
  );
}
