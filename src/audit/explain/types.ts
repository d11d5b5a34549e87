import type { Quote, Stance, Subject, Why } from '../../claims/types';
import type { Meaning } from '../../pack/knowledge';
import type { CheckId, Standing } from '../types';

/** What kind of words were found: the packs' kinds of phrases, names, and what is read without a pack. */
export type What = Meaning['kind'] | 'name' | 'measure' | 'year' | 'age' | 'count' | 'serial';

/** Why words came to nothing, or what they were good for besides findings. The catalogue has each in words. */
export type Reason =
  // found, and dropped before they claimed anything
  | 'inside-longer'
  | 'another-language'
  | 'pack-not-covering'
  | 'harmless'
  | 'not-a-name'
  | 'nothing-measured'
  | 'no-word-for-making'
  | 'number-of-another'
  // claimed, and held against nothing
  | 'of-another'
  | 'denied'
  | 'likened'
  | 'guessed'
  | 'quoted'
  | 'advert-kind'
  | 'no-model'
  | 'no-fact'
  | 'sometimes-only'
  | 'not-all-models'
  | 'every-model'
  | 'facts-allow'
  | 'with-more'
  | 'year-of-other'
  | 'undated'
  | 'number-unknown'
  | 'place-unknown'
  | 'not-deciding'
  | 'not-called-for'
  // used otherwise
  | 'claimed-model'
  | 'claimed-family'
  | 'named-only'
  | 'maker-named'
  | 'grades'
  | 'factors'
  | 'a-term'
  | 'shows-thing'
  | 'shows-part'
  | 'shows-other'
  | 'shows-measure'
  | 'shows-harmless';

/** Why a finding says less than "doesn't hold", where that is so. */
export type Softer = 'loose-word' | 'usually-only' | 'a-guess' | 'in-passing';
/** Why a finding is not shown. */
export type Unshown = 'same-said' | 'too-many' | 'said-better';

export interface CameFinding {
  id: string;
  check: CheckId;
  standing: Standing;
  softer: Softer | null;
  unshown: Unshown | null;
}

/** One phrase of the advert, how it was read, and what came of it. */
export interface Explained extends Quote {
  what: What;
  /** What it stands for, in words: "frame: cast iron". */
  means: string;
  pack: string | null;
  clause: Quote | null;
  /** null where the words claim nothing. */
  stance: Stance | null;
  subject: Subject | null;
  /** What decided stance and subject, in order; empty where the words just say it of this thing. */
  why: readonly Why[];
  /** The findings that rest on it. */
  findings: CameFinding[];
  /** Why there are none, or what else it was good for; null where findings tell enough. */
  reason: Reason | null;
  /** The words behind the reason, where there are some: the longer phrase. */
  by: string | null;
}

export interface Explanation {
  phrases: Explained[];
  /** Findings that no words of the advert made: what is missing, notes for every machine. */
  wordless: CameFinding[];
}
