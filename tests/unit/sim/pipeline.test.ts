import { describe, expect, test } from 'vitest';
import type { DesignFile } from '../../../sim/design/file.ts';
import { deepFreeze } from '../../../sim/design/freeze.ts';
import { withValueAt } from '../../../sim/design/place.ts';
import { createPipeline } from '../../../sim/pipeline.ts';
import type { Step } from '../../../sim/steps.ts';
import { makeDesignFile, PLAIN_DESIGN } from '../../support/make-design.ts';
import { validateMesh } from '../../support/meshes.ts';
import { answersOf, outcomesOf } from '../../support/worked-bait.ts';

const FIRST = { setup: null, detail: 'drag' } as const;
const THREE = makeDesignFile({ pieces: 3 });

function nameOf({ name, link }: Step): string {
  return link === null ? name : `${link}/${name}`;
}

/** Names of the answers that another run gives anew, in order; those with the same value are the very same object. */
function freshAfter(file: DesignFile, edit: (file: DesignFile) => DesignFile): readonly string[] {
  const pipeline = createPipeline();
  const before = new Map([...pipeline.steps(file, FIRST)].map((step) => [nameOf(step), step.outcome]));
  // as the worker gets it: a copy, in which nothing is the same object
  const after = [...pipeline.steps(structuredClone(edit(file)), FIRST)];
  return after.filter((step) => before.get(nameOf(step)) !== step.outcome).map(nameOf);
}

function set(path: string) {
  return (value: number) => (file: DesignFile) => withValueAt(file, path, value);
}

describe('the recipe', () => {
  test('gives its answers in one order: what meshes need, then link by link, then the whole', () => {
    const steps = [...createPipeline().steps(PLAIN_DESIGN, FIRST)].map(nameOf);
    const link = (i: number) => ['mesh', 'solid', 'wetted', 'ledger', 'float'].map((name) => `${i}/${name}`);
    expect(steps).toEqual([
      ...['design', 'setup', 'water', 'hull', 'links', 'hardware', 'sound'],
      ...link(0),
      ...link(1),
      ...['assembled', 'drop', 'target', 'walls', 'warnings'],
    ]);
  });

  test('works out a fall while a number is dragged only where a speed is aimed at', () => {
    const aimed = { ...PLAIN_DESIGN, setups: [{ ...PLAIN_DESIGN.setups[0], target: { sink_mm_s: 80 } }] };
    const told = [...createPipeline().steps(aimed, FIRST)].map(nameOf);
    expect(told).toContain('assembledSinking');
    expect(told.indexOf('assembledSinking')).toBeLessThan(told.indexOf('target'));
  });

  test('at full detail goes on, when all else is told, to a plan of ballast, accuracy, other attitudes and roll', () => {
    const steps = [...createPipeline().steps(PLAIN_DESIGN, { setup: null, detail: 'full' })].map(nameOf);
    expect(steps.slice(steps.indexOf('warnings') + 1)).toEqual([
      ...['0/sinking', '1/sinking'],
      ...[0, 1].flatMap((i) => [`${i}/plan`, `${i}/forgiveness`]),
      ...['ballast', 'planned', 'reach', 'jointed', 'folded'],
      ...[0, 1].flatMap((i) => [`${i}/accuracy`, `${i}/attitudes`, `${i}/roll`]),
      ...['assembledAccuracy', 'assembledAttitudes', 'assembledRoll', 'allWarnings'],
    ]);
  });

  test('judges a bait in one piece alone as it judges it whole', () => {
    const { bait, links } = answersOf(makeDesignFile({ pieces: 1 }));
    expect(bait.assembledAttitudes).toBe(links[0].attitudes);
    expect(bait.assembledAccuracy).toBe(links[0].accuracy);
  });

  test('estimates errors of the mesh that are within what the kernel aims at', () => {
    const { links } = answersOf(makeDesignFile({ pieces: 3 }));
    for (const { accuracy } of links) {
      expect(accuracy.mesh?.trim ?? 1).toBeLessThan((0.03 * Math.PI) / 180);
      expect(accuracy.mesh?.gm ?? 1).toBeLessThan(0.005);
      expect(accuracy.solver.draft ?? 0).toBeLessThan(1e-6);
      expect(accuracy.digits.trim).toBe(1);
    }
  });

  test.each([1, 2, 3] as const)('works out every answer of a bait of %d links', (pieces) => {
    const { bait, links } = answersOf(makeDesignFile({ pieces }));
    expect(links).toHaveLength(pieces);
    expect(bait.links.map(({ name }) => name)).toEqual(bait.design.links.map(({ name }) => name));
    expect(bait.assembled.solver.converged).toBe(true);
    for (const { mesh, wetted, float } of links) {
      expect(validateMesh(mesh)).toEqual([]);
      expect(validateMesh(wetted.mesh)).toEqual([]);
      expect(float.solver.converged).toBe(true);
    }
  });

  test('floats a bait in one piece alone as it floats it whole', () => {
    const { bait, links } = answersOf(makeDesignFile({ pieces: 1 }));
    expect(links[0].float).toEqual(bait.assembled);
  });

  test('works on a bait with nothing screwed in, hung, drilled or painted', () => {
    const plain = makeDesignFile({ pieces: 1, hangers: [], coats: [] });
    const [setup] = plain.setups;
    const { bait } = answersOf({ ...plain, setups: [{ ...setup, hung: [], holes: [] }] });
    expect(bait.assembled.state).toBe('floats');
    expect(bait.hardware).toEqual({ eyes: [], pins: [], holes: [], fittings: [], fins: [], finFaults: [], hung: [] });
  });

  test('is the same for a file that may not be written to', () => {
    const frozen = deepFreeze(structuredClone(PLAIN_DESIGN));
    const pipeline = createPipeline();
    expect(outcomesOf(frozen, { pipeline, detail: 'drag' })).toEqual(outcomesOf(PLAIN_DESIGN, { detail: 'drag' }));
    expect(frozen).toEqual(PLAIN_DESIGN);
  });

  test('gives plain data: every answer is the same after being posted', () => {
    for (const { outcome } of createPipeline().steps(THREE, FIRST)) {
      expect(outcome.status).toBe('ok');
      expect(structuredClone(outcome)).toStrictEqual(outcome);
    }
  });

  test('at full detail and at dragging detail agrees to what a quarter of the triangles can tell', () => {
    const [full, drag] = (['full', 'drag'] as const).map(
      (detail) => answersOf(PLAIN_DESIGN, { detail }).bait.assembled,
    );
    expect(Math.abs((full.draft ?? Number.NaN) - (drag.draft ?? Number.NaN))).toBeLessThan(0.05);
    expect(Math.abs(full.trim - drag.trim)).toBeLessThan(0.002);
    expect(full.mass).not.toBe(drag.mass);
  });
});

