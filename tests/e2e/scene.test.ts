import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContextOptions, Locator } from 'playwright-core';
import { Matrix4, Vector3 } from 'three';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type DesignFile, measureReach } from '../../sim/index.ts';
import { besideNeeds, layOutTub } from '../../src/panels/tub/lay-out.ts';
import { shrunkSheet } from '../../src/scene/apart.ts';
import { worldFromBody } from '../../src/scene/frame.ts';
import { roomForBoth, roomOf } from '../../src/scene/room.ts';
import { reachAlong, type ShownBait, shownBait } from '../../src/scene/shown.ts';
import type { Sheet } from '../../src/view/view.ts';
import { launch } from '../support/browser.ts';
import { goodOf } from '../support/change-file.ts';
import { outcomesOf } from '../support/worked-bait.ts';
import { type Picture, readPng } from './read-png.ts';
import { choose, drawnInFull, openTubIn, settled, type Tub, unlike } from './still-tub.ts';

const BAIT = 'slate-shad-140';
/** One whose back is bare where it is highest. */
const BARE_BACKED = 'copper-plate-200';
const FLOATING = 'topwater';

function fileOf(name: string): DesignFile {
  const path = fileURLToPath(new URL(`../../presets/${name}.json`, import.meta.url));
  return JSON.parse(readFileSync(path, 'utf8'));
}

function answersTo(name: string) {
  return outcomesOf(fileOf(name), { setup: FLOATING });
}

const ofBait = answersTo(BAIT);

/** Half of an outline's pixel on either side, and as much for rounding the page's layout to whole pixels. */
const PIXEL = 1;
/** Width of the drawn edge round the wood: OUTLINE_PX of src/scene/materials.ts. */
const OUTLINE_PX = 1.1;
/** Far more than the grain's or the wash's own play, less than any edge. */
const EDGE = 60;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const openTub = (settings: BrowserContextOptions = {}) => openTubIn(browser, settings);

/** Takes the setup in which the bait stands out of the water. */
async function float(tub: Tub): Promise<void> {
  await choose(tub, 'Setup', FLOATING);
  await drawnInFull(tub);
}

/** The bait as the sums have it, and where the sheet puts it. */
async function expected({ water }: Tub, shown: 'whole' | number, answers = ofBait, beside: number | null = null) {
  const bait = shownBait({ ...answers, lastGood: { bait: {}, links: [] } }, shown);
  if (bait === null || !answers.bait.design || !answers.bait.hardware) throw new Error('the bait was not worked out');
  const { length, height } = goodOf(answers.bait.design).body;
  const { hung, fins } = goodOf(answers.bait.hardware);
  const hang = Math.max(...hung.map((item) => item.hang));
  const past = Math.max(...fins.map(({ mesh }) => measureReach(mesh.positions, [1, 0, 0])[1])) - length;
  const [width, tall] = await water.evaluate((element) => [element.clientWidth, element.clientHeight] as const);
  const waterline = Number(await water.locator('canvas').getAttribute('data-waterline-px'));
  return { bait, waterline, sheet: layOutTub(width, tall, { length, height, hang, past, beside }) };
}

/** Ends of the side view's outline at a height over still water, world x in mm: where edges of the mesh cross it. */
function outlineAt(bait: ShownBait, height: number): readonly [number, number] {
  const turn = worldFromBody(new Vector3(...bait.pose.up), bait.pose.offset, new Matrix4());
  let [fore, aft] = [Infinity, -Infinity];
  for (const { positions, topology } of [
    ...bait.links.map(({ wetted }) => wetted.mesh),
    ...bait.fins.map(({ mesh }) => mesh),
  ]) {
    const corner = (i: number) => new Vector3(...positions.subarray(3 * i, 3 * i + 3)).applyMatrix4(turn);
    for (let i = 0; i < topology.index.length; i++) {
      const a = corner(topology.index[i]);
      const b = corner(topology.index[i % 3 === 2 ? i - 2 : i + 1]);
      if (a.z > height === b.z > height) continue;
      const x = a.x + ((b.x - a.x) * (height - a.z)) / (b.z - a.z);
      fore = Math.min(fore, x);
      aft = Math.max(aft, x);
    }
  }
  return [fore, aft];
}

