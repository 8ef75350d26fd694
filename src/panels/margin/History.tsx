import { Button } from 'react-aria-components';
import { redo, undo } from '../../document/commands.ts';
import { useDocument, useHistory } from '../../document/store.ts';

/** Back and forth through the edits, each named for what it changed. */
export function History() {
  const edited = useDocument((document) => document.edited);
  const past = useHistory((history) => history.pastStates.length);
  const tried = useDocument((document) => document.tried);
  const future = useHistory((history) => history.futureStates.at(-1));
  return (
    <div className="history">
      <Button isDisabled={past === 0 && tried === null} onPress={undo}>
        {tried !== null ? 'Put back what is tried' : past === 0 ? 'Undo' : `Undo ${edited}`}
      </Button>
      <Button isDisabled={future === undefined} onPress={redo}>
        {future === undefined ? 'Redo' : `Redo ${future.edited ?? ''}`}
      </Button>
    </div>
  );
}
