import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DesignFile } from '../../sim/design/file.ts';
import { designFileSchema } from '../../sim/design/schema.ts';
import { arbitraryDesignFile } from '../support/arbitrary-design.ts';
import { soundIssuesOf } from '../support/worked-bait.ts';

/** Of a schema as JSON Schema (2020-12), what says which fields there are. */
interface Described {
  readonly properties?: Readonly<Record<string, Described>>;
  readonly items?: Described;
  readonly prefixItems?: readonly Described[];
  readonly additionalProperties?: Described | boolean;
  readonly anyOf?: readonly Described[];
  readonly oneOf?: readonly Described[];
}

/** The place of every field that a design file may have; `*` stands for a place in a list or a name. */
function placesIn(part: Described, place: string): readonly string[] {
  const { properties = {}, items, prefixItems = [], additionalProperties: named, anyOf = [], oneOf = [] } = part;
  return [
    ...Object.entries(properties).flatMap(([key, child]) => {
      const here = place === '' ? key : `${place}.${key}`;
      return [here, ...placesIn(child, here)];
    }),
    ...[items, ...prefixItems, typeof named === 'object' ? named : undefined].flatMap((child) =>
      child === undefined ? [] : [`${place}.*`, ...placesIn(child, `${place}.*`)],
    ),
    ...[...anyOf, ...oneOf].flatMap((child) => placesIn(child, place)),
  ];
}

/** Fields whose keys are the maker's own names. */
const NAMED = /^(dimensions|setups\.\*\.link_targets)$/;

function placesOf(part: unknown, place: string): readonly string[] {
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, child]) => {
    const last = Array.isArray(part) || NAMED.test(place) ? '*' : key;
    const here = place === '' ? last : `${place}.${last}`;
    return [here, ...placesOf(child, here)];
  });
}

const DRAWN: readonly DesignFile[] = fc.sample(arbitraryDesignFile(), { seed: 2025, numRuns: 300 });

test('random designs have every field of the file among them, and no other', () => {
  const known = new Set(placesIn(designFileSchema.toJSONSchema() as Described, ''));
  expect(known).toContain('joints.*.hinge.pin.density_g_cm3');
  const drawn = new Set(DRAWN.flatMap((file) => placesOf(file, '')));
  expect([...known].filter((place) => !drawn.has(place))).toEqual([]);
  expect([...drawn].filter((place) => !known.has(place))).toEqual([]);
});

test('most random designs can be made, whatever they are given', () => {
  // 73 to 74 % of 3,000 with each of three seeds
  expect(DRAWN.filter((file) => soundIssuesOf(file).length === 0).length).toBeGreaterThan(0.6 * DRAWN.length);
});
