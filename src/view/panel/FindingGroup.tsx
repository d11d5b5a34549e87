import type { Finding, Standing } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { FindingTag } from './FindingTag';
import { StandingCaution } from './StandingCaution';
import { WordsToMind } from './WordsToMind';

interface Props {
  standing: Standing;
  findings: readonly Finding[];
  /** Language tag of the advert, for its quotes. */
  language: string | null;
  words: Words;
  asks: boolean;
}

/**
 * All findings of one standing; nothing where there are none. What agrees is folded away under a line that says what it
 * is; notes on safety and dealing come last, each under its own first words.
 */
export function FindingGroup({ standing, findings, ...rest }: Props) {
  if (findings.length === 0) return null;
  const { heading, explain } = texts.groups[standing];
  if (standing === 'agrees')
    return (
      <section class="group fold" data-group={standing}>
        <Disclosure label={heading} inside={<span dir="auto">{agreeing(findings)}</span>} part="agreeing" row="h2">
          <Tags findings={findings} {...rest} />
        </Disclosure>
      </section>
    );
  return (
    <section class="group" data-group={standing} aria-labelledby={`group-${standing}`}>
      <h2 id={`group-${standing}`}>{heading}</h2>
      {explain !== '' && <p class="soft">{explain}</p>}
      <Tags findings={findings} {...rest} />
    </section>
  );
}

/** What is set side by side stands in tags; what is only to be minded in lines. */
function Tags({ findings, ...rest }: Omit<Props, 'standing'>) {
  const tags = findings.filter((finding) => !isCaution(finding) && !isToldWordForWord(finding));
  const lines = findings.filter((finding) => !tags.includes(finding));
  return (
    <>
      {tags.length > 0 && (
        <ul class="tags">
          {tags.map((finding, i) => (
            <FindingTag key={finding.id} finding={finding} above={tags[i - 1] ?? null} {...rest} />
          ))}
        </ul>
      )}
      {lines.length > 0 && (
        <ul class="minds">
          {lines.map((finding) =>
            isCaution(finding) ? (
              <StandingCaution key={finding.id} finding={finding} {...rest} />
            ) : (
              <WordsToMind key={finding.id} finding={finding} {...rest} />
            ),
          )}
        </ul>
      )}
    </>
  );
}

function isCaution({ check }: Finding): boolean {
  return check === 'caution';
}

/** A pack's own words on words of the advert: nothing that it could be held against. */
function isToldWordForWord({ standing, said, text, known }: Finding): boolean {
  return standing === 'caution' && said.length > 0 && known.some((each) => each.text === text);
}

/** Quotes that are named in the line under which they are folded. */
const MOST_NAMED = 4;

/** What agrees in a line: the words of the advert that do. */
function agreeing(findings: readonly Finding[]): string {
  const quotes = new Map(
    findings.flatMap(({ said }) => said.slice(-1).map(({ quote }) => [quote.toLowerCase(), quote])),
  );
  const named = [...quotes.values()].slice(0, MOST_NAMED).map((quote) => shown(quote, 40));
  return texts.agreeing(named, quotes.size - named.length);
}
