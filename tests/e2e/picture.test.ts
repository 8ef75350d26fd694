import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { launch } from '../support/browser.ts';
import { readPng } from './read-png.ts';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await page.goto(inject('url'));
  await page.locator('.mark.link-number').first().waitFor();
  await page.locator('[data-fresh="true"][data-detail="full"]').waitFor();
});
afterAll(() => browser.close());

async function saved(button: string) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), picture: readPng(readFileSync(await download.path())) };
}

test('a saved picture has the bait at twice the page’s pixels, its name and verdict under it on white', async () => {
  const { name, picture } = await saved('Save picture');
  expect(name).toBe('Slate Shad 140, slow-sink.png');
  const [width, height] = await page
    .locator('.water')
    .evaluate((element) => [element.clientWidth, element.clientHeight] as const);
  expect([picture.width, picture.height]).toEqual([2 * width, 2 * height + 112]);
  const middle = picture.at(width, height);
  // wood is redder than it is blue, water the other way round
  expect(middle[0]).toBeGreaterThan(middle[2] ?? 0);
  expect(picture.at(picture.width - 4, picture.height - 4).slice(0, 3)).toEqual([255, 255, 255]);
  const caption = Array.from({ length: 800 * 112 }, (_, i) => picture.at(i % 800, 2 * height + Math.floor(i / 800)));
  expect(caption.filter(([red = 255]) => red < 100).length).toBeGreaterThan(500);
});

test('what the page writes over the tub is in its picture too, sign and words', async () => {
  const note = page.locator('.beside-note');
  await page.getByRole('button', { name: /Beside$/ }).click();
  await page.getByRole('option', { name: 'topwater' }).click();
  await note.waitFor();
  await page.locator('[data-fresh="true"][data-done="true"]').waitFor();
  const tub = await page.locator('.water').boundingBox();
  const [sign, words] = [await note.locator('svg').boundingBox(), await note.locator('span').boundingBox()];
  if (!tub || !sign || !words) throw new Error('no note in the tub');
  const { picture } = await saved('Save picture');
  const darkIn = (box: typeof sign) => {
    const [width, height] = [Math.floor(2 * box.width), Math.floor(2 * box.height)];
    const [left, top] = [Math.round(2 * (box.x - tub.x)), Math.round(2 * (box.y - tub.y))];
    const pixels = Array.from({ length: width * height }, (_, i) =>
      picture.at(left + (i % width), top + Math.floor(i / width)),
    );
    return pixels.filter(([red]) => red < 160).length / pixels.length;
  };
  // letters cover a sixth of their line or so, the sign is mostly pale inside
  expect(darkIn(words)).toBeGreaterThan(0.05);
  expect(darkIn(words)).toBeLessThan(0.5);
  expect(darkIn(sign)).toBeGreaterThan(0.05);
  expect(darkIn({ ...words, y: words.y + words.height + 2 })).toBeLessThan(0.01);
});

test('on clear ground the paper is left out', async () => {
  const { picture } = await saved('Clear ground');
  expect(picture.at(picture.width - 4, picture.height - 4)[3]).toBe(0);
});

test('what is saved is said to those who listen', async () => {
  await page.getByText('Saved as Slate Shad 140, slow-sink.png').waitFor({ state: 'attached' });
});