/** First and last pixel of a row that look unlike the water (or air) at its left end. */
function drawnAt(picture: Picture, row: number): readonly [number, number] {
  const empty = picture.at(4, row);
  const columns = Array.from({ length: picture.width }, (_, x) => x).filter(
    (x) => unlike(picture.at(x, row), empty) > EDGE,
  );
  return [columns[0] ?? Number.NaN, columns.at(-1) ?? Number.NaN];
}

/**
 * How far the drawn outline is from where it was worked out, fore and aft at a height over still water: pixels, at right
 * angles to it, since the line has its width that way.
 */
function outlineMiss(
  picture: Picture,
  bait: ShownBait,
  height: number,
  waterline: number,
  { scale, left }: Sheet,
): readonly [number, number] {
  const row = Math.floor(waterline - height * scale);
  const middle = (waterline - (row + 0.5)) / scale;
  const STEP_MM = 0.2;
  const ends = outlineAt(bait, middle);
  const [lower, upper] = [outlineAt(bait, middle - STEP_MM), outlineAt(bait, middle + STEP_MM)];
  const drawn = drawnAt(picture, row);
  const miss = (end: 0 | 1) => {
    const slant = Math.hypot(1, (upper[end] - lower[end]) / (2 * STEP_MM));
    const outward = end === 0 ? -OUTLINE_PX * slant : OUTLINE_PX * slant - 1;
    return Math.abs(drawn[end] - (left + ends[end] * scale + outward)) / slant;
  };
  return [miss(0), miss(1)];
}

