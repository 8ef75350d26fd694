import type { Issue } from '../flow/outcome.ts';
import { woodNamed, woodNames } from '../tables/woods.ts';
import { quoted } from './given.ts';
import type { WorkedFile } from './work-out.ts';

interface Entry {
  readonly name: string;
}

/** Every name that is used twice in its list, cannot be a name, or points at nothing; and links that do not count up. */
export function nameIssues(file: WorkedFile): readonly Issue[] {
  const { links, joints, hangers, shop, setups } = file;
  return [
    ...linkCount(links.length, joints.length),
    ...ownNames('links', links),
    ...ownNames('hangers', hangers),
    ...ownNames('fittings', file.fittings ?? []),
    ...ownNames('fins', file.fins ?? []),
    ...ownNames('tails', file.tails ?? []),
    ...ownNames('shop.drills', shop?.drills ?? []),
    ...ownNames('shop.lead', shop?.lead ?? []),
    ...ownNames('setups', setups),
    ...species(file.wood.species),
    ...setups.flatMap((setup, index) => setupNames(setup, `setups.${index}`, file)),
  ];
}

function linkCount(links: number, joints: number): readonly Issue[] {
  if (links === joints + 1) return [];
  const message = `one link more than joints is wanted: ${joints + 1} for ${joints} joints, got ${links}`;
  return [{ code: 'design/link-count', path: 'links', message, hint: 'name every piece from nose to tail' }];
}

function setupNames(setup: WorkedFile['setups'][number], path: string, file: WorkedFile): readonly Issue[] {
  const { hung, holes, link_targets: targets = {} } = setup;
  const stock = file.shop?.lead ?? [];
  return [
    ...ownNames(`${path}.hung`, hung),
    ...ownNames(`${path}.holes`, holes),
    ...hung.flatMap(({ from }, index) => known(from, file.hangers, 'hangers', `${path}.hung.${index}.from`)),
    ...holes.flatMap(({ lead }, index) =>
      lead === undefined ? [] : known(lead.of, stock, 'shop.lead', `${path}.holes.${index}.lead.of`),
    ),
    ...Object.keys(targets).flatMap((link) => known(link, file.links, 'links', `${path}.link_targets.${link}`)),
  ];
}

/** Names of a list, each its own. A word that every object already knows would find the wrong thing when looked up. */
function ownNames(path: string, entries: readonly Entry[]): readonly Issue[] {
  const first = new Map<string, number>();
  return entries.flatMap(({ name }, index) => {
    const here = `${path}.${index}.name`;
    if (name in {}) {
      const message = `${quoted(name)} cannot be a name`;
      return [{ code: 'design/reserved-name', path: here, message, hint: 'choose another name' }];
    }
    const earlier = first.get(name);
    first.set(name, earlier ?? index);
    if (earlier === undefined) return [];
    const message = `the name ${quoted(name)} is taken by ${path}.${earlier}`;
    return [{ code: 'design/same-name', path: here, message, hint: 'give each its own name' }];
  });
}

function known(name: string, entries: readonly Entry[], list: string, path: string): readonly Issue[] {
  if (entries.some((entry) => entry.name === name)) return [];
  const names = entries.map((entry) => quoted(entry.name)).join(', ');
  const message = `${quoted(name)} is not in ${list}; there ${entries.length === 0 ? 'is nothing' : `are: ${names}`}`;
  return [{ code: 'design/no-such-name', path, message, hint: `name one of them or add it to ${list}` }];
}

function species(name: string | undefined): readonly Issue[] {
  if (name === undefined || woodNamed(name) !== null) return [];
  const message = `${quoted(name)} is not in the table of woods; known: ${woodNames().join(', ')}`;
  return [{ code: 'design/no-such-wood', path: 'wood.species', message, hint: 'take one of these or leave it out' }];
}
