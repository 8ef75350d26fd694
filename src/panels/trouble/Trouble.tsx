import { useAnswers } from '../../engine/answers.ts';
import { issuesOf } from '../../engine/issues.ts';

/** More than this is read field by field in the margin. */
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
  return (
    <div className="trouble" role="alert">
      <h2>{issues.length === 1 ? 'One thing to mend' : `${issues.length} things to mend`}</h2>
      <ul>
        {issues.slice(0, SHOWN_ISSUES).map((issue) => (
          <li key={`${issue.path} ${issue.message}`}>
            {issue.message}
            {issue.hint === undefined ? '' : `: ${issue.hint}`}
          </li>
        ))}
      </ul>
      <p className="note">
        {issues.length > SHOWN_ISSUES ? 'The rest stand beside their numbers. ' : ''}What could not be worked out is
        shown as it last was, dimmed.
      </p>
    </div>
  );
}
