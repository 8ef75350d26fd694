import { expect, test, vi } from 'vitest';
import type { DesignFile, Step } from '../../../../sim/index.ts';
import { createPipeline } from '../../../../sim/pipeline.ts';
import { createEngine } from '../../../../src/engine/engine.ts';
import type { Ask, Detail, Report, Told } from '../../../../src/engine/protocol.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const ask = (seq: number, file: DesignFile, detail: Detail = 'full'): Ask => ({ seq, file, setup: null, detail });

/** A busy machine is slow. */
const until = (check: () => void) => vi.waitFor(check, { timeout: 10_000 });

/** Lets everything run that waits for a turn of the event loop. */
const takeBreath = () => new Promise<void>((resolve) => setImmediate(resolve));

/** Notes what the engine tells; the clock stands still unless told otherwise. */
function listening(source = createPipeline(), now: () => number = () => 0) {
  const engine = createEngine(source, takeBreath, now);
  const told: Told[] = [];
  engine.listen((each) => told.push(each));
  const everyReport = (): readonly Report[] => told.flatMap((each) => (each.kind === 'report' ? [each.report] : []));
  const reports = () => everyReport().filter(({ done }) => done);
  return { engine, told, reports, everyReport };
}

/** A clock that has always moved on: the engine takes a breath after every step. */
function restless(): () => number {
  let ms = 0;
  return () => {
    ms += 100;
    return ms;
  };
}

/** Answers of its own, so that a test can count the steps that were taken. */
function stepsOf(names: readonly string[]) {
  const taken: string[] = [];
  const source = {
    *steps(file: DesignFile): Generator<Step> {
      for (const name of names) {
        taken.push(`${file.name} ${name}`);
        yield { name, link: null, outcome: { status: 'ok', value: `${file.name} ${name}` } } as unknown as Step;
      }
    },
  };
  return { source, taken };
}

test('A design comes back as a report that holds every answer of the bait and of each link', async () => {
  const { engine, reports } = listening();
  engine.ask(ask(1, makeDesignFile()));
  await until(() => expect(reports()).toHaveLength(1));
  const [report] = reports();
  expect(report).toMatchObject({ seq: 1, detail: 'full' });
  expect(report?.present).toEqual(
    expect.arrayContaining(['design/', 'assembled/', 'warnings/', 'mesh/0', 'float/0', 'mesh/1', 'float/1']),
  );
});

test('What the page draws comes first, then the plan, then accuracy and other ways to rest; nothing is sent twice', async () => {
  const { engine, everyReport } = listening();
  engine.ask(ask(1, makeDesignFile()));
  await until(() => expect(everyReport()).toHaveLength(4));
  const [drawn, planned, judged, done] = everyReport();
  expect(everyReport().map((report) => [report.seq, report.detail, report.done])).toEqual([
    [1, 'full', false],
    [1, 'full', false],
    [1, 'full', false],
    [1, 'full', true],
  ]);
  expect(drawn?.present).toEqual(expect.arrayContaining(['mesh/1', 'float/1', 'assembled/', 'warnings/', 'walls/']));
  expect(drawn?.present.filter((key) => /accuracy|attitudes|allWarnings|plan|ballast/i.test(key))).toEqual([]);
  expect(drawn?.changed).toHaveLength(drawn?.present.length ?? 0);
  const newKeys = (report: Report | undefined, before: Report | undefined) =>
    report?.present.filter((key) => !before?.present.includes(key)) ?? [];
  const sent = (report: Report | undefined) => report?.changed.map((step) => `${step.name}/${step.link ?? ''}`);
  expect(newKeys(planned, drawn)).toEqual(expect.arrayContaining(['plan/0', 'forgiveness/1', 'ballast/', 'planned/']));
  expect(newKeys(planned, drawn).filter((key) => /accuracy|attitudes/i.test(key))).toEqual([]);
  expect(newKeys(judged, planned)).toEqual(
    expect.arrayContaining(['accuracy/0', 'attitudes/1', 'assembledAccuracy/', 'allWarnings/']),
  );
  expect(sent(planned)).toEqual(newKeys(planned, drawn));
  expect(sent(judged)).toEqual(newKeys(judged, planned));
  expect(sent(done)).toEqual([]);
});

test('Lists are told as they grow, but no faster than they can be read', async () => {
  const list = (length: number) =>
    ({ name: 'cures', link: 0, outcome: { status: 'ok', value: Array(length).fill('a cure') } }) as unknown as Step;
  const grown = Array.from({ length: 7 }, (_, i) => list(i));
  const unchanged = grown.at(-1) as Step;
  const source = { steps: () => [...grown, unchanged, unchanged, unchanged, unchanged] };
  let ms = 0;
  // a step every 50 ms
  const { engine, everyReport } = listening(source as never, () => ms);
  const takes = {
    *steps() {
      for (const step of source.steps()) {
        ms += 50;
        yield step;
      }
    },
  };
  const slow = listening(takes as never, () => ms);
  slow.engine.ask(ask(1, makeDesignFile()));
  await until(() => expect(slow.reports()).toHaveLength(1));
  const lengths = slow
    .everyReport()
    .map(({ changed }) =>
      changed.map(({ outcome }) => (outcome.status === 'ok' ? (outcome.value as unknown[]).length : null)),
    );
  expect(lengths).toEqual([[2], [5], [6], []]);
  // all at once: with the last report alone
  engine.ask(ask(1, makeDesignFile()));
  await until(() => expect(everyReport()).toHaveLength(1));
});