describe('the side view', () => {
  test('has the bait over its own columns and at the waterline that was worked out, to a pixel', async () => {
    const tub = await openTub();
    await float(tub);
    const picture = await settled(tub);
    const { bait, waterline, sheet } = await expected(tub, 'whole');
    // mm over still water, clear of the line tie and the hooks
    for (const height of [-8, -12, -32]) {
      const [fore, aft] = outlineMiss(picture, bait, height, waterline, sheet);
      expect(fore, `fore at ${height} mm`).toBeLessThan(PIXEL);
      expect(aft, `aft at ${height} mm`).toBeLessThan(PIXEL);
    }
    expect(tub.complaints).toEqual([]);
  });

  test('has the bait’s back as proud of the water as the numbers say', async () => {
    const tub = await openTub();
    await choose(tub, 'Bait', 'Copper Plate 200');
    await float(tub);
    const picture = await settled(tub);
    const { bait, waterline, sheet } = await expected(tub, 'whole', answersTo(BARE_BACKED));
    const paper = picture.at(4, 4);
    // under the numbers of the links
    const columns = Array.from({ length: picture.width - 90 }, (_, x) => x);
    const rows = Array.from({ length: picture.height }, (_, y) => y).slice(Math.floor(waterline - 8 * sheet.scale));
    // numbers over the back have paper between their strokes, wood has none
    const longestRun = (y: number) => {
      let [run, longest] = [0, 0];
      for (const x of columns) {
        run = unlike(picture.at(x, y), paper) > EDGE ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
      return longest;
    };
    const top = rows.find((y) => longestRun(y) > 30);
    const proud = bait.float.proud ?? Number.NaN;
    expect(Math.abs((top ?? Number.NaN) - (waterline - proud * sheet.scale - OUTLINE_PX))).toBeLessThan(2 * PIXEL);
  });

  test('draws one thin line where still water cuts the wood, and none beside it', async () => {
    const tub = await openTub();
    await float(tub);
    const picture = await settled(tub);
    const { waterline, sheet } = await expected(tub, 'whole');
    // the middle of the first link: 30 mm from the nose, no hardware near the surface
    const x = Math.round(sheet.left + 30 * sheet.scale);
    const isWood = (y: number) => picture.at(x, y)[0] > picture.at(x, y)[2];
    const line = Math.floor(waterline);
    const [red, , blue] = picture.at(x, line);
    expect(blue).toBeGreaterThan(red);
    expect([line - 4, line - 3, line + 3, line + 4].map(isWood)).toEqual([true, true, true, true]);
  });

  test('draws a link alone at its own float, in its own place', async () => {
    const tub = await openTub();
    await float(tub);
    await tub.page.keyboard.press('3');
    const picture = await settled(tub);
    const { bait, waterline, sheet } = await expected(tub, 2);
    const top = reachAlong(bait.links, bait.pose.up) - bait.pose.offset;
    for (const height of [top - 8, top - 20]) {
      const [fore, aft] = outlineMiss(picture, bait, height, waterline, sheet);
      // a joint face has a rim of its own instead of the outline
      expect(fore, `fore at ${height} mm`).toBeLessThan(2 * PIXEL);
      expect(aft, `aft at ${height} mm`).toBeLessThan(PIXEL);
    }
  });
});

test('the water is off its mark by the same numbers at the line as under Aim', async () => {
  const tub = await openTub();
  await float(tub);
  // under the ballast plan the same is said of the bait with that
  const said = await tub.page
    .getByText(/^Water off its mark/)
    .first()
    .textContent();
  const drawn = await tub.page.locator('.mark.off-mark').allTextContents();
  // where the water is on its mark nothing is written
  const off = (said ?? '').match(/[+-]\d+\.\d/g) ?? [];
  expect(drawn).toEqual(off);
  for (const number of drawn) expect(said).toContain(` ${number}`);
});

test.each([
  ['w', 'Waterline'],
  ['b', 'From below'],
])('key %s looks from where the button %s says, and shows another picture', async (key, name) => {
  const tub = await openTub();
  const side = await settled(tub);
  await tub.page.keyboard.press(key);
  const pressed = tub.page.getByRole('button', { name, exact: true });
  expect(await pressed.getAttribute('aria-pressed')).toBe('true');
  expect(sameTo(await settled(tub), side)).toBe(false);
});

describe('the bait cut away', () => {
  /** A point of the body on the picture, pixels; the first hole and the middle of its lead. */
  async function placed(tub: Tub) {
    const { bait, waterline, sheet } = await expected(tub, 'whole');
    const turn = worldFromBody(new Vector3(...bait.pose.up), bait.pose.offset, new Matrix4());
    const at = (place: readonly [number, number, number]) => {
      const world = new Vector3(...place).applyMatrix4(turn);
      return [Math.floor(sheet.left + world.x * sheet.scale), Math.floor(waterline - world.z * sheet.scale)] as const;
    };
    const [hole] = bait.holes;
    if (!hole?.lead) throw new Error(`${BAIT} has no lead`);
    const deep = (hole.lead.from + hole.lead.to) / 2;
    const along = (axis: 0 | 1 | 2) => hole.mouth[axis] + hole.inward[axis] * deep;
    return { at, hole, middleOfLead: at([along(0), along(1), along(2)]) };
  }

  const brightness = (colour: readonly number[]) => colour[0] + colour[1] + colour[2];
  /** So many pixels of a row from a place on. */
  const rowFrom = (picture: Picture, [x, y]: readonly [number, number], count: number) =>
    Array.from({ length: count }, (_, i) => picture.at(x + i, y));
  /** How often a row goes from light to dark or back. */
  const strokes = (row: readonly (readonly number[])[]) => {
    const values = row.map(brightness);
    const middle = (Math.max(...values) + Math.min(...values)) / 2;
    return values.filter((value, i) => i > 0 && value > middle !== values[i - 1] > middle).length;
  };
  const spread = (row: readonly (readonly number[])[]) => {
    const values = row.map(brightness);
    return Math.max(...values) - Math.min(...values);
  };

  test('at its middle shows lead in plain sight, in its own colour, and the wood round it hatched', async () => {
    const tub = await openTub();
    await float(tub);
    const { at, middleOfLead } = await placed(tub);
    const [x, y] = middleOfLead;
    const lead = (picture: Picture) => rowFrom(picture, [x - 5, y], 10);
    // over the lead, before the upper eyes of the joint
    const clear = at([28, 0, 14]);
    const whole = await settled(tub);
    await tub.page.keyboard.press('c');
    const cut = await settled(tub);
    // LEAD of src/scene/looks.ts, in the lamp's light on a round slug
    expect(unlike(cut.at(x, y), [0x56, 0x60, 0x69, 255])).toBeLessThan(45);
    expect(spread(lead(cut))).toBeLessThan(15);
    expect(spread(lead(whole))).toBeGreaterThan(25);
    // a stroke every 7 pixels of 70 has two sides
    const hatched = rowFrom(cut, clear, 70);
    expect(strokes(hatched)).toBeGreaterThanOrEqual(18);
    expect(strokes(hatched)).toBeLessThanOrEqual(21);
    expect(spread(hatched)).toBeGreaterThan(100);
    // slanted at 45°: a pixel down and a pixel to the right it is the same
    const below = rowFrom(cut, [clear[0] + 3, clear[1] + 3], 70);
    const offset = hatched.map((colour, i) => Math.abs(brightness(colour) - brightness(below[i])));
    expect(Math.max(...offset)).toBeLessThan(30);
    // wood in its own tint
    expect(hatched.every(([red, , blue]) => red > blue)).toBe(true);
    await tub.page.keyboard.press('c');
    expect(sameTo(await settled(tub), whole)).toBe(true);
    expect(tub.complaints).toEqual([]);
  });

  test('nearer to the viewer keeps the lead behind the plane hidden', async () => {
    const tub = await openTub();
    await float(tub);
    const { hole, middleOfLead } = await placed(tub);
    const [x, y] = middleOfLead;
    await tub.page.keyboard.press('c');
    const slider = tub.page.getByRole('slider', { name: 'Cut at' });
    await slider.focus();
    const steps = 2 * Math.ceil(hole.diameter / 2 + 1);
    for (let i = 0; i < steps; i++) await tub.page.keyboard.press('ArrowLeft');
    expect(await slider.getAttribute('aria-valuetext')).toBe(`${(steps / 2).toFixed(1)} mm to port`);
    const row = rowFrom(await settled(tub), [x - 5, y], 10);
    expect(spread(row)).toBeGreaterThan(25);
  });

  test('has a slider in the units of the page that leaves the keys of the view to the view', async () => {
    const tub = await openTub();
    await tub.page.getByRole('button', { name: 'Cut away' }).click();
    const slider = tub.page.getByRole('slider', { name: 'Cut at' });
    await slider.focus();
    expect(await slider.getAttribute('aria-valuetext')).toBe('at the middle');
    await tub.page.keyboard.press('End');
    expect(await slider.getAttribute('aria-valuetext')).toBe('10.0 mm to starboard');
    await tub.page.keyboard.press('t');
    expect(await tub.page.getByRole('button', { name: 'Top', exact: true }).getAttribute('aria-pressed')).toBe('true');
    await tub.page.getByText('in, oz', { exact: true }).click();
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/in to starboard$/);
    await slider.focus();
    await tub.page.keyboard.press('c');
    expect(await slider.count()).toBe(0);
    expect(tub.complaints).toEqual([]);
  });
});

