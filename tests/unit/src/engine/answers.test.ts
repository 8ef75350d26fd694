import { beforeEach, describe, expect, test } from 'vitest';
import type { DesignFile, Step } from '../../../../sim/index.ts';
import { createPipeline } from '../../../../sim/pipeline.ts';
import { type Answers, answersStore, markAsked, takeFault, takeReport } from '../../../../src/engine/answers.ts';
import { type Detail, type Report, stepKey } from '../../../../src/engine/protocol.ts';
import { makeDesignFile } from '../../../support/make-design.ts';

const START = answersStore.getInitialState();

beforeEach(() => answersStore.setState(START, true));

const now = (): Answers => answersStore.getState();

/** What a run of the engine would report; every step counts as changed unless told otherwise. */
function reportOf(seq: number, file: DesignFile, detail: Detail = 'full', without: readonly string[] = []): Report {
  const steps: Step[] = [...createPipeline().steps(file, { setup: null, detail })];
  return {
    seq,
    detail,
    done: true,
    present: steps.map(stepKey),
    changed: structuredClone(steps).filter((step) => !without.includes(stepKey(step))),
  };
}

/** Two joints that overlap: the links cannot be cut. */
const CROSSED: DesignFile = (() => {
  const file = makeDesignFile({ pieces: 3 });
  const [first, second] = file.joints;
  if (first === undefined || second === undefined) throw new Error('three pieces have two joints');
  return { ...file, joints: [{ ...first, x_mm: 118 }, second] };
})();

test('Before anything was asked nothing is out of date, and nothing is there', () => {
  expect(now()).toMatchObject({ askedFor: 0, heldFor: 0, fresh: true, bait: {}, links: [] });
});

test('Answers are out of date from the moment a newer design is asked for until it is worked out', () => {
  markAsked(1);
  expect(now().fresh).toBe(false);
  takeReport(reportOf(1, makeDesignFile()));
  expect(now()).toMatchObject({ fresh: true, heldFor: 1 });
  markAsked(2);
  expect(now()).toMatchObject({ fresh: false, heldFor: 1 });
});

test('A run is taken in at once: every listener sees body, waterline and number of one and the same design', () => {
  const seen: Answers[] = [];
  const stop = answersStore.subscribe((answers) => seen.push(answers));
  takeReport(reportOf(1, makeDesignFile()));
  stop();
  expect(seen).toHaveLength(1);
  expect(seen[0]?.links).toHaveLength(2);
  expect(seen[0]?.links.every((link) => link.float?.status === 'ok' && link.mesh?.status === 'ok')).toBe(true);
  expect(seen[0]?.bait.assembled?.status).toBe('ok');
});

test('What a run does not send again stays the very same object', () => {
  takeReport(reportOf(1, makeDesignFile()));
  const before = now();
  const head = ['mesh', 'solid', 'wetted', 'ledger', 'float', 'plan', 'forgiveness', 'accuracy', 'attitudes'].map(
    (name) => `${name}/0`,
  );
  takeReport(reportOf(2, makeDesignFile(), 'full', head));
  expect(now().links[0]).toBe(before.links[0]);
  expect(now().links[1]).not.toBe(before.links[1]);
});

test('A coarse run repeats what the last coarse run had, not what the full one between them had', () => {
  takeReport(reportOf(1, makeDesignFile(), 'drag'));
  const coarse = now().links[0];
  takeReport(reportOf(1, makeDesignFile(), 'full'));
  expect(now().links[0]).not.toBe(coarse);
  takeReport({ ...reportOf(2, makeDesignFile(), 'drag'), changed: [] });
  expect(now().links[0]).toBe(coarse);
});

/** The first report of a full run, before what takes longer. */
function drawnOf(seq: number, file: DesignFile): Report {
  const report = reportOf(seq, file);
  const isEarly = (key: string) => !/accuracy|attitudes|allWarnings/i.test(key);
  return {
    ...report,
    done: false,
    present: report.present.filter(isEarly),
    changed: report.changed.filter((step) => isEarly(stepKey(step))),
  };
}