describe('setups', () => {
  const [pond] = PLAIN_DESIGN.setups;
  const sea = { ...pond, name: 'at sea', water: { temperature_c: 10, salinity_g_kg: 35 }, holes: [] };
  const both = { ...PLAIN_DESIGN, setups: [pond, sea] };

  test('the first one is taken unless another is named', () => {
    expect(answersOf(both, { detail: 'drag' }).bait.setup.name).toBe('still pond');
    const named = answersOf(both, { setup: 'at sea', detail: 'drag' }).bait;
    expect(named.setup.name).toBe('at sea');
    expect(named.water.density).toBeGreaterThan(0.00102);
    expect(named.hardware.holes).toEqual([]);
  });

  test('share the body and its meshes: another setup remeshes nothing', () => {
    const pipeline = createPipeline();
    const [first, second] = ['still pond', 'at sea'].map((setup) =>
      answersOf(both, { pipeline, setup, detail: 'drag' }),
    );
    expect(second.links.map(({ mesh }) => mesh)).toEqual(first.links.map(({ mesh }) => mesh));
    expect(second.links[0].mesh).toBe(first.links[0].mesh);
    expect(second.links[0].wetted).toBe(first.links[0].wetted);
    expect(second.links[0].ledger).not.toBe(first.links[0].ledger);
  });

  test('that nobody wrote are refused by name, and what there is is listed', () => {
    const { bait, links } = outcomesOf(both, { setup: 'river', detail: 'drag' });
    expect(bait.setup).toMatchObject({ status: 'failed', issues: [{ code: 'setup/unknown-name', path: 'setups' }] });
    expect(bait.setup.status === 'failed' && bait.setup.issues[0].message).toContain('"still pond", "at sea"');
    expect(bait.hull.status).toBe('ok');
    expect(bait.hardware).toEqual({ status: 'blocked', by: ['setup'] });
    expect(links.map(({ float }) => float.status)).toEqual(['blocked', 'blocked']);
    expect(bait.assembled.status).toBe('blocked');
  });

  test('with a fault in the second one point there', () => {
    const [hole] = pond.holes;
    const faulty = { ...both, setups: [pond, { ...sea, holes: [{ ...hole, depth_mm: 40 }] }] };
    const { sound } = outcomesOf(faulty, { setup: 'at sea', detail: 'drag' }).bait;
    expect(sound).toMatchObject({ status: 'failed', issues: [{ path: 'setups.1.holes.0.depth_mm' }] });
    expect(outcomesOf(faulty, { detail: 'drag' }).bait.sound.status).toBe('ok');
  });
});

