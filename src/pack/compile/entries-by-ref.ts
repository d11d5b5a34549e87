import type { Ids } from '../parts';

/** The entries of one pack, made when they are asked for. */
export interface EntriesOfPack<T> {
  pack: string;
  /** Read when it is first needed. */
  all: { ids: Ids };
  make(place: number): T;
}

/**
 * The entries of all packs by their reference, packId/entryId, in the order of packs and places. Each is made when it
 * is first asked for and is the same object from then on: of 5,000 models an audit asks for a handful.
 */
export class EntriesByRef<T> implements ReadonlyMap<string, T> {
  readonly #packs: readonly EntriesOfPack<T>[];
  readonly #made = new Map<string, T>();
  readonly #places = new Map<string, Map<string, number>>();

  constructor(packs: readonly EntriesOfPack<T>[]) {
    this.#packs = packs;
  }

  get size(): number {
    return this.#packs.reduce((sum, { all }) => sum + all.ids.length, 0);
  }

  has(ref: string): boolean {
    return this.#find(ref) !== null;
  }

  get(ref: string): T | undefined {
    const there = this.#made.get(ref);
    if (there !== undefined) return there;
    const found = this.#find(ref);
    if (!found) return undefined;
    const made = found.entries.make(found.place);
    this.#made.set(ref, made);
    return made;
  }

  *keys(): MapIterator<string> {
    for (const { pack, all } of this.#packs) for (const id of all.ids.all()) yield `${pack}/${id}`;
  }

  *values(): MapIterator<T> {
    for (const ref of this.keys()) yield this.get(ref)!;
  }

  *entries(): MapIterator<[string, T]> {
    for (const ref of this.keys()) yield [ref, this.get(ref)!];
  }

  [Symbol.iterator](): MapIterator<[string, T]> {
    return this.entries();
  }

  forEach(tell: (value: T, ref: string, map: ReadonlyMap<string, T>) => void): void {
    for (const [ref, value] of this) tell(value, ref, this);
  }

  #find(ref: string): { entries: EntriesOfPack<T>; place: number } | null {
    const cut = ref.indexOf('/');
    const id = ref.slice(cut + 1);
    const entries = this.#packs.find(({ pack }) => pack.length === cut && ref.startsWith(pack));
    const place = entries && this.#placesIn(entries).get(id);
    return entries && place !== undefined ? { entries, place } : null;
  }

  #placesIn({ pack, all }: EntriesOfPack<T>): Map<string, number> {
    const there = this.#places.get(pack);
    if (there) return there;
    const made = new Map(all.ids.all().map((id, place) => [id, place]));
    this.#places.set(pack, made);
    return made;
  }
}
