import { useIsApart } from './use-is-apart.ts';

/** Says in the tub that the picture is no longer that of a bait in one piece; as a mark it is in saved pictures too. */
export function ApartNote() {
  if (!useIsApart()) return null;
  return (
    <p className="mark apart-note">
      <span>pulled apart, drawn at the whole bait’s attitude</span>
    </p>
  );
}
