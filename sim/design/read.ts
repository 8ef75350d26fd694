import type { Outcome } from '../flow/outcome.ts';
import { failed, ok } from '../flow/outcome.ts';
import type { DesignFile } from './file.ts';
import { parseJson, unsafeKeys } from './json.ts';
import { migrate } from './migrate.ts';
import { designFileSchema } from './schema.ts';
import { complaint, issuesFromSchema } from './schema-issues.ts';

/**
 * Reads a design file: text or bytes, to JSON, to the newest version, to the schema. Gives the file form with its
 * expressions as written and its fields in the order of the schema, or every problem of the first of these phases
 * that finds any. Never throws on bad input. Whether the numbers make a bait is for `evaluateDesign`.
 */
export function readDesignText(text: string | Uint8Array): Outcome<DesignFile> {
  const json = parseJson(text);
  return json.status === 'ok' ? checkVersionAndShape(json.value) : json;
}

/** As `readDesignText`, for JSON that is already parsed: from a shared link, a message, the browser's store. */
export function checkDesignFile(value: unknown): Outcome<DesignFile> {
  const unsafe = unsafeKeys(value);
  return unsafe === null ? checkVersionAndShape(value) : failed([unsafe]);
}

function checkVersionAndShape(value: unknown): Outcome<DesignFile> {
  const newest = migrate(value);
  if (newest.status !== 'ok') return newest;
  const checked = designFileSchema.safeParse(newest.value, { error: complaint, reportInput: true });
  return checked.success ? ok(checked.data) : failed(issuesFromSchema(checked.error.issues));
}
