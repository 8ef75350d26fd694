/** What a command reads and writes; the process has one, tests make their own. */
export interface Terminal {
  /** Standard input. */
  readonly input: AsyncIterable<Uint8Array>;
  /** Standard output: reports only. */
  print(text: string): void;
  /** Standard error: one line. */
  complain(line: string): void;
}

/** A text as one line that cannot move a cursor: control characters, which a file or a name may hold, are spelled out. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]/gu, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
