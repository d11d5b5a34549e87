import type { NumberPlace } from '../audit/number-place';
import type { Audit, Finding, Likely } from '../audit/types';
import { enquiryTexts } from '../text/catalogue/enquiry';
import { likelyTexts as likely } from '../text/catalogue/likely';
import type { Answered } from './answer';
import type { EnquiryAnswer } from './enquiry';
import { originOf } from './pack-origin';
import type { SeenWords } from './seen-words';
import { surenessOf, sureWords } from './sureness';
import { modelLabel, type Words } from './words';

const texts = enquiryTexts.written;

/** Questions and cautions in a written answer: what a person reads to the end. */
const MOST = 5;

/**
 * The whole answer about a machine as plain text, to send to whoever asked: what it is, how sure that is, why, what
 * follows, what its number says, what to mind, what to ask next, and from where all this is.
 * @param number what the tables say of its number, or null where none was asked for by itself
 */
export function writtenAnswer(
  { audit, words, seen, kind, place }: Answered,
  number: EnquiryAnswer | null,
  asOf: string,
): string {
  const [first] = audit.likely;
  const parts = [
    first ? whatItIs(first, audit) : '',
    list(texts.seen, seen.map(seenLine)),
    first && isNamed(first) ? list(texts.for, first.for.map(textOf)) : '',
    first && isNamed(first) ? list(texts.against, first.against.map(textOf)) : '',
    first && isNamed(first) ? list(texts.follows, first.follows.map(followsLine)) : '',
    numberPart(number, place, words),
    list(texts.mind, [...audit.findings.filter(isCaution).map(textOf), ...(kind?.cautions ?? [])].slice(0, MOST)),
    list(texts.ask, [...new Set(audit.nextEvidence.map(({ ask }) => ask))].slice(0, MOST)),
    list(texts.from, packLines(audit, words)),
    texts.end(asOf),
  ];
  return `${parts.filter(Boolean).join('\n\n')}\n`;
}

function isNamed({ probability }: Likely): boolean {
  return surenessOf(probability) !== 'open';
}

function isCaution({ standing }: Finding): boolean {
  return standing === 'caution';
}

function textOf({ text }: { text: string }): string {
  return text;
}

function list(heading: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [heading, ...lines.map((line) => `- ${line}`)].join('\n');
}

function whatItIs(first: Likely, audit: Audit): string {
  const sure = surenessOf(first.probability);
  const known = audit.likely.filter(({ kind }) => kind !== 'none');
  if (sure === 'open')
    return [texts.what(likely.open), known.length > 0 && texts.between(known.slice(0, 3).map(({ label }) => label))]
      .filter(Boolean)
      .join(' ');
  const label = first.kind === 'none' ? likely.none : first.label;
  return [texts.what(label), likely.kinds[first.kind], first.kind === 'none' ? '' : sureWords(first)]
    .filter(Boolean)
    .join('\n');
}

export function seenLine({ name, value, text }: SeenWords): string {
  const { notTold, yes, no } = likely.settle;
  return texts.pair(name, value === null ? notTold : typeof value === 'boolean' ? (value ? yes : no) : (text ?? value));
}

function followsLine({ name, text, usually, source }: Likely['follows'][number]): string {
  const line = texts.pair(name, usually ? likely.usually(text) : text);
  return source === null ? line : texts.withSource(line, source);
}

/** What the tables say: of the number that was asked for, else of the one that somebody's words hold. */
function numberPart(number: EnquiryAnswer | null, place: NumberPlace | null, own: Words): string {
  const { normal, runs } = number?.enquiry ?? {
    normal: place?.normal ?? '',
    runs: (place?.lines ?? []).flatMap((line) => line.runs.filter(({ holds }) => holds)),
  };
  const words = number?.words ?? own;
  if (normal === '') return '';
  if (runs.length === 0) return texts.numberUnknown(normal);
  return list(
    texts.number(normal),
    runs.map(({ first, last, models, year, place: where, source }) => {
      const labels = models.map((ref) => modelLabel(words, ref)).join(', ');
      const line = texts.run(first, last, labels, year, where);
      return source === null ? line : texts.withSource(line, source);
    }),
  );
}

/** The packs that spoke, in words. */
export function packLines({ packs }: Audit, words: Words): string[] {
  return packs.map(({ id, edition, sealedBy }) => {
    const note = words.packs.get(id);
    return texts.pack(note?.title ?? id, edition, originOf({ shipped: note?.shipped ?? false, sealedBy }));
  });
}
