import { shortName, type Thing, type Value } from '../structured/things';
import type { RdfaMark } from '../types';
import { resolved } from '../visit/addresses';

interface Node {
  id: string | null;
  types: string[];
  values: Map<string, Value[]>;
  /** It is what a property of another one says. */
  isValue: boolean;
  thing: Thing;
}

/** What an element gives to those inside it (RDFa Core 1.1, section 7.2). */
interface Context {
  vocab: string;
  prefixes: ReadonlyMap<string, string>;
  /** The subject of properties inside. */
  subject: Node | null;
  /** The object that a hanging relation waits for, by its properties. */
  waiting: { subject: Node; names: string[]; reversed: string[]; met: Set<Node> } | null;
}

/** Of the initial context of RDFa 1.1 those that name things for sale; and those that old pages use undeclared. */
const PREFIXES: [string, string][] = [
  ['schema', 'http://schema.org/'],
  ['og', 'http://ogp.me/ns#'],
  ['gr', 'http://purl.org/goodrelations/v1#'],
  ['foaf', 'http://xmlns.com/foaf/0.1/'],
  ['v', 'http://rdf.data-vocabulary.org/#'],
];
const TRIPLES_MOST = 5000;

/**
 * The things that a page describes in RDFa (RDFa Core 1.1, section 7.5, with the additions of HTML+RDFa 1.1: `rel` words
 * beside a `property` count only with a prefix), those that are no property of another. Lists and XML literals are not
 * kept apart from plain values. `base`: against what addresses are resolved.
 */
