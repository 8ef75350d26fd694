import type { Issue } from '../flow/outcome.ts';
import type { WorkedFile } from './work-out.ts';

/** Fields that must go together, or must not: a knuckle and its pin, a hanger's place, a slug's diameter. */
export function combinationIssues(file: WorkedFile): readonly Issue[] {
  return [
    ...file.joints.flatMap((joint, index) => knuckleHinge(joint, `joints.${index}.hinge`)),
    ...file.hangers.flatMap((hanger, index) => hangerPlace(hanger, `hangers.${index}`)),
    ...(file.fittings ?? []).flatMap((fitting, index) => pairApart(fitting, `fittings.${index}`)),
    ...(file.tails ?? []).flatMap((tail, index) => airInOrder(tail, `tails.${index}`)),
    ...file.setups.flatMap(({ holes }, setup) =>
      holes.flatMap((hole, index) => airOrLead(hole, `setups.${setup}.holes.${index}`)),
    ),
    ...file.setups.flatMap((setup, index) => targetsAtOdds(setup, file.links, `setups.${index}.link_targets`)),
    ...(file.shop?.lead ?? []).flatMap((lead, index) => leadDiameter(lead, `shop.lead.${index}`)),
  ];
}

/** A knuckle turns about its own axis, so that is where its pin stands; eyes that only hold each other have none. */
function knuckleHinge({ faces, hinge }: WorkedFile['joints'][number], path: string): readonly Issue[] {
  if (faces.kind !== 'knuckle') return [];
  if (hinge.kind === 'linked-eyes') {
    const message = 'linked eyes let a knuckle slide in its hollow; it turns on "pin" alone';
    const hint = 'hinge it on a pin, or make the faces flat or bevelled';
    return [{ code: 'design/out-of-place', path: `${path}.kind`, message, hint }];
  }
  if (hinge.pin.x_mm === undefined) return [];
  const message = 'the pin of a knuckle stands on its axis; x_mm says nothing there';
  return [{ code: 'design/out-of-place', path: `${path}.pin.x_mm`, message, hint: 'take x_mm out' }];
}

function hangerPlace(hanger: WorkedFile['hangers'][number], path: string): readonly Issue[] {
  const [wanted, other] = isAlong(hanger.on) ? (['x_mm', 'z_mm'] as const) : (['z_mm', 'x_mm'] as const);
  const issues: Issue[] = [];
  if (hanger[wanted] === undefined) {
    const message = `a hanger on the ${hanger.on} is placed by ${wanted}, which is missing`;
    issues.push({ code: 'design/missing', path: `${path}.${wanted}`, message, hint: `add ${wanted}` });
  }
  if (hanger[other] !== undefined) {
    const message = `a hanger on the ${hanger.on} is placed by ${wanted}; ${other} says nothing there`;
    issues.push({ code: 'design/out-of-place', path: `${path}.${other}`, message, hint: `take ${other} out` });
  }
  return issues;
}

/** Whether a hanger sits somewhere along the body, and so is placed by x; else it sits on an end, and by z. */
export function isAlong(on: 'belly' | 'back' | 'nose' | 'tail'): boolean {
  return on === 'belly' || on === 'back';
}

/** Two of a pair on the centre plane would be one thing counted twice. */
function pairApart(fitting: NonNullable<WorkedFile['fittings']>[number], path: string): readonly Issue[] {
  if (fitting.pair !== true || (fitting.y_mm ?? 0) !== 0) return [];
  const message = 'a pair stands to either side, so y_mm cannot be 0 mm or left out';
  return [{ code: 'design/missing', path: `${path}.y_mm`, message, hint: 'add y_mm, or take pair out' }];
}

function airInOrder(tail: NonNullable<WorkedFile['tails']>[number], path: string): readonly Issue[] {
  const [least, most] = tail.air_mm3 ?? [0, 0];
  if (most >= least) return [];
  const message = `the most air, ${most} mm³, is less than the least, ${least} mm³`;
  return [{ code: 'design/out-of-order', path: `${path}.air_mm3`, message, hint: 'swap the two' }];
}

function airOrLead(hole: WorkedFile['setups'][number]['holes'][number], path: string): readonly Issue[] {
  if (hole.air === undefined || hole.lead === undefined) return [];
  const message = 'a hole holds lead or air, not both';
  return [{ code: 'design/out-of-place', path: `${path}.air`, message, hint: 'take one of them out' }];
}

type Setup = WorkedFile['setups'][number];

/** Less than what a setup's net weight may be off and still count as met. */
const AT_ODDS_G = 0.2;

/** What a target asks of the weight in the water; null where it asks for something else. */
function netOf(target: Setup['target']): number | null {
  if ('net_wet_g' in target) return target.net_wet_g;
  return 'reserve_g' in target ? -target.reserve_g : null;
}

/** Where every link has a net weight of its own, the whole bait has their sum, and can be asked for no other. */
function targetsAtOdds(
  { target, link_targets: own = {} }: Setup,
  links: WorkedFile['links'],
  path: string,
): readonly Issue[] {
  const whole = netOf(target);
  const parts = links.map(({ name }) => (own[name] === undefined ? null : netOf(own[name])));
  if (whole === null || links.length < 2 || parts.includes(null)) return [];
  const sum = parts.reduce<number>((total, part) => total + (part ?? 0), 0);
  if (Math.abs(sum - whole) <= AT_ODDS_G) return [];
  const grams = (mass: number) => `${Number(mass.toFixed(2)) + 0} g`;
  const message = `the links' own targets add up to ${grams(sum)} in the water, and the setup asks for ${grams(whole)}; both cannot be met`;
  return [
    {
      code: 'design/at-odds',
      path,
      message,
      hint: 'change one of them, or leave one link without a target of its own',
    },
  ];
}

type Lead = NonNullable<NonNullable<WorkedFile['shop']>['lead']>[number];

function leadDiameter(lead: Lead, place: string): readonly Issue[] {
  const path = `${place}.diameter_mm`;
  if (lead.kind === 'slug' && lead.diameter_mm === undefined) {
    return [
      {
        code: 'design/missing',
        path,
        message: 'a slug has a diameter of its own, which is missing',
        hint: 'add diameter_mm',
      },
    ];
  }
  if (lead.kind === 'filled' && lead.diameter_mm !== undefined) {
    const message = 'filled lead takes the diameter of its hole, so it has none of its own';
    return [{ code: 'design/out-of-place', path, message, hint: 'take diameter_mm out or make it a slug' }];
  }
  return [];
}
