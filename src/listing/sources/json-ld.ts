import { shortName, type Thing, typeName, type Value } from '../structured/things';

type Plain = { [key: string]: unknown };

const NODES_MOST = 20_000;
const VALUES_MOST = 500;

const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const own = (object: Plain, key: string): unknown => (Object.hasOwn(object, key) ? object[key] : undefined);

/** The top-level things of all JSON-LD blocks of a page (JSON-LD 1.1, schema.org's use of it); broken blocks are skipped. */
export function fromJsonLd(blocks: string[]): Thing[] {
  const roots: unknown[] = [];
  for (const text of blocks) {
    const block = parse(text);
    if (block !== undefined) roots.push(block);
  }
  const aliases = aliasesOf(roots);
  const byId = indexOf(roots, aliases);
  const known = new WeakMap<Plain, Thing>();

  const thing = (node: Plain): Thing => {
    const before = known.get(node);
    if (before) return before;
    const id = keyword(node, '@id', aliases);
    // A node that is only named here is described elsewhere, perhaps in several places.
    const places = typeof id === 'string' ? (byId.get(id) ?? [node]) : [node];
    const same = known.get(places[0]!);
    if (same) {
      known.set(node, same);
      return same;
    }
    const made: Thing = {
      types: places
        .flatMap((place) => flat(keyword(place, '@type', aliases)))
        .filter((type) => typeof type === 'string')
        .map(typeName),
      id: typeof id === 'string' && !id.startsWith('_:') ? id : null,
      get: (property) => places.flatMap((place) => values(place, property)),
    };
    for (const place of places) known.set(place, made);
    known.set(node, made);
    return made;
  };
  const values = (node: Plain, property: string): Value[] => {
    const found: Value[] = [];
    for (const key of [
      property,
      `schema:${property}`,
      `http://schema.org/${property}`,
      `https://schema.org/${property}`,
      ...(aliases.get(property) ?? []),
    ]) {
      for (const value of flat(own(node, key))) {
        if (typeof value === 'string') found.push(value);
        else if (typeof value === 'number' || typeof value === 'boolean') found.push(String(value));
        else if (isPlain(value)) found.push(thing(value));
      }
    }
    return found;
  };

  const top: Thing[] = [];
  for (const node of flat(roots)) {
    if (!isPlain(node)) continue;
    const graph = flat(own(node, '@graph')).filter(isPlain);
    for (const one of graph.length > 0 ? graph : [node]) top.push(thing(one));
  }
  return [...new Set(top)];
}

/** The block without the comment or CDATA wrappers that old pages put around scripts; undefined if it is no JSON. */
function parse(text: string): unknown {
  const bare = text
    .replace(/^\s*(?:\/\/\s*|\/\*\s*)?(?:<!--|<!\[CDATA\[)(?:\s*\*\/)?/, '')
    .replace(/(?:\/\/\s*|\/\*\s*)?(?:-->|\]\]>)(?:\s*\*\/)?\s*$/, '')
    .replace(/^\s*[\ufeff;]+|\s?;\s?$/g, '');
  try {
    return JSON.parse(bare);
  } catch {
    return undefined;
  }
}

/** A value as a list: arrays in arrays, @list, @set and @value unwrapped, without recursion. */
function flat(value: unknown): unknown[] {
  const out: unknown[] = [];
  const waiting: unknown[] = [value];
  for (let steps = 0; waiting.length > 0 && steps < NODES_MOST && out.length < VALUES_MOST; steps++) {
    const next = waiting.pop();
    if (Array.isArray(next))
      for (let index = Math.min(next.length, NODES_MOST) - 1; index >= 0; index--) waiting.push(next[index]);
    else if (isPlain(next)) {
      const wrapped = own(next, '@value') ?? own(next, '@list') ?? own(next, '@set');
      if (wrapped !== undefined) waiting.push(wrapped);
      else out.push(next);
    } else if (next !== undefined && next !== null) out.push(next);
  }
  return out;
}

type Aliases = ReadonlyMap<string, string[]>;

/** schema.org's own context has these words for the keywords of JSON-LD. */
const keyword = (node: Plain, name: '@id' | '@type', aliases: Aliases): unknown => {
  for (const key of [name, name.slice(1), ...(aliases.get(name) ?? [])]) {
    const value = own(node, key);
    if (value !== undefined) return value;
  }
  return undefined;
};

/** Names that a block's own context (JSON-LD 1.1, section 4.1) gives to properties and keywords: property -> its names. */
function aliasesOf(roots: unknown[]): Aliases {
  const found = new Map<string, string[]>();
  for (const root of flat(roots)) {
    for (const context of isPlain(root) ? flat(own(root, '@context')) : []) {
      for (const [term, meaning] of isPlain(context) ? Object.entries(context).slice(0, VALUES_MOST) : []) {
        const name = isPlain(meaning) ? own(meaning, '@id') : meaning;
        if (term.startsWith('@') || typeof name !== 'string') continue;
        const property = name.startsWith('@') ? name : shortName(name);
        if (property === '' || property === term) continue;
        found.set(property, [...(found.get(property) ?? []), term]);
      }
    }
  }
  return found;
}

/** Every described node by its @id. */
function indexOf(roots: unknown[], aliases: Aliases): Map<string, Plain[]> {
  const byId = new Map<string, Plain[]>();
  const waiting: unknown[] = [...roots];
  for (let steps = 0; waiting.length > 0 && steps < NODES_MOST; steps++) {
    const next = waiting.pop();
    if (typeof next !== 'object' || next === null) continue;
    if (isPlain(next)) {
      const id = keyword(next, '@id', aliases);
      if (typeof id === 'string' && Object.keys(next).length > 1) {
        const places = byId.get(id);
        if (!places) byId.set(id, [next]);
        else if (places.length < 20) places.push(next);
      }
    }
    for (const value of Object.values(next)) waiting.push(value);
  }
  return byId;
}
