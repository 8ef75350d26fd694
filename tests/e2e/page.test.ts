import { readdirSync, readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { baitVerdict, type DesignFile, type Float, linkVerdict, type Step } from '../../sim/index.ts';
import { createPipeline } from '../../sim/pipeline.ts';
import { settled, textOf, watchedPages } from './watched-pages.ts';

const SLATE: DesignFile = JSON.parse(
  readFileSync(new URL('../../presets/slate-shad-140.json', import.meta.url), 'utf8'),
);

const openPage = watchedPages();

/** Types a number and leaves the field by Enter. */
async function enter(page: Page, field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
  await settled(page);
}

/** What is said of a field to who cannot see what stands around it. */
const descriptionOf = (field: Locator) =>
  field.evaluate((element) =>
    (element.getAttribute('aria-describedby') ?? '')
      .split(' ')
      .map((id) => document.getElementById(id)?.textContent ?? '')
      .join(' ')
      .trim(),
  );

const headline = (page: Page) => textOf(page.locator('.headline[role="status"]'));
const group = (page: Page, name: RegExp | string) => page.getByRole('group', { name });

/** The floats of a design as the pipeline gives them here, without a page. */
function floatsOf(file: DesignFile, setup: string | null = null) {
  const steps: Step[] = [...createPipeline().steps(file, { setup, detail: 'full' })];
  const floats = steps.flatMap((step) =>
    step.name === 'float' && step.outcome.status === 'ok' ? [step.outcome.value] : [],
  );
  const whole = steps.find((step) => step.name === 'assembled');
  if (whole?.name !== 'assembled' || whole.outcome.status !== 'ok') throw new Error('the bait is not worked out');
  return { whole: whole.outcome.value as Float, floats };
}

describe('The page as it opens', () => {
  test('shows the first demo floated: every verdict is word for word that of the sums', async () => {
    const page = await openPage();
    const { whole, floats } = floatsOf(SLATE);
    expect(await headline(page)).toBe(baitVerdict(whole));
    for (const [index, link] of SLATE.links.entries()) {
      const column = page.getByRole('region', { name: `${index + 1} ${link.name}`, exact: true });
      const float = floats[index];
      if (float === undefined) throw new Error(`${link.name} has no float`);
      await expect(column.getByText(linkVerdict(link.name, float)).count()).resolves.toBe(1);
      await expect(column.getByText(`${float.mass.toFixed(1)} g`).count()).resolves.toBe(1);
    }
  });

  test('has its title block: name, setup, water, scale, units, mass, verdict and today', async () => {
    const page = await openPage();
    const title = page.getByRole('region', { name: SLATE.name });
    const text = await textOf(title);
    const { whole } = floatsOf(SLATE);
    const today = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' }).format(
      new Date(),
    );
    for (const part of [
      SLATE.setups[0]?.name ?? '',
      '20.0 °C',
      'fresh',
      '0.9982 g/cm³',
      'mm, g',
      today,
      baitVerdict(whole),
    ]) {
      expect(text).toContain(part);
    }
    expect(text).toMatch(/Total mass\s+\d+\.\d g/);
    expect(text).toMatch(/Scale\s+(1 : \d+\.\d\d|\d+\.\d\d : 1)/);
  });

  test('draws the picture', async () => {
    const page = await openPage();
    await page.locator('.water canvas').waitFor();
    const size = async () => {
      const box = await page.locator('.water canvas').boundingBox();
      return Math.min((box?.width ?? 0) / 600, (box?.height ?? 0) / 200);
    };
    await expect.poll(size).toBeGreaterThan(1);
  });

  test('says in text all that the picture shows: every hole, hook, pin and eye, and what each line of the ledger weighs', async () => {
    const page = await openPage();
    const parts = page.getByRole('region', { name: 'What each link carries' });
    const text = await textOf(parts);
    const setup = SLATE.setups[0];
    for (const name of [...(setup?.hung ?? []), ...(setup?.holes ?? []), ...SLATE.hangers].map((part) => part.name)) {
      expect(text).toContain(name);
    }
    expect(text.match(/pin: /g)).toHaveLength(SLATE.joints.length);
    await parts.getByText('Ledger of head').click();
    const table = page.getByRole('table', { name: 'Ledger of head' });
    const masses = await table.locator('tbody tr:not(.sum) td:nth-child(3)').allInnerTexts();
    const sum = masses.map((mass) => Number.parseFloat(mass)).reduce((total, mass) => total + mass, 0);
    const { floats } = floatsOf(SLATE);
    // each line is rounded to 0.01 g
    expect(Math.abs(sum - (floats[0]?.mass ?? 0))).toBeLessThan(0.005 * masses.length);
  });

  test('warns of lead, hooks and coats, and leaves the last word to local rules and data sheets', async () => {
    const page = await openPage();
    const text = await textOf(page.locator('.cautions'));
    expect(text).toMatch(/wash your hands/);
    expect(text).toMatch(/local rules/);
    expect(text).toMatch(/Hooks/);
    expect(text).toMatch(/data sheet/);
  });

  test('shows at most three warnings at once, and the rest when asked', async () => {
    const page = await openPage();
    const shown = page.locator('.warnings > ul > li');
    expect(await shown.count()).toBeLessThanOrEqual(3);
    const summary = page.locator('.warnings summary');
    if ((await summary.count()) > 0) {
      await summary.click();
      expect(await page.locator('.warnings details li').first().isVisible()).toBe(true);
    }
  });
});

