/** What the command ends with. */
export const EXIT = {
  done: 0,
  /** Done, but a stated target is missed and --strict was given. */
  targetMissed: 1,
  /** Bad input or usage; the reasons are on standard error. */
  refused: 2,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Ends a command with reasons a maker can act on, each on one line. Anything else thrown is a bug. */
export class Refusal extends Error {
  readonly reasons: readonly string[];
  constructor(reasons: readonly string[]) {
    super(reasons.join('\n'));
    this.name = 'Refusal';
    this.reasons = reasons;
  }
}

/** A refusal for a single reason: `where: what is wrong (cure)`. */
export function refusal(where: string, what: string, cure?: string): Refusal {
  return new Refusal([`${where}: ${what}${cure === undefined ? '' : ` (${cure})`}`]);
}

/** The system's word for a failure of a file, in words. */
export function systemWords(fault: unknown): string {
  const code = fault instanceof Error && 'code' in fault ? String(fault.code) : '';
  return SYSTEM_WORDS[code] ?? (code === '' ? 'the system gives no reason' : `the system says ${code}`);
}

const SYSTEM_WORDS: Readonly<Record<string, string>> = {
  EACCES: 'no permission',
  EBUSY: 'it is in use',
  EDQUOT: 'the quota is used up',
  EEXIST: 'a file of that name is in the way',
  EISDIR: 'it is a folder',
  ELOOP: 'its links go round in a circle',
  EMFILE: 'too many files are open',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'there is no such file or folder',
  ENOSPC: 'no space is left',
  ENOTDIR: 'part of the path is a file, not a folder',
  EPERM: 'not permitted',
  EROFS: 'nothing can be written there',
};
