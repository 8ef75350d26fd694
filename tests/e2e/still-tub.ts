import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { inject, onTestFinished } from 'vitest';
import { type Picture, readPng } from './read-png.ts';

/** The page with its water still. */
export interface Tub {
  readonly page: Page;
  readonly water: Locator;
  /** What the page complained of. */
  readonly complaints: readonly string[];
}

/** Opens the page with the water still, and waits until the tub has been drawn. */
export async function openTubIn(browser: Browser, settings: BrowserContextOptions = {}): Promise<Tub> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    ...settings,
  });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  await page.goto(inject('url'));
  await page.locator('.mark.link-number').first().waitFor();
  return { page, water: page.locator('.water'), complaints };
}

/** Waits until what is drawn is of the newest design, at full detail. */
export async function drawnInFull({ page }: Tub): Promise<void> {
  await page.locator('[data-fresh="true"][data-detail="full"]').waitFor();
}

/** Chooses from one of the margin's lists, and leaves it with the keys of the view in force again. */
export async function choose({ page }: Tub, label: string, option: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`${label}$`) }).click();
  await page.getByRole('option', { name: option }).click();
  await page.locator('h1').click();
}

/** A picture of the tub once two in a row are the same: text, layout and drawing have come to rest. */
export async function settled({ water }: Tub): Promise<Picture> {
  let before = await water.screenshot();
  for (let attempt = 0; attempt < 40; attempt++) {
    const now = await water.screenshot();
    if (now.equals(before)) return readPng(now);
    before = now;
  }
  throw new Error('the tub does not come to rest');
}

/** How unlike two colours are: the sum over their channels. */
export const unlike = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + Math.abs(value - b[i]), 0);
