/** File systems allow 255 bytes; the rest is left for a number in front, an ending, and a name while writing. */
const MOST_BYTES = 180;

/** What some file system, shell or archive forbids or reads as a path; controls, lone surrogates, reversals of writing. */
const UNSAFE = /[/\\:*?"<>|\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;
/** A leading dot hides a file or climbs a folder, a trailing dot or space is dropped by some systems. */
const ENDS = /^[\s.-]+|[\s.-]+$/gu;

/**
 * A maker's name for something, as a piece of a file name: readable, spaces and accents kept, never a path. Give what
 * stands in when nothing of the name is left.
 */
export function fileNamePart(name: string, otherwise: string): string {
  const safe = name.normalize('NFC').replace(UNSAFE, '-').replace(/\s+/gu, ' ').replace(ENDS, '');
  const short = withinBytes(safe, MOST_BYTES).replace(ENDS, '');
  return short === '' ? otherwise : short;
}

/** The longest beginning of a text that fits, cut between characters. */
function withinBytes(text: string, most: number): string {
  const encoder = new TextEncoder();
  let kept = '';
  let bytes = 0;
  for (const character of text) {
    bytes += encoder.encode(character).byteLength;
    if (bytes > most) break;
    kept += character;
  }
  return kept;
}
