import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContextOptions } from 'playwright-core';
import { Matrix4, Vector3 } from 'three';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { amountsIn, type DesignFile, type Float, type Mm, measureReach } from '../../sim/index.ts';
import { FIRST_PRESET } from '../../src/document/presets.ts';
import { worldFromBody } from '../../src/scene/frame.ts';
import { type ShownBait, shownBait } from '../../src/scene/shown.ts';
import { nearestOnCore, tightest } from '../../src/scene/wall-mark.ts';
import { isThin } from '../../src/view/walls.ts';
import { launch } from '../support/browser.ts';
import { type AllAnswers, answersOf } from '../support/worked-bait.ts';
import { type Picture, readPng } from './read-png.ts';
import { choose as chooseAnother, drawnInFull, openTubIn, settled, type Tub, unlike } from './still-tub.ts';

const file: DesignFile = JSON.parse(
  readFileSync(fileURLToPath(new URL(`../../presets/${FIRST_PRESET}.json`, import.meta.url)), 'utf8'),
);
/** Every setup of the first demo bait, worked out here as the page does. */
const setups = file.setups.map(({ name }) => ({ name, answers: answersOf(file, { setup: name }) }));
const [first] = setups;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

async function openTub(settings: BrowserContextOptions = {}): Promise<Tub> {
  const tub = await openTubIn(browser, settings);
  await drawnInFull(tub);
  return tub;
}

async function choose(tub: Tub, label: string, option: string): Promise<void> {
  const list = tub.page.getByRole('button', { name: new RegExp(`${label}$`) });
  if ((await list.textContent())?.includes(option)) return;
  await chooseAnother(tub, label, option);
  await drawnInFull(tub);
}

/** Pixels in which two pictures of one size differ by more than rounding. */
function differing(a: Picture, b: Picture): number {
  let count = 0;
  for (let y = 0; y < Math.min(a.height, b.height); y++) {
    for (let x = 0; x < a.width; x++) if (unlike(a.at(x, y), b.at(x, y)) > 24) count++;
  }
  return count;
}

function shownOf({ bait, links }: AllAnswers, shown: 'whole' | number = 'whole'): ShownBait {
  const picture = shownBait({ bait: {}, links: [], lastGood: { bait, links } }, shown);
  if (picture === null) throw new Error('the bait was not worked out');
  return picture;
}

const said = (thickness: Mm, wanted: Mm, units: 'mm-g' | 'in-oz' = 'mm-g') =>
  `wall ${amountsIn(units).length(thickness)}${isThin(thickness, wanted) ? ', thin' : ''}`;

/** Where a place of the body is on the picture: the ruler under it says where the sheet has the nose, and its scale. */
async function placing(tub: Tub, bait: ShownBait, length: Mm) {
  const ends = await tub.page.locator('.ruler path').first().getAttribute('d');
  const [, left, right] = /^M([\d.]+) 0\.5H([\d.]+)$/.exec(ends ?? '') ?? [];
  const scale = (Number(right) - Number(left)) / length;
  const waterline = Number(await tub.water.locator('canvas').getAttribute('data-waterline-px'));
  const turn = worldFromBody(new Vector3(...bait.pose.up), bait.pose.offset, new Matrix4());
  const at = (place: readonly [number, number, number]) => {
    const world = new Vector3(...place).applyMatrix4(turn);
    return [Number(left) + world.x * scale, waterline - world.z * scale] as const;
  };
  return { at, scale };
}

