import { readdirSync, readFileSync } from 'node:fs';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import {
  baitVerdict,
  benchWords,
  type Cure,
  changeWords,
  compareSetups,
  createAdvisor,
  type DesignFile,
  linkVerdict,
  planWords,
} from '../../sim/index.ts';
import { answersOf } from '../support/worked-bait.ts';
import { settled, textOf, watchedPages } from './watched-pages.ts';

/** The demo that the page opens with; any other design takes its place where a test needs one. */
const FIRST = 'slate-shad-140';
const FOLDER = new URL('../../presets/', import.meta.url);
const preset = (key: string): DesignFile => JSON.parse(readFileSync(new URL(`${key}.json`, FOLDER), 'utf8'));
const KEYS = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace('.json', ''));

const openWatched = watchedPages();

/** The page, opened on this design. */
async function openPage(file: DesignFile, options: BrowserContextOptions = {}): Promise<Page> {
  return openWatched(options, (page) =>
    page.route(`**/${FIRST}-*.js`, (route) =>
      route.fulfill({ contentType: 'text/javascript', body: `export default ${JSON.stringify(file)}` }),
    ),
  );
}

const headline = (page: Page) => textOf(page.locator('.headline'));
const section = (page: Page) => page.getByRole('region', { name: 'Ballast plan', exact: true });
const button = (page: Page, name: string | RegExp) =>
  section(page).getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
const history = (page: Page) => page.locator('.history').getByRole('button');

async function press(page: Page, name: string | RegExp): Promise<void> {
  await button(page, name).click();
  await settled(page);
}

/** A design without the holes of its first setup: what is planned for it is not drilled yet. */
function undrilled(file: DesignFile): DesignFile {
  const [first, ...others] = file.setups;
  if (first === undefined) throw new Error(`${file.name} has no setup`);
  return { ...file, setups: [{ ...first, holes: [] }, ...others] };
}

/** The demo with holes that can be planned for all its links, without its holes, and what is promised of it. */
const PLAIN = (() => {
  for (const key of ['long-lane-230', 'millpond-280', 'barn-door-180', ...KEYS]) {
    const file = undrilled(preset(key));
    const { bait } = answersOf(file);
    if (bait.ballast.links.every(({ state }) => state === 'planned')) return { file, promised: bait.planned };
  }
  throw new Error('no demo has a plan for all its links');
})();
const says = `drill "${PLAIN.file.setups[0]?.name}" as planned`;