test.each([
  ['the button', ({ page }: Tub) => page.getByRole('button', { name: 'Apart', exact: true }).click()],
  ['the key', ({ page }: Tub) => page.keyboard.press('a')],
])('%s pulls the links apart, says so, and puts them together again as they were', async (_, pull) => {
  const tub = await openTub();
  const button = tub.page.getByRole('button', { name: 'Apart', exact: true });
  const said = tub.page.getByText('pulled apart, drawn at the whole bait’s attitude');
  const together = await settled(tub);
  await pull(tub);
  expect(await button.getAttribute('aria-pressed')).toBe('true');
  expect(await said.isVisible()).toBe(true);
  const apart = await settled(tub);
  expect(sameTo(apart, together)).toBe(false);
  await tub.page.keyboard.press('2');
  expect(await button.isDisabled()).toBe(true);
  expect(await said.isVisible()).toBe(false);
  await tub.page.keyboard.press('0');
  expect(sameTo(await settled(tub), apart)).toBe(true);
  await pull(tub);
  expect(await button.getAttribute('aria-pressed')).toBe('false');
  await tub.page.locator('h1').hover();
  expect(sameTo(await settled(tub), together)).toBe(true);
  expect(tub.complaints).toEqual([]);
});

describe('what is written over the picture', () => {
  test('is a number for each link, both centres and the water’s name, and no more than a dozen in all', async () => {
    const tub = await openTub();
    const marks = tub.page.locator('.mark');
    await marks.filter({ hasText: 'still water' }).waitFor();
    expect((await marks.allTextContents()).sort()).toEqual(['1', '2', '3', 'B', 'G', 'still water']);
    for (const mark of await marks.all()) expect(await mark.isVisible()).toBe(true);
  });

  test('has G and B plumb over each other, each at its own centre', async () => {
    const tub = await openTub();
    await float(tub);
    await settled(tub);
    const { bait, waterline, sheet } = await expected(tub, 'whole');
    const turn = worldFromBody(new Vector3(...bait.pose.up), bait.pose.offset, new Matrix4());
    const box = await tub.water.boundingBox();
    for (const [name, place] of [
      ['weight', bait.float.gravityCentre],
      ['lift', bait.float.buoyancyCentre],
    ] as const) {
      const world = new Vector3(...place).applyMatrix4(turn);
      const mark = await tub.page.locator(`.mark.${name} svg`).boundingBox();
      if (!mark || !box) throw new Error(`no mark of ${name}`);
      const [x, y] = [mark.x + mark.width / 2 - box.x, mark.y + mark.height / 2 - box.y];
      expect(Math.abs(x - (sheet.left + world.x * sheet.scale))).toBeLessThan(PIXEL);
      expect(Math.abs(y - (waterline - world.z * sheet.scale))).toBeLessThan(PIXEL);
    }
  });
});

