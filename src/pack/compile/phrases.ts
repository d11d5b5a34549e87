import { packPhrases } from '../../text/packed-phrases';
import type { Knowledge, Meaning, PhraseKnown } from '../knowledge';
import type { PackParts, PhraseTable } from '../parts';
import type { Pack } from '../schema/index';
import type { LocalText, Phrase } from '../schema/parts';
import { Column } from '../serials/column';
import { Dictionary } from '../serials/dictionary';

/** Kept as numbers: only ever append. */
const KINDS: readonly Meaning['kind'][] = [
  ...(['thing', 'part', 'not-thing', 'value', 'measured', 'wording', 'unless', 'caution', 'grade', 'place'] as const),
  ...(['fit', 'factor'] as const),
];

/** Every phrase of a pack, with the place in the pack of what it stands for. */
export function phrasesOf(pack: Pack): PhraseTable {
  const home = pack.about.language;
  const languageNames = new Dictionary<string>((name) => name);
  const phrases: [string, number][] = [];
  const [languages, meanings]: [number[], number[]] = [[], []];
  const [kinds, entries, within]: [number[], number[], number[]] = [[], [], []];
  const add = (list: readonly Phrase[] | undefined, kind: Meaning['kind'], entry = 0, place = 0): void => {
    if (!list?.length) return;
    const meaning = kinds.push(KINDS.indexOf(kind)) - 1;
    entries.push(entry);
    within.push(place);
    for (const phrase of list) {
      const text = typeof phrase === 'string' ? phrase : phrase.text;
      const language = (typeof phrase === 'string' ? home : (phrase.lang ?? home)).split('-')[0] ?? home;
      phrases.push([text, phrases.length]);
      languages.push(languageNames.place(language));
      meanings.push(meaning);
    }
  };
  const { covers } = pack.about;
  add(covers.words, 'thing');
  add(covers.parts, 'part');
  add(covers.not, 'not-thing');
  pack.attributes?.forEach((def, i) => {
    if (def.kind === 'choice')
      def.values.forEach(({ words = [] }, at) => {
        const said = inOtherWords(words, home, (text) => predicatesOf(text, def));
        add(inOtherWords(said, home, coloursOf), 'value', i, at);
      });
    if (def.kind === 'yes-no') {
      add(inOtherWords(def.yes ?? [], home, presenceOf), 'value', i, 1);
      add(def.no, 'value', i, 0);
    }
    if (def.kind === 'measure') add(def.words, 'measured', i);
  });
  pack.wording?.forEach((entry, i) => {
    add(entry.words, 'wording', i);
    add(entry.unless, 'unless', i);
  });
  pack.cautions?.forEach((entry, i) => void add(entry.words, 'caution', i));
  pack.prices?.grades?.forEach((entry, i) => void add(entry.words, 'grade', i));
  pack.prices?.factors?.forEach((entry, i) => void add(entry.words, 'factor', i));
  const places = placesOf(pack);
  places.forEach((text, i) => void add([{ text, lang: 'und' }], 'place', i));
  [...(pack.models ?? []), ...(pack.types ?? [])].forEach((def, i) => {
    def.fits?.forEach((fit, at) => void add(fit.words, 'fit', i, at));
  });
  return {
    tree: packPhrases(phrases),
    ...{ languages: Column.of(languages), meanings: Column.of(meanings), languageNames: languageNames.values },
    ...{ kinds: Column.of(kinds), entries: Column.of(entries), within: Column.of(within), places },
  };
}

/** A pack's English phrases, with what says the same in other words. */
function inOtherWords(words: readonly Phrase[], home: string, others: (text: string) => readonly string[]): Phrase[] {
  const said = words.flatMap((phrase): Phrase[] => {
    const { text, lang = home } = typeof phrase === 'string' ? { text: phrase } : phrase;
    return lang.startsWith('en') ? others(text).map((other) => ({ text: other, lang })) : [];
  });
  return [...words, ...said];
}

const LEAST_NOUN = 4;
const MOST_WORDS = 3;

