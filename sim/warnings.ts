/** Something the maker should know of; worst first where they are listed. */
export interface Warning {
  readonly code: string;
  /** The part it is about, in words: a link, a hole, an eye. */
  readonly where: string;
  readonly text: string;
}
