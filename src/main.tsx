import '@fontsource/ibm-plex-sans/latin-400.css';
import '@fontsource/ibm-plex-sans/latin-600.css';
import './styles/tokens.css';
import './styles/sheet.css';
import './styles/columns.css';
import './styles/margin.css';
import './styles/shop.css';
import './styles/parts.css';
import './styles/ballast.css';
import './styles/joints.css';
import './styles/roll.css';
import './styles/sinking.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { openDesign } from './document/commands.ts';
import { FIRST_PRESET, presets } from './document/presets.ts';
import { documentStore } from './document/store.ts';
import { answersStore } from './engine/answers.ts';
import { askBeside } from './engine/beside.ts';
import { startAsking } from './engine/start.ts';
import { pick, show, showBeside, viewStore } from './view/view.ts';

const asking = startAsking(answersStore, 'advise');

documentStore.subscribe(({ file, setup }, before) => {
  if (file === null || (file === before.file && setup === before.setup)) return;
  asking.changed(file, setup);
  const { beside } = viewStore.getState();
  if (beside === null) return;
  if (!file.setups.some(({ name }) => name === beside)) showBeside(null);
  // the one beside is now the one looked at: they change places
  else if (beside === setup) showBeside(before.setup);
  else askBeside(file, beside);
});

viewStore.subscribe(({ beside }, before) => {
  const { file } = documentStore.getState();
  if (file !== null && beside !== null && beside !== before.beside) askBeside(file, beside);
});

/** The demo bait asked for last: one that comes late must not push it aside. */
let wanted = '';

/** Opens a demo bait, with nothing of the one before still picked out. */
async function openPreset(key: string): Promise<void> {
  wanted = key;
  const file = await presets.find((preset) => preset.key === key)?.load();
  if (file === undefined || wanted !== key) return;
  show('whole');
  pick(null);
  showBeside(null);
  openDesign(file, key);
}

void openPreset(FIRST_PRESET);

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no place for the app: index.html must hold an element with id root');
createRoot(root).render(
  <StrictMode>
    <App onPreset={(key) => void openPreset(key)} />
  </StrictMode>,
);