/** "Steel gears": "the gears are all steel" says the same, where the attribute is called by the noun. */
function predicatesOf(text: string, { id, label }: { id: string; label: LocalText }): string[] {
  const called = `${id} ${typeof label === 'string' ? label : (label.en ?? '')}`.toLowerCase();
  const all = text.split(' ');
  const [kind, noun] = [all.slice(0, -1).join(' '), all.at(-1)!];
  if (all.length < 2 || all.length > MOST_WORDS || noun.length < LEAST_NOUN) return [];
  if (!called.includes(noun.toLowerCase().replace(/s$/, '')) || /^(?:an?|no|the|with|has)\b/i.test(kind)) return [];
  const ways = [`${noun} are ${kind}`, `${noun} are all ${kind}`];
  for (const link of ['is', 'is all', 'all', 'made of', 'are made of', 'is made of', 'of', 'in'])
    ways.push(`${link.includes('is') ? noun.replace(/s$/, '') : noun} ${link} ${kind}`);
  return ways;
}

const COLOURED = /^(\S+(?: \S+)?)[- ](?:paint|paintwork|enamel|finish|coloured|colored|lacquer)$/i;

/** "Beige paint": "beige enamel" says the same; "painted beige" may be somebody's work. */
function coloursOf(text: string): string[] {
  const colour = COLOURED.exec(text)?.[1];
  return colour ? ['paint', 'enamel', 'finish', 'coloured', 'colored'].map((noun) => `${colour} ${noun}`) : [];
}

/** "Has a lamp": "there is a lamp" says the same. A lamp that works may have been put there. */
function presenceOf(text: string): string[] {
  const noun = /^(?:has|with) an? (\S+(?: \S+)?)$/i.exec(text)?.[1];
  return noun ? [`there is a ${noun}`] : [];
}

/** Every place made that the pack names, once. */
function placesOf(pack: Pack): string[] {
  const places = new Set<string>();
  for (const model of [...(pack.models ?? []), ...(pack.types ?? [])])
    for (const place of model.places ?? []) places.add(place);
  for (const place of pack.serials?.runs.place ?? []) if (place) places.add(place);
  return [...places];
}

/** What a pack's phrases stand for, by their numbers. A meaning is one object, however many phrases have it. */
export function phraseReader(parts: PackParts, knowledge: Knowledge): (phrase: number) => PhraseKnown {
  const { languages, meanings, languageNames } = parts.phrases;
  const known = new Map<number, Meaning>();
  return (phrase) => {
    const number = meanings.at(phrase);
    const meaning = known.get(number) ?? meaningAt(number, parts, knowledge);
    known.set(number, meaning);
    return { lang: languageNames[languages.at(phrase)]!, meaning };
  };
}

function meaningAt(number: number, { phrases, about, rest, models }: PackParts, knowledge: Knowledge): Meaning {
  const kind = KINDS[phrases.kinds.at(number)]!;
  const pack = about.id;
  const place = phrases.entries.at(number);
  const within = phrases.within.at(number);
  const attribute = () => knowledge.attributes.get(`${pack}/${rest.attributes![place]!.id}`)!;
  switch (kind) {
    case 'thing':
    case 'part':
    case 'not-thing':
      return { kind, pack };
    case 'value': {
      const def = rest.attributes![place]!;
      return {
        kind,
        pack,
        attribute: attribute(),
        value: def.kind === 'choice' ? def.values[within]!.id : within === 1,
      };
    }
    case 'measured':
      return { kind, pack, attribute: attribute() };
    case 'wording':
    case 'unless':
      return { kind, pack, entry: rest.wording![place]! };
    case 'caution':
      return { kind, pack, entry: rest.cautions![place]! };
    case 'grade':
      return { kind, pack, entry: rest.prices!.grades![place]! };
    case 'factor':
      return { kind, pack, entry: rest.prices!.factors![place]! };
    case 'place':
      return { kind, pack, place: phrases.places[place]! };
    case 'fit': {
      const model = knowledge.models.get(`${pack}/${models.ids.at(place)}`)!;
      return { kind, pack, model, part: models.at(place).fits![within]!.id };
    }
  }
}
