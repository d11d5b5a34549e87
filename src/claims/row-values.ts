import type { AttributeKnown } from '../pack/knowledge';
import { tokenise } from '../text/tokens';
import { labelWords } from './attribute-words';
import { beginningWithin, ofKind } from './hits';
import { type ClauseRange, clauseIndexAt, firstWordOf, quoteOf, type TextPart } from './part-text';
import type { ValueClaim } from './reading';
import type { PartReading } from './values';

/** A label and what answers it are short. In words. */
const MOST_WORDS = 3;

/**
 * "Shank: slant", "Loading – front": in a row the label says what the value is of, and the value needn't say it again.
 * @param attributes those of the packs that cover the advert
 */
export function rowValuesIn({ part, hits, stances }: PartReading, attributes: readonly AttributeKnown[]): ValueClaim[] {
  const answers = part.clauses.filter((answer, at) => {
    const label = part.clauses[at - 1];
    return label?.sentence === answer.sentence && isLabel(part, label, answer);
  });
  return answers.flatMap((answer) => {
    const label = part.clauses[clauseIndexAt(part, answer.first) - 1]!;
    const said = wordsOf(answer);
    const called = wordsOf(label);
    if (said.length === 0 || said.length > MOST_WORDS || called.length > MOST_WORDS) return [];
    const attribute = attributes.find((one) => called.every((word) => labelWords(one).has(word)));
    if (attribute?.def.kind !== 'choice') return [];
    const isRead = ofKind(beginningWithin(hits, label.first, answer.last), 'value').some(
      ({ value }) => value.attribute === attribute,
    );
    const value = attribute.def.values.find((one) =>
      (one.words ?? []).some((phrase) => isShort(typeof phrase === 'string' ? phrase : phrase.text, attribute, said)),
    );
    if (isRead || !value) return [];
    const first = answer.first + firstWordOf(answer.tokens);
    const stance = stances.at(first, answer.last);
    const { start } = part.tokens[first]!;
    const quote = part.text.slice(start, part.tokens[answer.last]!.end).replace(/[\s\p{P}]+$/u, '');
    return [
      { ...quoteOf(part, start, start + quote.length), ...stance, pack: attribute.pack, attribute, value: value.id },
    ];
  });
}

/** The label's clause ends, or the answer's opens, with a colon or a dash. */
function isLabel({ tokens }: TextPart, label: ClauseRange, answer: ClauseRange): boolean {
  return [tokens[label.last], tokens[label.last + 1], tokens[answer.first]].some((one) =>
    /^[:-]$/.test(one?.folded ?? ''),
  );
}

function wordsOf({ tokens }: ClauseRange): string[] {
  return tokens.filter(({ kind }) => kind !== 'mark').map(({ folded }) => folded);
}

/** "Straight only" of "straight stitch only": the phrase without the words of its attribute's label. */
function isShort(phrase: string, attribute: AttributeKnown, said: readonly string[]): boolean {
  const label = labelWords(attribute);
  const left = tokenise(phrase).flatMap(({ kind, folded }) => (kind === 'word' && !label.has(folded) ? [folded] : []));
  return left.length === said.length && left.every((word, i) => word === said[i]);
}