export function fromRdfa(marks: readonly RdfaMark[], base: string): Thing[] {
  const nodes: Node[] = [];
  const named = new Map<string, Node>();
  let triples = 0;

  const blank = (): Node => {
    const values = new Map<string, Value[]>();
    const node: Node = {
      id: null,
      types: [],
      values,
      isValue: false,
      thing: { types: [], id: null, get: (property) => values.get(property) ?? [] },
    };
    nodes.push(node);
    return node;
  };
  const nodeOf = (address: string): Node => {
    const before = named.get(address);
    if (before) return before;
    const node = blank();
    node.id = address;
    node.thing.id = address.startsWith('_:') ? null : address;
    named.set(address, node);
    return node;
  };
  const say = (subject: Node, names: readonly string[], value: string | Node) => {
    for (const name of names) {
      if (++triples > TRIPLES_MOST) return;
      const short = shortName(name);
      const before = subject.values.get(short);
      const said = typeof value === 'string' ? value : value.thing;
      if (before) before.push(said);
      else subject.values.set(short, [said]);
      if (typeof value !== 'string' && value !== subject) value.isValue = true;
    }
  };

  const pageNode = () => nodeOf(resolved('', base) ?? base);

  const root: Context = { vocab: '', prefixes: new Map(PREFIXES), subject: null, waiting: null };
  const contexts: Context[] = [];
  for (const { parent, tag, attributes, text } of marks) {
    const around = contexts[parent] ?? root;
    const get = (name: string) => attributes.find(([its]) => its === name)?.[1];
    const words = (name: string) => (get(name) ?? '').split(/\s+/).filter(Boolean);
    const vocab =
      get('vocab')
        ?.trim()
        .replace(/(?<=[^/#])$/, '/') ?? around.vocab;
    const prefixes = declared(around.prefixes, attributes);

    /** A property or type: a term of the vocabulary, a name with a prefix, or a whole address. */
    const term = (word: string): string | null => {
      const [, prefix, name] = /^([^:]*):(.*)$/s.exec(word) ?? [];
      if (prefix === undefined || name === undefined) return vocab ? vocab + word : null;
      const known = prefixes.get(prefix.toLowerCase());
      return known === undefined ? (prefix === '' || prefix === '_' ? null : word) : known + name;
    };
    const terms = (name: string) =>
      words(name)
        .map(term)
        .filter((one) => one !== null);
    const address = (written: string): string | null => {
      const [, bare] = /^\[(.*)\]$/s.exec(written.trim()) ?? [];
      const short = bare ?? written.trim();
      const [, prefix, name] = /^([\w.-]*):(?!\/\/)(.*)$/s.exec(short) ?? [];
      if (prefix === '_') return short;
      const known = prefix === undefined ? undefined : prefixes.get(prefix.toLowerCase());
      if (known !== undefined) return known + name;
      return bare === undefined ? resolved(short, base) : null;
    };
    const addressOf = (...names: string[]): Node | null => {
      for (const name of names) {
        const written = get(name);
        // Only the attributes of RDFa itself know short forms; those of HTML are addresses.
        const isShort = name === 'about' || name === 'resource';
        const found = written === undefined ? null : isShort ? address(written) : resolved(written, base);
        if (found !== null) return nodeOf(found);
      }
      return null;
    };

    const isProperty = get('property') !== undefined;
    const relations = (name: string): string[] | null => {
      if (get(name) === undefined) return null;
      const kept = words(name).filter((word) => !isProperty || word.includes(':'));
      if (kept.length === 0 && isProperty) return null;
      return kept.map(term).filter((one) => one !== null);
    };
    const rel = relations('rel');
    const rev = relations('rev');
    const isTyped = get('typeof') !== undefined;
    const isRoot = tag === 'html' || tag === 'head' || tag === 'body';

    const here = around.subject ?? pageNode();
    const content = get('content');
    let subject: Node;
    let object: Node | null = null;
    let typed: Node | null = null;
    let passes = false;
    if (rel || rev) {
      const about = addressOf('about');
      subject = about ?? here;
      object = addressOf('resource', 'href', 'src') ?? (isTyped && !about ? blank() : null);
      typed = isTyped ? (about ?? object) : null;
    } else if (isProperty && content === undefined && get('datatype') === undefined) {
      const about = addressOf('about');
      subject = about ?? here;
      if (isTyped) typed = about ?? (isRoot ? here : (addressOf('resource', 'href', 'src') ?? blank()));
      object = typed;
    } else {
      const own = addressOf('about', 'resource', 'href', 'src') ?? (isTyped && !isRoot ? blank() : null);
      subject = own ?? here;
      typed = isTyped ? subject : null;
      passes = own === null && !isTyped && !isProperty;
    }
    for (const type of isTyped ? terms('typeof') : []) typed?.types.push(shortName(type));
    if (passes) {
      contexts.push({ ...around, vocab, prefixes });
      continue;
    }

    // It hangs on a relation of an element around it.
    const { waiting: hung } = around;
    if (hung && !hung.met.has(subject)) {
      hung.met.add(subject);
      say(hung.subject, hung.names, subject);
      say(subject, hung.reversed, hung.subject);
    }
    let waiting: Context['waiting'] = null;
    if (rel || rev) {
      if (object) {
        say(subject, rel ?? [], object);
        say(object, rev ?? [], subject);
      } else {
        waiting = { subject, names: rel ?? [], reversed: rev ?? [], met: new Set() };
        object = blank();
      }
    }
    if (isProperty) {
      const isLiteral = content !== undefined || get('datatype') !== undefined;
      const resource = isLiteral || rel || rev ? null : addressOf('resource', 'href', 'src');
      const inside = isLiteral || get('about') !== undefined ? null : typed;
      say(subject, terms('property'), content ?? resource ?? inside ?? text ?? '');
    }
    contexts.push({ vocab, prefixes, subject: object ?? subject, waiting });
  }
  for (const node of nodes) node.thing.types = node.types;
  return nodes.filter((node) => !node.isValue && node.types.length > 0).map(({ thing }) => thing);
}

function declared(
  around: ReadonlyMap<string, string>,
  attributes: RdfaMark['attributes'],
): ReadonlyMap<string, string> {
  const own: [string, string][] = [];
  for (const [name, value] of attributes) {
    if (name.startsWith('xmlns:')) own.push([name.slice(6).toLowerCase(), value]);
    else if (name === 'prefix')
      for (const [, prefix = '', address = ''] of value.matchAll(/([^\s:]*):\s+(\S+)/g))
        own.push([prefix.toLowerCase(), address]);
  }
  return own.length > 0 ? new Map([...around, ...own]) : around;
}