describe('A warning', () => {
  /** So much lead in one hole that it comes too near to the skin. */
  async function withThinWall() {
    const page = await openPage();
    const lead = page.getByLabel('Lead, g');
    await lead.fill(String(Number(await lead.inputValue()) + 1));
    await lead.press('Enter');
    await settled(page);
    return page;
  }

  test('is cured by one edit where one is known, and undone in one step', async () => {
    const page = await withThinWall();
    const cure = page.locator('.warnings .cure').first();
    if (!(await cure.isVisible())) await page.locator('.warnings summary').click();
    const words = (await textOf(cure)).replace(/^Do it: /, '');
    expect((await cure.boundingBox())?.height).toBeGreaterThanOrEqual(24);
    await cure.focus();
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await page.getByRole('button', { name: `Do it: ${words}`, exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: `Undo ${words}`, exact: true }).click();
    await settled(page);
    expect(await page.getByRole('button', { name: /^Undo lead/i }).isEnabled()).toBe(true);
    expect(await page.getByRole('button', { name: `Do it: ${words}`, exact: true }).count()).toBe(1);
  });

  test('picks the part that it is about', async () => {
    const page = await withThinWall();
    const words = page.locator('.warnings .pickable').first();
    if (!(await words.isVisible())) await page.locator('.warnings summary').click();
    await words.click();
    expect(await words.getAttribute('aria-pressed')).toBe('true');
  });
});

describe('Everything lines up on the bait', () => {
  test('the head, which is wide enough, has its column right under its span', async () => {
    const page = await openPage();
    const water = await page.locator('.water').boundingBox();
    const column = await page.getByRole('region', { name: '1 head', exact: true }).boundingBox();
    const scaleText = await textOf(page.getByRole('region', { name: SLATE.name }));
    const [, larger, smaller] = /Scale\s+(?:(\d+\.\d\d) : 1|1 : (\d+\.\d\d))/.exec(scaleText) ?? [];
    const ratio = larger === undefined ? 1 / Number(smaller) : Number(larger);
    // 96 CSS pixels to the inch of 25.4 mm: CSS Values and Units 3, section 6.2
    const pixelsPerMm = ratio * (96 / 25.4);
    const length = Number(SLATE.body.length_mm);
    // the tail fin reaches 18 mm past the tail tip, and has room too
    const noseTip = (water?.x ?? 0) + ((water?.width ?? 0) - (length + 18) * pixelsPerMm) / 2;
    // the head ends half a gap of 2 mm before its joint at 0.42 of the length
    const headEnd = 0.42 * length - 1;
    // the scale is printed to 0.01, some 0.7 % of it at 1 : 1.5
    expect(Math.abs((column?.x ?? 0) - noseTip)).toBeLessThan(0.007 * length * pixelsPerMm);
    expect(Math.abs((column?.width ?? 0) - headEnd * pixelsPerMm)).toBeLessThan(0.01 * headEnd * pixelsPerMm + 1);
  });

  test.each([
    [1440, 900],
    [1024, 768],
    [700, 900],
    [390, 844],
    [320, 640],
  ])('at %d × %d nothing hangs over the side, by day and by night', async (width, height) => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await openPage({ viewport: { width, height }, colorScheme });
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(over).toBeLessThanOrEqual(0);
      for (const name of ['1 head', '2 middle', '3 tail']) {
        expect(await page.getByRole('region', { name, exact: true }).isVisible()).toBe(true);
      }
      await page.getByText('Ledger of middle').click();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
    }
  });

  test('on a phone comes the tub, then the links from nose to tail, then the inputs', async () => {
    const page = await openPage({ viewport: { width: 390, height: 844 } });
    const top = async (locator: Locator) => (await locator.boundingBox())?.y ?? Number.NaN;
    const order = [
      await top(page.locator('.tub')),
      await top(page.getByRole('region', { name: '1 head', exact: true })),
      await top(page.getByRole('region', { name: '2 middle', exact: true })),
      await top(page.getByRole('region', { name: '3 tail', exact: true })),
      await top(page.getByLabel('Length, mm')),
    ];
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });
});

