import { launch } from '../support/browser.ts';
import { serveApp } from '../support/serve-app.ts';
import { atMost, type Row, timeRow } from './rows.ts';
import type { Timing } from './timing.ts';

/** Steps of one number, one after the other, as a key held down gives them. */
const STEPS = 40;
/** The first few are not counted: their code is not compiled yet. */
const WARM = 10;
/** How long the page waits for the hand to rest before it asks for the full mesh: REST_MS of src/engine/asking.ts. */
const REST_MS = 120;

/** A number of the design that is stepped, as the margin names it, and what that asks for anew. */
const NUMBERS = [
  { label: 'Length', what: 'length' },
  { label: 'Height', what: 'height' },
] as const;

/** From a hand's step of a number in the real page to the new numbers standing in it, on the coarse and on the full mesh. */
export async function pageRows(): Promise<readonly Row[]> {
  const served = await serveApp(process.cwd());
  const browser = await launch();
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
    await page.goto(served.url);
    await page.locator('[data-fresh="true"][data-done="true"]').waitFor();
    const rows: Row[] = [];
    for (const { label, what } of NUMBERS) {
      const input = page.getByLabel(`${label}, mm`);
      const times = await input.evaluate(measureSteps, { steps: STEPS, rest_ms: REST_MS });
      rows.push(timeRow(`${what} stepped; to the numbers on the drag mesh`, timing(times.drag), 'ms', atMost(16)));
      rows.push(timeRow(`${what} stepped; to the numbers on the full mesh`, timing(times.full), 'ms', atMost(60)));
    }
    return rows;
  } finally {
    await browser.close();
    await served.close();
  }
}

function timing(all: readonly number[]): Timing {
  const sorted = all.slice(WARM).toSorted((one, other) => one - other);
  return { least: sorted[0], median: sorted[Math.floor(sorted.length / 2)] };
}

interface Times {
  readonly drag: number[];
  readonly full: number[];
}

/** Runs in the page. full: without the wait for the hand to rest. */
async function measureSteps(
  input: Element,
  { steps, rest_ms }: { readonly steps: number; readonly rest_ms: number },
): Promise<Times> {
  const sheet = document.querySelector<HTMLElement>('.sheet');
  if (sheet === null) throw new Error('no sheet on the page');
  const reached = (isThere: (seen: DOMStringMap) => boolean) =>
    new Promise<number>((resolve) => {
      const observer = new MutationObserver(() => {
        if (!isThere(sheet.dataset)) return;
        observer.disconnect();
        resolve(performance.now());
      });
      observer.observe(sheet, { attributes: true });
    });
  const times: Times = { drag: [], full: [] };
  for (let i = 0; i < steps; i++) {
    const start = performance.now();
    const drag = reached(({ fresh, detail }) => fresh === 'true' && detail === 'drag');
    const full = reached(({ fresh, detail }) => fresh === 'true' && detail === 'full');
    const done = reached(({ fresh, detail, done }) => fresh === 'true' && detail === 'full' && done === 'true');
    input.dispatchEvent(new KeyboardEvent('keydown', { key: i % 2 === 0 ? 'ArrowUp' : 'ArrowDown', bubbles: true }));
    times.drag.push((await drag) - start);
    times.full.push((await full) - start - rest_ms);
    await done;
    // the picture, drawn in software here, has the page to itself meanwhile
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  input.dispatchEvent(new KeyboardEvent('keyup', { key: 'ArrowUp', bubbles: true }));
  return times;
}
