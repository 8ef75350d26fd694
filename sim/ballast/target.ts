import type { Target } from '../design/design.ts';
import { upFrom, worldAxes } from '../frames.ts';
import { totalsOf } from '../hydro/body.ts';
import { draftAt } from '../hydro/draft.ts';
import { type Float, HANGS_G } from '../hydro/float.ts';
import { measureReach } from '../mesh/measure.ts';
import type { Wetted } from '../mesh/wetted.ts';
import { dot, type Vec3 } from '../numerics/vec3.ts';
import type { FallParts } from '../sinking/fall-parts.ts';
import { netAtSpeed, type Sinking, type SinkParts } from '../sinking/sink.ts';
import type { Gram, Mm } from '../units/brand.ts';
import { radianFromDegree } from '../units/convert.ts';
import { type OffMark, waterHeight, waterOffMark } from './off-mark.ts';

/** What a setup aims for, worked out for the whole bait and for each link, and how near the bait comes. */
export interface TargetAnswer {
  readonly assembled: Aim;
  readonly links: readonly Aim[];
  /** One line each: what was wanted, what is got, and whether it is near enough. */
  readonly checks: readonly TargetCheck[];
  readonly met: boolean;
  /** The whole bait's water against its wanted waterline, nose to tail; empty when one of the two has none. */
  readonly offMark: readonly OffMark[];
}

/** A wanted waterline (up and offset), or a wanted net weight with everything wet. */
export interface Aim {
  readonly up: Vec3;
  /** null when the aim is a net weight. */
  readonly offset: Mm | null;
  readonly netWet: Gram | null;
  /** Where drag acts, of what is to lie as aimed while it falls, not at rest; left out: at rest. */
  readonly drag?: Vec3;
}

export interface TargetCheck {
  readonly what: 'proud' | 'waterline' | 'net' | 'sink' | 'trim' | 'heel';
  readonly wanted: number;
  readonly got: number | null;
  /** All three in mm, g, mm/s or rad, as `what` says. */
  readonly tolerance: number;
  /** It is asked of the fall: nothing is got where there is none. */
  readonly isInFall?: boolean;
  /** Of a sinking speed: the least and the most that it may be. */
  readonly band?: readonly [low: number, high: number];
  readonly met: boolean;
}

/** What the aims are measured against. */
export interface TargetParts {
  readonly target: Target;
  readonly linkTargets: Readonly<Record<string, Target>>;
  readonly names: readonly string[];
  /** Where the links begin and end on the centre line. */
  readonly spans: readonly (readonly [Mm, Mm])[];
  readonly length: Mm;
  readonly wetted: readonly Wetted[];
  /** Each link alone: a share of its mass counts what hangs from it. */
  readonly floats: readonly Float[];
  readonly assembled: Float;
  /** What falls, and how the whole bait does; asked for only where a sinking speed is. */
  readonly fall: FallParts;
  readonly sinking: Sinking | null;
}

/** How near is near enough. Common practice: what a float test in a tub can tell. */
const NEAR = {
  length: 1,
  hangs: 0.1,
  hangsShare: 0.001,
  net: 0.2,
  /** Of a sinking speed as a share: a foot in three seconds is timed to 0.2 s. */
  sinkShare: 0.1,
  angle: radianFromDegree(2),
} as const;

/** Of a bait's mass: its aimed-for waterline is right to that. */
const DRAFT_SHARE = 1e-9;

/** Works out what the setup asks of the bait and of each link, and whether the assembled bait comes near it. */
export function checkTarget(parts: TargetParts): TargetAnswer {
  const checks = checksOf(parts);
  const aim = wholeAim(parts);
  return {
    assembled: aim,
    links: linkAims(parts, aim),
    checks,
    met: checks.every((check) => check.met),
    offMark: waterOffMark(parts.assembled, aim, jointsOf(parts.spans), parts.length),
  };
}

/** The aim of a body of these meshes; of a share of its mass, of the mass that it then has, whatever it weighs now. */
function aimOf(target: Target, wetted: readonly Wetted[], length: Mm, { mass, netWet }: Float, falls: SinkParts): Aim {
  const up = upFrom(target.trim, 0);
  if (target.kind === 'sink') {
    const sunk = netAtSpeed(falls, up, target.speed);
    return { up, offset: null, netWet: sunk.netWet, drag: sunk.dragCentre };
  }
  // what everything wet lifts stays: m = lifted - share m
  const net = netOf(target, target.kind === 'reserve-share' ? (mass - netWet) / (1 + target.share) : mass);
  if (net !== null) return { up, offset: null, netWet: net };
  if (target.kind === 'proud') return { up, offset: reachOf(wetted, up)[1] - target.proud, netWet: null };
  // a waterline's height is read half way along the bait
  const z = (target as Extract<Target, { kind: 'waterline' }>).z;
  return { up, offset: dot(up, [length / 2, 0, z]), netWet: null };
}

/**
 * The aim of the whole bait. Grams in reserve, of a bait that floats, are one waterline: that at which it displaces so much
 * less than it could. Shared out by volume instead each link would float at a line of its own, and joined up they would pull
 * each other off it. Where some link has a target of its own the rest have no line to keep to.
 */
