import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, inject } from 'vitest';
import { launch } from '../support/browser.ts';

/**
 * Opens pages for one test file. After each test they are closed, and none may have failed, complained, or asked anyone
 * outside. before: what is to happen to a page before it is loaded.
 */
export function watchedPages() {
  const url = inject('url');
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());
  let wrongs: string[] = [];
  let open: Page[] = [];
  afterEach(async () => {
    await Promise.all(open.map((page) => page.context().close()));
    expect(wrongs).toEqual([]);
    wrongs = [];
    open = [];
  });

  return async (options: BrowserContextOptions = {}, before?: (page: Page) => Promise<unknown>): Promise<Page> => {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      reducedMotion: 'reduce',
      ...options,
    });
    const page = await context.newPage();
    open.push(page);
    page.on('console', (message) => {
      if (message.type() === 'error') wrongs.push(`console: ${message.text()}`);
    });
    page.on('pageerror', (error) => wrongs.push(`error: ${error.message}`));
    page.on('request', (request) => {
      if (!request.url().startsWith(url) && !/^(data|blob):/.test(request.url())) wrongs.push(`asked ${request.url()}`);
    });
    await before?.(page);
    await page.goto(url);
    await settled(page);
    await page.getByLabel('Length, mm').waitFor();
    return page;
  };
}

/** Waits until all that will come of the newest design is there. */
export async function settled(page: Page): Promise<void> {
  await page.locator('.sheet[data-fresh=true][data-detail=full][data-done=true]').waitFor();
}

/** The words that can be seen there. */
export const textOf = async (place: Locator) => (await place.allInnerTexts()).join('\n');
