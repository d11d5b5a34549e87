import { JoinedPhrases, PackedPhrases } from '../../text/packed-phrases';
import type { PhraseFinder } from '../../text/phrases';
import type {
  AttributeKnown,
  BandKnown,
  FamilyKnown,
  Knowledge,
  ModelKnown,
  NameKnown,
  PackPrice,
  PhraseKnown,
} from '../knowledge';
import type { PackParts } from '../parts';
import { SerialIndex } from '../serial-index';
import { EntriesByRef } from './entries-by-ref';
import { FactReader } from './facts';
import { LazyFamily, LazyModel } from './lazy-model';
import { type NameReader, nameReader } from './names';
import { phraseReader } from './phrases';
import { Scope } from './scope';

/**
 * Packs made ready to be asked together, each of them made ready by itself before. Nothing of them is walked through
 * here: what an audit asks for is read when it asks.
 * @param seals pack id -> fingerprint of the key that sealed it, for packs that came sealed.
 */
export function knowledgeOf(packs: readonly PackParts[], seals: ReadonlyMap<string, string>): Knowledge {
  return new KnownTogether(packs, seals);
}

class KnownTogether implements Knowledge {
  readonly packs: readonly Scope[];
  readonly models: ReadonlyMap<string, ModelKnown>;
  readonly families: ReadonlyMap<string, FamilyKnown>;
  readonly #parts: readonly PackParts[];
  #nameReaders: readonly NameReader[] | null = null;
  #phrases: PhraseFinder<PhraseKnown> | null = null;
  #names: PhraseFinder<NameKnown> | null = null;
  #serials: SerialIndex | null = null;
  #nameList: readonly NameKnown[] | null = null;
  #attributes: ReadonlyMap<string, AttributeKnown> | null = null;
  #bands: ReadonlyMap<string, readonly BandKnown[]> | null = null;
  #prices: ReadonlyMap<string, readonly PackPrice[]> | null = null;

  constructor(packs: readonly PackParts[], seals: ReadonlyMap<string, string>) {
    const scopes = packs.map((parts) => new Scope(parts, this, seals.get(parts.about.id) ?? null));
    const reader = new FactReader(this, (pack) => scopes.find(({ id }) => id === pack)!);
    this.packs = scopes;
    this.models = new EntriesByRef(
      scopes.map((scope) => {
        const make = (place: number) => new LazyModel(scope, place, reader);
        return { pack: scope.id, all: scope.parts.models, make };
      }),
    );
    this.families = new EntriesByRef(
      scopes.map((scope) => {
        const make = (place: number) => new LazyFamily(scope, place, reader);
        return { pack: scope.id, all: scope.parts.families, make };
      }),
    );
    this.#parts = packs;
  }

  get phrases(): PhraseFinder<PhraseKnown> {
    this.#phrases ??= new JoinedPhrases(
      this.#parts.map((parts) => new PackedPhrases(parts.phrases.tree, phraseReader(parts, this))),
    );
    return this.#phrases;
  }

  /** Each name is one object, whoever asks for it. */
  #nameReader(pack: number): NameReader {
    this.#nameReaders ??= this.#parts.map((parts) => nameReader(parts, this));
    return this.#nameReaders[pack]!;
  }

  get names(): PhraseFinder<NameKnown> {
    this.#names ??= new JoinedPhrases(
      this.#parts.map(({ names }, i) => new PackedPhrases(names.tree, this.#nameReader(i))),
    );
    return this.#names;
  }

  get serials(): SerialIndex {
    this.#serials ??= new SerialIndex(
      this.packs.flatMap((scope) => {
        const { id: pack, parts } = scope;
        const modelRef = (ref: string) => scope.ref(ref, this.models);
        return parts.runs ? [{ pack, table: parts.runs, modelRef, citation: (id) => scope.citation(id) }] : [];
      }),
    );
    return this.#serials;
  }

  get attributes(): ReadonlyMap<string, AttributeKnown> {
    this.#attributes ??= attributesOf(this.packs);
    return this.#attributes;
  }

  get nameList(): readonly NameKnown[] {
    this.#nameList ??= this.#parts.flatMap(({ names }, i) =>
      Array.from({ length: names.texts.length }, (_, name) => this.#nameReader(i)(name)),
    );
    return this.#nameList;
  }

  get bands(): ReadonlyMap<string, readonly BandKnown[]> {
    this.#bands ??= bandsOf(this.packs, this.models);
    return this.#bands;
  }

  get prices(): ReadonlyMap<string, readonly PackPrice[]> {
    this.#prices ??= pricesOf(this.packs, this.models);
    return this.#prices;
  }
}

function attributesOf(packs: readonly Scope[]): Map<string, AttributeKnown> {
  const attributes = new Map<string, AttributeKnown>();
  for (const { id: pack, parts } of packs)
    for (const def of parts.rest.attributes ?? []) {
      const ref = `${pack}/${def.id}`;
      attributes.set(ref, { ref, pack, id: def.id, def });
    }
  return attributes;
}

function bandsOf(packs: readonly Scope[], models: ReadonlyMap<string, ModelKnown>): Map<string, BandKnown[]> {
  const bands = new Map<string, BandKnown[]>();
  for (const scope of packs)
    scope.parts.rest.prices?.bands?.forEach((def, index) => {
      const entry = `band-${index + 1}`;
      push(bands, scope.ref(def.model, models), { pack: scope.id, entry, def, source: scope.citation(def.source) });
    });
  return bands;
}

function pricesOf(packs: readonly Scope[], models: ReadonlyMap<string, ModelKnown>): Map<string, PackPrice[]> {
  const prices = new Map<string, PackPrice[]>();
  for (const scope of packs)
    scope.parts.rest.prices?.observations?.forEach((def, index) => {
      const [entry, model] = [`observation-${index + 1}`, scope.ref(def.model, models)];
      push(prices, model, { pack: scope.id, entry, model, def, source: scope.citation(def.source) });
    });
  return prices;
}

function push<T>(lists: Map<string, T[]>, key: string, value: T): void {
  const there = lists.get(key);
  if (there) there.push(value);
  else lists.set(key, [value]);
}
