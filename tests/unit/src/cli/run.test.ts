import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/index.ts';
import { run } from '../../../../src/cli/run.ts';
import { captureTerminal } from '../../../support/captured-terminal.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../../support/make-design.ts';
import { passingFolder } from '../../../support/passing-folder.ts';
import { openEdgesOf, readStl, volumeOf } from '../../../support/read-stl.ts';

const PLAIN = PLAIN_DESIGN;

/** Runs a command line with a design on standard input. */
async function runOn(file: DesignFile | string, ...words: string[]) {
  const terminal = captureTerminal(typeof file === 'string' ? file : JSON.stringify(file));
  const code = await run(words, terminal);
  return { code, printed: terminal.printed(), complaints: terminal.complaints };
}

function withTarget(target: DesignFile['setups'][number]['target']): DesignFile {
  return { ...PLAIN, setups: PLAIN.setups.map((setup) => ({ ...setup, target })) };
}

/** The plain bait in a second setup, whose name has a comma: without the hole in its tail. */
const TWO: DesignFile = {
  ...PLAIN,
  setups: PLAIN.setups.flatMap((setup) => [
    setup,
    { ...setup, name: 'topwater, sea', holes: setup.holes.filter(({ name }) => name !== 'middle hole') },
  ]),
};

/** A light bait in one piece without ballast, and a shop that has what it takes. */
function shopped(target: DesignFile['setups'][number]['target']): DesignFile {
  const file = makeDesignFile({ pieces: 1 });
  return {
    ...file,
    shop: { ...file.shop, drills: [{ name: '8 mm', diameter_mm: 8 }] },
    setups: file.setups.map((setup) => ({ ...setup, target, holes: [] })),
  };
}

