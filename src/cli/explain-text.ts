import type { CameFinding, Explained, Explanation } from '../audit/explain/types';
import type { Why } from '../claims/types';
import { cli } from '../text/catalogue/cli';
import { explainTexts as texts } from '../text/catalogue/explain';
import { hanging } from './layout';
import { printable } from './printable';

const INDENT = 2;
const PLACE = 10;
const WITHIN = INDENT + PLACE;

/** An explanation for a terminal: field by field, each phrase with its place, how it was read, and what came of it. */
export function explainText({ phrases, wordless }: Explanation, width: number): string {
  const blocks = [[texts.heading, '='.repeat(texts.heading.length)]];
  if (phrases.length === 0) blocks.push([texts.nothing]);
  const fields = [...new Set(phrases.map(({ field }) => field))];
  for (const field of fields) {
    const heading = cli.audit.fields[field];
    const own = phrases.filter((phrase) => phrase.field === field);
    blocks.push([heading, '-'.repeat(heading.length), ...own.flatMap((phrase) => phraseLines(phrase, width))]);
  }
  if (wordless.length > 0)
    blocks.push([
      texts.wordless,
      '-'.repeat(texts.wordless.length),
      ...wordless.flatMap((finding) => hanging('', findingText(finding, finding.id), INDENT, width)),
    ]);
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function phraseLines(phrase: Explained, width: number): string[] {
  const place = `${' '.repeat(INDENT)}${texts.place(phrase.start, phrase.end)}`;
  const line = (text: string): string[] => hanging('', text, WITHIN, width);
  const clause = phrase.clause && oneLine(phrase.clause.quote);
  const quote = oneLine(phrase.quote);
  return [
    ...hanging(place, texts.phrase(quote, printable(phrase.means), phrase.pack), WITHIN, width),
    ...(clause && clause !== quote ? line(texts.inClause(clause)) : []),
    ...(phrase.stance && phrase.subject ? line(readText(phrase.stance, phrase.subject, phrase.why)) : []),
    ...phrase.findings.flatMap((finding) => line(texts.came(findingText(finding)))),
    ...(phrase.reason
      ? line(texts.came(texts.reasons[phrase.reason](phrase.by === null ? null : oneLine(phrase.by))))
      : []),
  ];
}

function readText(
  stance: NonNullable<Explained['stance']>,
  subject: NonNullable<Explained['subject']>,
  why: readonly Why[],
): string {
  const read = texts.read(texts.stances[stance], texts.subjects[subject]);
  return why.length === 0
    ? read
    : texts.by(
        read,
        why.map(({ rule, word }) => texts.rules[rule](oneLine(word ?? ''))),
      );
}

function findingText({ check, standing, softer, unshown }: CameFinding, name: string = check): string {
  const notes = [...(softer ? [texts.softer[softer]] : []), ...(unshown ? [texts.unshown[unshown]] : [])];
  return texts.finding(cli.audit.standings[standing], printable(name), notes);
}

function oneLine(text: string): string {
  return printable(text).replace(/\s+/g, ' ').trim();
}
