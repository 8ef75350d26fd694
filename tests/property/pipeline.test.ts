import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DesignFile, Num } from '../../sim/design/file.ts';
import { withValueAt } from '../../sim/design/place.ts';
import { createPipeline, type Request } from '../../sim/pipeline.ts';
import type { Step } from '../../sim/steps.ts';
import { KNUCKLE_DESIGN, LINKED_DESIGN, makeDesignFile, PLAIN_DESIGN } from '../support/make-design.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 150) };

const [POND] = PLAIN_DESIGN.setups;
const BASES: readonly DesignFile[] = [
  PLAIN_DESIGN,
  makeDesignFile({ pieces: 3 }),
  makeDesignFile({ pieces: 1 }),
  KNUCKLE_DESIGN,
  LINKED_DESIGN,
].map((file) => ({
  ...file,
  setups: [...file.setups, { ...POND, name: 'at sea', holes: [], target: { net_wet_g: 1 } }],
}));

/** One thing that happens to a design in the app; the last one is a mistake that must be found and forgotten. */
type Event =
  | { readonly kind: 'edit'; readonly path: string; readonly value: Num }
  | { readonly kind: 'open'; readonly base: number }
  | { readonly kind: 'rename'; readonly name: string };

interface Turn {
  readonly event: Event;
  readonly request: Request;
  /** Left after so many answers, for a newer design; null: seen through. */
  readonly leftAfter: number | null;
}

function edit(low: number, high: number, path: string): fc.Arbitrary<Event> {
  return fc.integer({ min: Math.round(low * 100), max: Math.round(high * 100) }).map((count) => ({
    kind: 'edit',
    path,
    value: count / 100,
  }));
}

const EVENTS: readonly fc.Arbitrary<Event>[] = [
  edit(19, 22, 'body.width_mm'),
  edit(34, 38, 'body.height_mm'),
  // sawn out of the wood, or past another joint, now and then
  edit(55, 64, 'joints.0.x_mm'),
  edit(45, 140, 'joints.1.x_mm'),
  edit(0, 30, 'joints.0.faces.fore_deg'),
  edit(0.5, 3, 'joints.0.gap_mm'),
  // too slim for the body, now and then
  edit(9, 13, 'joints.0.faces.radius_mm'),
  edit(1.4, 3.2, 'joints.0.hinge.bore_mm'),
  edit(7, 9, 'joints.0.slots.1.depth_mm'),
  edit(0.3, 0.9, 'wood.density_g_cm3'),
  edit(0.3, 0.9, 'links.0.density_g_cm3'),
  edit(0, 0.4, 'coats.1.thickness_mm'),
  edit(0, 9, 'coats.0.soak_percent'),
  edit(90, 100, 'hangers.2.x_mm'),
  edit(1, 8, 'setups.0.hung.1.mass_g'),
  edit(20, 27, 'setups.0.holes.0.x_mm'),
  // more than the hole takes, now and then
  edit(1, 5, 'setups.0.holes.0.lead.mass_g'),
  edit(0, 30, 'setups.0.water.temperature_c'),
  edit(1, 9, 'setups.0.target.proud_mm'),
  // out of range more often than not
  edit(100, 900, 'body.length_mm'),
  fc.constant<Event>({ kind: 'edit', path: 'wood.density_g_cm3', value: 'unknown_mm * 2' }),
  fc.nat({ max: BASES.length - 1 }).map((base): Event => ({ kind: 'open', base })),
  fc.constantFrom('Boathouse Plain', 'Boathouse Other').map((name): Event => ({ kind: 'rename', name })),
];

function turn(): fc.Arbitrary<Turn> {
  return fc.record({
    event: fc.oneof(...EVENTS),
    request: fc.record({
      setup: fc.constantFrom(null, null, null, 'at sea', 'nowhere'),
      detail: fc.constantFrom('drag' as const, 'drag' as const, 'drag' as const, 'full' as const),
    }),
    leftAfter: fc.option(fc.nat({ max: 24 }), { nil: null, freq: 3 }),
  });
}

/** The design after an event; the same where it has no such field. */
function after(file: DesignFile, event: Event): DesignFile {
  if (event.kind === 'open') return BASES[event.base];
  if (event.kind === 'rename') return { ...file, name: event.name };
  const [list, index] = event.path.split('.');
  const missing = (list === 'joints' || list === 'links') && Number(index) >= file[list].length;
  const flat = event.path.includes('faces');
  if (missing) return file;
  if (!flat) return withValueAt(file, event.path, event.value);
  const faces = { kind: 'bevel', fore_deg: event.value, aft_deg: 10 } as const;
  return { ...file, joints: file.joints.map((joint) => ({ ...joint, faces })) };
}

function unequal(warm: readonly Step[], cold: readonly Step[]): readonly string[] {
  const differs = cold.filter((step, i) => !isDeepStrictEqual(warm[i], step));
  return [
    ...(warm.length === cold.length ? [] : [`${warm.length} steps, not ${cold.length}`]),
    ...differs.map(({ name, link }) => `${link ?? ''} ${name}`),
  ];
}

test('after any run of edits, some of them abandoned half-way, the answers are those of a fresh start', () => {
  let [seen, floated, refused] = [0, 0, 0];
  fc.assert(
    fc.property(fc.array(turn(), { minLength: 2, maxLength: 6 }), (turns) => {
      const pipeline = createPipeline();
      let file = BASES[0];
      const last = turns.length - 1;
      for (const [i, { event, request, leftAfter }] of turns.entries()) {
        file = after(file, event);
        const run = pipeline.steps(structuredClone(file), request);
        if (leftAfter !== null && i < last) {
          for (let step = 0; step < leftAfter; step++) run.next();
          run.return();
          continue;
        }
        const warm = [...run];
        expect(unequal(warm, [...createPipeline().steps(file, request)])).toEqual([]);
        seen++;
        const ok = warm.every(({ outcome }) => outcome.status === 'ok');
        if (ok) floated++;
        else refused++;
      }
    }),
    RUNS,
  );
  // the runs met both: baits that float, and mistakes
  expect(seen).toBeGreaterThanOrEqual(RUNS.numRuns);
  expect(floated).toBeGreaterThan(0.2 * seen);
  expect(refused).toBeGreaterThan(0.1 * seen);
});
