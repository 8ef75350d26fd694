import type { Issue } from '../../sim/index.ts';
import type { Answers } from './answers.ts';

/** Everything that stands against the design, each once, in the order in which it was found. */
export function issuesOf({ bait, links }: Pick<Answers, 'bait' | 'links'>): readonly Issue[] {
  const found = new Map<string, Issue>();
  for (const outcome of [...Object.values(bait), ...links.flatMap((link) => Object.values(link))]) {
    if (outcome?.status !== 'failed') continue;
    for (const issue of outcome.issues) found.set(`${issue.path} ${issue.message}`, issue);
  }
  return [...found.values()];
}

/**
 * The first issue of each field: of the field at the issue's very path, else of the one that it lies under, else of the
 * first that lies under it. An issue of a place that has no field is in no one's charge.
 */
export function issuesByField<Field extends { readonly paths: readonly string[] }>(
  issues: readonly Issue[],
  fields: readonly Field[],
): ReadonlyMap<Field, Issue> {
  const found = new Map<Field, Issue>();
  for (const issue of issues) {
    const field = fieldFor(issue.path, fields);
    if (field !== undefined && !found.has(field)) found.set(field, issue);
  }
  return found;
}

function fieldFor<Field extends { readonly paths: readonly string[] }>(
  path: string,
  fields: readonly Field[],
): Field | undefined {
  const at = (matches: (place: string) => boolean) => fields.find((field) => field.paths.some(matches));
  return (
    at((place) => place === path) ??
    at((place) => path.startsWith(`${place}.`)) ??
    // a whole joint or hole, but not a whole list or the whole file
    at((place) => /\.\d+$/.test(path) && place.startsWith(`${path}.`))
  );
}
