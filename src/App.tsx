import { lazy, type ReactNode, Suspense, useEffect } from 'react';
import { redo, undo } from './document/commands.ts';
import { firstAnswers, useAnswers } from './engine/answers.ts';
import { Ballast } from './panels/ballast/Ballast.tsx';
import { Columns } from './panels/columns/Columns.tsx';
import { Headline } from './panels/headline/Headline.tsx';
import { Joints } from './panels/joints/Joints.tsx';
import { Parts } from './panels/parts/Parts.tsx';
import { Roll } from './panels/roll/Roll.tsx';
import { SinkingPanel } from './panels/sinking/SinkingPanel.tsx';
import { TitleBlock } from './panels/title/TitleBlock.tsx';
import { Trouble } from './panels/trouble/Trouble.tsx';
import { Tub } from './panels/tub/Tub.tsx';
import { WholeRow } from './panels/whole/WholeRow.tsx';
import { useStillness } from './platform/reduced-motion.ts';
import { canDrawIn3d } from './platform/webgl.ts';
import { Boundary } from './ui/Boundary.tsx';
import { keyShortcut } from './view/keys.ts';

// the two heavy parts come after the first paint, and the picture after the first numbers: reading its program would
// hold up both
const Picture = lazy(async () => {
  await firstAnswers;
  if (!canDrawIn3d()) return { default: NoPicture };
  const { Scene } = await import('./scene/Scene.tsx');
  return { default: Scene };
});
const Margin = lazy(() => import('./panels/margin/Margin.tsx').then((module) => ({ default: module.Margin })));

function NoPicture() {
  return <p className="no-picture">No 3D here; the numbers below are the same.</p>;
}

/** One drawing sheet whose horizontal axis is the bait: tub, columns, whole bait, title block; the inputs in its margin. */
export function App({ onPreset }: { onPreset(key: string): void }) {
  const still = useStillness();
  useKeys();
  return (
    <div className="page">
      <header className="masthead">
        <h1>Floatwright</h1>
        <Headline />
        <a href="#design">Change the bait and its numbers</a>
        <a href="#ballast">See its ballast plan</a>
        <a href="#joints">See how its joints swing</a>
      </header>
      <Sheet>
        <Tub>
          <Boundary instead={<NoPicture />}>
            <Suspense fallback={<p className="no-picture">Filling the tub …</p>}>
              <Picture still={still} />
            </Suspense>
          </Boundary>
        </Tub>
        <Trouble />
        <Columns />
        <div className="foot">
          <WholeRow />
          <TitleBlock />
        </div>
      </Sheet>
      <aside className="margin" id="design" aria-label="The design">
        <Suspense fallback={<p>Laying out the numbers …</p>}>
          <Margin onPreset={onPreset} />
        </Suspense>
      </aside>
      <SinkingPanel />
      <Ballast />
      <Roll />
      <Joints />
      <Parts />
    </div>
  );
}

/** The frame of the drawing, which says how far the answers in it are. Its contents are not drawn anew with that. */
function Sheet({ children }: { readonly children: ReactNode }) {
  const fresh = useAnswers((answers) => answers.fresh);
  const detail = useAnswers((answers) => (answers.heldFor === 0 ? 'none' : answers.detail));
  const done = useAnswers((answers) => answers.done);
  return (
    <main className="sheet" data-fresh={fresh} data-detail={detail} data-done={done}>
      {children}
    </main>
  );
}

function useKeys() {
  const linkCount = useAnswers((answers) => answers.lastGood.links.length);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (isUndo(event)) {
        event.preventDefault();
        if (event.shiftKey || event.key.toLowerCase() === 'y') redo();
        else undo();
      } else {
        keyShortcut(event, linkCount);
      }
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [linkCount]);
}

/** Ctrl or Cmd with Z, with Shift and Z, or with Y. */
function isUndo(event: KeyboardEvent): boolean {
  return (event.ctrlKey || event.metaKey) && ['z', 'y'].includes(event.key.toLowerCase());
}
