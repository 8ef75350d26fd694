import { readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../sim/index.ts';
import { settled, textOf, watchedPages } from './watched-pages.ts';

/** The demo that the page opens with; any other design takes its place where a test needs one. */
const FIRST = 'slate-shad-140';
const SLATE: DesignFile = JSON.parse(readFileSync(new URL(`../../presets/${FIRST}.json`, import.meta.url), 'utf8'));

const openWatched = watchedPages();

async function openPage(file: DesignFile = SLATE, options: BrowserContextOptions = {}): Promise<Page> {
  return openWatched(options, (page) =>
    page.route(`**/${FIRST}-*.js`, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: `export default ${JSON.stringify(file)}` }),
    ),
  );
}

const group = (page: Page, title: string) => page.getByRole('group', { name: title, exact: true });
const drills = (page: Page) => group(page, 'Drills');
const stock = (page: Page) => group(page, 'Lead and other stock');
const namesIn = (list: ReturnType<typeof group>) => list.locator('[data-row] summary').allInnerTexts();
const undoButton = (page: Page) => page.locator('.history').getByRole('button').first();
const plan = (page: Page) => page.getByRole('region', { name: 'Ballast plan', exact: true });
const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? '');

/** The first demo in its first setup, without holes, and a shop with these drills and this lead alone. */
function shopped(shop: NonNullable<DesignFile['shop']>): DesignFile {
  return { ...SLATE, shop, setups: SLATE.setups.slice(0, 1).map((setup) => ({ ...setup, holes: [] })) };
}

const QUARTER = { name: '1/4 in', diameter_mm: 6.35, point_deg: 180 } as const;
const QUARTER_ROD = { name: '1/4 in rod', kind: 'slug', diameter_mm: 6.25, density_g_cm3: 11.3 } as const;

describe('The shop in the margin', () => {
  test('gets a drill and a rod for it, which the plan then uses; each is one step to undo', async () => {
    const page = await openPage(shopped({ wall_mm: 1.5, drills: [QUARTER], lead: [QUARTER_ROD] }));
    await drills(page).getByRole('button', { name: 'Add a drill: 5/16 in, 7.9 mm' }).click();
    expect(await namesIn(drills(page))).toEqual(['1/4 in', '5/16 in']);
    expect(await focused(page)).toBe('5/16 in');
    expect(await textOf(drills(page).getByRole('status'))).toBe('“5/16 in” added.');
    expect(await drills(page).getByLabel('Diameter, mm').inputValue()).toBe('7.938');
    await stock(page).getByText('Add stock', { exact: true }).click();
    await stock(page).getByRole('button', { name: 'Lead rod: 5/16 in rod' }).click();
    expect(await namesIn(stock(page))).toEqual(['1/4 in rod', '5/16 in rod']);
    expect(await focused(page)).toBe('5/16 in rod');
    await settled(page);
    expect(await textOf(plan(page).locator('tbody').first())).toContain('5/16 in rod');
    expect(await textOf(undoButton(page))).toBe('Undo add stock 5/16 in rod');
    await page.keyboard.press('Control+z');
    expect(await namesIn(stock(page))).toEqual(['1/4 in rod']);
    expect(await textOf(undoButton(page))).toBe('Undo add drill 5/16 in');
    await page.keyboard.press('Control+z');
    expect(await namesIn(drills(page))).toEqual(['1/4 in']);
    expect(await textOf(undoButton(page))).toBe('Undo');
    await settled(page);
    expect(await textOf(plan(page))).not.toContain('5/16 in rod');
    await page.keyboard.press('Control+Shift+z');
    expect(await namesIn(drills(page))).toEqual(['1/4 in', '5/16 in']);
  });

  test('may lose its last drill: the plan says so, has a cure, and undo brings the drill back', async () => {
    const page = await openPage(shopped({ wall_mm: 1.5, drills: [QUARTER], lead: [QUARTER_ROD] }));
    await drills(page).getByRole('button', { name: 'Remove drill 1/4 in' }).click();
    expect(await textOf(drills(page))).toContain('None on the list.');
    expect(await textOf(drills(page).getByRole('status'))).toBe('“1/4 in” removed. Undo brings it back.');
    expect(await focused(page)).toMatch(/^Add a drill: 1\/4 in/);
    await settled(page);
    expect(await textOf(plan(page))).toContain("The shop's lists have no drills.");
    const cure = plan(page).getByRole('button', { name: /^Do it: add a drill of|^Do it: add drills of/ });
    expect(await cure.count()).toBeGreaterThan(0);
    await page.keyboard.press('Control+z');
    expect(await namesIn(drills(page))).toEqual(['1/4 in']);
    expect(await textOf(drills(page).getByRole('status'))).toBe('');
  });

  test('keeps stock that holes hold, and says which; a drill goes, and its holes stay as they are', async () => {
    const page = await openPage();
    const carried = page.getByRole('region', { name: 'What each link carries' });
    const before = await textOf(carried);
    await stock(page).getByRole('button', { name: 'Remove stock 3/8 in rod' }).click();
    expect(await textOf(stock(page).getByRole('alert'))).toBe(
      '“3/8 in rod” stays: it is in head 1, head 2 and head 3 of slow-sink; head 1, head 2 and head 3 of topwater. Fill them with other stock first.',
    );
    expect(await namesIn(stock(page))).toContain('3/8 in rod');
    expect(await textOf(undoButton(page))).toBe('Undo');
    await stock(page).getByRole('button', { name: 'Remove stock shot in epoxy' }).click();
    expect(await namesIn(stock(page))).not.toContain('shot in epoxy');
    expect(await stock(page).getByRole('alert').count()).toBe(0);
    await drills(page).getByRole('button', { name: 'Remove drill 3/8 in' }).click();
    expect(await namesIn(drills(page))).not.toContain('3/8 in');
    expect(await focused(page)).toBe('5/16 in');
    await settled(page);
    expect(await textOf(carried)).toBe(before);
    expect(await page.locator('.trouble').count()).toBe(0);
  });

  test('has names that can be changed: holes go along, and a name that is taken is refused where it is typed', async () => {
    const page = await openPage();
    await stock(page).getByText('3/8 in rod', { exact: true }).click();
    const name = stock(page).getByLabel('Name');
    await name.fill('1/4 in rod');
    await name.press('Enter');
    expect(await textOf(stock(page))).toContain('the name "1/4 in rod" is taken: give each its own name');
    await name.fill('thick bar');
    await name.press('Enter');
    expect(await name.evaluate((input) => input === document.activeElement)).toBe(true);
    await settled(page);
    expect(await namesIn(stock(page))).toContain('thick bar');
    expect(await page.locator('.trouble').count()).toBe(0);
    const carried = page.getByRole('region', { name: 'What each link carries' });
    expect(await textOf(carried)).toContain('4.8 g of thick bar');
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await textOf(carried)).toContain('4.8 g of 3/8 in rod');
    expect(await name.inputValue()).toBe('3/8 in rod');
  });
});

