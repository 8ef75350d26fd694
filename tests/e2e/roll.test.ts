import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type DesignFile, dropWords, rollWords } from '../../sim/index.ts';
import { answersOf } from '../support/worked-bait.ts';
import { settled, textOf, watchedPages } from './watched-pages.ts';

/** The demo that the page opens with; any other design takes its place where a test needs one. */
const FIRST = 'slate-shad-140';
const file: DesignFile = JSON.parse(readFileSync(new URL(`../../presets/${FIRST}.json`, import.meta.url), 'utf8'));

/** Its topwater setup with next to no lead: it lays over, and rests on either flank. */
const LIGHT: DesignFile = (() => {
  const setup = file.setups.find(({ name }) => name === 'topwater');
  if (setup === undefined) throw new Error('the demo has a topwater setup');
  const holes = setup.holes?.map((hole) => (hole.lead ? { ...hole, lead: { ...hole.lead, mass_g: 0.1 } } : hole));
  return { ...file, setups: [{ ...setup, ...(holes && { holes }) }] };
})();

const openWatched = watchedPages();

async function openPage(design: DesignFile, options: BrowserContextOptions = {}): Promise<Page> {
  return openWatched(options, (page) =>
    page.route(`**/${FIRST}-*.js`, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: `export default ${JSON.stringify(design)}` }),
    ),
  );
}

const section = (page: Page) => page.getByRole('region', { name: 'Roll', exact: true });
const button = (page: Page, name: string) => section(page).getByRole('button', { name, exact: true });

describe('Roll', () => {
  test('of every link and of the bait says what the sums say, word for word', async () => {
    const page = await openPage(file);
    const { bait, links } = answersOf(file);
    const names = ['Whole bait', ...bait.links.map(({ index, name }) => `${index + 1} ${name}`)];
    for (const [i, name] of names.entries()) {
      await button(page, name).click();
      const link = links[i - 1];
      const [first = '', ...more] = rollWords(
        link?.roll ?? bait.assembledRoll,
        (link?.accuracy ?? bait.assembledAccuracy).digits,
      );
      const text = await textOf(section(page));
      expect(text).toContain(first.replace('Roll: ', ''));
      for (const sentence of more) expect(text).toContain(`${sentence}.`);
      expect(text).not.toMatch(/NaN|undefined|null|Infinity/);
    }
  });

  test('of a bait that lays over shows its loll, and where drops end', async () => {
    const page = await openPage(LIGHT);
    const { bait } = answersOf(LIGHT);
    const { assembledRoll: roll, assembledAttitudes: attitudes } = bait;
    expect(roll.steadiness).toBe('lays over');
    const text = await textOf(section(page));
    const loll = Math.round((Math.abs(roll.loll ?? 0) * 180) / Math.PI);
    expect(text).toContain(`loll ${loll}°`);
    expect(text).toContain(`A ${dropWords(attitudes.firstShare, attitudes)} it comes to rest`);
    expect(attitudes.others.length).toBeGreaterThan(0);
    for (const { share } of attitudes.others) expect(text).toContain(`${dropWords(share, attitudes)} it comes to rest`);
    expect(
      await section(page)
        .getByRole('img', { name: /^Righting arms of the whole bait\. lays over/ })
        .count(),
    ).toBe(1);
    expect(await section(page).locator('.globe .rest').count()).toBe(1 + attitudes.others.length);
  });

  test('draws another rest in the tub by keyboard, and takes it away again', async () => {
    const page = await openPage(LIGHT);
    const ghost = button(page, 'Show rest B in the tub');
    await ghost.focus();
    await page.keyboard.press('Enter');
    expect(await ghost.getAttribute('aria-pressed')).toBe('true');
    expect(await textOf(ghost)).toBe('Shown in the tub');
    expect(await page.locator('.whole .ghost[aria-pressed=true]').count()).toBe(1);
    await page.keyboard.press('Enter');
    expect(await ghost.getAttribute('aria-pressed')).toBe('false');
  });

  test('follows what the tub shows, and the tub follows it', async () => {
    const page = await openPage(file);
    await page.keyboard.press('2');
    expect(await button(page, '2 middle').getAttribute('aria-pressed')).toBe('true');
    await button(page, '1 head').click();
    const bar = page.locator('.view-bar').getByRole('button', { name: '1 head', exact: true });
    expect(await bar.getAttribute('aria-pressed')).toBe('true');
  });

  test('has its arms in numbers, by keyboard', async () => {
    const page = await openPage(file);
    const summary = section(page).locator('summary');
    await summary.focus();
    await page.keyboard.press('Enter');
    const rows = section(page).locator('tbody tr');
    expect(await rows.count()).toBe(13);
    expect(await textOf(rows.first())).toMatch(/^0°/);
  });

  test('speaks inches and ounces when the page does', async () => {
    const page = await openPage(LIGHT);
    await page.getByRole('radio', { name: 'in, oz' }).click();
    const text = await textOf(section(page));
    expect(text).toMatch(/GM -?\d\.\d+ in/);
    expect(text).toMatch(/\d oz in to get there/);
    expect(text).not.toMatch(/\d (mm|g)\b/);
  });

  test('stays within the page on a desk, on a tablet and on a phone', async () => {
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
      [390, 844],
    ] as const) {
      const page = await openPage(LIGHT, { viewport: { width, height } });
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
      for (const drawing of await section(page).locator('figure > svg').all()) {
        const box = await drawing.boundingBox();
        expect(box?.width ?? 0).toBeGreaterThan(300);
        expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(width);
      }
    }
  });

  test('says so where the design cannot be worked out, and keeps what it had', async () => {
    const page = await openPage(file);
    const before = await textOf(section(page).locator('.verdict'));
    const length = page.getByLabel('Length, mm');
    await length.fill('60');
    await length.press('Enter');
    await settled(page);
    expect(await textOf(section(page))).toContain('what stands against the design is to be mended first');
    expect(await textOf(section(page).locator('.verdict'))).toBe(before);
  });
});
