import { mkdirSync, writeFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { FIRST_PRESET, presets } from '../../src/document/presets.ts';
import { launch } from '../support/browser.ts';
import { serveApp } from '../support/serve-app.ts';

/** The page as the README shows it, and a sheet of every demo bait from everywhere, to be looked over by eye. */
const README_PICTURE = 'tests/pictures/slate-shad-140.png';
const SHEET_FOLDER = 'dist/pictures';

/** What is done to the page before each column's picture, by its own keys; what is undone after it. */
const VIEWS: readonly { readonly name: string; readonly keys: readonly string[]; readonly undo?: readonly string[] }[] =
  [
    { name: 'side', keys: ['s'] },
    { name: 'top', keys: ['t'] },
    { name: 'front', keys: ['f'] },
    { name: 'waterline', keys: ['w'] },
    { name: 'from below', keys: ['b'] },
    { name: 'cut away', keys: ['s', 'c'], undo: ['c'] },
    { name: 'keep-outs', keys: ['s', 'k'], undo: ['k'] },
    { name: 'pulled apart', keys: ['w', 'a'], undo: ['a'] },
    { name: 'metacentre', keys: ['s', 'm'], undo: ['m'] },
    { name: 'first link', keys: ['s', '1'], undo: ['0'] },
  ];
const BESIDE = 'beside';

/** Long enough for the float to ease and the page to be drawn in software. */
const SETTLED_MS = 700;

async function main(): Promise<void> {
  const served = await serveApp(process.cwd());
  const browser = await launch();
  try {
    mkdirSync(SHEET_FOLDER, { recursive: true });
    await pictureForReadme(browser, served.url);
    await contactSheet(browser, served.url);
  } finally {
    await browser.close();
    await served.close();
  }
}

async function openPage(browser: Browser, url: string, width: number, height: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height }, reducedMotion: 'reduce' });
  await page.goto(url);
  await workedOut(page);
  return page;
}

async function workedOut(page: Page): Promise<void> {
  await page.locator('[data-fresh="true"][data-detail="full"][data-done="true"]').waitFor();
  await page.locator('.mark.link-number').first().waitFor();
  await page.waitForTimeout(SETTLED_MS);
}

/** Chooses from one of the margin's lists: what has this name, or the last. */
async function choose(page: Page, label: string, name?: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`${label}$`) }).click();
  const options = page.getByRole('option', name === undefined ? {} : { name });
  await options.last().click();
  await page.locator('h1').click();
}

async function pictureForReadme(browser: Browser, url: string): Promise<void> {
  const page = await openPage(browser, url, 1200, 760);
  await choose(page, 'Setup', 'topwater');
  await workedOut(page);
  await page.screenshot({ path: README_PICTURE });
  console.log(`${README_PICTURE}: the demo ${FIRST_PRESET}`);
  await page.close();
}

async function contactSheet(browser: Browser, url: string): Promise<void> {
  const page = await openPage(browser, url, 1000, 900);
  const rows: string[] = [];
  for (const { title } of presets) {
    if ((await page.getByRole('button', { name: /Bait$/ }).textContent())?.includes(title) !== true) {
      await choose(page, 'Bait', title);
    }
    await workedOut(page);
    const cells: string[] = [];
    const take = async (name: string) => {
      await page.waitForTimeout(SETTLED_MS);
      const picture = (await page.locator('.water').screenshot()).toString('base64');
      cells.push(`<figure><img src="data:image/png;base64,${picture}"><figcaption>${name}</figcaption></figure>`);
    };
    for (const { name, keys, undo = [] } of VIEWS) {
      for (const key of keys) await page.keyboard.press(key);
      await take(name);
      for (const key of undo) await page.keyboard.press(key);
    }
    await page.keyboard.press('s');
    await choose(page, 'Beside');
    await page.locator('.beside-note').waitFor();
    await take(BESIDE);
    rows.push(`<h2>${title}</h2><div>${cells.join('')}</div>`);
    console.log(`${title}: ${cells.length} views`);
  }
  await page.setContent(`<style>${SHEET_STYLE}</style>${rows.join('')}`);
  const path = `${SHEET_FOLDER}/contact-sheet.png`;
  writeFileSync(path, await page.locator('body').screenshot());
  console.log(path);
  await page.close();
}

const SHEET_STYLE = `
  body { width: 2000px; margin: 12px; font: 14px sans-serif; }
  div { display: grid; grid-template-columns: repeat(5, 1fr); gap: 8px; }
  img { width: 100%; } figure { margin: 0; }
`;

await main();