describe('a design that cannot be', () => {
  test('by its numbers blocks everything after it, and says so once', () => {
    const steps = [...createPipeline().steps(set('body.width_mm')(900)(PLAIN_DESIGN), FIRST)];
    expect(steps.map(nameOf)).toEqual([
      'design',
      'setup',
      'water',
      'hull',
      'links',
      'hardware',
      'sound',
      'assembled',
      'drop',
      'target',
      'walls',
      'warnings',
    ]);
    const [design, ...rest] = steps.map(({ outcome }) => outcome);
    expect(design).toMatchObject({ status: 'failed', issues: [{ path: 'body.width_mm' }] });
    for (const outcome of rest) expect(outcome.status).toBe('blocked');
    expect(rest.slice(0, 3)).toEqual([
      { status: 'blocked', by: ['design'] },
      { status: 'blocked', by: ['setup'] },
      { status: 'blocked', by: ['design'] },
    ]);
  });

  test('by its geometry still shows its hull, links and hardware, but meshes and floats nothing', () => {
    const { bait, links } = outcomesOf(set('joints.1.x_mm')(30)(THREE), { detail: 'drag' });
    expect(bait.sound).toMatchObject({ status: 'failed', issues: [{ code: 'links/joints-crossing' }, {}] });
    expect([bait.hull, bait.links, bait.hardware].map(({ status }) => status)).toEqual(['ok', 'ok', 'ok']);
    for (const link of links) {
      expect(link.mesh).toEqual({ status: 'blocked', by: ['sound'] });
      for (const outcome of Object.values(link)) expect(outcome.status).toBe('blocked');
    }
    for (const outcome of [bait.assembled, bait.target, bait.warnings]) expect(outcome.status).toBe('blocked');
  });

  test('never comes out as an empty list or a zero', () => {
    for (const file of [set('body.width_mm')(900)(THREE), set('joints.1.x_mm')(30)(THREE)]) {
      for (const { outcome } of createPipeline().steps(file, FIRST)) {
        if (outcome.status === 'failed') expect(outcome.issues.length).toBeGreaterThan(0);
        if (outcome.status === 'blocked') expect(outcome.by.length).toBeGreaterThan(0);
        if (outcome.status === 'ok') expect(outcome.value).not.toEqual([]);
      }
    }
  });

  test('is forgotten once it is put right: the answers are those of a fresh pipeline', () => {
    const pipeline = createPipeline();
    answersOf(THREE, { pipeline, detail: 'drag' });
    for (const wrong of [set('body.width_mm')(900)(THREE), set('joints.1.x_mm')(30)(THREE)]) {
      expect(outcomesOf(wrong, { pipeline, detail: 'drag' })).toEqual(outcomesOf(wrong, { detail: 'drag' }));
      expect(outcomesOf(THREE, { pipeline, detail: 'drag' })).toEqual(outcomesOf(THREE, { detail: 'drag' }));
    }
  });
});