type Rectangle = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

async function boxesOf(found: Locator): Promise<readonly Rectangle[]> {
  const boxes = await Promise.all((await found.all()).map((one) => one.boundingBox()));
  return boxes.flatMap((box) => (box === null ? [] : [box]));
}

/** Neither covers any of the other. */
function apart(one: Rectangle, other: Rectangle): boolean {
  const sideways = one.x + one.width <= other.x || other.x + other.width <= one.x;
  return sideways || one.y + one.height <= other.y || other.y + other.height <= one.y;
}

test('on a phone no words over the picture cover others, those at the water’s mark included', async () => {
  const tub = await openTub({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await float(tub);
  await tub.page.locator('.mark.off-mark').first().waitFor();
  await settled(tub);
  const words = tub.page.locator('.mark span:not([style*="hidden"])');
  const boxes = await boxesOf(words);
  expect(boxes.length).toBeGreaterThan(6);
  for (const [i, one] of boxes.entries()) for (const other of boxes.slice(0, i)) expect(apart(one, other)).toBe(true);
});

describe('another setup beside', () => {
  test('is drawn pale where its own float has it, and named with what it does otherwise', async () => {
    const tub = await openTub();
    await choose(tub, 'Setup', 'slow-sink');
    await choose(tub, 'Beside', FLOATING);
    const note = tub.page.locator('.beside-note');
    await note.waitFor();
    await tub.page.locator('[data-fresh="true"][data-done="true"]').waitFor();
    const picture = await settled(tub);
    const [own, other] = [outcomesOf(fileOf(BAIT), { setup: 'slow-sink' }), ofBait].map((answers) =>
      shownBait({ ...answers, lastGood: { bait: {}, links: [] } }, 'whole'),
    );
    if (!own || !other) throw new Error('a setup was not worked out');
    expect(await note.textContent()).toMatch(
      new RegExp(`^${FLOATING}: floats; ${(own.float.mass - other.float.mass).toFixed(1)} g lighter`),
    );
    // nothing else stands out of the water under the note: the highest is the pale one's fin
    const finsOver = reachAlong(other.links, [0, 0, 1], other.fins) - reachAlong(other.links, [0, 0, 1]);
    const needs = besideNeeds(own.float.proud, other.float.proud, finsOver);
    const { waterline, sheet } = await expected(tub, 'whole', ofBait, needs);
    const { width, height } = picture;
    const rows = Array.from({ length: height - UNDER_NOTE_PX }, (_, y) => y + UNDER_NOTE_PX);
    const columns = Array.from({ length: width }, (_, x) => x);
    const top = rows.find((y) => columns.some((x) => unlike(picture.at(x, y), picture.at(4, y)) > EDGE)) ?? Number.NaN;
    const out = reachAlong(other.links, other.pose.up, other.fins) - other.pose.offset;
    expect(out).toBeGreaterThan(5);
    expect(Math.abs(top - (waterline - out * sheet.scale))).toBeLessThan(2 * PIXEL);
    // both fit, so that the ruler and the columns keep to the picture
    const both = roomForBoth(roomOf(own), roomOf(other));
    expect(shrunkSheet(sheet, { width, height }, both).scale).toBe(sheet.scale);
    expect(tub.complaints).toEqual([]);
  });

  test('changes places with the first when it is chosen itself, and is gone with the next bait', async () => {
    const tub = await openTub();
    const [setup, beside] = ['Setup', 'Beside'].map((label) =>
      tub.page.getByRole('button', { name: new RegExp(`${label}$`) }),
    );
    await choose(tub, 'Setup', 'slow-sink');
    await choose(tub, 'Beside', FLOATING);
    await choose(tub, 'Setup', FLOATING);
    await tub.page.locator('.beside-note', { hasText: 'slow-sink: sinks' }).waitFor();
    expect(await setup?.textContent()).toContain(FLOATING);
    expect(await beside?.textContent()).toContain('slow-sink');
    await choose(tub, 'Bait', 'Copper Plate 200');
    await tub.page.locator('.beside-note').waitFor({ state: 'detached' });
    expect(await beside?.textContent()).toContain('none');
    expect(tub.complaints).toEqual([]);
  });
});

/** Rows of the tub that the note in its corner takes. */
const UNDER_NOTE_PX = 26;

describe('the metacentre', () => {
  test('is marked GM over G by key M in words clear of all others, no longer by a click, and never from the top', async () => {
    const tub = await openTub();
    await float(tub);
    const button = tub.page.getByRole('button', { name: 'Metacentre' });
    const mark = tub.page.locator('.mark.metacentre');
    expect(await mark.count()).toBe(0);
    await tub.page.keyboard.press('m');
    await mark.waitFor();
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    const { bait, waterline, sheet } = await expected(tub, 'whole');
    const shown = (await mark.textContent()) ?? '';
    expect(shown).toMatch(/^M, GM −?\d+(\.\d+)? mm$/);
    expect(Math.abs(Number.parseFloat(shown.slice(6).replace('−', '-')) - bait.float.gm)).toBeLessThan(0.06);
    await settled(tub);
    const up = new Vector3(...bait.pose.up);
    const world = new Vector3(...bait.float.gravityCentre)
      .addScaledVector(up, bait.float.gm)
      .applyMatrix4(worldFromBody(up, bait.pose.offset, new Matrix4()));
    const [box, sign] = [await tub.water.boundingBox(), await mark.locator('svg').boundingBox()];
    if (!box || !sign) throw new Error('no mark');
    expect(Math.abs(sign.x + sign.width / 2 - box.x - (sheet.left + world.x * sheet.scale))).toBeLessThan(PIXEL);
    expect(Math.abs(sign.y + sign.height / 2 - box.y - (waterline - world.z * sheet.scale))).toBeLessThan(PIXEL);
    const words = await boxesOf(tub.page.locator('.mark span'));
    for (const [i, one] of words.entries()) for (const other of words.slice(0, i)) expect(apart(one, other)).toBe(true);
    await tub.page.keyboard.press('t');
    await mark.waitFor({ state: 'detached' });
    await tub.page.keyboard.press('f');
    await mark.waitFor();
    await button.click();
    await mark.waitFor({ state: 'detached' });
    expect(await button.getAttribute('aria-pressed')).toBe('false');
    expect(tub.complaints).toEqual([]);
  });
});

describe('a hand on the tub', () => {
  test('turns the bait, and one key brings the side view back as it was', async () => {
    const tub = await openTub();
    const side = await tub.water.screenshot();
    await drag(tub, -80, 40);
    const pressed = tub.page.getByRole('button', { name: 'Side', exact: true });
    expect(await pressed.getAttribute('aria-pressed')).toBe('false');
    expect((await tub.water.screenshot()).equals(side)).toBe(false);
    await tub.page.keyboard.press('s');
    expect(await pressed.getAttribute('aria-pressed')).toBe('true');
    const again = await settled(tub);
    expect(sameTo(again, readPng(side))).toBe(true);
  });

  test('picks out a hook by clicking it, and nothing by clicking the water', async () => {
    const tub = await openTub();
    await float(tub);
    const { bait, waterline, sheet } = await expected(tub, 'whole');
    const [hook] = bait.hung;
    const box = await tub.water.boundingBox();
    if (!hook || !box) throw new Error(`${BAIT} has no hook`);
    const eye = new Vector3(...hook.eye).applyMatrix4(
      worldFromBody(new Vector3(...bait.pose.up), bait.pose.offset, new Matrix4()),
    );
    // half way down the shank
    const x = sheet.left + eye.x * sheet.scale;
    const y = waterline - (eye.z - hook.hang / 2) * sheet.scale;
    const red = async () => {
      const [r, g] = (await settled(tub)).at(Math.floor(x), Math.floor(y));
      return r - g;
    };
    expect(await red()).toBeLessThan(0);
    await tub.page.mouse.click(box.x + x, box.y + y);
    expect(await red()).toBeGreaterThan(30);
    await tub.page.mouse.click(box.x + 20, box.y + 20);
    expect(await red()).toBeLessThan(0);
  });

  test('scrolls the page with a bare wheel and comes nearer with Ctrl', async () => {
    const tub = await openTub();
    const side = await settled(tub);
    await tub.water.hover();
    await tub.page.mouse.wheel(0, 150);
    await tub.page.waitForFunction(() => window.scrollY > 100);
    await tub.page.evaluate(() => window.scrollTo(0, 0));
    await tub.water.hover();
    await tub.page.keyboard.down('Control');
    await tub.page.mouse.wheel(0, -300);
    await tub.page.keyboard.up('Control');
    const nearer = await settled(tub);
    expect(await tub.page.evaluate(() => window.scrollY)).toBe(0);
    expect(sameTo(nearer, side)).toBe(false);
  });

  test('leaves up and down to the page on a touch screen', async () => {
    const tub = await openTub({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const allowed = await tub.water.locator('canvas').evaluate((canvas) => {
      const actions: string[] = [];
      for (let element: Element | null = canvas; element; element = element.parentElement) {
        actions.push(getComputedStyle(element).touchAction);
      }
      return actions;
    });
    expect(allowed).toContain('pan-y');
    expect(allowed).not.toContain('none');
  });
});

test('nothing is drawn while nothing moves, ripples or not', async () => {
  const tub = await openTub({ reducedMotion: 'no-preference' });
  const drawn = await tub.page.evaluate(async () => {
    const context = WebGL2RenderingContext.prototype;
    const draw = context.drawElements;
    let calls = 0;
    context.drawElements = function (...given) {
      calls++;
      draw.apply(this, given);
    };
    const frame = () => new Promise((done) => requestAnimationFrame(done));
    // ripples die down in about 3 s, later where a frame takes long; then a hundred frames go by and nothing is drawn
    let idle = 0;
    for (let frames = 0, before = -1; idle < 100 && frames < 3000; frames++) {
      await frame();
      idle = calls === before ? idle + 1 : 0;
      before = calls;
    }
    const resting = calls;
    // a change of size must be drawn: so the counter does count
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 't' }));
    for (let frames = 0; calls === resting && frames < 3000; frames++) await frame();
    return { idle, afterwards: calls - resting };
  });
  expect(drawn.idle).toBe(100);
  expect(drawn.afterwards).toBeGreaterThan(0);
});

test('a drawing context that the machine takes away is made anew', async () => {
  const tub = await openTub();
  const before = await settled(tub);
  await tub.water.locator('canvas').evaluate((canvas) => {
    const context = (canvas as HTMLCanvasElement).getContext('webgl2');
    (canvas as HTMLCanvasElement).dataset.lost = 'yes';
    context?.getExtension('WEBGL_lose_context')?.loseContext();
  });
  await tub.water.locator('canvas:not([data-lost])').waitFor();
  await tub.page.locator('.mark.link-number').first().waitFor();
  const after = await settled(tub);
  expect(sameTo(after, before)).toBe(true);
});

async function drag({ page, water }: Tub, right: number, down: number): Promise<void> {
  const box = await water.boundingBox();
  if (!box) throw new Error('the tub is not on the page');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + right, y + down, { steps: 4 });
  await page.mouse.up();
}

/** Whether two pictures differ nowhere by more than rounding: another context may round a colour the other way. */
function sameTo(a: Picture, b: Picture): boolean {
  if (a.width !== b.width || a.height !== b.height) return false;
  for (let y = 0; y < a.height; y += 2) {
    for (let x = 0; x < a.width; x += 2) if (unlike(a.at(x, y), b.at(x, y)) > 12) return false;
  }
  return true;
}
