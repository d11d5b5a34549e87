const VOWEL_CONSONANT = /[^aeiou][aeiou][bdgmnprt]$/;

/** The forms of a regular English verb: "swap" -> swap, swaps, swapped, swapping. */
export function englishForms(verb: string): string[] {
  const doubled = VOWEL_CONSONANT.test(verb) && verb.length <= 5 ? verb + verb.at(-1) : verb;
  const stem = verb.endsWith('e') ? verb.slice(0, -1) : doubled;
  const past = /[^aeiou]y$/.test(verb) ? `${verb.slice(0, -1)}ied` : `${stem}ed`;
  const third = /[^aeiou]y$/.test(verb)
    ? `${verb.slice(0, -1)}ies`
    : /(?:s|x|ch|sh)$/.test(verb)
      ? `${verb}es`
      : `${verb}s`;
  return [verb, third, past, `${stem}ing`];
}
