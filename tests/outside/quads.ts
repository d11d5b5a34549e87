import type { Thing } from '../../src/listing/structured/things';

/** A triple as the reference parsers give it (the RDF/JS data model). */
export interface Quad {
  subject: Term;
  predicate: Term;
  object: Term;
}
interface Term {
  termType: string;
  value: string;
}

/** A thing with all that is said of it: values sorted, each once, since triples are a set. */
export interface Described {
  types: string[];
  id: string | null;
  properties: [name: string, values: (string | number | Described)[]][];
}

const TYPE = 'http://www.w3.org/1999/02/22-rdf-syntax-ns#type';
/** Things may describe each other in a circle. */
const DEEPEST = 3;

const short = (address: string) => /[^/#]*$/.exec(address)![0];
/** "10", 10 and 1.0E1 are one number however it was written. */
const comparable = (value: string): string | number =>
  value.trim() !== '' && Number.isFinite(Number(value)) ? Number(value) : value;

export function sorted<T>(values: readonly T[]): T[] {
  const byText = new Map(values.map((value) => [JSON.stringify(value), value]));
  return [...byText].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, value]) => value);
}

/** The typed things that triples describe and that no triple has as its object. */
export function describedByQuads(quads: readonly Quad[]): Described[] {
  const bySubject = new Map<string, Quad[]>();
  for (const quad of quads) bySubject.set(quad.subject.value, [...(bySubject.get(quad.subject.value) ?? []), quad]);
  const describe = (subject: Term, depth: number): Described => {
    const own = bySubject.get(subject.value) ?? [];
    const said = own.filter(({ predicate }) => predicate.value !== TYPE);
    const names = [...new Set(said.map(({ predicate }) => short(predicate.value)))];
    return {
      types: sorted(own.filter(({ predicate }) => predicate.value === TYPE).map(({ object }) => short(object.value))),
      id: subject.termType === 'NamedNode' ? subject.value : null,
      properties: sorted(
        names.map((name): Described['properties'][number] => [
          name,
          sorted(
            said
              .filter(({ predicate }) => short(predicate.value) === name)
              .map(({ object }) => objectOf(object, depth)),
          ),
        ]),
      ),
    };
  };
  const objectOf = (object: Term, depth: number): string | number | Described => {
    if (object.termType === 'Literal') return comparable(object.value);
    if (object.termType === 'NamedNode' && !bySubject.has(object.value)) return object.value;
    return depth === 0 ? '…' : describe(object, depth - 1);
  };
  const values = new Set(
    quads
      .filter(({ subject, predicate, object }) => predicate.value !== TYPE && subject.value !== object.value)
      .map(({ object }) => `${object.termType} ${object.value}`),
  );
  const tops = new Map(quads.map(({ subject }) => [`${subject.termType} ${subject.value}`, subject]));
  return sorted(
    [...tops]
      .filter(([key]) => !values.has(key))
      .map(([, subject]) => describe(subject, DEEPEST))
      .filter(({ types }) => types.length > 0),
  );
}

/** Our things in the same form; of a thing only the properties that are asked for can be told. */
export function describedByThings(things: readonly Thing[], names: readonly string[]): Described[] {
  const describe = (thing: Thing, depth: number): Described => ({
    types: sorted(thing.types),
    id: thing.id,
    properties: sorted(
      names
        .map((name): Described['properties'][number] => [
          name,
          sorted(thing.get(name).map((value) => (typeof value === 'string' ? comparable(value) : inner(value, depth)))),
        ])
        .filter(([, values]) => values.length > 0),
    ),
  });
  const inner = (thing: Thing, depth: number): string | Described => {
    const isBare = thing.types.length === 0 && names.every((name) => thing.get(name).length === 0);
    if (isBare && thing.id !== null) return thing.id;
    return depth === 0 ? '…' : describe(thing, depth - 1);
  };
  return sorted(things.map((thing) => describe(thing, DEEPEST)));
}

/** All triples that a reference parser reads from a text. */
export function quadsFrom(parser: NodeJS.ReadWriteStream, text: string): Promise<Quad[]> {
  return new Promise((resolve, reject) => {
    const quads: Quad[] = [];
    parser.on('data', (quad) => quads.push(quad as unknown as Quad));
    parser.on('error', reject);
    parser.on('end', () => resolve(quads));
    parser.write(text);
    parser.end();
  });
}
