import { type BaitParts, type LinkParts, type LinkPlan, planLink } from '../../sim/ballast/plan.ts';
import { type SettledPlan, settlePlan } from '../../sim/ballast/settle.ts';
import { type BallastPlan, planBallast } from '../../sim/ballast/whole.ts';
import type { Hole } from '../../sim/design/design.ts';
import type { DesignFile, HoleEntry } from '../../sim/design/file.ts';
import { linkTrees } from '../../sim/hydro/link-tree.ts';
import type { Detail } from '../../sim/mesh/wetted.ts';
import { type AllAnswers, answersOf } from './worked-bait.ts';

/** What the planner is given of a bait. */
export interface BallastParts extends BaitParts {
  readonly links: readonly LinkParts[];
}

/** A bait as it is, the ballast planned for it, and how it floats with that. */
export interface Planned {
  readonly answers: AllAnswers;
  readonly parts: BallastParts;
  readonly plan: BallastPlan;
  readonly links: readonly LinkPlan[];
  readonly settled: SettledPlan;
}

/** Plans a design that can be made, in its first setup unless told otherwise, without all else that comes at full detail. */
export function plannedOf(file: DesignFile, wish: { readonly detail?: Detail; readonly setup?: string } = {}): Planned {
  const answers = answersOf(file, { detail: 'drag', ...wish });
  const parts = ballastPartsOf(answers);
  const { setup, design, drop } = answers.bait;
  const alone = parts.links.map((link) => planLink(parts, link));
  const plan = planBallast(parts, parts.links, setup.target.trim, alone);
  const { target, linkTargets } = setup;
  const { length } = design.body;
  const timed = drop?.kind === 'fitted' ? drop.timed : null;
  const settled = settlePlan({ ...parts, holes: plan.holes, target, linkTargets, length, timed });
  return { answers, parts, plan, links: plan.links, settled };
}

/** The same, gathered from its answers. */
export function ballastPartsOf({ bait, links }: AllAnswers): BallastParts {
  const { hull, design, setup, water, hardware, target } = bait;
  const own = <Item extends { readonly link: number }>(items: readonly Item[], index: number) =>
    items.filter(({ link }) => link === index);
  return {
    hull,
    wood: design.wood,
    coats: setup.coats,
    water,
    shop: design.shop,
    links: links.map(({ solid, wetted }, index) => {
      const fins = own(hardware.fins, index);
      const { hung, ...fixed } = hardware;
      return {
        spec: bait.links[index],
        link: design.links[index],
        solid,
        wetted,
        trees: linkTrees(wetted.mesh, fins),
        hardware: {
          ...fixed,
          eyes: own(hardware.eyes, index),
          pins: own(hardware.pins, index),
          holes: own(hardware.holes, index),
          fittings: own(hardware.fittings, index),
          fins,
        },
        hung: own(hung, index),
        aim: target.links[index],
        likes: [],
      };
    }),
  };
}

/** The design with other holes in its first setup, as a maker would write them down. */
export function withHoles(file: DesignFile, holes: readonly Hole[]): DesignFile {
  const [setup, ...rest] = file.setups;
  return { ...file, setups: [{ ...setup, holes: holes.map(entryOf) }, ...rest] };
}

function entryOf(hole: Hole): HoleEntry {
  const { name, from, x, across, diameter, depth, point, lead, air, plugDensity, done } = hole;
  return {
    name,
    from,
    x_mm: x,
    across_mm: across,
    diameter_mm: diameter,
    depth_mm: depth,
    point_deg: Number(((point * 180) / Math.PI).toFixed(9)),
    ...(lead && { lead: { of: lead.stock.name, mass_g: lead.mass } }),
    ...(air && { air: { plug_mm: air.plug } }),
    plug_g_cm3: Number((plugDensity * 1000).toFixed(9)),
    done,
  };
}
