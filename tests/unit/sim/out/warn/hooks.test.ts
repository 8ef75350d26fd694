import { describe, expect, test } from 'vitest';
import type { DesignFile, HangerEntry } from '../../../../../sim/design/file.ts';
import { warn } from '../../../../../sim/out/warn.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../../support/make-design.ts';
import { warnPartsOf } from '../../../../support/quiet-warn-parts.ts';

const [POND] = PLAIN_DESIGN.setups;
const [TIE, FORE, AFT] = PLAIN_DESIGN.hangers;

function hooksOf(file: DesignFile) {
  return warn(warnPartsOf(file)).filter(({ code }) => /^hook/.test(code));
}

/** The plain bait with these hooks, each from a hanger of its own or from one named. */
function hung(hangs: Readonly<Record<string, number>>, hangers: readonly HangerEntry[] = [TIE, FORE, AFT]): DesignFile {
  const items = Object.entries(hangs).map(([from, hang_mm]) => ({ name: `from ${from}`, from, mass_g: 2, hang_mm }));
  return makeDesignFile({ hangers, setups: [{ ...POND, hung: items }] });
}

describe('two that hang next to each other', () => {
  // their eyes stand 60 mm apart along x, at -19.5 and -17.4: 60.04 mm
  const apart = Math.hypot(60, 18 * (Math.sqrt(1 - 0.4 ** 2) - Math.sqrt(1 - 0.6 ** 2)));

  test('meet when the longer hangs further than their eyes stand apart, and are told by both', () => {
    expect(hooksOf(hung({ 'belly, fore': 60, 'belly, aft': 60 }))).toEqual([]);
    const [said, ...more] = hooksOf(hung({ 'belly, fore': 64, 'belly, aft': 63 }));
    expect(more).toEqual([]);
    expect(said).toMatchObject({
      code: 'hooks-meet',
      where: 'from belly, fore, from belly, aft',
      limit: 64,
      unit: 'mm',
      fix: null,
    });
    expect(said.number).toBeCloseTo(apart, 6);
    expect(said.text).toBe(
      '"from belly, fore" can swing into "from belly, aft": it hangs 64.0 mm and the eyes stand 60.0 mm apart. By common practice eyes stand further apart than the longer of two hangs.',
    );
    expect(said.at?.[0]).toBeCloseTo(66, 9);
  });

  test('are told by the longer first, whichever side that is on', () => {
    const [said] = hooksOf(hung({ 'belly, fore': 10, 'belly, aft': 62 }));
    expect(said).toMatchObject({ code: 'hooks-meet', where: 'from belly, aft, from belly, fore', limit: 62 });
    expect(said.number).toBeCloseTo(apart, 6);
    expect(said.text).toContain('"from belly, aft" can swing into "from belly, fore"');
  });

  test('do not where both swung towards each other would overlap and neither reaches the other eye', () => {
    expect(hooksOf(hung({ 'belly, fore': 45, 'belly, aft': 45 }))).toEqual([]);
  });

  test('whose distance reads as enough do not', () => {
    const fires = (more: number) => hooksOf(hung({ 'belly, fore': apart + more })).length;
    const both = (more: number) => hooksOf(hung({ 'belly, fore': apart + more, 'belly, aft': 5 })).length;
    expect([0.04, 0.06].map(both)).toEqual([0, 1]);
    // alone on the belly there is nothing to swing into
    expect(fires(5)).toBe(0);
  });

  test('are the ones at neighbouring eyes; of several on one eye the longest counts', () => {
    const [said] = hooksOf({
      ...hung({}),
      setups: [
        {
          ...POND,
          hung: [
            { name: 'ring', from: 'belly, fore', mass_g: 0.2, hang_mm: 5 },
            { name: 'long', from: 'belly, fore', mass_g: 2, hang_mm: 63 },
            { name: 'other', from: 'belly, aft', mass_g: 2, hang_mm: 33 },
          ],
        },
      ],
    });
    expect(said.where).toBe('long, other');
  });

  test('on belly and back never meet: the body is between them', () => {
    const back: HangerEntry = { ...AFT, on: 'back' };
    expect(hooksOf(hung({ 'belly, fore': 65, 'belly, aft': 65 }, [TIE, FORE, back]))).toEqual([]);
  });
});

describe('one near a joint', () => {
  // from the eye at 36, -19.5 to the belly at 60, -18
  const away = Math.hypot(24, 1.5 + 18 - 18 * Math.sqrt(1 - 0.4 ** 2) - 0);

  test('props it where its points swing right into the gap, and not where they pass it or fall short', () => {
    const [{ number }] = hooksOf(hung({ 'belly, fore': 25 }));
    expect(Number(number)).toBeGreaterThan(24);
    expect(Number(number)).toBeLessThan(away + 1);
    const fires = (hang: number) => hooksOf(hung({ 'belly, fore': hang })).length;
    const reach = Number(number);
    expect([reach - 1.01, reach - 0.99, reach + 2.99, reach + 3.01].map(fires)).toEqual([0, 1, 1, 0]);
  });

  test('is told at the mouth of the gap, with both lengths', () => {
    const [said] = hooksOf(hung({ 'belly, fore': 25 }));
    expect(said).toMatchObject({ code: 'hook-at-joint', where: 'from belly, fore', limit: 26, unit: 'mm' });
    expect(said.at?.map((c) => Math.round(c * 1e6) / 1e6)).toEqual([60, 0, -18]);
    expect(said.text).toMatch(/gap of joint 1 .* is 24\.\d mm from its eye, and it hangs 25\.0 mm/);
  });

  test('that hangs from the back does not', () => {
    expect(hooksOf(hung({ 'belly, fore': 25 }, [TIE, { ...FORE, on: 'back' }, AFT]))).toEqual([]);
  });
});
