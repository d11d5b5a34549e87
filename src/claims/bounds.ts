/** A measure that is only the least or the most of what it may be. */
export type Bound = 'least' | 'most';

/** Common practice, no source. Before the measure, in English, German and French; folded. */
const LEAST =
  /(?:^|[^\p{L}])(?:more than|over|well over|above|at least|in excess of|upwards of|not less than|no less than|uber|mehr als|mindestens|(?<!pas |guere )plus de|au moins|bien plus de) ?$/u;
const MOST =
  /(?:^|[^\p{L}])(?:less than|under|well under|below|at most|up to|no more than|not more than|max|maximum|weniger als|unter|hochstens|maximal|bis zu|moins de|(?:pas|guere) plus de|au plus|maximum|jusqu'a)[.:]? ?$/u;
const AFTER_LEAST = /^ ?(?:\+|or more|plus|oder mehr|et plus|ou plus)(?!\p{L})/u;
const AFTER_MOST = /^ ?(?:or less|or under|oder weniger|ou moins|max)(?!\p{L})/u;

/** "Just over 10 kg" is about as much. */
const JUST =
  /(?:^|[^\p{L}])(?:(?:just|a little|slightly|a bit|a touch|little|barely) (?:over|under|above|below|more than|less than)|(?:knapp|etwas|kaum) (?:uber|unter|mehr als|weniger als)|(?:un peu|a peine) (?:plus|moins) de) ?$/u;

/**
 * "Over 10 kg" says nothing of 14 kg, "at most 10 kg" does.
 * @param before folded text that ends where the measure begins; `after` begins where it ends
 */
export function boundOf(before: string, after: string): Bound | 'about' | null {
  if (JUST.test(before)) return 'about';
  if (LEAST.test(before) || AFTER_LEAST.test(after)) return 'least';
  return MOST.test(before) || AFTER_MOST.test(after) ? 'most' : null;
}
