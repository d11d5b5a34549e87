import type { PackIssue } from '../pack/issues';
import { localText } from '../pack/local-text';
import type { PackParts } from '../pack/parts';
import type { Outline } from '../pack/schema/about';
import type { Phrase } from '../pack/schema/parts';
import type { ShelvedPack } from './packs';

/** What is shown of a pack on the shelf, as plain data: the pack itself stays in the thread that has read it. */
export interface PackCard {
  id: string;
  edition: number;
  shipped: boolean;
  on: boolean;
  /** ISO 8601 instant, null for one that came with the program. */
  installedAt: string | null;
  /** Fingerprint of the key that sealed it, null for an unsealed one. */
  sealedBy: string | null;
  /** The last day of its edition, YYYY-MM-DD, or null. */
  expires: string | null;
  /** null where this version of the program can't read the kept text; `issues` says why. */
  about: PackAbout | null;
  issues: PackIssue[];
}

export interface PackAbout {
  title: string;
  /** Language tag of its texts. */
  language: string;
  licence: string;
  /** What kind of thing it speaks of. */
  thing: string;
  /** The word that stands for the thing where it is described by hand. */
  word: string;
  outline: Outline | null;
  /** Reference of the attribute that is asked about first, or null. */
  first: string | null;
  /** It can ask what a thing is by itself; a pack that extends another one asks together with that one. */
  asks: boolean;
  keepers: string[];
  note: string | null;
  /** Invented content, for demonstration. */
  demo: boolean;
  /** How many models and types it knows, and how many runs of serial numbers. */
  models: number;
  runs: number;
}

export function cardOf({ parts, ...shelved }: ShelvedPack): PackCard {
  return { ...shelved, about: parts && aboutOf(parts) };
}

/** A pack's title in its own language, or its id where it can't be read. */
export function titleOf({ id, about }: PackCard): string {
  return about?.title ?? id;
}

function aboutOf({ about, rest, models, runs }: PackParts): PackAbout {
  const { language, covers } = about;
  return {
    title: localText(about.title, language),
    language,
    licence: about.licence,
    thing: localText(covers.thing, 'en', language),
    word: wordOf(covers.words),
    outline: covers.outline ?? null,
    first:
      covers.first === undefined ? null : covers.first.includes('/') ? covers.first : `${about.id}/${covers.first}`,
    asks: about.extends === undefined && (rest.attributes?.length ?? 0) > 0,
    keepers: about.keepers?.map(({ name }) => name) ?? [],
    note: about.note === undefined ? null : localText(about.note, language),
    demo: about.demo === true,
    models: models.ids.length,
    runs: runs?.count ?? 0,
  };
}

/** The pack's first word for it, in English where it has one. */
function wordOf(words: readonly Phrase[]): string {
  const text = (phrase: Phrase) => (typeof phrase === 'string' ? phrase : phrase.text);
  const english = words.find((phrase) => typeof phrase === 'string' || phrase.lang?.startsWith('en'));
  const first = english ?? words[0];
  return first === undefined ? '' : text(first);
}
