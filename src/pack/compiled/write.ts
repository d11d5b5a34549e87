import type { PackedTree } from '../../text/packed-phrases';
import type { PackParts } from '../parts';
import { Column } from '../serials/column';
import type { ModelSets, RunTable } from '../serials/run-table';
import { LAYOUT } from './layout';
import { SectionWriter } from './sections';
import { ValueWriter } from './values';

/** A pack that has been made ready, as bytes that `partsIn` reads without checking or building anything again. */
export function bytesOf(parts: PackParts): Uint8Array<ArrayBuffer> {
  const { about, rest, families, models, brands, phrases, names, runs } = parts;
  const to = new SectionWriter();
  const values = new ValueWriter();
  const write = (name: string, count: number, at: (place: number) => unknown): void => {
    const { bytes, lengths } = values.write(count, at);
    to.pieces(name, bytes, lengths);
  };
  to.json('about', about);
  to.json('rest', rest);
  for (const [name, { ids, at }] of Object.entries({ families, models })) {
    write(name, ids.length, at);
    to.json(`${name}.ids`, ids);
  }
  tree(to, 'phrases', phrases.tree);
  for (const name of ['languages', 'meanings', 'kinds', 'entries', 'within'] as const)
    to.column(`phrases.${name}`, phrases[name]);
  write('phrases.words', 1, () => ({ languageNames: phrases.languageNames, places: phrases.places }));
  tree(to, 'names', names.tree);
  for (const name of ['kinds', 'owners', 'stands'] as const) to.column(`names.${name}`, names[name]);
  const texts = Array.from({ length: names.texts.length }, (_, i) => values.texts.place(names.texts.at(i)));
  to.column('names.texts', Column.of(texts));
  write('names.words', 1, () => ({ makers: names.makers }));
  if (runs) {
    table(to, runs);
    const { models: sets, ...words } = runs.words;
    write('runs.words', 1, () => words);
    write('runs.models.sets', sets.length, setsByPlace(sets, models.ids));
  }
  to.texts('texts', values.texts.values);
  to.json('shapes', values.shapes.values);
  to.json('counts', { brands });
  return to.finish(LAYOUT);
}

/** A set as the place of its model, or a list of several; a model that isn't the pack's own as its reference. */
function setsByPlace({ at }: ModelSets, ids: readonly string[]): (place: number) => PlacedSet {
  const places = new Map(ids.map((id, place) => [id, place]));
  return (place) => {
    const set = at(place).map((ref) => places.get(ref) ?? ref);
    return set.length === 1 ? set[0]! : set;
  };
}

export type PlacedSet = Placed | Placed[];
type Placed = number | string;

function tree(to: SectionWriter, name: string, packed: PackedTree): void {
  for (const [column, numbers] of Object.entries(packed)) to.numbers(`${name}.tree.${column}`, numbers);
}

function table(to: SectionWriter, { schemes, from, words: _, ...columns }: RunTable): void {
  to.json('runs.schemes', schemes);
  to.numbers('runs.from', from);
  for (const [name, column] of Object.entries(columns)) to.column(`runs.${name}`, column);
}
