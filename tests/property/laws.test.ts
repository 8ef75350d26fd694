import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DesignFile } from '../../sim/design/file.ts';
import { sectionArea } from '../../sim/hull/hull.ts';
import { draftAt } from '../../sim/hydro/draft.ts';
import { restFrom } from '../../sim/hydro/equilibrium.ts';
import { planeAxes, potentialAt } from '../../sim/hydro/potential.ts';
import { cutLinks } from '../../sim/links/cut.ts';
import { measureVolume } from '../../sim/mesh/measure.ts';
import { type Detail, meshLink } from '../../sim/mesh/wetted.ts';
import { add, dot, length, scale, subtract, type Vec3 } from '../../sim/numerics/vec3.ts';
import { arbitraryBody, arbitraryPlainBody, number, weightOf } from '../support/arbitrary-body.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { bodyOf } from '../support/float-mesh.ts';
import { outcomesOf, partsOf } from '../support/worked-bait.ts';

const RUNS = { numRuns: Number(process.env.FLOATWRIGHT_RUNS ?? 200), endOnFailure: true };
const UP: Vec3 = [0, 0, 1];

test('the deeper a body is set, the more it displaces: by its waterplane', () => {
  fc.assert(
    fc.property(arbitraryBody(), number(0.1, 0.9), (body, share) => {
      const axes = planeAxes(UP);
      const { boxes, origin } = body.trees[0];
      const d = origin[2] + boxes[2] + (2 * share - 1) * boxes[5];
      const step = 1e-3;
      const at = (offset: number) => potentialAt(body, UP, ...axes, offset);
      const [above, here, below] = [at(d - step), at(d), at(d + step)];
      const rise = (below.displaced + below.hungDisplaced - above.displaced - above.hungDisplaced) / (2 * step);
      // the area itself changes over the step: it lies between the areas at its ends, or bends by the square of it
      const slack = Math.abs(above.area - 2 * here.area + below.area) + 1e-6 * here.area + 1e-6;
      expect(Math.abs(rise - here.area)).toBeLessThan(slack);
    }),
    RUNS,
  );
});

test('a righting arm grows from rest by the metacentric height, whichever way the body is turned', () => {
  fc.assert(
    fc.property(arbitraryBody(), number(0, Math.PI), (body, way) => {
      const rest = restFrom(body, UP);
      fc.pre(rest.converged);
      const weight = weightOf(body);
      const [u, v] = rest.axes;
      const e = add(scale(u, Math.cos(way)), scale(v, Math.sin(way)));
      const arm = (angle: number) => {
        const n = add(scale(rest.up, Math.cos(angle)), scale(e, Math.sin(angle)));
        const axes = planeAxes(n);
        const { potential } = draftAt(body, n, ...axes, rest.offset, 1e-12 * weight);
        const further = add(scale(e, Math.cos(angle)), scale(rest.up, -Math.sin(angle)));
        return (potential.slopeU * dot(axes[0], further) + potential.slopeV * dot(axes[1], further)) / weight;
      };
      const [a, b] = [Math.cos(way), Math.sin(way)];
      const { curveUU, curveUV, curveVV } = rest.potential;
      const gm = (curveUU * a * a + 2 * curveUV * a * b + curveVV * b * b) / weight;
      const slopes = [1e-4, 1e-5].map((step) => (arm(step) - arm(-step)) / (2 * step));
      // facets end and hooks come out of the water within a step now and then: the smaller step is nearer then
      const off = Math.min(...slopes.map((slope) => Math.abs(slope - gm)));
      expect(off).toBeLessThan(1e-3 * Math.max(1, Math.abs(gm)));
    }),
    RUNS,
  );
});

