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

describe('The joints in play', () => {
  const bend = (page: Page) => page.getByRole('group', { name: 'Joints' });
  const marks = (page: Page) => page.locator('.water .mark');

  test('fold the bait in the tub under a slider, by key and step by step, and stretch it again', async () => {
    const page = await openPage(FIRST);
    const { folded } = answersOf(preset(FIRST)).bait;
    if (!folded) throw new Error('the demo has joints');
    const marked = await marks(page).count();
    expect(marked).toBeGreaterThan(2);
    await page.keyboard.press('j');
    const slider = page.getByLabel('Folded by');
    expect(await slider.getAttribute('aria-valuetext')).toBe('straight');
    // what is marked belongs to the bait in one piece
    await expect.poll(() => marks(page).count()).toBeLessThan(marked);
    await slider.focus();
    await page.keyboard.press('End');
    const most = formatAngle(folded.starboard.points.at(-1)?.fold ?? Number.NaN, { digits: 0 });
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toBe(`${most} to starboard, upright`);
    await page.keyboard.press('Home');
    await expect.poll(() => slider.getAttribute('aria-valuetext')).toContain('to port');
    await page.keyboard.press('j');
    expect(await slider.count()).toBe(0);
    await expect.poll(() => marks(page).count()).toBe(marked);
  });

  test('of a bait whose pin bears a link are let go and say how it curls, and the page what the pin carries', async () => {
    const page = await openPage('tin-whistle-90');
    const { jointed } = answersOf(preset('tin-whistle-90')).bait;
    const { loose, straight } = jointed ?? {};
    if (!loose || !straight) throw new Error('the demo curls');
    await page.getByRole('button', { name: 'Let go' }).click();
    const turned = formatAngle(Math.abs(loose.joints[0]?.yaw ?? Number.NaN), { digits: 0 });
    expect(await textOf(bend(page).locator('output'))).toContain(`curls ${turned} to starboard, heels`);
    const text = await textOf(section(page));
    const moment = Math.abs(straight.joints[0]?.load.moment ?? Number.NaN).toFixed(0);
    expect(text).toContain(`it carries ${moment} g mm of arch`);
    expect(text).toContain('Let go it curls by itself: joint 1');
    // a link alone has no joints to let go
    await page.keyboard.press('2');
    expect(await page.getByRole('button', { name: 'Let go' }).isDisabled()).toBe(true);
    expect(await bend(page).locator('output').count()).toBe(0);
  });
});
