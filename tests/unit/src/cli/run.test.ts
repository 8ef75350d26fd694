import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../../sim/index.ts';
import { run } from '../../../../src/cli/run.ts';
import { captureTerminal } from '../../../support/captured-terminal.ts';
import { PLAIN_DESIGN } from '../../../support/make-design.ts';
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
  expect(printed).toContain('floatwright check DESIGN [--setup NAME] [--json] [--strict]');
  expect(printed).toContain('floatwright export DESIGN --out DIR [--setup NAME] --solids');
  expect(printed).toContain('floatwright sums DESIGN [--setup NAME] [--link NAME]');
});

test('the version is that of the package', async () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(await runOn('', '--version')).toEqual({ code: 0, printed: `${version}\n`, complaints: [] });
});