test('a hook so light that it hardly matters turns a bait as far as first-order weight shift says', () => {
  let compared = 0;
  fc.assert(
    fc.property(
      arbitraryPlainBody(),
      fc.tuple(number(-30, 30), number(-10, 10), number(-10, 10)),
      ({ mesh, share, centre }, off) => {
        const bare = bodyOf(mesh, share, centre);
        const rest = restFrom(bare, UP);
        const { potential: at, axes } = rest;
        const [a, b, c] = [at.curveUU / bare.mass, at.curveUV / bare.mass, at.curveVV / bare.mass];
        // where it is stiff enough that light means little
        fc.pre(rest.converged && !rest.mirrored && (a + c) / 2 - Math.hypot((a - c) / 2, b) > 1);
        const eye = add(centre, off);
        const tiny = 1e-5;
        const hook = { mass: tiny * bare.mass, volume: 0, eye, hang: 10 };
        const turned = restFrom({ ...bare, hung: [hook] }, rest.up);
        const lever = subtract(eye, at.centre);
        const [p, q] = [tiny * dot(lever, axes[0]), tiny * dot(lever, axes[1])];
        const det = a * c - b * b;
        const predicted = add(scale(axes[0], (b * q - c * p) / det), scale(axes[1], (b * p - a * q) / det));
        const found = subtract(turned.up, rest.up);
        const size = length(predicted);
        // under it the solver's own remainder shows
        if (size < 1e-6) return;
        compared++;
        expect(length(subtract(found, predicted)) / size).toBeLessThan(0.01);
      },
    ),
    RUNS,
  );
  expect(compared).toBeGreaterThan(0.3 * RUNS.numRuns);
});

/** Volume of the links, bare and without slots, plus what the saw took, against the body in one piece. */
function sawnShare(file: DesignFile, detail: Detail): number {
  const flat = file.joints.map((joint) => ({ ...joint, faces: { kind: 'flat' as const } }));
  const { design, hull } = partsOf({ ...file, joints: flat });
  const { length: long } = design.body;
  const joints = design.joints.map((joint) => ({ ...joint, slots: [] }));
  const volumeOf = (specs: ReturnType<typeof cutLinks>) =>
    specs.reduce((sum, spec) => sum + measureVolume(meshLink(hull, spec, detail)).volume, 0);
  const whole = volumeOf(cutLinks(long, design.links.slice(0, 1), []));
  const gaps = joints.map(({ x, gap }) => {
    const area = (at: number) => sectionArea(hull, x + at * gap);
    // Simpson's rule over a millimetre or two
    return (gap / 6) * (area(-0.5) + 4 * area(0) + area(0.5));
  });
  return (volumeOf(cutLinks(long, design.links, joints)) + gaps.reduce((sum, gap) => sum + gap, 0)) / whole - 1;
}

test('the links and what the saw took add up to the body, the more exactly the finer they are meshed', () => {
  let [coarse, fine] = [0, 0];
  fc.assert(
    fc.property(arbitraryDesignFile(), (file) => {
      fc.pre(file.joints.length > 0);
      const [drag, full] = [sawnShare(file, 'drag'), sawnShare(file, 'full')].map(Math.abs);
      expect(full).toBeLessThan(5e-3);
      coarse += drag;
      fine += full;
    }),
    RUNS,
  );
  // half the step: a quarter of the error, or less
  expect(coarse / fine).toBeGreaterThan(3.5);
});

test('lead in a hole changes mass by what it weighs over the plug, and displacement by nothing', () => {
  let leaded = 0;
  fc.assert(
    fc.property(arbitraryDesignFile(), (file) => {
      const empty = {
        ...file,
        setups: file.setups.map((setup) => ({ ...setup, holes: setup.holes.map(({ lead: _lead, ...hole }) => hole) })),
      };
      const [full, bare] = [file, empty].map((one) => outcomesOf(one, { detail: 'drag' }));
      if (full.bait.assembled.status !== 'ok' || full.bait.hardware.status !== 'ok') return;
      expect(bare.bait.assembled.status).toBe('ok');
      if (bare.bait.assembled.status !== 'ok') return;
      const { holes } = full.bait.hardware.value;
      const added = holes.reduce(
        (sum, { lead, plug }) => sum + (lead ? lead.mass - (lead.volume * plug.mass) / plug.volume : 0),
        0,
      );
      if (added > 0.1) leaded++;
      const [a, b] = [full.bait.assembled.value, bare.bait.assembled.value];
      expect(Math.abs(a.mass - b.mass - added)).toBeLessThan(1e-9 * a.mass);
      full.links.forEach(({ wetted }, link) => {
        expect(wetted).toEqual(bare.links[link].wetted);
      });
      // all that can displace: weight less net weight with everything wet
      expect(Math.abs(a.mass - a.netWet - (b.mass - b.netWet))).toBeLessThan(1e-9 * a.mass);
    }),
    RUNS,
  );
  expect(leaded).toBeGreaterThan(0.2 * RUNS.numRuns);
});