describe('check', () => {
  test('prints the report of the whole bait and each link, and nothing on standard error', async () => {
    const { code, printed, complaints } = await runOn(PLAIN, 'check', '-');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    for (const part of [
      'Boathouse Plain: still pond',
      'Link 1 of 2, alone: head',
      'Link 2 of 2, alone: tail',
      'fore treble',
    ]) {
      expect(printed).toContain(part);
    }
    expect(printed).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  test('prints JSON that balances: what is displaced weighs what the bait weighs', async () => {
    const { code, printed } = await runOn(PLAIN, 'check', '-', '--json', '--setup', 'still pond');
    expect(code).toBe(0);
    const { assembled, links, water } = JSON.parse(printed);
    const sum = (parts: readonly number[]) => parts.reduce((total, part) => total + part, 0);
    const fixed = sum(links.map((link: { fixed: { mass_g: number } }) => link.fixed.mass_g));
    const hung = links.flatMap((link: { hung: readonly { mass_g: number; volume_mm3: number }[] }) => link.hung);
    expect(assembled.float.state).toBe('floats');
    // both hooks hang wholly under water here
    const lift =
      water.density_g_mm3 *
      (assembled.float.displaced_mm3 + sum(hung.map((item: { volume_mm3: number }) => item.volume_mm3)));
    // the solver stops within a tenth of a milligram
    expect(lift).toBeCloseTo(fixed + sum(hung.map((item: { mass_g: number }) => item.mass_g)), 3);
  });

  test('a missed target is no failure unless --strict is given', async () => {
    const missed = withTarget({ net_wet_g: 300 });
    expect((await runOn(missed, 'check', '-')).code).toBe(0);
    const strict = await runOn(missed, 'check', '-', '--strict');
    expect(strict).toMatchObject({ code: 1, complaints: [] });
    expect(strict.printed).toContain('missed: net weight under water +300.00 g wanted');
  });

  test('a target that is met passes --strict', async () => {
    const { printed } = await runOn(PLAIN, 'check', '-', '--json');
    const net_wet_g: number = JSON.parse(printed).assembled.float.net_wet_g;
    const trim_deg: number = JSON.parse(printed).assembled.float.trim_deg;
    const strict = await runOn(withTarget({ reserve_g: -net_wet_g, trim_deg }), 'check', '-', '--strict');
    expect(strict.printed).not.toContain('missed');
    expect(strict.code).toBe(0);
  });

  test('a design that cannot be made is refused with reasons and no report', async () => {
    const { code, printed, complaints } = await runOn(
      { ...PLAIN, body: { ...PLAIN.body, length_mm: -5 } },
      'check',
      '-',
    );
    expect({ code, printed }).toEqual({ code: 2, printed: '' });
    expect(complaints.some((line) => line.startsWith('body.length_mm: '))).toBe(true);
  });

  test('a name cannot move the cursor of a terminal', async () => {
    const { complaints } = await runOn('', 'check', 'no\n\u001b[2Jsuch.json');
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(/^no\\u000a\\u001b\[2Jsuch\.json: /);
  });
});

describe('ballast', () => {
  test('prints the plan of each link and the whole bait, and nothing on standard error', async () => {
    const { code, printed, complaints } = await runOn(PLAIN, 'ballast', '-');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    for (const part of [
      'Boathouse Plain: still pond, ballast plan',
      'Lead is poisonous',
      'Link 1: head',
      'Link 2: tail',
      'Whole bait with this plan',
      'What if',
    ]) {
      expect(printed).toContain(part);
    }
    expect(printed).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  test('prints JSON of the setup that is named', async () => {
    const { code, printed, complaints } = await runOn(TWO, 'ballast', '-', '--json', '--setup', 'topwater, sea');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    const { design, setup, links, what_ifs } = JSON.parse(printed);
    expect({ design, setup }).toEqual({ design: 'Boathouse Plain', setup: 'topwater, sea' });
    expect(links.map(({ name }: { name: string }) => name)).toEqual(['head', 'tail']);
    expect(what_ifs.length).toBeGreaterThan(0);
  });

  test('a plan that misses its target is no failure unless --strict is given', async () => {
    const missed = withTarget({ net_wet_g: 300 });
    expect((await runOn(missed, 'ballast', '-')).code).toBe(0);
    const strict = await runOn(missed, 'ballast', '-', '--strict');
    expect(strict).toMatchObject({ code: 1, complaints: [] });
    expect(strict.printed).toContain('missed: net weight under water +300.00 g wanted');
  });

  test('a plan that meets its target passes --strict, though the file as it stands misses it', async () => {
    const one = shopped({ proud_mm: 4 });
    expect((await runOn(one, 'check', '-', '--strict')).code).toBe(1);
    const strict = await runOn(one, 'ballast', '-', '--strict');
    expect({ code: strict.code, complaints: strict.complaints }).toEqual({ code: 0, complaints: [] });
    expect(strict.printed).not.toContain('missed');
  });

  test('--write saves the design with the plan in it, which then floats as the plan says', async () => {
    const path = join(passingFolder(), 'new', 'planned.json');
    const one = shopped({ proud_mm: 4 });
    const { code, printed, complaints } = await runOn(one, 'ballast', '-', '--json', '--write', path);
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    const text = readFileSync(path, 'utf8');
    const written: DesignFile = JSON.parse(text);
    const plan = JSON.parse(printed);
    const holes = plan.links.flatMap((link: { holes: readonly { name: string }[] }) => link.holes);
    expect(holes.length).toBeGreaterThan(0);
    expect(written.setups[0].holes.map(({ name }) => name)).toEqual(holes.map(({ name }: { name: string }) => name));
    expect({ ...written, setups: [{ ...written.setups[0], holes: [] }] }).toEqual({
      ...one,
      setups: [{ ...one.setups[0], holes: [] }],
    });
    const check = JSON.parse((await runOn(text, 'check', '-', '--json')).printed);
    for (const key of ['proud_mm', 'trim_deg', 'net_wet_g', 'gm_mm']) {
      expect([key, check.assembled.float[key]]).toEqual([key, expect.closeTo(plan.assembled.float[key], 6)]);
    }
    expect(readdirSync(join(path, '..'))).toEqual(['planned.json']);
  });

  test('--write never replaces a file, and prints no plan that it did not save', async () => {
    const folder = passingFolder();
    const path = join(folder, 'mine.json');
    writeFileSync(path, 'mine');
    const { code, printed, complaints } = await runOn(PLAIN, 'ballast', '-', '--write', path);
    expect({ code, printed, complaints }).toEqual({
      code: 2,
      printed: '',
      complaints: [`${path}: is there already (choose another name, or move it away)`],
    });
    expect(readFileSync(path, 'utf8')).toBe('mine');
    const inTheWay = await runOn(PLAIN, 'ballast', '-', '--write', join(path, 'deeper.json'));
    expect(inTheWay).toEqual({
      code: 2,
      printed: '',
      complaints: [`${path}: is a file, a folder is wanted (choose another --write)`],
    });
    expect(readdirSync(folder)).toEqual(['mine.json']);
  });

  test('a bad design or setup is refused with reasons, and nothing is written', async () => {
    const folder = passingFolder();
    const path = join(folder, 'new.json');
    const narrow = { ...PLAIN, body: { ...PLAIN.body, length_mm: -5 } };
    const bad = await runOn(narrow, 'ballast', '-', '--write', path);
    expect({ code: bad.code, printed: bad.printed }).toEqual({ code: 2, printed: '' });
    expect(bad.complaints.some((line) => line.startsWith('body.length_mm: '))).toBe(true);
    expect((await runOn('no design', 'ballast', '-', '--write', path)).code).toBe(2);
    expect(await runOn(TWO, 'ballast', '-', '--setup', 'ice', '--write', path)).toEqual({
      code: 2,
      printed: '',
      complaints: ['--setup: the design has no setup "ice" (choose one of "still pond", "topwater, sea")'],
    });
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('compare', () => {
  test('prints two setups side by side, a comma in a name written \\,', async () => {
    const { code, printed, complaints } = await runOn(TWO, 'compare', '-', '--setups', 'still pond,topwater\\, sea');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    for (const part of [
      'Boathouse Plain: still pond and topwater, sea',
      'Whole bait, held straight',
      'At the bench\n  1 hole differs for topwater, sea: 1.0 g less lead.',
      'Link head: 4.0 g of lead, 4.0 g',
      'Link tail: 1.0 g of lead, 0.0 g',
      'in still pond only: middle hole: from the belly',
    ]) {
      expect(printed).toContain(part);
    }
    expect(printed).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  test('prints JSON in the order that was asked for', async () => {
    const { code, printed } = await runOn(TWO, 'compare', '-', '--json', '--setups', 'topwater\\, sea,still pond');
    expect(code).toBe(0);
    const { setups, lead_g, links, assembled } = JSON.parse(printed);
    expect({ setups, lead_g }).toEqual({ setups: ['topwater, sea', 'still pond'], lead_g: [4, 5] });
    expect(links[1].holes).toMatchObject([{ kind: 'only', in: 'still pond', hole: { name: 'middle hole' } }]);
    // as `check` has it
    const check = JSON.parse((await runOn(TWO, 'check', '-', '--json')).printed);
    expect(assembled[1]).toEqual(check.assembled.float);
  });

  test.each([
    ['still pond,ice', '--setups: the design has no setup "ice" (choose one of "still pond", "topwater, sea")'],
    ['ice,still pond', '--setups: the design has no setup "ice" (choose one of "still pond", "topwater, sea")'],
    ['still pond,topwater, sea', 'floatwright compare: --setups wants two names, got "still pond,topwater, sea"'],
    ['still pond', 'floatwright compare: --setups wants two names, got "still pond"'],
    ['still pond,still pond', 'floatwright compare: --setups wants two different setups, got "still pond" twice'],
  ])('refuses --setups %s', async (names, reason) => {
    const { code, printed, complaints } = await runOn(TWO, 'compare', '-', '--setups', names);
    expect({ code, printed }).toEqual({ code: 2, printed: '' });
    expect(complaints).toHaveLength(1);
    expect(complaints[0].startsWith(reason)).toBe(true);
  });

  test('a bad design is refused with reasons', async () => {
    const names = ['--setups', 'still pond,topwater\\, sea'];
    const bad = await runOn({ ...TWO, body: { ...TWO.body, length_mm: -5 } }, 'compare', '-', ...names);
    expect({ code: bad.code, printed: bad.printed }).toEqual({ code: 2, printed: '' });
    expect(bad.complaints.some((line) => line.startsWith('body.length_mm: '))).toBe(true);
    expect((await runOn('', 'compare', 'no-such.json', ...names)).complaints[0]).toMatch(/^no-such\.json: /);
  });
});

describe('export --solids', () => {
  test('writes a closed solid for each link, says what it wrote, and leaves nothing else', async () => {
    const folder = join(passingFolder(), 'out');
    const { code, printed, complaints } = await runOn(PLAIN, 'export', '-', '--out', folder, '--solids');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    expect(readdirSync(folder)).toEqual(['1-head.flooded.stl', '1-head.stl', '2-tail.stl']);
    for (const name of readdirSync(folder)) {
      const file = readStl(readFileSync(join(folder, name)));
      expect(openEdgesOf(file)).toEqual([]);
      expect(volumeOf(file)).toBeGreaterThan(0);
      expect(printed).toContain(join(folder, name));
    }
  });

  test('the solids less their flooded parts hold what the bait displaces', async () => {
    const folder = passingFolder();
    await runOn(PLAIN, 'export', '-', '--out', folder, '--solids');
    const heavy = PLAIN.setups.map((setup) => ({
      ...setup,
      hung: setup.hung.map((item) => ({ ...item, mass_g: 100 })),
    }));
    const { printed } = await runOn({ ...PLAIN, setups: heavy }, 'check', '-', '--json');
    for (const [index, link] of JSON.parse(printed).links.entries()) {
      const names = readdirSync(folder).filter((name) => name.startsWith(`${index + 1}-`));
      const volume = names.reduce((sum, name) => {
        const part = volumeOf(readStl(readFileSync(join(folder, name))));
        return name.includes('.flooded.') ? sum - part : sum + part;
      }, 0);
      const outside = link.outside.reduce((sum: number, part: { volume_mm3: number }) => sum + part.volume_mm3, 0);
      expect(link.float.state).toBe('sinks');
      // 32-bit corners: one part in 10^6 of some 20 cm3
      expect(volume + outside).toBeCloseTo(link.float.displaced_mm3, 1);
    }
  });

  test('a bad design or folder writes nothing', async () => {
    const folder = passingFolder();
    const bad = await runOn('{}', 'export', '-', '--out', join(folder, 'out'), '--solids');
    expect({ code: bad.code, printed: bad.printed }).toEqual({ code: 2, printed: '' });
    expect(readdirSync(folder)).toEqual([]);
    writeFileSync(join(folder, 'out'), 'mine');
    const inTheWay = await runOn(PLAIN, 'export', '-', '--out', join(folder, 'out'), '--solids');
    expect({ code: inTheWay.code, printed: inTheWay.printed }).toEqual({ code: 2, printed: '' });
    expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine');
  });
});

describe('sums', () => {
  test('prints the page of one link and the whole bait, in the setup that is named', async () => {
    const { code, printed, complaints } = await runOn(PLAIN, 'sums', '-', '--setup', 'still pond', '--link', 'tail');
    expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
    expect(printed).toContain('The sums behind Boathouse Plain: still pond');
    expect(printed).toContain('Link 2 of 2, alone: tail');
    expect(printed).not.toContain('alone: head');
  });

  test.each([
    ['--link', 'fin', '--link: the design has no link "fin" (choose one of "head", "tail")'],
    ['--setup', 'ice', '--setup: the design has no setup "ice" (choose one of "still pond")'],
  ])('refuses %s %s with the names there are', async (option, name, reason) => {
    const { code, printed, complaints } = await runOn(PLAIN, 'sums', '-', option, name);
    expect({ code, printed, complaints }).toEqual({ code: 2, printed: '', complaints: [reason] });
  });
});

test('help names every command that works, on standard output', async () => {
  const { code, printed, complaints } = await runOn('', '--help');
  expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
  expect(printed).toContain('floatwright check DESIGN [--setup NAME] [--fold=DEG,DEG] [--json] [--strict]');
  expect(printed).toContain('floatwright ballast DESIGN [--setup NAME] [--json] [--strict] [--write FILE]');
  expect(printed).toContain('floatwright compare DESIGN --setups A,B [--json]');
  expect(printed).toContain('two names; a comma in a name is written \\,');
  expect(printed).toContain('floatwright export DESIGN --out DIR [--setup NAME] --solids');
  expect(printed).toContain('floatwright sums DESIGN [--setup NAME] [--link NAME]');
});

test('the version is that of the package', async () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(await runOn('', '--version')).toEqual({ code: 0, printed: `${version}\n`, complaints: [] });
});