describe('keep-outs', () => {
  test('are drawn by key K and the button alike, with a legend, and gone again as if they had never been', async () => {
    const tub = await openTub();
    const button = tub.page.getByRole('button', { name: 'Keep-outs', exact: true });
    const legend = tub.page.locator('.keep-out-note');
    const bare = await settled(tub);
    expect(await legend.count()).toBe(0);
    expect(await tub.page.locator('.mark.wall').count()).toBe(0);
    await tub.page.keyboard.press('k');
    await legend.waitFor();
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    const barred = await settled(tub);
    expect(differing(bare, barred)).toBeGreaterThan(2000);
    // red is named where there is any
    const wanted = first?.answers.bait.design.shop.wall ?? Number.NaN;
    const least = first && tightest(shownOf(first.answers).walls.filter(({ hole }) => hole.lead));
    const thin = least ? isThin(least.wall.thickness, wanted) : false;
    expect(await legend.getByText('too thin').count()).toBe(thin ? 1 : 0);
    await button.click();
    await legend.waitFor({ state: 'detached' });
    await tub.page.locator('h1').hover();
    expect(differing(await settled(tub), bare)).toBe(0);
    expect(tub.complaints).toEqual([]);
  });

  test('can be reached and switched with the keyboard alone', async () => {
    const tub = await openTub();
    const button = tub.page.getByRole('button', { name: 'Keep-outs', exact: true });
    await tub.page.getByRole('button', { name: 'Metacentre' }).focus();
    await tub.page.keyboard.press('Tab');
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    await tub.page.keyboard.press('Space');
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    expect(await button.getAttribute('aria-keyshortcuts')).toBe('k');
    await tub.page.keyboard.press('Enter');
    expect(await button.getAttribute('aria-pressed')).toBe('false');
  });

  test('mark shanks where they are, and leave wood beside them as it was', async () => {
    if (!first) throw new Error('no setup');
    const bait = shownOf(first.answers);
    const tub = await openTub();
    const bare = await settled(tub);
    await tub.page.keyboard.press('k');
    await tub.page.locator('.keep-out-note').waitFor();
    const barred = await settled(tub);
    const { at } = await placing(tub, bait, first.answers.bait.design.body.length);
    for (const { name, entry, inward, shank } of bait.eyes) {
      const changedAt = (along: number) => {
        const [x, y] = at([0, 1, 2].map((i) => entry[i] + along * inward[i]) as never);
        return Math.max(
          ...[-1, 0, 1].flatMap((dx) =>
            [-1, 0, 1].map((dy) => {
              const pixel = [Math.floor(x) + dx, Math.floor(y) + dy] as const;
              return unlike(bare.at(...pixel), barred.at(...pixel));
            }),
          ),
        );
      };
      expect(changedAt(0.6 * shank), name).toBeGreaterThan(24);
    }
  });

  test.each([
    [1024, 768],
    [390, 844],
  ])('at %d × %d nothing hangs over the side and no words cover others', async (width, height) => {
    const tub = await openTub({ viewport: { width, height } });
    await tub.page.keyboard.press('k');
    await tub.page.locator('.mark.wall').waitFor();
    await settled(tub);
    expect(await tub.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
      0,
    );
    const words = await tub.page.locator('.mark span:not([style*="hidden"])').all();
    const boxes = (await Promise.all(words.map((one) => one.boundingBox()))).flatMap((box) => (box ? [box] : []));
    for (const [i, one] of boxes.entries()) {
      for (const other of boxes.slice(0, i)) {
        const apart =
          one.x + one.width <= other.x ||
          other.x + other.width <= one.x ||
          one.y + one.height <= other.y ||
          other.y + other.height <= one.y;
        expect(apart).toBe(true);
      }
    }
  });

  test('draw nothing while nothing moves', async () => {
    const tub = await openTub();
    await tub.page.keyboard.press('k');
    await tub.page.locator('.mark.wall').waitFor();
    await tub.page.locator('[data-fresh="true"][data-done="true"]').waitFor();
    await settled(tub);
    const calls = await tub.page.evaluate(async () => {
      const context = WebGL2RenderingContext.prototype;
      const draw = context.drawElements;
      let count = 0;
      context.drawElements = function (...given) {
        count++;
        draw.apply(this, given);
      };
      for (let i = 0; i < 60; i++) await new Promise((done) => requestAnimationFrame(done));
      return count;
    });
    expect(calls).toBe(0);
  });
});

