/**
 * What a word does in a clause, as far as a closed list tells. "plain" is every word of no list: most nouns and
 * adjectives.
 */
export type WordClass =
  | 'plain'
  | 'article'
  /** "any", "most", "later": what follows is not this thing but one of its kind. */
  | 'generic'
  | 'possessive'
  | 'joins'
  /** "because", "which": a clause begins. */
  | 'begins'
  /** "if", "before", "where": what follows is not said to be so. */
  | 'supposes'
  | 'prep'
  | 'to'
  | 'it'
  | 'they'
  | 'person'
  | 'there'
  | 'be'
  | 'have'
  /** Verbs by which an advert says what the thing has, is made of or does. */
  | 'asserts'
  /** "takes", "uses": what they take must be what it is. */
  | 'takes'
  /** "used", "tested": whoever did it, the thing has what was used. */
  | 'uses'
  | 'can'
  | 'would'
  | 'not'
  /** "almost", "semi": what follows is not quite so. */
  | 'nearly'
  | 'lacks'
  /** Buying, wishing, swapping, comparing, remembering: what they govern is not said of the thing. */
  | 'deals'
  | 'sells'
  | 'speech'
  | 'thinks'
  | 'adverb'
  /** Nouns for the thing, or for what its features are of. */
  | 'own'
  | 'feature'
  | 'part';

/** One word of a clause; "it's" is two of them at one token. */
export interface Word {
  token: number;
  folded: string;
  is: WordClass;
}

export interface Lexicon {
  classOf(folded: string): WordClass;
  /** "it's" -> "it", "'s". */
  split(folded: string): readonly string[];
}
