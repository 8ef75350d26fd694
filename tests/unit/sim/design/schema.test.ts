import { describe, expect, expectTypeOf, test } from 'vitest';
import * as z from 'zod';
import type { DesignFile } from '../../../../sim/design/file.ts';
import { isNumberKey, unitOfKey, withUnit } from '../../../../sim/design/number-keys.ts';
import { rangeAt } from '../../../../sim/design/ranges.ts';
import { designFileSchema } from '../../../../sim/design/schema.ts';

/** A place in the schema as a path into a file: 0 stands for any entry of a list, `any` for a name of the maker's. */
interface Place {
  readonly path: readonly (string | number)[];
  readonly takesNumber: boolean;
}

type Node = Readonly<Record<string, unknown>>;

/** Every place of the schema that takes a number, a text or a yes or no, read off its JSON Schema. */
function placesOf(node: Node, path: readonly (string | number)[] = []): readonly Place[] {
  const children = (key: string) => (Array.isArray(node[key]) ? (node[key] as Node[]) : []);
  const forms = [...children('anyOf'), ...children('oneOf')];
  if (forms.length > 0) return forms.flatMap((form) => placesOf(form, path));
  if (node.type === 'object') {
    const named = Object.entries((node.properties ?? {}) as Record<string, Node>);
    const free =
      typeof node.additionalProperties === 'object' ? [['any', node.additionalProperties as Node] as const] : [];
    return [...named, ...free].flatMap(([key, child]) => placesOf(child, [...path, key]));
  }
  if (node.type === 'array') {
    const entries = [...children('prefixItems'), ...(typeof node.items === 'object' ? [node.items as Node] : [])];
    return entries.flatMap((entry, index) => placesOf(entry, [...path, index]));
  }
  return [{ path, takesNumber: node.type === 'number' }];
}

const places = placesOf(z.toJSONSchema(designFileSchema) as Node);
const keyOf = ({ path }: Place) => String(path.findLast((step) => typeof step === 'string'));
const isFree = ({ path }: Place) => path[0] === 'dimensions' || path[0] === 'version';
const numbers = places.filter((place) => place.takesNumber && !isFree(place));

describe('the schema of a design file', () => {
  test('has the fields it is known to have', () => {
    expect(numbers.length).toBeGreaterThan(120);
    expect(places.map(({ path }) => path.join('.'))).toEqual(
      expect.arrayContaining(['body.deepest_x_mm.1', 'setups.0.link_targets.any.net_wet_g', 'fins.0.edge_mm.0.1']),
    );
  });

  test('names the unit of every number in its key', () => {
    expect(numbers.filter((place) => !isNumberKey(keyOf(place)))).toEqual([]);
  });

  test('has no text under a key that would be taken for a number', () => {
    const numberPaths = new Set(numbers.map(({ path }) => path.join('.')));
    const texts = places.filter((place) => !numberPaths.has(place.path.join('.')) && !isFree(place));
    expect(texts.length).toBeGreaterThan(30);
    expect(texts.filter((place) => isNumberKey(keyOf(place)))).toEqual([]);
  });

  test('has a range for every number but the version and own dimensions', () => {
    expect(numbers.filter(({ path }) => rangeAt(path) === null)).toEqual([]);
    expect(rangeAt(['version'])).toBeNull();
    expect(rangeAt(['dimensions', 'head_mm'])).toBeNull();
    expect(rangeAt(['joints', 3, 'gap_mm'])).toEqual({ low: 0.2, high: 10 });
  });

  test('and the types of a design file say the same', () => {
    type Writable<Part> = Part extends object ? { -readonly [Key in keyof Part]: Writable<Part[Key]> } : Part;
    expectTypeOf<Writable<DesignFile>>().toExtend<z.input<typeof designFileSchema>>();
    expectTypeOf<z.output<typeof designFileSchema>>().toExtend<DesignFile>();
  });
});

describe('a number with the unit of its key', () => {
  test.each([
    [12.5, 'gap_mm', '12.5 mm'],
    [20, 'fore_deg', '20°'],
    [5, 'soak_percent', '5%'],
    [0.36, 'density_g_cm3', '0.36 g/cm³'],
    [30, 'soak_g_m2', '30 g/m²'],
    [35, 'salinity_g_kg', '35 g/kg'],
    [4, 'temperature_c', '4 °C'],
    [20, 'sink_mm_s', '20 mm/s'],
    [90, 'outside_mm3', '90 mm³'],
    [2.1, 'mass_g', '2.1 g'],
    [2.6, 'above', '2.6'],
    // 0.1 + 0.2 in binary
    [0.30000000000000004, 'x_mm', '0.3 mm'],
  ])('%d under %s reads %s', (value, key, text) => {
    expect(withUnit(value, key)).toBe(text);
  });

  test('is none where the key is a name', () => {
    expect(['name', 'from', 'species', 'kind', 'notes', 'version'].map(unitOfKey)).toEqual(Array(6).fill(''));
  });
});