describe('the tightest wall', () => {
  test('has the number that the sums have, of the whole bait and of a link, in either unit', async () => {
    if (!first) throw new Error('no setup');
    const { design } = first.answers.bait;
    const tub = await openTub();
    await tub.page.keyboard.press('k');
    const words = tub.page.locator('.mark.wall');
    for (const shown of ['whole', ...first.answers.links.keys()] as const) {
      const least = tightest(shownOf(first.answers, shown).walls)?.wall.thickness;
      await tub.page.keyboard.press(shown === 'whole' ? '0' : String(shown + 1));
      if (least === undefined) await words.waitFor({ state: 'detached' });
      else await words.filter({ hasText: new RegExp(`^${said(least, design.shop.wall)}$`) }).waitFor();
    }
    await tub.page.keyboard.press('0');
    await tub.page.getByText('in, oz', { exact: true }).click();
    const whole = tightest(shownOf(first.answers).walls)?.wall.thickness ?? Number.NaN;
    expect(await words.textContent()).toBe(said(whole, design.shop.wall, 'in-oz'));
    expect(tub.complaints).toEqual([]);
  });

  test('is marked on a hole that is picked, keep-outs or not, at its place', async () => {
    if (!first) throw new Error('no setup');
    const bait = shownOf(first.answers);
    const { design } = first.answers.bait;
    const tub = await openTub();
    const { at } = await placing(tub, bait, design.body.length);
    const box = await tub.water.boundingBox();
    const marked = bait.walls.find(({ hole }) => hole.lead);
    if (!marked?.hole.lead || !box) throw new Error('no lead');
    const { hole, wall } = marked;
    const deep = 0.75 * hole.depth;
    const [x, y] = at([0, 1, 2].map((i) => hole.mouth[i] + deep * hole.inward[i]) as never);
    await tub.page.mouse.click(box.x + x, box.y + y);
    const words = tub.page.locator('.mark.wall');
    await words.waitFor();
    expect(await words.textContent()).toBe(said(wall.thickness, design.shop.wall));
    // the words are near the skin's end of the mark
    await settled(tub);
    const [skinX, skinY] = at(wall.at);
    const place = await words.locator('span').boundingBox();
    if (!place) throw new Error('no words');
    const [right, down] = [place.x + place.width / 2 - box.x - skinX, place.y + place.height / 2 - box.y - skinY];
    expect(Math.hypot(right, down)).toBeLessThan(100);
    // and what is measured is as long as it is said to be
    const from = nearestOnCore(hole, wall.at);
    expect(Math.hypot(...wall.at.map((value, i) => value - from[i]))).toBeCloseTo(wall.thickness, 6);
    await tub.page.mouse.click(box.x + 20, box.y + 60);
    await words.waitFor({ state: 'detached' });
    expect(tub.complaints).toEqual([]);
  });
});

