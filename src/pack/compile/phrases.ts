import type { Knowledge, Meaning } from '../knowledge';
import type { Phrase } from '../schema/parts';
import type { Scope } from './scope';

/** Every phrase of a pack, with what it stands for, into the one index that reads adverts. */
export function indexPhrases(scope: Scope, knowledge: Knowledge): void {
  const { pack, id } = scope;
  const home = pack.about.language;
  const add = (phrases: readonly Phrase[] | undefined, meaning: Meaning): void => {
    for (const phrase of phrases ?? []) {
      const text = typeof phrase === 'string' ? phrase : phrase.text;
      const lang = (typeof phrase === 'string' ? home : (phrase.lang ?? home)).split('-')[0] ?? home;
      knowledge.phrases.add(text, { lang, meaning });
    }
  };
  const { covers } = pack.about;
  add(covers.words, { kind: 'thing', pack: id });
  add(covers.parts, { kind: 'part', pack: id });
  add(covers.not, { kind: 'not-thing', pack: id });
  for (const def of pack.attributes ?? []) {
    const attribute = knowledge.attributes.get(`${id}/${def.id}`);
    if (!attribute) continue;
    if (def.kind === 'choice')
      for (const value of def.values) add(value.words, { kind: 'value', pack: id, attribute, value: value.id });
    if (def.kind === 'yes-no') {
      add(def.yes, { kind: 'value', pack: id, attribute, value: true });
      add(def.no, { kind: 'value', pack: id, attribute, value: false });
    }
    if (def.kind === 'measure') add(def.words, { kind: 'measured', pack: id, attribute });
  }
  for (const entry of pack.wording ?? []) {
    add(entry.words, { kind: 'wording', pack: id, entry });
    add(entry.unless, { kind: 'unless', pack: id, entry });
  }
  for (const entry of pack.cautions ?? []) add(entry.words, { kind: 'caution', pack: id, entry });
  for (const entry of pack.prices?.grades ?? []) add(entry.words, { kind: 'grade', pack: id, entry });
  for (const place of placesOf(scope)) add([{ text: place, lang: 'und' }], { kind: 'place', pack: id, place });
  for (const def of [...(pack.models ?? []), ...(pack.types ?? [])]) {
    const model = knowledge.models.get(`${id}/${def.id}`);
    if (model) for (const fit of def.fits ?? []) add(fit.words, { kind: 'fit', pack: id, model, part: fit.id });
  }
}

/** Every place made that the pack names, once. */
function placesOf({ pack }: Scope): Set<string> {
  const places = new Set<string>();
  for (const model of [...(pack.models ?? []), ...(pack.types ?? [])])
    for (const place of model.places ?? []) places.add(place);
  for (const place of pack.serials?.runs.place ?? []) if (place) places.add(place);
  return places;
}