describe('The ballast plan', () => {
  test('of the first demo stands under the sheet, word for word that of the sums', async () => {
    const file = preset(FIRST);
    const page = await openPage(file);
    const { bait } = answersOf(file);
    const whole = await textOf(page.getByRole('region', { name: 'The whole bait with this plan' }));
    expect(whole).toContain(baitVerdict(bait.planned.assembled));
    expect(whole).toContain(`Aim ${bait.planned.target.met ? 'met' : 'missed'}`);
    expect(whole).toMatch(/Lead is poisonous/);
    for (const plan of bait.ballast.links) {
      const link = page.getByRole('region', { name: `Ballast of ${plan.name}`, exact: true });
      const text = await textOf(link);
      const float = bait.planned.floats[plan.link];
      expect(text).toContain(planWords(plan));
      expect(text).toContain(float === undefined ? '' : linkVerdict(plan.name, float));
      expect(text).toContain('How forgiving');
      expect(await link.locator('tbody tr').count()).toBe(plan.holes.length);
      for (const { name, depth } of plan.holes) {
        expect(await textOf(link.locator('tr', { hasText: name }))).toContain(`${depth.toFixed(1)} mm`);
      }
    }
    const rows = page.getByRole('region', { name: 'What if', exact: true }).locator('tbody tr');
    expect(await rows.count()).toBeGreaterThan(5);
    expect(await textOf(section(page))).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  test('is drilled in one step, floats as was promised, and undo brings back what stood there', async () => {
    const page = await openPage(PLAIN.file);
    const before = await headline(page);
    const promised = baitVerdict(PLAIN.promised.assembled);
    expect(before).not.toBe(promised);
    await press(page, 'Drill as planned');
    expect(await headline(page)).toBe(promised);
    expect(await textOf(section(page))).toContain('Drilled as planned.');
    expect(await button(page, /Drill|Try/).count()).toBe(0);
    const carried = await textOf(page.getByRole('region', { name: 'What each link carries' }));
    for (const { hole } of PLAIN.promised.holes) expect(carried).toContain(hole.name);
    await page.getByRole('button', { name: `Undo ${says}` }).click();
    await settled(page);
    expect(await headline(page)).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(await button(page, 'Drill as planned').count()).toBe(1);
  });

  test('is tried in the tub and put back, and the history is as it was', async () => {
    const page = await openPage(PLAIN.file);
    const before = await headline(page);
    await press(page, 'Try it in the tub');
    expect(await headline(page)).toBe(baitVerdict(PLAIN.promised.assembled));
    expect(await textOf(section(page))).toContain('not kept yet');
    await press(page, 'Put back');
    expect(await headline(page)).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    expect(await page.getByRole('button', { name: 'Redo', exact: true }).isDisabled()).toBe(true);
    expect(await button(page, 'Try it in the tub').count()).toBe(1);
  });

  test('is tried and kept as one step; Ctrl+Z while it is tried puts it back', async () => {
    const page = await openPage(PLAIN.file);
    const before = await headline(page);
    await press(page, 'Try it in the tub');
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await headline(page)).toBe(before);
    await press(page, 'Try it in the tub');
    await press(page, 'Drill as planned');
    expect(await headline(page)).toBe(baitVerdict(PLAIN.promised.assembled));
    expect(await history(page).allInnerTexts()).toEqual([`Undo ${says}`, 'Redo']);
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await headline(page)).toBe(before);
  });

  test('that is tried is kept first by a number that is changed, and put back by another setup', async () => {
    const page = await openPage(PLAIN.file);
    const before = await headline(page);
    await press(page, 'Try it in the tub');
    const width = page.getByLabel('Width, mm');
    await width.focus();
    await width.press('ArrowUp');
    await width.blur();
    await settled(page);
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await headline(page)).toBe(baitVerdict(PLAIN.promised.assembled));
    expect((await history(page).allInnerTexts())[0]).toBe(`Undo ${says}`);
    await page.keyboard.press('Control+z');
    await settled(page);
    await press(page, 'Try it in the tub');
    await page.getByRole('button', { name: / Setup$/ }).click();
    await page.getByRole('option', { name: PLAIN.file.setups[1]?.name ?? '' }).click();
    await settled(page);
    await page.getByRole('button', { name: / Setup$/ }).click();
    await page.getByRole('option', { name: PLAIN.file.setups[0]?.name ?? '' }).click();
    await settled(page);
    expect(await headline(page)).toBe(before);
  });

  test('keeps the page standing while a design cannot be made, and comes back with it', async () => {
    const page = await openPage(PLAIN.file);
    const plan = await textOf(section(page));
    const length = page.getByLabel('Length, mm');
    await length.fill('20');
    await length.press('Enter');
    await settled(page);
    const text = await textOf(section(page));
    expect(text).toContain('There is no plan for this design');
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(text).toContain(baitVerdict(PLAIN.promised.assembled));
    expect(await button(page, 'Drill as planned').getAttribute('aria-disabled')).toBe('true');
    await button(page, 'Drill as planned').click({ force: true });
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await textOf(section(page))).toBe(plan);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('is the same in inches and ounces, in those units alone', async () => {
    const page = await openPage(PLAIN.file);
    await page.getByRole('radio', { name: 'in, oz' }).click();
    const names = /"[^"]*"|“[^”]*”|\S+ rod\b|\d+ g\/kg/g;
    const text = (await textOf(section(page))).replace(names, '');
    expect(text).toMatch(/\d oz of lead/);
    expect(text.match(/[^\n]*\d (mm|g)\b(?!\/)[^\n]*/g) ?? []).toEqual([]);
  });
});

/**
 * A demo in one setup, a link of it that cannot be ballasted, and a cure of that: Tin Whistle's tail, before its holes are
 * drilled, as long as that is one.
 */
