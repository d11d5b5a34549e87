import type { Audit, Finding, Likely, NextEvidence } from '../audit/types';
import { headOf } from './head-of';
import type { KindNote } from './kind-note';
import type { Term } from './words';

/** Every text of an audit in which words of the trade are explained where they stand. */
export function textsShown(
  { findings, likely, nextEvidence }: Audit,
  kind: KindNote | null,
  terms: Iterable<Term>,
): string[] {
  const questions = [...terms].flatMap(({ question }) => question ?? []);
  return [
    ...findings.flatMap(findingTexts),
    ...likely.flatMap(likelyTexts),
    ...nextEvidence.flatMap(({ ask, where }: NextEvidence) => [ask, where]),
    ...questions,
    ...(kind ? kindTexts(kind) : []),
  ];
}

function findingTexts({ check, text, ask, known }: Finding): string[] {
  // Of a standing caution the head is a line to press, which can't hold another one.
  const sentence = check === 'caution' ? headOf(text).rest : text;
  return [sentence, ...(ask === null ? [] : [ask]), ...known.map((each) => each.text)];
}

function likelyTexts({ label, for: speaksFor, against, follows }: Likely): string[] {
  return [label, ...[...speaksFor, ...against, ...follows].map(({ text }) => text)];
}

function kindTexts({ explain, good, poor, fits, mind, cautions }: KindNote): string[] {
  return [
    ...(explain === null ? [] : [explain]),
    ...good,
    ...poor,
    ...fits,
    ...cautions,
    ...mind.map(({ text }) => text),
  ];
}
