import { packTexts as texts } from '../../text/catalogue/pack';
import { MOST_ISSUES, type PackIssue } from '../issues';
import type { Attribute, ChoiceAttribute } from '../schema/attributes';
import type { Pack } from '../schema/index';

type Part = Exclude<keyof typeof texts.parts, 'types'>;

/** What a pack's references may lead to, and the issues of those that lead nowhere, 200 at most. */
export class Lookup {
  readonly issues: PackIssue[] = [];
  readonly #own: string;
  readonly #extends: boolean;
  readonly #entries: Record<Part, { has(id: string): boolean }>;
  readonly #attributes: Map<string, Attribute>;
  readonly #sources: Set<string>;
  readonly #values = new Map<ChoiceAttribute, ReadonlySet<string>>();

  constructor(pack: Pack) {
    const ids = (list: readonly { id: string }[] | undefined): Set<string> => new Set(list?.map((entry) => entry.id));
    this.#own = pack.about.id;
    this.#extends = pack.about.extends !== undefined;
    this.#attributes = new Map(pack.attributes?.map((attribute) => [attribute.id, attribute]));
    this.#sources = new Set(Object.keys(pack.about.sources ?? {}));
    this.#entries = {
      // A reference to a model may mean a type: types are models without a brand.
      models: ids([...(pack.models ?? []), ...(pack.types ?? [])]),
      families: ids(pack.families),
      attributes: this.#attributes,
      schemes: ids(pack.serials?.schemes),
      grades: ids(pack.prices?.grades),
    };
  }

  add(path: string, what: string, expected: string): void {
    if (this.issues.length < MOST_ISSUES) this.issues.push({ path, what, expected });
  }

  /** A reference leads to an entry of this pack; one to another pack, named or extended, may lead anywhere. */
  ref(path: string, ref: string | undefined, part: Part): void {
    if (ref === undefined) return;
    const id = this.#local(ref);
    if (id === null || this.#entries[part].has(id) || (this.#extends && !ref.includes('/'))) return;
    this.add(path, texts.what.unknown(ref), texts.expected.knownEntry(texts.parts[part]));
  }

  /** The source that the entry at this path names. */
  source(path: string, id: string | undefined): void {
    this.sourceAt(`${path}.source`, id);
  }

  sourceAt(path: string, id: string | null | undefined): void {
    if (id && !this.#sources.has(id)) this.add(path, texts.what.unknown(id), texts.expected.source);
  }

  /** The attribute, where it is this pack's own. */
  attribute(ref: string): Attribute | null {
    return this.#attributes.get(this.#local(ref) ?? '') ?? null;
  }

  /** The ids of a choice's values, gathered once: a hostile pack asks as often as it has facts. */
  valuesOf(attribute: ChoiceAttribute): ReadonlySet<string> {
    const known = this.#values.get(attribute) ?? new Set(attribute.values.map((value) => value.id));
    this.#values.set(attribute, known);
    return known;
  }

  #local(ref: string): string | null {
    if (!ref.includes('/')) return ref;
    return ref.startsWith(`${this.#own}/`) ? ref.slice(this.#own.length + 1) : null;
  }
}
