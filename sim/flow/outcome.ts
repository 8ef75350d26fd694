/** One thing that is wrong: where, what was given, what is allowed, and the cure. */
export interface Issue {
  /** Stable and machine readable, such as `links/joint-outside-body`. */
  readonly code: string;
  /** The field of the design file it is about, such as `joints.1.x_mm`; empty for the whole file. */
  readonly path: string;
  /** What is wrong, with what was given and what is allowed; no full stop. */
  readonly message: string;
  /** The cure; begins with a verb. */
  readonly hint?: string;
}

/** What a stage gives: a value, or the issues that prevent it, or the stages it waits for. Failed is not empty. */
export type Outcome<Value> =
  | { readonly status: 'ok'; readonly value: Value }
  | { readonly status: 'failed'; readonly issues: readonly Issue[] }
  | { readonly status: 'blocked'; readonly by: readonly string[] };

/** Wraps a value as a good outcome. */
export function ok<Value>(value: Value): Outcome<Value> {
  return { status: 'ok', value };
}

/** Wraps one or more issues as a failed outcome. */
export function failed(issues: readonly Issue[]): Outcome<never> {
  return { status: 'failed', issues };
}

/** Thrown inside a stage for "this design cannot be done"; anything else thrown is a bug and is let through. */
export class SimError extends Error {
  readonly issues: readonly Issue[];
  constructor(issues: readonly Issue[]) {
    super(issues.map(issueLine).join('\n'));
    this.name = 'SimError';
    this.issues = issues;
  }
}

/** An issue as one line of text: `path: message (hint)`. */
export function issueLine(issue: Issue): string {
  const where = issue.path === '' ? '' : `${issue.path}: `;
  const cure = issue.hint === undefined ? '' : ` (${issue.hint})`;
  return `${where}${issue.message}${cure}`;
}