describe('an edit gives anew', () => {
  const LATE = ['assembled', 'target', 'warnings'];
  /** The same where the fore link, which sinks, falls otherwise. */
  const FALL_TOO = ['assembled', 'target', 'warnings'];
  /** The same where holes, or the wood round them, are others. */
  const LATE_WITH_WALLS = ['assembled', 'target', 'walls', 'warnings'];
  const FALL_WITH_WALLS = ['assembled', 'target', 'walls', 'warnings'];
  const linkFrom = (name: 'mesh' | 'ledger' | 'float', ...links: readonly number[]) => {
    const all = ['mesh', 'solid', 'wetted', 'ledger', 'float'];
    return links.flatMap((i) => all.slice(all.indexOf(name)).map((step) => `${i}/${step}`));
  };

  test('nothing, where nothing was changed', () => {
    expect(freshAfter(THREE, (file) => file)).toEqual([]);
  });

  test('the design alone, where the bait was renamed', () => {
    expect(freshAfter(THREE, (file) => ({ ...file, name: 'Boathouse Other', notes: 'sanded' }))).toEqual(['design']);
  });

  test('hook, float and whole, where a hook is heavier: no mesh, no ledger', () => {
    const heavier = set('setups.0.hung.1.mass_g')(2.5);
    expect(freshAfter(THREE, heavier)).toEqual(['design', 'setup', 'hardware', '2/float', ...LATE]);
  });

  test('ledgers and floats of all links, where the wood is another', () => {
    const wood = freshAfter(THREE, set('wood.density_g_cm3')(0.5));
    expect(wood).toEqual(['design', ...linkFrom('ledger', 0, 1, 2), ...FALL_TOO]);
  });

  test('ledger and float of one link, where that piece was weighed apart', () => {
    const middle = freshAfter(THREE, set('links.1.density_g_cm3')(0.5));
    expect(middle).toEqual(['design', ...linkFrom('ledger', 1), ...LATE]);
  });

  test('floats, where the water is another', () => {
    const salt = freshAfter(THREE, set('setups.0.water.salinity_g_kg')(35));
    expect(salt).toEqual(['design', 'setup', 'water', '0/float', '1/float', '2/float', ...FALL_TOO]);
  });

  test('the target and what is said of it, where more is wanted', () => {
    const target = freshAfter(THREE, set('setups.0.target.proud_mm')(9));
    expect(target).toEqual(['design', 'setup', 'target', 'warnings']);
  });

  test('one ledger and float, where a hole of that link holds more lead', () => {
    const lead = freshAfter(THREE, set('setups.0.holes.0.lead.mass_g')(4.1));
    expect(lead).toEqual(['design', 'setup', 'hardware', ...linkFrom('ledger', 0), ...FALL_WITH_WALLS]);
  });

  test('the two links at the last joint, where that is moved: the first link stays as it was', () => {
    const moved = (file: DesignFile) => set('joints.1.hinge.pin.x_mm')(80.5)(set('joints.1.x_mm')(84.5)(file));
    expect(freshAfter(THREE, moved)).toEqual([
      'design',
      'links',
      'hardware',
      ...linkFrom('mesh', 1, 2),
      ...LATE_WITH_WALLS,
    ]);
  });

  test('everything but setup, water and soundness, where the body is wider', () => {
    expect(freshAfter(THREE, set('body.width_mm')(21))).toEqual([
      ...['design', 'hull', 'hardware'],
      ...linkFrom('mesh', 0, 1, 2),
      ...FALL_WITH_WALLS,
    ]);
  });

  test('what coats touch, where one is thicker: the bare wood stays', () => {
    const coat = freshAfter(THREE, set('coats.1.thickness_mm')(0.25));
    const link = (i: number) => ['wetted', 'ledger', 'float'].map((name) => `${i}/${name}`);
    expect(coat).toEqual(['design', 'setup', ...link(0), ...link(1), ...link(2), ...FALL_TOO]);
  });
});

describe('meshes', () => {
  test('keep the very same index array while only dimensions change', () => {
    const pipeline = createPipeline();
    const [before, after] = [THREE, set('body.width_mm')(22)(THREE)].map((file) =>
      answersOf(file, { pipeline, detail: 'drag' }).links.map(({ mesh }) => mesh),
    );
    after.forEach((mesh, i) => {
      expect(mesh).not.toBe(before[i]);
      expect(mesh.topology).toBe(before[i].topology);
      expect(mesh.topology.index).toBe(before[i].topology.index);
    });
  });

  test('of dragging and of full detail do not drive each other out', () => {
    const pipeline = createPipeline();
    const [full, , again] = (['full', 'drag', 'full'] as const).map((detail) => answersOf(THREE, { pipeline, detail }));
    again.links.forEach((link, i) => {
      expect(link.mesh).toBe(full.links[i].mesh);
      expect(link.float).toBe(full.links[i].float);
    });
  });

  test('of a joint that is taken out and put back are those of a fresh pipeline', () => {
    const pipeline = createPipeline();
    for (const file of [THREE, PLAIN_DESIGN, makeDesignFile({ pieces: 1 }), THREE]) {
      expect(outcomesOf(file, { pipeline, detail: 'drag' })).toEqual(outcomesOf(file, { detail: 'drag' }));
    }
  });
});

test('a run that is left half way spoils nothing, wherever it is left', () => {
  const edited = set('setups.0.holes.0.lead.mass_g')(3.5)(set('joints.1.x_mm')(84.3)(THREE));
  const wanted = outcomesOf(THREE, { detail: 'drag' });
  const count = [...createPipeline().steps(THREE, FIRST)].length;
  for (let left = 0; left <= count; left++) {
    const pipeline = createPipeline();
    answersOf(THREE, { pipeline, detail: 'drag' });
    const run = pipeline.steps(edited, FIRST);
    for (let i = 0; i < left; i++) run.next();
    run.return();
    expect(outcomesOf(THREE, { pipeline, detail: 'drag' })).toEqual(wanted);
  }
});
