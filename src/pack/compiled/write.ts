import type { PackedTree } from '../../text/packed-phrases';
import type { PackParts } from '../parts';
import { Column } from '../serials/column';
import type { ModelSets, SchemeRuns } from '../serials/run-table';
import { LAYOUT } from './layout';
import { joined, lengthsOf, SectionWriter } from './section-writer';
import { ValueWriter } from './values';

/** A pack that has been made ready, as bytes that `partsIn` reads without checking or building anything again. */
export function bytesOf(parts: PackParts): Uint8Array<ArrayBuffer> {
  const { about, rest, families, models, brands, phrases, names, runs } = parts;
  const to = new SectionWriter();
  const values = new ValueWriter();
  const entries = { families, models };
  const written = Object.entries(entries).map(([name, { ids, at }]) => [name, values.write(ids.length, at)] as const);
  const sets = runs && values.write(runs.words.models.length, setsByPlace(runs.words.models, models.ids.all()));
  const nameTexts = Array.from({ length: names.texts.length }, (_, i) => values.texts.place(names.texts.at(i)));
  const tables = runs?.schemes.map((_, place) => schemeTable(runs.of(place))) ?? [];
  // What every question asks for comes first, what few ask for last: see keep/compiled.ts.
  to.json('about', about);
  to.json('counts', { brands, runs: runs?.count ?? 0 });
  if (runs) {
    to.ends('runs.tables', lengthsOf(tables));
    to.json('runs.schemes', runs.schemes);
    to.json('runs.words', { places: runs.words.places, sources: runs.words.sources });
  }
  to.json('phrases.words', { languageNames: phrases.languageNames, places: phrases.places });
  to.json('shapes', values.shapes.values);
  to.json('rest', rest);
  if (sets) to.pieces('runs.sets', sets.bytes, sets.lengths);
  for (const [name, { ids }] of Object.entries(entries)) to.list(`${name}.ids`, ids.all());
  for (const name of ['languages', 'meanings', 'kinds', 'entries', 'within'] as const)
    to.column(`phrases.${name}`, phrases[name]);
  tree(to, 'phrases', phrases.tree);
  to.oftenAsked();
  if (runs) to.numbers('runs.tables', joined(tables));
  tree(to, 'names', names.tree);
  for (const name of ['kinds', 'owners', 'stands'] as const) to.column(`names.${name}`, names[name]);
  to.column('names.texts', Column.of(nameTexts));
  to.json('names.words', { makers: names.makers });
  for (const [name, { bytes, lengths }] of written) to.pieces(name, bytes, lengths);
  to.texts('texts', values.texts.values);
  return to.finish(LAYOUT);
}

/** The runs of one scheme, with all that is known of them but words. */
function schemeTable({ index, odd, ...columns }: SchemeRuns): Uint8Array {
  const to = new SectionWriter();
  for (const [name, column] of Object.entries({ ...columns, ...index })) to.column(name, column);
  to.json('odd', odd);
  return to.stretch();
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
