import type { PackedTree } from '../../text/packed-phrases';
import type { Entries, PackParts } from '../parts';
import type { RunTable } from '../serials/run-table';
import { LAYOUT } from './layout';
import { SectionWriter } from './sections';

/** A pack that has been made ready, as bytes that `partsIn` reads without checking or building anything again. */
export function bytesOf(parts: PackParts): Uint8Array<ArrayBuffer> {
  const { about, rest, families, models, brands, phrases, names, runs } = parts;
  const to = new SectionWriter();
  to.json('about', about);
  to.json('rest', rest);
  entries(to, 'families', families);
  entries(to, 'models', models);
  tree(to, 'phrases', phrases.tree);
  for (const name of ['languages', 'meanings', 'kinds', 'entries', 'within'] as const)
    to.column(`phrases.${name}`, phrases[name]);
  to.json('phrases.words', { languageNames: phrases.languageNames, places: phrases.places });
  tree(to, 'names', names.tree);
  for (const name of ['kinds', 'owners', 'stands'] as const) to.column(`names.${name}`, names[name]);
  to.texts('names.texts', names.texts);
  to.json('names.words', { makers: names.makers });
  if (runs) table(to, runs);
  to.json('counts', { brands });
  return to.finish(LAYOUT);
}

function entries(to: SectionWriter, name: string, { ids, at }: Entries<unknown>): void {
  to.json(`${name}.ids`, ids);
  to.texts(name, { length: ids.length, at: (place) => JSON.stringify(at(place)) });
}

function tree(to: SectionWriter, name: string, packed: PackedTree): void {
  for (const [column, numbers] of Object.entries(packed)) to.numbers(`${name}.tree.${column}`, numbers);
}

function table(to: SectionWriter, { schemes, from, words, ...columns }: RunTable): void {
  to.json('runs.schemes', schemes);
  to.numbers('runs.from', from);
  for (const [name, column] of Object.entries(columns)) to.column(`runs.${name}`, column);
  to.json('runs.words', words);
}
