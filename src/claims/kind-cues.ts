import { PhraseIndex, type PhraseMatch } from '../text/phrases';
import { beginningWithin, contains, LONGEST_PHRASE } from './hits';
import {
  ACCOMPANYING,
  AFTER,
  AS_DONOR,
  ASKING,
  COUNTED,
  FITTING,
  LOT,
  NO_MACHINE,
  NOT_WANTED,
  NUMBER_WORDS,
  PICTURE,
  SERVICE,
  SERVICE_FIRST,
  SERVICE_FIRST_PERSON,
  TOGETHER,
  WANTED,
  WANTED_FIRST_PERSON,
} from './kind-words';
import type { TextPart } from './part-text';

const WORDS = {
  wanted: WANTED,
  asks: WANTED_FIRST_PERSON,
  asking: ASKING,
  after: AFTER,
  'not-wanted': NOT_WANTED,
  lot: LOT,
  'no-machine': NO_MACHINE,
  number: NUMBER_WORDS,
  counted: COUNTED,
  together: TOGETHER,
  'as-donor': AS_DONOR,
  service: SERVICE,
  'service-first': SERVICE_FIRST,
  works: SERVICE_FIRST_PERSON,
  fitting: FITTING,
  accompanying: ACCOMPANYING,
  picture: PICTURE,
} as const;

export type Cue = keyof typeof WORDS;
export type CueMatch = PhraseMatch<Cue>;

const CUES = new PhraseIndex<Cue>();
for (const [cue, words] of Object.entries(WORDS)) for (const phrase of words.split('|')) CUES.add(phrase, cue as Cue);

const known = new WeakMap<TextPart, readonly CueMatch[]>();

/** General words for what kind of advert it is, in order. "Looking for a new home" is no wish: it silences what it holds. */
export function cuesIn(part: TextPart): readonly CueMatch[] {
  const there = known.get(part);
  if (there) return there;
  const all = CUES.search(part.tokens);
  const silencing = all.filter(({ value }) => value === 'not-wanted');
  const found = all.filter((one) => {
    const near = beginningWithin(silencing, one.firstToken - LONGEST_PHRASE, one.firstToken);
    return !near.some((other) => contains(other, one));
  });
  known.set(part, found);
  return found;
}
