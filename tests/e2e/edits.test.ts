import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launch } from '../support/browser.ts';

/** At every push; five hundred pass too, in a minute: FLOATWRIGHT_EDITS=500. */
const EDITS = Number(process.env.FLOATWRIGHT_EDITS ?? 150);

let browser: Browser;
let page: Page;
let cdp: CDPSession;

interface Counts {
  readonly live: Readonly<Record<string, number>>;
  readonly draws: number;
  readonly mostDraws: number;
}

declare global {
  interface Window {
    counted: Counts;
  }
}

beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage({ viewport: { width: 700, height: 500 }, reducedMotion: 'reduce' });
  await page.addInitScript(() => {
    const context = WebGL2RenderingContext.prototype as unknown as Record<string, (...given: unknown[]) => unknown>;
    const live: Record<string, number> = {};
    const counted = { live, draws: 0, mostDraws: 0 };
    for (const kind of ['Buffer', 'Texture', 'Program', 'VertexArray', 'Framebuffer']) {
      live[kind] = 0;
      const [create, remove] = [context[`create${kind}`], context[`delete${kind}`]];
      context[`create${kind}`] = function (...given) {
        live[kind] = (live[kind] ?? 0) + 1;
        return create?.apply(this, given);
      };
      context[`delete${kind}`] = function (...given) {
        if (given[0] != null) live[kind] = (live[kind] ?? 0) - 1;
        return remove?.apply(this, given);
      };
    }
    let inFrame = 0;
    for (const draw of ['drawElements', 'drawArrays']) {
      const original = context[draw];
      context[draw] = function (...given) {
        if (inFrame === 0)
          requestAnimationFrame(() => {
            inFrame = 0;
          });
        inFrame++;
        counted.draws++;
        counted.mostDraws = Math.max(counted.mostDraws, inFrame);
        return original?.apply(this, given);
      };
    }
    (window as unknown as { counted: Counts }).counted = counted;
  });
  await page.goto(inject('url'));
  await page.locator('.mark.link-number').first().waitFor();
  await fresh();
  cdp = await page.context().newCDPSession(page);
});
afterAll(() => browser.close());

async function fresh(): Promise<void> {
  await page.locator('[data-fresh="true"][data-detail="full"]').waitFor();
}

/** Edits of the length, each another one, up and down again. */
async function edit(times: number): Promise<void> {
  const length = page.getByRole('textbox', { name: 'Length' });
  await length.focus();
  for (let i = 0; i < times; i++) await length.press(i % 2 === 0 ? 'ArrowUp' : 'ArrowDown');
  await fresh();
}

async function measured() {
  // what is fresh is on the graphics card once it has been drawn
  await page.evaluate(async () => {
    for (let i = 0; i < 20; i++) await new Promise((done) => requestAnimationFrame(done));
  });
  await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize } = (await cdp.send('Runtime.getHeapUsage')) as { usedSize: number };
  return { heap: usedSize, ...(await page.evaluate(() => window.counted)) };
}

test('edits by the hundred leave no more behind in memory or on the graphics card than a few do', {
  timeout: 240_000,
}, async () => {
  await edit(20);
  const before = await measured();
  await edit(EDITS);
  const after = await measured();
  expect(after.draws).toBeGreaterThan(before.draws);
  expect(after.live).toEqual(before.live);
  // the history of edits shares all but what was edited: some kilobytes each at most
  expect(after.heap - before.heap).toBeLessThan(2e6 + 8e3 * EDITS);
});

test('a frame takes at most 150 draw calls', async () => {
  const { mostDraws } = await measured();
  expect(mostDraws).toBeGreaterThan(5);
  expect(mostDraws).toBeLessThanOrEqual(150);
});