describe('A number that is changed', () => {
  test('changes the float to what the sums say of the changed bait, and undo brings the old one back', async () => {
    const page = await openPage();
    const before = await headline(page);
    await enter(page, group(page, 'Ballast').getByLabel('Lead, g'), '6,9');
    const lighter = structuredClone(SLATE) as unknown as { setups: { holes: { lead: { mass_g: number } }[] }[] };
    const lead = lighter.setups[0]?.holes[0]?.lead;
    if (lead === undefined) throw new Error('the first hole of the demo holds lead');
    lead.mass_g = 6.9;
    expect(await headline(page)).toBe(baitVerdict(floatsOf(lighter as unknown as DesignFile).whole));
    expect(await headline(page)).not.toBe(before);
    await page.getByRole('button', { name: /^Undo lead in head 1/ }).click();
    await settled(page);
    expect(await headline(page)).toBe(before);
    await page.keyboard.press('Control+Shift+z');
    await settled(page);
    expect(await headline(page)).not.toBe(before);
  });

  test('may stand folded away: a section, a hole and a coat are typed there, and undo brings each back', async () => {
    const page = await openPage();
    const before = await headline(page);
    for (const [where, fold, label, text] of [
      ['Body', 'Section: exponents, 2 is an ellipse', 'Above', '3'],
      ['Ballast', 'Drilling and plug', 'Depth, mm', '17'],
      ['Coats', 'Clear epoxy, two coats', 'Thickness, mm', '0.6'],
    ] as const) {
      const place = group(page, where);
      await place.getByText(fold, { exact: true }).click();
      await enter(page, place.getByLabel(label, { exact: true }), text);
      expect(await headline(page), label).not.toBe(before);
      await page.keyboard.press('Control+z');
      await settled(page);
      expect(await headline(page), label).toBe(before);
    }
  });

  test('by holding an arrow key is one undo step; the wheel changes nothing', async () => {
    const page = await openPage();
    const width = page.getByLabel('Width, mm');
    await width.focus();
    await page.keyboard.down('ArrowUp');
    await page.keyboard.down('ArrowUp');
    await page.keyboard.down('ArrowUp');
    await page.keyboard.up('ArrowUp');
    expect(await width.inputValue()).toBe('21.5');
    await page.keyboard.press('PageDown');
    expect(await width.inputValue()).toBe('16.5');
    await width.hover();
    await page.mouse.wheel(0, 300);
    expect(await width.inputValue()).toBe('16.5');
    await page.keyboard.press('Control+z');
    expect(await width.inputValue()).toBe('21.5');
    await page.keyboard.press('Control+z');
    expect(await width.inputValue()).toBe('20.0');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('by a stepper steps once, and on while it is held, as one undo step', async () => {
    const page = await openPage();
    const height = page.getByLabel('Height, mm');
    await page.getByRole('button', { name: 'More height' }).click();
    expect(await height.inputValue()).toBe('48.5');
    await page.getByRole('button', { name: 'Less height' }).hover();
    await page.mouse.down();
    await expect.poll(async () => Number(await height.inputValue()), { timeout: 5000 }).toBeLessThan(48);
    await page.mouse.up();
    await page.getByRole('button', { name: /^Undo height/ }).click();
    expect(await height.inputValue()).toBe('48.5');
  });

  test('is not taken while it is being typed, and Escape puts back what stood there', async () => {
    const page = await openPage();
    const before = await headline(page);
    const length = page.getByLabel('Length, mm');
    await length.fill('200');
    await page.waitForTimeout(400);
    expect(await headline(page)).toBe(before);
    await length.press('Escape');
    expect(await length.inputValue()).toBe('140.0');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('to something that cannot be read is refused beside the field with the reason, and nothing is lost', async () => {
    const page = await openPage();
    const before = await headline(page);
    const gap = group(page, /^Joint 1/).getByLabel('Gap, mm');
    await gap.fill('1,234');
    await gap.press('Tab');
    const reason = '"1,234" is not read: it could be 1.234 or 1234; type the one that is meant';
    expect(await textOf(group(page, /^Joint 1/))).toContain(reason);
    expect(await gap.getAttribute('aria-invalid')).toBe('true');
    expect(await descriptionOf(gap)).toContain(reason);
    expect(await gap.inputValue()).toBe('1,234');
    expect(await headline(page)).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    await gap.fill('1.5');
    await gap.press('Enter');
    expect(await gap.getAttribute('aria-invalid')).not.toBe('true');
    expect(await textOf(group(page, /^Joint 1/))).not.toContain('not read');
  });

  test('in any unit and any fraction says how it was understood, and stays as typed until the field is left', async () => {
    const page = await openPage();
    const length = page.getByLabel('Length, mm');
    await enter(page, length, '5-1/2"');
    // 5.5 in x 25.4
    expect(await textOf(group(page, 'Body'))).toContain('5 1/2 in = 139.7 mm');
    expect(await descriptionOf(length)).toBe('5 1/2 in = 139.7 mm');
    expect(await length.inputValue()).toBe('5-1/2"');
    await length.press('Tab');
    expect(await length.inputValue()).toBe('139.7');
    expect(await descriptionOf(length)).toBe('5 1/2 in = 139.7 mm');
    await page.getByRole('radio', { name: 'in, oz' }).click();
    expect(await page.getByLabel('Length, in').inputValue()).toBe('5 1/2');
    expect(await textOf(group(page, 'Body'))).not.toContain('=');
    await page.getByRole('radio', { name: 'mm, g' }).click();
    await page.getByRole('button', { name: 'Undo length' }).click();
    expect(await length.inputValue()).toBe('140.0');
  });

  test('is one undo step from the field that still has it as typed', async () => {
    const page = await openPage();
    const mass = group(page, 'Ballast').getByLabel('Lead, g');
    const before = await mass.inputValue();
    await enter(page, mass, '¼ oz');
    // 28.349523125 / 4
    expect(await descriptionOf(mass)).toBe('1/4 oz ≈ 7.087 g');
    await mass.press('Control+z');
    await settled(page);
    expect(await mass.inputValue()).toBe(before);
    expect(await descriptionOf(mass)).toBe('');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('typed as it stands, or as the same in another unit, changes nothing', async () => {
    const page = await openPage();
    const joint = group(page, /^Joint 1/);
    await enter(page, joint.getByLabel('Place, mm'), '5.88 cm');
    expect(await textOf(joint)).toContain('5.88 cm = 58.8 mm');
    expect(await textOf(joint)).toContain('from length_mm * 0.42');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
  });

  test('takes the place of an expression, and what was drawn from it goes along', async () => {
    const page = await openPage();
    const joint = group(page, /^Joint 1/);
    expect(await textOf(joint)).toContain('from length_mm * 0.42');
    await enter(page, joint.getByLabel('Place, mm'), '59.5');
    expect(await textOf(joint)).not.toContain('length_mm');
    expect(await page.getByRole('alert').count()).toBe(0);
    // the pin of the demo is drawn 5 mm before the middle of its joint
    expect(await textOf(page.getByRole('region', { name: 'head', exact: true }))).toContain('54.5 mm from the nose');
    await page.keyboard.press('Control+z');
    expect(await textOf(joint)).toContain('from length_mm * 0.42');
  });

  test('in inches and ounces is the same bait: only the labels change', async () => {
    const page = await openPage();
    await page.getByRole('radio', { name: 'in, oz' }).click();
    // 140 mm / 25.4
    expect(await page.getByLabel('Length, in').inputValue()).toBe('5.5118');
    expect(await headline(page)).toMatch(/sinks, 0\.04\d oz heavier/);
    // the head ends half a gap of 2 mm before its joint at 58.8 mm: 57.8 mm / 25.4 is 2.2756, and 2 9/32 is 2.28125
    expect(await textOf(page.getByRole('region', { name: '1 head', exact: true }))).toContain('0 in to ≈ 2 9/32 in');
    const sentences = await page.locator('.verdict, .warnings, .aim, .title-block').allInnerTexts();
    expect(sentences.join('\n')).not.toMatch(/\d (mm|g)\b(?!\/)/);
    await enter(page, page.getByLabel('Length, in'), '5.625');
    await page.getByRole('radio', { name: 'mm, g' }).click();
    // 5.625 in x 25.4
    expect(await page.getByLabel('Length, mm').inputValue()).toBe('142.875');
  });
});

describe('A bait that cannot be made', () => {
  test('keeps its last good picture, dimmed, with the reason beside the number that caused it', async () => {
    const page = await openPage();
    const column = page.getByRole('region', { name: '1 head', exact: true });
    const verdict = await textOf(column.locator('.verdict'));
    const field = page.getByLabel('Length, mm');
    await enter(page, field, '20');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    const said = await textOf(group(page, 'Body'));
    expect(said).toContain('20 mm');
    expect(said).toContain('30 mm');
    expect(await textOf(page.getByRole('alert'))).toContain('Length');
    await page.getByRole('radio', { name: 'in, oz' }).click();
    expect(await textOf(page.getByRole('alert'))).toMatch(/0\.79 in .* 1\.18 in/);
    await page.getByRole('radio', { name: 'mm, g' }).click();
    expect(await textOf(column.locator('.verdict'))).toBe(verdict);
    expect(
      await column.locator('.verdict').evaluate((element) => Number(getComputedStyle(element).opacity)),
    ).toBeLessThan(0.9);
    expect(await headline(page)).toBe('Not worked out: something to mend.');
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await page.getByRole('alert').count()).toBe(0);
    expect(await column.locator('.verdict').evaluate((element) => getComputedStyle(element).opacity)).toBe('1');
  });
});

describe('Choosing', () => {
  test('any of the demo baits shows it as the sums have it, in its first setup and with no history', async () => {
    const page = await openPage();
    const folder = new URL('../../presets/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
    for (const file of files) {
      const design: DesignFile = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
      await page.getByRole('button', { name: / Bait$/ }).click();
      await page.getByRole('option', { name: design.name }).click();
      await page.getByRole('region', { name: design.name }).waitFor();
      await settled(page);
      await expect.poll(() => headline(page)).toBe(baitVerdict(floatsOf(design).whole));
      expect(await page.locator('.link').count()).toBe(design.links.length);
      expect(await page.getByRole('alert').count()).toBe(0);
      expect(await page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);
    }
  });

  test('another setup floats the same body as that setup has it', async () => {
    const page = await openPage();
    const other = SLATE.setups[1]?.name ?? '';
    await page.getByRole('button', { name: /Setup/ }).click();
    await page.getByRole('option', { name: other }).click();
    await settled(page);
    await expect.poll(() => headline(page)).toBe(baitVerdict(floatsOf(SLATE, other).whole));
    expect(await textOf(page.getByRole('region', { name: SLATE.name }))).toContain(other);
  });

  test('a hook in the list of parts brings its numbers into the margin', async () => {
    const page = await openPage();
    const second = SLATE.setups[0]?.hung[1]?.name ?? '';
    await page.getByRole('button', { name: second, exact: true }).click();
    expect(await textOf(group(page, 'Hook and hanger'))).toContain(second);
    expect(await page.getByRole('button', { name: second, exact: true }).getAttribute('aria-pressed')).toBe('true');
  });

  test('the sea makes the water denser and the bait lighter in it', async () => {
    const page = await openPage();
    const net = async () => {
      const text = await textOf(page.getByRole('region', { name: 'Whole bait', exact: true }));
      return Number(/Reserve\s+(-?\d+\.\d+) g/.exec(text)?.[1]);
    };
    const inLake = await net();
    await page.getByRole('radio', { name: 'Sea' }).click();
    await settled(page);
    await expect.poll(net).toBeGreaterThan(inLake + 1);
    expect(await textOf(page.getByRole('region', { name: SLATE.name }))).toContain('35.0 g/kg salt');
  });

  test('by single keys shows a link or the whole bait and turns the view, but not while something is typed', async () => {
    const page = await openPage();
    const shown = (name: string) =>
      page.getByRole('group', { name: 'Shown' }).getByRole('button', { name }).getAttribute('aria-pressed');
    const from = (name: string) =>
      page.getByRole('group', { name: 'Seen from' }).getByRole('button', { name }).getAttribute('aria-pressed');
    await page.keyboard.press('2');
    expect(await shown('2 middle')).toBe('true');
    await page.keyboard.press('9');
    expect(await shown('2 middle')).toBe('true');
    await page.keyboard.press('t');
    expect(await from('Top')).toBe('true');
    await page.keyboard.press('f');
    expect(await from('Front')).toBe('true');
    await page.keyboard.press('s');
    expect(await from('Side')).toBe('true');
    await page.getByLabel('Length, mm').focus();
    await page.keyboard.type('0t');
    expect(await shown('2 middle')).toBe('true');
    expect(await from('Side')).toBe('true');
    await page.keyboard.press('Escape');
    await page.getByLabel('Length, mm').blur();
    await page.keyboard.press('0');
    expect(await shown('Whole bait')).toBe('true');
  });
});

describe('For every reader', () => {
  test('without 3D the page says so, and the numbers are the same', async () => {
    const page = await openPage({}, (bare) =>
      bare.addInitScript(() => {
        HTMLCanvasElement.prototype.getContext = () => null;
      }),
    );
    expect(await textOf(page.locator('.water'))).toBe('No 3D here; the numbers below are the same.');
    expect(await headline(page)).toBe(baitVerdict(floatsOf(SLATE).whole));
  });

  test('every field and button has a name, and the tab key reaches every field and shows where it is', async () => {
    const page = await openPage();
    for (const role of ['textbox', 'button', 'radio'] as const) {
      const all = await page.getByRole(role).all();
      expect(all.length).toBeGreaterThan(0);
      // a name with a colon in it is quoted whole
      for (const each of all) expect((await each.ariaSnapshot()).trim()).toMatch(/^- '?\w+ "[^"]+"/);
    }
    const labels = new Set<string>();
    await page.locator('body').focus();
    for (let press = 0; press < 160; press += 1) {
      await page.keyboard.press('Tab');
      const stop = await page.evaluate(() => {
        const element = document.activeElement;
        if (!(element instanceof HTMLInputElement)) return null;
        const visible = getComputedStyle(element).outlineStyle !== 'none';
        return `${element.labels?.[0]?.closest('fieldset')?.querySelector('legend')?.textContent ?? ''} ${element.labels?.[0]?.textContent} ${visible}`;
      });
      if (stop !== null) labels.add(stop);
    }
    const fields = await page.getByRole('textbox').count();
    expect(labels.size).toBe(fields);
    expect([...labels].filter((label) => !label.endsWith(' true'))).toEqual([]);
  });

  test('numbers stand in figures of one width, in the face that came with the page', async () => {
    const page = await openPage();
    const loaded = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts]
        .filter((face) => face.status === 'loaded')
        .map((face) => `${face.family} ${face.weight}`);
    });
    expect(loaded.map((face) => face.replaceAll('"', '')).toSorted()).toEqual([
      'IBM Plex Sans 400',
      'IBM Plex Sans 600',
    ]);
    expect(await page.evaluate(() => getComputedStyle(document.body).fontVariantNumeric)).toBe('tabular-nums');
  });
});