describe('the waterline of the setup beside', () => {
  const other = setups.find(({ answers }) => answers.bait.assembled.draft !== null);
  const own = setups.find((setup) => setup !== other);

  /** Height over still water, in the own bait's world, at which the other's water stands on the flank, by its draft. */
  function otherHeight(bait: ShownBait, { up, draft }: Float): (x: Mm) => readonly [number, number, number] {
    const lowest = Math.min(...bait.links.map(({ wetted }) => measureReach(wetted.mesh.positions, up)[0]));
    const offset = lowest + (draft ?? Number.NaN);
    return (x) => [x, 0, (offset - up[0] * x) / up[2]];
  }

  test('is a line on the wood at its own draft, to a pixel, and named; none of a setup that goes under', async () => {
    if (!own || !other) throw new Error('the demo bait has one setup that floats, and another');
    const bait = shownOf(own.answers);
    const float = other.answers.bait.assembled;
    const tub = await openTub();
    await choose(tub, 'Setup', own.name);
    await choose(tub, 'Beside', other.name);
    const words = tub.page.locator('.mark.other-waterline');
    await words.waitFor();
    expect(await words.textContent()).toBe(`${other.name}’s waterline`);
    await tub.page.locator('.beside-note').waitFor();
    const picture = await settled(tub);
    const { at } = await placing(tub, bait, own.answers.bait.design.body.length);
    const placeOf = otherHeight(bait, float);
    // on the first link, clear of its outline; a line is a row darker than the wood over and under it
    const CLEAR_PX = 8;
    const [head] = bait.links;
    const back = (x: number) => {
      const { positions } = head?.wetted.mesh ?? { positions: [] };
      const near = Array.from({ length: positions.length / 3 }, (_, i) => 3 * i).filter(
        (i) => Math.abs(positions[i] - x) < 2,
      );
      return Math.min(...near.map((i) => at([positions[i], 0, positions[i + 2]])[1]));
    };
    const [link] = own.answers.bait.links;
    const [fore, aft] = link?.span ?? [0, 0];
    const bright = (x: number, y: number) =>
      picture
        .at(x, y)
        .slice(0, 3)
        .reduce((sum, value) => sum + value, 0);
    const misses: number[] = [];
    for (let x = fore; x < fore + 0.85 * (aft - fore); x += 0.25) {
      const [px, py] = at(placeOf(x));
      if (py - back(x) < CLEAR_PX) continue;
      const column = Math.floor(px);
      const rows = Array.from({ length: 7 }, (_, i) => Math.floor(py) - 3 + i);
      const dark = rows.map((row) => Math.min(bright(column, row - 3), bright(column, row + 3)) - bright(column, row));
      const deepest = Math.max(...dark);
      // gaps between dash and dot
      if (deepest > 60) misses.push(Math.abs((rows[dark.indexOf(deepest)] ?? Number.NaN) + 0.5 - py));
    }
    expect(misses.length).toBeGreaterThan(8);
    for (const miss of misses) expect(miss).toBeLessThan(1);
    await choose(tub, 'Beside', 'none');
    await words.waitFor({ state: 'detached' });
    expect(tub.complaints).toEqual([]);
  });

  test('is there for a link alone, where that link floats', async () => {
    if (!own || !other) throw new Error('no setups');
    const tub = await openTub();
    await choose(tub, 'Setup', own.name);
    await choose(tub, 'Beside', other.name);
    const words = tub.page.locator('.mark.other-waterline');
    for (const [index, { float }] of other.answers.links.entries()) {
      await tub.page.keyboard.press(String(index + 1));
      await words.waitFor({ state: float.offset === null ? 'detached' : 'attached' });
    }
    expect(tub.complaints).toEqual([]);
  });

  test('is none of a setup that is under water', async () => {
    const sunk = setups.find(({ answers }) => answers.bait.assembled.offset === null);
    const floating = setups.find(({ answers }) => answers.bait.assembled.offset !== null);
    if (!sunk || !floating) return;
    const tub = await openTub();
    await choose(tub, 'Setup', floating.name);
    await choose(tub, 'Beside', sunk.name);
    await tub.page.locator('.beside-note').waitFor();
    await settled(tub);
    expect(await tub.page.locator('.mark.other-waterline').count()).toBe(0);
  });

  test('is in a saved picture with its words, and so are keep-outs, wall and legend', async () => {
    if (!own || !other) throw new Error('no setups');
    const tub = await openTub();
    await choose(tub, 'Setup', own.name);
    const save = async () => {
      const [download] = await Promise.all([
        tub.page.waitForEvent('download'),
        tub.page.getByRole('button', { name: 'Save picture' }).click(),
      ]);
      return readPng(readFileSync(await download.path()));
    };
    await choose(tub, 'Beside', other.name);
    await tub.page.locator('.mark.other-waterline').waitFor();
    await settled(tub);
    const before = await save();
    await tub.page.locator('h1').click();
    await tub.page.keyboard.press('k');
    await tub.page.locator('.mark.wall').waitFor();
    await settled(tub);
    const after = await save();
    expect(differing(before, after)).toBeGreaterThan(8000);
    const box = await tub.water.boundingBox();
    if (!box) throw new Error('no tub');
    // letters on paper: between one twentieth and half of their box is unlike the paper
    for (const mark of [
      '.other-waterline',
      '.wall',
      '.keep-out-note .mark >> nth=0',
      '.keep-out-note .mark >> nth=1',
    ]) {
      const words = await tub.page
        .locator(`${mark.startsWith('.keep') ? '' : '.mark'}${mark}`)
        .locator('span')
        .boundingBox();
      if (!words) throw new Error(`no ${mark}`);
      const [width, height] = [Math.floor(2 * words.width), Math.floor(2 * words.height)];
      const pixels = Array.from({ length: width * height }, (_, i) =>
        after.at(
          Math.round(2 * (words.x - box.x)) + (i % width),
          Math.round(2 * (words.y - box.y)) + Math.floor(i / width),
        ),
      );
      const inked = pixels.filter(([, green]) => green < 150).length / pixels.length;
      expect(inked, mark).toBeGreaterThan(0.05);
      expect(inked, mark).toBeLessThan(0.5);
    }
    expect(tub.complaints).toEqual([]);
  });
});
