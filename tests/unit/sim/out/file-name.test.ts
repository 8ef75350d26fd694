import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fileNamePart } from '../../../../sim/out/file-name.ts';

describe('a link name as part of a file name', () => {
  test.each([
    ['head', 'head'],
    ['tail, with fin', 'tail, with fin'],
    ['Schwanz größer', 'Schwanz größer'],
    ['尾', '尾'],
    ['head/middle', 'head-middle'],
    ['..', 'link'],
    ['../../etc/passwd', 'etc-passwd'],
    ['..\\..\\boot', 'boot'],
    ['C:\\tail', 'C-tail'],
    ['.hidden', 'hidden'],
    ['tail.', 'tail'],
    ['what? "this" <one>', 'what- -this- -one'],
    ['a\tb', 'a-b'],
    ['tail\u202egnp.exe', 'tail-gnp.exe'],
    ['', 'link'],
    ['///', 'link'],
  ])('%j becomes %j', (name, wanted) => {
    expect(fileNamePart(name, 'link')).toBe(wanted);
  });

  test('is the same for a letter with its accent and for the two apart', () => {
    expect(fileNamePart('ko\u0308der', 'link')).toBe(fileNamePart('k\u00f6der', 'link'));
  });

  test('is short enough for any file system, cut between letters', () => {
    const part = fileNamePart('魚'.repeat(200), 'link');
    expect(part).toBe('魚'.repeat(60));
    expect(new TextEncoder().encode(part).byteLength).toBe(180);
  });

  test('never climbs out of a folder, hides, or is empty, whatever the name', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const part = fileNamePart(name, 'link');
        expect(part).not.toMatch(/[/\\\p{Cc}\p{Cs}]|^[.\s-]|[.\s]$/u);
        expect(part.length).toBeGreaterThan(0);
      }),
    );
  });
});
