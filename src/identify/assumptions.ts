/**
 * Every figure that identification takes for granted, with its reason. Where no source is named it is an assumption of
 * common practice; packs override what they can (numbers made, survival, rates of mistaking, trust).
 */

/**
 * What an old machine on the market is, before anything is known of it: of a maker that some pack knows; one of a
 * brand-free type by a maker that none knows; or nothing of the kind. The first two only where no pack states how many
 * of a type were made. There were far more makers than any club knows. Assumed.
 */
export const SHARES = { known: 0.35, type: 0.6, none: 0.05 };
/**
 * A model whose pack states no number is as common as its typical other ones; these where none states any. Of a type at
 * least so large a part is of makers that no pack knows. Assumed.
 */
export const UNSTATED = { number: 10_000, survival: 0.1, otherMakers: 0.05 };

/** A firm fact may be wrong, or the very machine rebuilt: so much is left for all other values together. Assumed. */
export const FIRM_SHARE = 0.99;
/** "Usually". Assumed: between "most" and "nearly all". */
export const USUAL_SHARE = 0.85;
/** Where values can stand beside each other (drive), so many were converted to one that isn't listed. Assumed. */
export const CONVERTED_SHARE = 0.12;

/** Trust where the pack states none: how often the word, or the eye, is right. Assumed. */
export const TRUST = { seller: 0.75, eye: 0.85 };
/** Whatever a pack says: nobody is right more often than this, or wrong. It keeps every chance above 0. Assumed. */
export const NEVER_SURER = 0.995;
/** Of a word used loosely, or a guess, only half of what it tells over chance is taken. Assumed. */
export const LOOSE_WORTH = 0.5;
/** A condition of which nothing is known (a range of numbers, without the number): even. Assumed. */
export const UNKNOWN_CONDITION = 0.5;

/**
 * What the seller takes the thing for. He may know no model's name; he may take it for what the pack says that it is
 * mistaken for, at its rate; for a sister of the same family or maker; or for anything. Assumed, but for the pack's rates.
 */
export const BELIEF = {
  vague: 0.35,
  /** The pack's rates together at most. */
  mistakenMost: 0.5,
  sister: 0.03,
  any: 0.004,
  /** Of a hundred that bear a known model's name so many are of an unknown maker; most of those are of its type. */
  passedOff: 0.06,
  alike: 0.8,
};
/** Who takes it for another model copies that one's whole list; else he describes what he has before him. Assumed. */
export const COPIES = 0.7;
/** Of sellers who take it for a model so many name that; of all so many name the maker, which stands on it. Assumed. */
export const NAMED = { model: 0.7, maker: 0.6 };
/** A name that is of something else in the advert, or was read wrongly; of a guess ("I think it is a ..."). Assumed. */
export const NAME_ASTRAY = 0.02;
export const NAME_GUESSED_ASTRAY = 0.2;
/** "It is not a ...", and it is one after all. Assumed. */
export const NAME_DENIED = 0.05;

/**
 * How often a number that is called the serial is something else (a casting, a patent, the motor, a school's mark); one
 * that nothing calls so; one that the advert itself doubts; one that somebody has looked at, whose plate may still be another
 * machine's. Assumed.
 */
export const NOT_THE_SERIAL = { called: 0.1, uncalled: 0.3, doubted: 0.5, seen: 0.02 };
/** A serial read or typed wrongly. Assumed: one in fifty. */
export const MISREAD = 0.02;
/** How many wrong readings a number has: each digit for another, one too many or too few. For 6 digits; order of size only. */
export const WRONG_READINGS = 40;
/** A number that its maker's tables leave out, and where they say that they are complete. Assumed. */
export const GAP = { open: 0.02, complete: 0.002 };
/** A number in a form that the tables of its maker don't know: tables have gaps. Assumed. */
export const OTHER_FORM = 0.05;
/** How makers write numbers: digits alone so often; else one to three letters; four to eleven digits. Assumed, alike. */
export const FORMS = { digitsOnly: 0.6, letterCounts: 3, digitCounts: 8 };

/** Sellers' years are estimates as often as not. Assumed. */
export const YEAR_TRUST = 0.7;
/** A year that tells nothing falls anywhere in the hundred years of the trade; a place on one of so many. Assumed. */
export const ANY_YEAR = 1 / 100;
export const PLACE_TRUST = 0.9;
export const ANY_PLACE = 1 / 20;

/** A reading on a scale: slack as a share of it, more with "about"; how often the case was on it though nobody says so. */
export const SCALE = { slack: 0.05, guessed: 0.2, cased: 0.2, casedSaid: 0.8, outside: 0.05 };

/** How often a word such as "lightweight" is used of what keeps its limit, and of what doesn't. Assumed. */
export const LIMIT_WORD = { kept: 0.3, passed: 0.1 };

/**
 * What it costs to learn something: to read the advert again, to ask for a photo and wait, to go and see. Assumed: a
 * photo is worth three readings, a visit four photos.
 */
export const EFFORT = { read: 1, photo: 3, visit: 12 };
/** Hypotheses that together have less than this are left out of the search for what to ask, never of the answer. */
export const PRUNED_MASS = 0.001;
/** Above this it counts as settled: then only what could still change the mind is worth asking. */
export const SETTLED = 0.97;
/** Less than this isn't worth a question, in bits. */
export const LEAST_BITS = 0.02;
/** How likely an answer must be to change the mind, to be worth asking when it is settled. Assumed. */
export const LEAST_CHANGE = 0.002;