test('A heavier hook on the tail sends nothing of the head again', async () => {
  const file = makeDesignFile();
  const { engine, reports, everyReport } = listening();
  engine.ask(ask(1, file));
  await until(() => expect(reports()).toHaveLength(1));
  const setups = structuredClone(file.setups) as unknown as { hung: { mass_g: number }[] }[];
  const hook = setups[0]?.hung[1];
  if (hook === undefined) throw new Error('the plain bait has two hooks');
  hook.mass_g = 3;
  engine.ask(ask(2, { ...structuredClone(file), setups: setups as unknown as DesignFile['setups'] }));
  await until(() => expect(reports()).toHaveLength(2));
  const newer = everyReport().filter(({ seq }) => seq === 2);
  const changed = newer.flatMap((report) => report.changed.map((step) => `${step.name}/${step.link ?? ''}`));
  expect(changed).toContain('float/1');
  expect(changed).toContain('assembled/');
  expect(changed.filter((key) => key.endsWith('/0'))).toEqual([]);
  expect(changed).not.toContain('mesh/1');
});

test('Coarse and full runs of one design in turn send nothing twice', async () => {
  const file = makeDesignFile();
  const { engine, reports, everyReport } = listening();
  const sentTill: number[] = [0];
  for (const [index, detail] of (['drag', 'full', 'drag', 'full'] as const).entries()) {
    engine.ask(ask(1, structuredClone(file), detail));
    await until(() => expect(reports()).toHaveLength(index + 1));
    sentTill.push(everyReport().flatMap(({ changed }) => changed.filter((step) => step.link !== null)).length);
  }
  const [none = 0, drag = 0, full = 0, ...rest] = sentTill;
  expect(drag).toBeGreaterThan(none);
  expect(full).toBeGreaterThan(drag);
  expect(rest).toEqual([full, full]);
});

test('A full run ends at its next step when a newer design has come, and only the newer one is told of', async () => {
  const { source, taken } = stepsOf(['a', 'b', 'c', 'd']);
  const { engine, reports } = listening(source as never, restless());
  engine.ask(ask(1, makeDesignFile({ name: 'old' })));
  engine.ask(ask(2, makeDesignFile({ name: 'newer' })));
  await until(() => expect(reports()).toHaveLength(1));
  expect(reports()[0]?.seq).toBe(2);
  expect(taken.filter((step) => step.startsWith('old'))).toEqual(['old a']);
  expect(taken.filter((step) => step.startsWith('newer'))).toHaveLength(4);
});

test('A run that gave way has told of nothing, so the next one sends everything', async () => {
  const { engine, everyReport } = listening(createPipeline(), restless());
  engine.ask(ask(1, makeDesignFile()));
  engine.ask(ask(2, makeDesignFile()));
  await until(() => expect(everyReport()).toHaveLength(2));
  const [report] = everyReport();
  expect(report?.seq).toBe(2);
  expect(report?.changed).toHaveLength(report?.present.length ?? 0);
});

test('While a hand drags, each coarse run is let finish and then the newest design follows', async () => {
  const { source, taken } = stepsOf(['a', 'b', 'c']);
  const { engine, reports } = listening(source as never, restless());
  engine.ask(ask(1, makeDesignFile({ name: 'one' }), 'drag'));
  engine.ask(ask(2, makeDesignFile({ name: 'two' }), 'drag'));
  engine.ask(ask(3, makeDesignFile({ name: 'three' }), 'drag'));
  await until(() => expect(reports()).toHaveLength(2));
  expect(reports().map(({ seq }) => seq)).toEqual([1, 3]);
  expect(taken.some((step) => step.startsWith('two'))).toBe(false);
});

test('A fault in the sums is told, and the next design is worked out all the same', async () => {
  const { source } = stepsOf(['a']);
  const faulty = {
    *steps(file: DesignFile) {
      if (file.name === 'bad') throw new RangeError('a step went astray');
      yield* source.steps(file);
    },
  };
  const { engine, told } = listening(faulty as never);
  engine.ask(ask(1, makeDesignFile({ name: 'bad' })));
  await until(() => expect(told).toHaveLength(1));
  expect(told[0]).toEqual({ kind: 'fault', message: 'a step went astray' });
  engine.ask(ask(2, makeDesignFile()));
  await until(() => expect(told).toHaveLength(2));
  expect(told[1]).toMatchObject({ kind: 'report', report: { seq: 2 } });
});

test('Every answer survives the way to the page as a copy', async () => {
  const { engine, reports } = listening();
  engine.ask(ask(1, makeDesignFile({ pieces: 3 })));
  await until(() => expect(reports()).toHaveLength(1));
  expect(structuredClone(reports()[0])).toEqual(reports()[0]);
});