const CURABLE = (() => {
  for (const key of ['tin-whistle-90', 'ditch-minnow-115', FIRST, ...KEYS]) {
    const file = undrilled(preset(key));
    const alone: DesignFile = { ...file, setups: file.setups.slice(0, 1) };
    const found = new Map<number, readonly Cure[]>();
    for (const step of createAdvisor().steps(alone, { setup: null, detail: 'full' })) {
      if (step.name === 'cures' && step.outcome.status === 'ok') found.set(step.link, step.outcome.value);
    }
    for (const [index, [cure]] of [...found].reverse()) {
      const link = alone.links[index]?.name;
      if (cure !== undefined && link !== undefined) return { file: alone, link, cure };
    }
  }
  throw new Error('no demo has a link that wants a cure and has one');
})();

describe('A link that cannot be ballasted', () => {
  test('is offered a cure, which levels the whole bait as promised and is one step to undo', async () => {
    const { file, link, cure } = CURABLE;
    const page = await openPage(file);
    const before = await headline(page);
    const place = page.getByRole('region', { name: `Ballast of ${link}`, exact: true });
    const named = { name: `Do it: ${cure.edit.says}`, exact: true } as const;
    const doIt = place.getByRole('button', named);
    expect(await textOf(place.locator('li', { has: page.getByRole('button', named) }))).toMatch(
      /alone .*; whole bait .* in the water; aim/,
    );
    await doIt.click();
    await settled(page);
    expect(await headline(page)).toBe(baitVerdict(cure.after.assembled));
    expect(Math.abs(cure.after.assembled.trim - answersOf(file).bait.setup.target.trim)).toBeLessThan(
      (2 * Math.PI) / 180,
    );
    await page.getByRole('button', { name: `Undo ${cure.edit.says}` }).click();
    await settled(page);
    expect(await headline(page)).toBe(before);
  });
});

describe('Side by side', () => {
  test('says what differs at the bench, hole by hole', async () => {
    const file = preset(FIRST);
    const [first, second] = file.setups.map(({ name }) => name);
    if (first === undefined || second === undefined) throw new Error('the first demo has two setups');
    const page = await openPage(file);
    expect(await page.getByRole('region', { name: /^Side by side/ }).count()).toBe(0);
    await page.getByRole('button', { name: / Beside$/ }).click();
    await page.getByRole('option', { name: second }).click();
    const bench = page.getByRole('region', { name: `Side by side at the bench: ${second}` });
    const compared = compareSetups(
      ...([first, second].map((setup) => {
        const { bait, links } = answersOf(file, { setup });
        return { ...bait, links: bait.links.map((spec, i) => ({ spec, float: links[i]?.float as never })) };
      }) as unknown as Parameters<typeof compareSetups>),
    );
    await expect.poll(() => textOf(bench), { timeout: 20_000 }).toContain(benchWords(compared));
    const text = await textOf(bench);
    for (const change of compared.links.flatMap(({ holes }) => holes)) {
      expect(text).toContain(changeWords(change, compared.setups) ?? '');
    }
  });
});

describe('For every reader', () => {
  test.each([
    [1440, 900],
    [1024, 768],
    [390, 844],
    [320, 640],
  ])('at %d × %d nothing hangs over the side, and every button is large enough', async (width, height) => {
    const page = await openPage(preset(FIRST), { viewport: { width, height } });
    await page.getByRole('button', { name: / Beside$/ }).click();
    await page.getByRole('option').nth(1).click();
    await page.getByRole('region', { name: /^Side by side/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    for (const each of await section(page).getByRole('button').all()) {
      const box = await each.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
    }
  });

  test('the tab key reaches every button and every table, and shows where it is', async () => {
    const page = await openPage(CURABLE.file);
    const wanted = section(page).locator('button, .wide-table');
    const count = await wanted.count();
    expect(count).toBeGreaterThan(2);
    await section(page).getByRole('button').first().focus();
    const reached = new Set<string>();
    for (let presses = 0; presses < count; presses += 1) {
      const stop = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const visible = getComputedStyle(element).outlineStyle !== 'none' || element.matches(':focus-visible');
        return element.closest('.ballast') === null || !visible
          ? null
          : (element.getAttribute('aria-label') ?? element.textContent);
      });
      if (stop !== null) reached.add(stop);
      await page.keyboard.press('Tab');
    }
    expect(reached.size).toBe(count);
  });

  test('by keys alone the plan is drilled, and the focus stays where it was said', async () => {
    const page = await openPage(PLAIN.file);
    await button(page, 'Drill as planned').focus();
    await page.keyboard.press('Enter');
    await settled(page);
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe('Drilled as planned.');
  });
});