function wholeAim({ target, linkTargets, wetted, length, assembled, fall }: TargetParts): Aim {
  const aim = aimOf(target, wetted, length, assembled, fall.whole);
  const isReserve = target.kind === 'reserve' || target.kind === 'reserve-share';
  if (!isReserve || aim.netWet === null || aim.netWet > -HANGS_G || Object.keys(linkTargets).length > 0) return aim;
  const { body } = fall.whole;
  const { mass, volume } = totalsOf(body);
  const loaded = { ...body, mass: body.mass + body.waterDensity * volume + aim.netWet - mass };
  const { along, across } = worldAxes(aim.up);
  const { offset } = draftAt(loaded, aim.up, along, across, null, DRAFT_SHARE * mass);
  return { up: aim.up, offset, netWet: null };
}

/** The net wet weight a target asks for; null where it asks for a waterline. */
function netOf(target: Target, mass: Gram): Gram | null {
  if (target.kind === 'net') return target.net;
  if (target.kind === 'reserve') return -target.reserve;
  if (target.kind === 'reserve-share') return -target.share * mass;
  return null;
}

/**
 * One plane for the whole bait is every link's own plane; a link that it misses is asked to hang level. A net weight is
 * shared by displaced volume between the links that have no target of their own; that of a sinking speed by their shares
 * of the drag, each to lie level about its own, so that no pin has anything to carry in the fall.
 */
function linkAims(parts: TargetParts, whole: Aim): readonly Aim[] {
  const { target, linkTargets, names, length, wetted, floats, fall } = parts;
  const shares = target.kind === 'sink' ? netAtSpeed(fall.whole, whole.up, target.speed).shares : null;
  const own = names.map((name, i) => {
    const asked = linkTargets[name];
    return asked ? aimOf(asked, [wetted[i]], length, floats[i], fall.links[i]) : null;
  });
  const spoken = own.reduce((sum, aim) => sum + (aim?.netWet ?? 0), 0);
  const weightOf = (i: number) => shares?.[i].share ?? wetted[i].volume;
  const unspoken = wetted.reduce((sum, _, i) => sum + (own[i] ? 0 : weightOf(i)), 0);
  return wetted.map((link, i): Aim => {
    const asked = own[i];
    if (asked) return asked;
    if (whole.netWet !== null) {
      const netWet = ((whole.netWet - spoken) * weightOf(i)) / unspoken;
      return { up: whole.up, offset: null, netWet, ...(shares && { drag: shares[i].at }) };
    }
    const [low, high] = reachOf([link], whole.up);
    const missed = whole.offset === null || whole.offset <= low || whole.offset >= high;
    return missed ? { up: whole.up, offset: null, netWet: 0 } : whole;
  });
}

/** Lowest and highest point of the coated links along a direction. */
function reachOf(wetted: readonly Wetted[], up: Vec3): readonly [Mm, Mm] {
  const reaches = wetted.map(({ mesh }) => measureReach(mesh.positions, up));
  return [Math.min(...reaches.map(([low]) => low)), Math.max(...reaches.map(([, high]) => high))];
}

function checksOf({ target, assembled, length, sinking }: TargetParts): readonly TargetCheck[] {
  if (target.kind === 'sink') return sinkChecks(target, sinking);
  const check = (what: TargetCheck['what'], wanted: number, got: number | null, tolerance: number): TargetCheck => ({
    what,
    wanted,
    got,
    tolerance,
    met: got !== null && Math.abs(got - wanted) <= tolerance,
  });
  const net = netOf(target, assembled.mass);
  const hangs = Math.max(NEAR.hangs, NEAR.hangsShare * assembled.mass);
  const aim =
    net !== null
      ? check('net', net, assembled.netWet, net === 0 ? hangs : NEAR.net)
      : target.kind === 'proud'
        ? check('proud', target.proud, assembled.proud, NEAR.length)
        : check('waterline', (target as { z: Mm }).z, waterHeight(assembled, length / 2), NEAR.length);
  return [aim, check('trim', target.trim, assembled.trim, NEAR.angle), check('heel', 0, assembled.heel, NEAR.angle)];
}

/** Speed, and how it lies in its fall; all three are not there where it floats or hangs. */
function sinkChecks(
  { speed, trim }: Extract<Target, { kind: 'sink' }>,
  sinking: Sinking | null,
): readonly TargetCheck[] {
  const check = (what: TargetCheck['what'], wanted: number, got: number | undefined, tolerance: number) => ({
    what,
    wanted,
    got: got ?? null,
    tolerance,
    isInFall: true,
    met: got !== undefined && Math.abs(got - wanted) <= tolerance,
  });
  const got = check('sink', speed, sinking?.speed[1], NEAR.sinkShare * speed);
  return [
    sinking ? { ...got, band: [sinking.speed[0], sinking.speed[2]] } : got,
    check('trim', trim, sinking?.trim, NEAR.angle),
    check('heel', 0, sinking?.heel, NEAR.angle),
  ];
}

/** Each joint: half way between the two links' ends. */
function jointsOf(spans: TargetParts['spans']): readonly Mm[] {
  return spans.slice(1).map(([fore], i) => (spans[i][1] + fore) / 2);
}
