import { readFileSync } from 'node:fs';
import { audit } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Knowledge } from '../../src/pack/knowledge';
import { AS_OF } from './labelled';

export const LANGUAGES = ['en', 'de', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

/** What is on sale: the sentences of the first are worked with, those of the second only measured. */
export const MACHINES = ['cressiter', 'q42'] as const;
export type Machine = (typeof MACHINES)[number];

/** An advert's words for the first machine, as they are for another. */
function wordsFor(machine: Machine, words: string): string {
  if (machine === 'cressiter') return words;
  const swapped = words.replace(/(?:Grindlewade )?Cressiter/g, 'Ulversholt Q 42');
  return swapped.replace(/KD ?372118/, '1456962 N').replace('1955', '1957');
}

/** The adverts in which each sentence is tried: amid the words, behind them, before them. `@` is the sentence. */
const ADVERTS: Record<Language, readonly (readonly [title: string, description: string])[]> = {
  en: [
    ['Grindlewade Cressiter', 'Cast iron, number KD372118. @ Collection only.'],
    ['Cressiter sewing machine', 'Grindlewade Cressiter, cast iron, straight stitch, KD 372118 (1955). @'],
    ['Old Cressiter for sale', '@ The serial is KD372118 and it sews fine.'],
  ],
  de: [
    ['Grindlewade Cressiter', 'Gusseisen, Nummer KD372118. @ Nur Abholung.'],
    ['Cressiter Nähmaschine', 'Grindlewade Cressiter, Gusseisen, Geradstich, KD 372118 (1955). @'],
    ['Alte Cressiter zu verkaufen', '@ Die Nummer ist KD372118, sie näht gut.'],
  ],
  fr: [
    ['Grindlewade Cressiter', 'Fonte, numéro KD372118. @ À venir chercher.'],
    ['Machine à coudre Cressiter', 'Grindlewade Cressiter, en fonte, point droit, KD 372118 (1955). @'],
    ['Vieille Cressiter à vendre', '@ Le numéro est KD372118, elle coud bien.'],
  ],
};
/** Nothing else is said of the machine that could speak against it. */
const BARE: Record<Language, readonly [title: string, description: string]> = {
  en: ['Grindlewade Cressiter', 'Number KD372118. @ Collection only.'],
  de: ['Grindlewade Cressiter', 'Nummer KD372118. @ Nur Abholung.'],
  fr: ['Grindlewade Cressiter', 'Numéro KD372118. @ À venir chercher.'],
};

export function sentences(language: Language, of: 'innocent' | 'untrue', machine: Machine = 'cressiter'): string[] {
  const name = `${language}-${of}${machine === 'cressiter' ? '' : `-${machine}`}`;
  const file = new URL(`../../fixtures/drafts/sentences/${name}.txt`, import.meta.url);
  return readFileSync(file, 'utf8').split('\n').filter(Boolean);
}

/** Innocent sentences of which something was said not to hold, in any of the adverts, or each in one of them in turn. */
export function accused(
  language: Language,
  knowledge: Knowledge,
  inEach = true,
  machine: Machine = 'cressiter',
): string[] {
  const adverts = ADVERTS[language];
  return sentences(language, 'innocent', machine).filter((sentence, at) => {
    const tried = inEach ? adverts : [adverts[at % adverts.length]!];
    return tried.some((advert) => hasWrong(advert, sentence, language, knowledge, machine));
  });
}

/** Untrue sentences that were found out. */
export function foundOut(language: Language, knowledge: Knowledge, machine: Machine = 'cressiter'): string[] {
  return sentences(language, 'untrue', machine).filter((sentence) =>
    hasWrong(BARE[language], sentence, language, knowledge, machine),
  );
}

function hasWrong(
  advert: readonly [string, string],
  sentence: string,
  language: Language,
  knowledge: Knowledge,
  machine: Machine,
): boolean {
  const [title, text] = advert.map((words) => wordsFor(machine, words)) as [string, string];
  const ended = /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
  const description = text.replace('@', () => ended);
  const { findings } = audit(readDraft({ title, description, priceText: '£100', language }), knowledge, {
    asOf: AS_OF,
  });
  return findings.some(({ standing }) => standing === 'disproved');
}