test('What takes longer is gone from the answers until the newest run has come to it, but stays in sight', () => {
  takeReport(reportOf(1, makeDesignFile()));
  const before = now();
  takeReport(drawnOf(2, makeDesignFile({ wood: { density_g_cm3: 0.5 } })));
  expect(now()).toMatchObject({ heldFor: 2, done: false });
  expect(now().links[0]?.accuracy).toBeUndefined();
  expect(now().bait.assembledAttitudes).toBeUndefined();
  expect(now().lastGood.links[0]?.float).not.toBe(before.lastGood.links[0]?.float);
  expect(now().lastGood.links[0]?.accuracy).toBe(before.lastGood.links[0]?.accuracy);
  expect(now().lastGood.bait.assembledAttitudes).toBe(before.lastGood.bait.assembledAttitudes);
  expect(now().lastGood.bait.allWarnings).toBeUndefined();
});

test('What the last report of a run does not send again is what the run before it had', () => {
  takeReport(reportOf(1, makeDesignFile()));
  const { accuracy, attitudes } = now().links[0] ?? {};
  takeReport(drawnOf(2, makeDesignFile()));
  takeReport({ ...reportOf(2, makeDesignFile()), changed: [] });
  expect(now().done).toBe(true);
  expect(now().links[0]).toMatchObject({ accuracy: { status: 'ok' }, attitudes: { status: 'ok' } });
  expect(now().links[0]?.accuracy).toBe(accuracy);
  expect(now().links[0]?.attitudes).toBe(attitudes);
});

test('Another bait does not take over how good the sums of the one before were', () => {
  takeReport(reportOf(1, makeDesignFile()));
  takeReport(drawnOf(2, makeDesignFile({ name: 'Another' })));
  expect(now().lastGood.links[0]?.accuracy).toBeUndefined();
  expect(now().lastGood.links[0]?.attitudes).toBeUndefined();
  expect(now().lastGood.bait.assembledAccuracy).toBeUndefined();
  expect(now().lastGood.bait.assembledAttitudes).toBeUndefined();
});

test('A run for an older design than the one held is late and changes nothing', () => {
  takeReport(reportOf(2, makeDesignFile()));
  const before = now();
  takeReport(reportOf(1, makeDesignFile({ pieces: 3 })));
  expect(now()).toBe(before);
});

test('Links that a shorter bait no longer has are gone', () => {
  takeReport(reportOf(1, makeDesignFile({ pieces: 3 })));
  expect(now().links).toHaveLength(3);
  takeReport(reportOf(2, makeDesignFile({ pieces: 1 })));
  expect(now().links).toHaveLength(1);
  expect(now().lastGood.links).toHaveLength(1);
});

test('Meshes with equal topologies share one, so that what was made from it can be kept', () => {
  takeReport(reportOf(1, makeDesignFile()));
  const before = now().lastGood.links[0]?.mesh?.topology;
  takeReport(reportOf(2, makeDesignFile({ body: { width_mm: 21 } })));
  expect(before).toBeDefined();
  expect(now().lastGood.links[0]?.mesh?.topology).toBe(before);
});

describe('When a design cannot be worked out', () => {
  test('the picture of the last good one stays whole, and the issues are there', () => {
    takeReport(reportOf(1, makeDesignFile({ pieces: 3 })));
    const good = now().lastGood;
    takeReport(reportOf(2, CROSSED));
    const { lastGood, bait } = now();
    expect(Object.values(bait).some((outcome) => outcome?.status === 'failed')).toBe(true);
    expect(lastGood.links).toBe(good.links);
    expect(lastGood.bait.links).toBe(good.bait.links);
    expect(lastGood.bait.hardware).toBe(good.bait.hardware);
    expect(lastGood.bait.assembled).toBe(good.bait.assembled);
  });

  test('and mended, the picture is new as a whole', () => {
    takeReport(reportOf(1, makeDesignFile({ pieces: 3 })));
    const good = now().lastGood;
    takeReport(reportOf(2, CROSSED));
    takeReport(reportOf(3, makeDesignFile({ pieces: 3, body: { width_mm: 22 } })));
    expect(now().lastGood.links).not.toBe(good.links);
    expect(now().lastGood.links.map((link) => link.float)).toEqual(
      now().links.map((link) => (link.float?.status === 'ok' ? link.float.value : null)),
    );
  });

  test('a bug in the sums is said, and the numbers stay', () => {
    takeReport(reportOf(1, makeDesignFile()));
    const before = now();
    takeFault('a step went astray');
    expect(now()).toEqual({ ...before, fault: 'a step went astray' });
    takeReport(reportOf(2, makeDesignFile()));
    expect(now().fault).toBeNull();
  });
});
