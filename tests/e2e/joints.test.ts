import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type DesignFile, formatAngle } from '../../sim/index.ts';
import { answersOf } from '../support/worked-bait.ts';
import { settled, textOf, watchedPages } from './watched-pages.ts';

/** The demo that the page opens with; any other design takes its place where a test needs one. */
const FIRST = 'slate-shad-140';
const FOLDER = new URL('../../presets/', import.meta.url);
const preset = (key: string): DesignFile => JSON.parse(readFileSync(new URL(`${key}.json`, FOLDER), 'utf8'));

const openWatched = watchedPages();

async function openPage(key: string, options: BrowserContextOptions = {}): Promise<Page> {
  return openWatched(options, (page) =>
    page.route(`**/${FIRST}-*.js`, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: `export default ${JSON.stringify(preset(key))}` }),
    ),
  );
}

const section = (page: Page) => page.getByRole('region', { name: 'Joints', exact: true });
const table = (page: Page) => page.getByRole('region', { name: 'How far each joint swings' });
const drawing = (page: Page) => section(page).getByRole('img');

describe('The joints', () => {
  test('of the first demo swing as the sums say, in table and drawing and in words for who cannot see it', async () => {
    const page = await openPage(FIRST);
    const { joints, whole } = answersOf(preset(FIRST)).bait.reach;
    const rows = table(page).locator('tbody tr');
    expect(await rows.count()).toBe(joints.length);
    for (const [i, { port, starboard }] of joints.entries()) {
      const text = await textOf(rows.nth(i));
      expect(text).toContain(formatAngle(port.angle));
      expect(text).toContain(formatAngle(starboard.angle));
      expect(text).toContain('the faces');
      expect(await drawing(page).textContent()).toContain(formatAngle(port.angle));
      expect(await drawing(page).getAttribute('aria-label')).toContain(`joint ${i + 1} ${formatAngle(port.angle)}`);
    }
    expect(await textOf(section(page))).toContain(`Whole bait: folds ${formatAngle(whole.port.fold)} to either side`);
    // a mark at each place that touches, port and starboard
    expect(await drawing(page).locator('.contact').count()).toBe(2 * joints.length);
    expect(await textOf(section(page))).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  test('are drawn under the bait in the tub: the pin at the place that the sheet gives it', async () => {
    const page = await openPage(FIRST);
    const [first] = answersOf(preset(FIRST)).bait.reach.joints;
    const board = await page.locator('.board .outline').boundingBox();
    const pin = await drawing(page).locator('.pivot').first().boundingBox();
    // the board draws the coated bait: 140 mm and 0.35 at either end
    const scale = (board?.width ?? 0) / 140.7;
    const at = ((pin?.x ?? 0) + (pin?.width ?? 0) / 2 - (board?.x ?? 0)) / scale - 0.35;
    expect(Math.abs(at - (first?.pivot ?? 0))).toBeLessThan(0.5);
  });

  test('follow an edit of the body', async () => {
    const page = await openPage(FIRST);
    const before = await textOf(table(page).locator('tbody tr').first());
    const width = page.getByLabel('Width, mm');
    await width.focus();
    await width.press('ArrowUp');
    await width.blur();
    await settled(page);
    expect(await textOf(table(page).locator('tbody tr').first())).not.toBe(before);
  });

  test('on linked eyes are said to be near the truth only, and the bait can turn right round', async () => {
    const page = await openPage('withy-165');
    expect(await textOf(table(page))).toContain('about 48.5°');
    expect(await textOf(section(page))).toContain('it can turn right round');
  });

  test.each([
    [1440, 900],
    [1024, 768],
    [390, 844],
  ])('fit a screen of %d by %d: only the table scrolls, by arrow keys', async (width, height) => {
    const page = await openPage('withy-165', { viewport: { width, height } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const place = await table(page).evaluate((one) => ({ inside: one.scrollWidth, seen: one.clientWidth }));
    if (place.inside <= place.seen) return;
    await table(page).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => table(page).evaluate((one) => one.scrollLeft)).toBeGreaterThan(0);
  });
});
