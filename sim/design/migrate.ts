import type { Outcome } from '../flow/outcome.ts';
import { failed, ok } from '../flow/outcome.ts';
import { FORMAT } from './file.ts';
import { given } from './given.ts';

/** A design of some version as it came out of JSON: nothing in it is checked yet but `format` and `version`. */
export type LooseDesign = Readonly<Record<string, unknown>>;

/**
 * One step from a version to the next. It moves what it recognises and leaves the rest as it is: the schema, which
 * runs after the last step, complains of the rest. The chain sets `version` itself.
 */
export interface Migration {
  /** What the step did to the file, in words: "hook sizes became masses". */
  readonly name: string;
  readonly step: (design: LooseDesign) => LooseDesign;
}

/** Every step ever made, oldest first: the first leads from version 1 to 2. Version 1 is the newest yet. */
export const MIGRATIONS: readonly Migration[] = [];

/**
 * Phase 2 of reading: checks `format` and `version`, then brings an older design up to the newest version, which is
 * one more than there are steps. A newer design is refused, never guessed at.
 */
export function migrate(value: unknown, steps: readonly Migration[] = MIGRATIONS): Outcome<LooseDesign> {
  const newest = steps.length + 1;
  if (!isLooseDesign(value)) {
    return refuse('design/wrong-type', '', `a design (an object in braces) is wanted, got ${given(value)}`);
  }
  if (value.format !== FORMAT) {
    const message = `"${FORMAT}" is wanted, got ${given(value.format)}`;
    return refuse('design/format', 'format', message, 'choose a design file made by Floatwright');
  }
  const version = value.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return refuse('design/version', 'version', `a whole number from 1 to ${newest} is wanted, got ${given(version)}`);
  }
  if (version > newest) {
    const message = `made by a newer Floatwright: version ${version}, this one reads up to ${newest}`;
    return refuse('design/newer-version', 'version', message, 'update Floatwright to open it');
  }
  const design = steps.slice(version - 1).reduce<LooseDesign>((older, { step }) => step(older), value);
  return ok(version === newest ? design : { ...design, version: newest });
}

function isLooseDesign(value: unknown): value is LooseDesign {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuse(code: string, path: string, message: string, hint?: string): Outcome<never> {
  return failed([hint === undefined ? { code, path, message } : { code, path, message, hint }]);
}
