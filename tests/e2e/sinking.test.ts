import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { settled, textOf, watchedPages } from './watched-pages.ts';

const openPage = watchedPages();

const section = (page: Page) => page.getByRole('region', { name: 'Sinking', exact: true });
const history = (page: Page) => page.locator('.history').getByRole('button');

test('A setup that sinks is told with its times; one that floats has no word of it', async () => {
  const page = await openPage();
  const words = await textOf(section(page));
  expect(words).toMatch(/First foot\s+\d\.\d s \(\d\.\d–\d\.\d\)/);
  expect(words).toMatch(/Steady speed\s+\d+ mm\/s \(\d+–\d+\)/);
  await expect(page.getByRole('img', { name: /^Depth over time: a foot in \d/ }).isVisible()).resolves.toBe(true);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(wide).toBe(0);
  await page.getByRole('button', { name: /Setup$/ }).click();
  await page.getByRole('option', { name: 'topwater' }).click();
  await settled(page);
  expect(await section(page).count()).toBe(0);
});

test('A drop that is timed narrows the band, is one step of the history, and can be forgotten', async () => {
  const page = await openPage();
  const foot = () => textOf(section(page).locator('dd').first());
  const before = await foot();
  await section(page).getByLabel('Took, s').fill('3.0');
  await section(page).getByLabel('Took, s').press('Enter');
  await settled(page);
  expect(await foot()).toBe('3.0 s (2.8–3.2)');
  expect(await textOf(section(page))).toContain('The timed drop makes its drag 0.68 times');
  await history(page).first().click();
  await settled(page);
  expect(await foot()).toBe(before);
});

test('It sinks in the tub when it is let go, and comes back', async () => {
  const page = await openPage({ viewport: { width: 390, height: 844 } });
  const mark = page.locator('.mark', { hasText: /^G$/ }).first();
  await mark.waitFor();
  const height = () =>
    mark.evaluate((element) => {
      const tub = document.querySelector('.water')?.getBoundingClientRect().top ?? 0;
      return element.getBoundingClientRect().top - tub;
    });
  const rest = await height();
  const button = section(page).getByRole('button', { name: 'Let it sink' });
  await button.click();
  await expect.poll(height, { timeout: 20_000 }).toBeGreaterThan(rest + 5);
  await expect.poll(() => button.getAttribute('aria-pressed'), { timeout: 20_000 }).toBe('false');
  await expect.poll(async () => Math.abs((await height()) - rest), { timeout: 20_000 }).toBeLessThan(1);
});
