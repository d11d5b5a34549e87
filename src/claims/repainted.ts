import { clauseAt, type TextPart, tokenAt } from './part-text';
import type { ValueClaim } from './reading';

/** Folded; English, German, French. Common practice, no source. */
const PAINTED =
  /^(?:(?:re)?(?:painted|sprayed|enamelled|enameled|lacquered|coated)|(?:um|neu|uber)?(?:lackiert|gespritzt|gestrichen)|(?:re)?peinte?|laquee?)$/;

/**
 * "In sky blue … I sprayed her sky blue": a colour that somebody put there says nothing of how the thing was made,
 * wherever else the advert calls it so. Such claims are told in passing.
 */
export function withoutRepaint(values: readonly ValueClaim[], parts: readonly TextPart[]): ValueClaim[] {
  const put = values.filter((claim) => isPainted(claim, parts));
  return values.map((claim) =>
    put.some(({ attribute, value }) => attribute === claim.attribute && value === claim.value)
      ? { ...claim, aside: true }
      : claim,
  );
}

function isPainted({ field, start }: ValueClaim, parts: readonly TextPart[]): boolean {
  const part = parts.find((one) => one.field === field);
  const at = part ? tokenAt(part, start) : 0;
  const clause = part && clauseAt(part, at);
  return clause ? part.tokens.slice(clause.first, at).some(({ folded }) => PAINTED.test(folded)) : false;
}