describe('By keys alone', () => {
  test('a filling is added, weighed, taken away and brought back, and the focus is never lost', async () => {
    const page = await openPage();
    await stock(page).getByText('Add stock', { exact: true }).focus();
    await page.keyboard.press('Enter');
    const putty = stock(page).getByRole('button', { name: 'Putty' });
    for (let presses = 0; presses < 6; presses += 1) {
      if (await putty.evaluate((button) => button === document.activeElement)) break;
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    expect(await focused(page)).toBe('putty');
    expect(await textOf(stock(page).getByRole('status'))).toBe('“putty” added. Weigh yours, and type its density.');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('9.4');
    await page.keyboard.press('Enter');
    expect(await stock(page).getByLabel('Density, g/cm³').inputValue()).toBe('9.4');
    expect(await textOf(undoButton(page))).toBe('Undo density of putty');
    await stock(page).getByRole('button', { name: 'Remove stock putty' }).focus();
    await page.keyboard.press('Space');
    expect(await namesIn(stock(page))).not.toContain('putty');
    expect(await focused(page)).toBe('shot in epoxy');
    await page.keyboard.press('Control+z');
    expect(await namesIn(stock(page))).toContain('putty');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    expect(await namesIn(stock(page))).not.toContain('putty');
    expect(await textOf(undoButton(page))).toBe('Undo');
    expect(await focused(page)).toBe('shot in epoxy');
  });
});

describe('For every reader', () => {
  test.each([
    [1440, 900, false],
    [1024, 768, false],
    [390, 844, true],
    [320, 640, true],
  ])('at %d × %d nothing hangs over the side, and every button is large enough', async (width, height, isTouched) => {
    const page = await openPage(SLATE, { viewport: { width, height }, hasTouch: isTouched });
    await drills(page)
      .getByRole('button', { name: /^Add a drill/ })
      .click();
    await stock(page).getByText('Add stock', { exact: true }).click();
    expect(await textOf(group(page, 'Shop'))).toMatch(/wear gloves/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const least = isTouched ? 44 : 24;
    for (const list of [drills(page), stock(page)]) {
      for (const each of await list.locator('button:not(.stepper), summary').all()) {
        const box = await each.boundingBox();
        expect(Math.min(box?.width ?? 0, box?.height ?? 0), await textOf(each)).toBeGreaterThanOrEqual(least);
      }
    }
  });
});
