import { SimError } from '../flow/outcome.ts';
import type { DesignFile } from './file.ts';
import { checkDesignFile } from './read.ts';

/**
 * A design file as text: fields in the order of the schema, two spaces of indent, a line break at the end. The same
 * file always gives the same bytes, and reading them gives the file back. Throws `SimError` with every problem where
 * the file is not one that could be read again.
 */
export function writeDesignText(file: DesignFile): string {
  const checked = checkDesignFile(file);
  if (checked.status === 'failed') throw new SimError(checked.issues);
  const ordered = checked.status === 'ok' ? checked.value : file;
  return `${JSON.stringify(ordered, null, 2)}\n`;
}
