import { useIsApart } from './use-is-apart.ts';

/** Says in the tub that the picture is no longer that of a bait in one piece; as a mark it is in saved pictures too. */
export function ApartNote() {
  const apart = useIsApart();
  return (
    <p role="status" className={apart ? 'mark apart-note' : 'visually-hidden'}>
      {apart && <span>pulled apart, drawn at the whole bait’s attitude</span>}
    </p>
  );
}
