import { existsSync, readFileSync } from 'node:fs';
import { audit } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Knowledge } from '../../src/pack/knowledge';
import { AS_OF, knowledgeFor, type SetName } from './labelled';

export const LANGUAGES = ['en', 'de', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

interface OnSale {
  name: string;
  short: string;
  serial: string;
  year: string;
  /** Held against the pack of this set. */
  set: SetName;
  /** In French, where it is not of cast iron and of straight stitch. */
  metal?: string;
  stitch?: string;
}

const CRESSITER: OnSale = {
  name: 'Grindlewade Cressiter',
  short: 'Cressiter',
  serial: 'KD372118',
  year: '1955',
  set: 'tuned/grindlewade-circle',
};

const Q42: OnSale = {
  name: 'Ulversholt Q 42',
  short: 'Ulversholt Q 42',
  serial: '1456962 N',
  year: '1957',
  set: 'tuned/grindlewade-circle',
};
const LANTERN: OnSale = {
  name: 'Tessholm Lantern',
  short: 'Lantern',
  serial: 'A445120',
  year: '1928',
  set: 'tuned/tessholm-loft',
};

/** What is on sale, and what its sentences are held against. */
const ON_SALE = {
  cressiter: CRESSITER,
  'cressiter-2': CRESSITER,
  veltrammer: {
    name: 'Veltrammer 12',
    short: 'Veltrammer 12',
    serial: '35/10472',
    year: '1955',
    set: 'tuned/selvage-bench',
  },
  q42: Q42,
  'q42-2': Q42,
  lantern: LANTERN,
  'lantern-2': LANTERN,
  castrimond: {
    name: 'Skarnmoor Castrimond',
    short: 'Castrimond',
    serial: 'SC36220',
    year: '1950',
    set: 'tuned/selvage-bench',
  },
  coquelicot: {
    name: 'Belcantour Coquelicot',
    short: 'Coquelicot',
    serial: '50818BT',
    year: '1963',
    set: 'tuned/thimble-row',
    metal: 'alu',
    stitch: 'zigzag',
  },
} satisfies Record<string, OnSale>;

export type Machine = keyof typeof ON_SALE;
export const MACHINES = Object.keys(ON_SALE) as Machine[];

/** The adverts in which each sentence is tried: amid the words, behind them, before them. `@` is the sentence. */
const ADVERTS: Record<Language, readonly (readonly [title: string, description: string])[]> = {
  en: [
    ['{name}', 'Cast iron, number {serial}. @ Collection only.'],
    ['{short} sewing machine', '{name}, cast iron, straight stitch, {serial} ({year}). @'],
    ['Old {short} for sale', '@ The serial is {serial} and it sews fine.'],
  ],
  de: [
    ['{name}', 'Gusseisen, Nummer {serial}. @ Nur Abholung.'],
    ['{short} Nähmaschine', '{name}, Gusseisen, Geradstich, {serial} ({year}). @'],
    ['Alte {short} zu verkaufen', '@ Die Nummer ist {serial}, sie näht gut.'],
  ],
  fr: [
    ['{name}', '{metal}, numéro {serial}. @ À venir chercher.'],
    ['Machine à coudre {short}', '{name}, en {metal}, {stitch}, {serial} ({year}). @'],
    ['Vieille {short} à vendre', '@ Le numéro est {serial}, elle coud bien.'],
  ],
};
/** Nothing else is said of the machine that could speak against it. */
const BARE: Record<Language, readonly [title: string, description: string]> = {
  en: ['{name}', 'Number {serial}. @ Collection only.'],
  de: ['{name}', 'Nummer {serial}. @ Nur Abholung.'],
  fr: ['{name}', 'Numéro {serial}. @ À venir chercher.'],
};

const fileOf = (language: Language, of: 'innocent' | 'untrue', machine: Machine): URL =>
  new URL(`../../fixtures/drafts/sentences/${language}-${of}-${machine}.txt`, import.meta.url);

/** The languages in which sentences for a machine are written. */
export function languagesFor(machine: Machine): Language[] {
  return LANGUAGES.filter((language) => existsSync(fileOf(language, 'innocent', machine)));
}

export function sentences(language: Language, of: 'innocent' | 'untrue', machine: Machine): string[] {
  return readFileSync(fileOf(language, of, machine), 'utf8')
    .split('\n')
    .filter(Boolean);
}

/** Innocent sentences of which something was said not to hold, in any of the adverts, or each in one of them in turn. */
export function accused(language: Language, machine: Machine, inEach = true): string[] {
  const adverts = ADVERTS[language];
  const isWrong = wrongIn(machine, language);
  return sentences(language, 'innocent', machine).filter((sentence, at) => {
    const tried = inEach ? adverts : [adverts[at % adverts.length]!];
    return tried.some((advert) => isWrong(advert, sentence));
  });
}

/** Untrue sentences that were found out. */
export function foundOut(language: Language, machine: Machine): string[] {
  const isWrong = wrongIn(machine, language);
  return sentences(language, 'untrue', machine).filter((sentence) => isWrong(BARE[language], sentence));
}

const known = new Map<SetName, Knowledge>();

function wrongIn(machine: Machine, language: Language) {
  const { set, ...own }: OnSale = ON_SALE[machine];
  const words = { metal: 'fonte', stitch: 'point droit', ...own };
  const knowledge = known.get(set) ?? knowledgeFor(set);
  known.set(set, knowledge);
  const filled = (frame: string): string =>
    frame.replace(/\{(\w+)\}/g, (_, name: string) => words[name as keyof typeof words]);
  return ([title, text]: readonly [string, string], sentence: string): boolean => {
    const ended = /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
    const draft = {
      title: filled(title),
      description: filled(text).replace('@', () => ended),
      priceText: '£100',
      language,
    };
    const { findings } = audit(readDraft(draft), knowledge, { asOf: AS_OF });
    return findings.some(({ standing }) => standing === 'disproved');
  };
}
