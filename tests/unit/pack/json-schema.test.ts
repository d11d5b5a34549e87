import { describe, expect, test } from 'vitest';
import { packJsonSchema } from '../../../src/pack/json-schema';

// Whether it takes and refuses what reading takes and refuses is held by an outside validator: tests/outside.

interface Node {
  type?: string;
  properties?: Record<string, Node>;
  additionalProperties?: unknown;
  patternProperties?: Record<string, unknown>;
  items?: Node;
  anyOf?: Node[];
  oneOf?: Node[];
  prefixItems?: Node[];
}

/** Every schema inside. */
function nodes(node: Node): Node[] {
  const inner = [
    ...Object.values(node.properties ?? {}),
    ...(node.anyOf ?? []),
    ...(node.oneOf ?? []),
    ...(node.prefixItems ?? []),
    ...(typeof node.items === 'object' ? [node.items] : []),
    ...(typeof node.additionalProperties === 'object' ? [node.additionalProperties as Node] : []),
  ];
  return [node, ...inner.flatMap(nodes)];
}

describe('packJsonSchema', () => {
  const schema = packJsonSchema() as Node & Record<string, unknown>;

  test('says which draft it is of and what it describes', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.title).toBe('Bedplate pack, schema 1');
  });

  test('is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
  });

  test('names every part of a pack, and what each pack must have', () => {
    expect(Object.keys(schema.properties ?? {})).toEqual([
      '$schema',
      'schema',
      'about',
      'attributes',
      'families',
      'models',
      'types',
      'serials',
      'wording',
      'prices',
      'cautions',
      'photographs',
      'terms',
      'places',
    ]);
    expect(schema.required).toEqual(['schema', 'about']);
  });

  test('every object of known keys is closed, but for keys that begin with x-', () => {
    const objects = nodes(schema).filter((node) => node.properties);
    expect(objects.length).toBeGreaterThan(30);
    for (const node of objects)
      expect(node).toMatchObject({ additionalProperties: false, patternProperties: { '^x-': {} } });
  });

  test('every list says what its entries are', () => {
    const lists = nodes(schema).filter((node) => node.type === 'array');
    expect(lists.length).toBeGreaterThan(30);
    for (const node of lists) expect(node.items !== undefined || node.prefixItems !== undefined).toBe(true);
  });

  test('is made anew each time: changing one changes no other', () => {
    (packJsonSchema().properties as Record<string, unknown>).schema = false;
    expect(packJsonSchema()).toEqual(schema);
  });
});
