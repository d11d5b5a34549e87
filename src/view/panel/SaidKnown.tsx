import type { Finding, Known, Said } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';
import { Explained } from './Explained';
import { packName } from './HowKnown';
import { Quote } from './Quote';

interface Props {
  finding: Finding;
  /** Language tag of the advert, for its quotes. */
  language: string | null;
  words: Words;
  /** The finding right above, or null. */
  above?: Finding | null;
}

/** The two halves of a finding, side by side; two statements of the advert where they speak against each other. */
export function SaidKnown({ finding, language, words, above = null }: Props) {
  const said = sameWordsOnce(finding.said);
  const known = onceEach(finding.known);
  // A question of what is missing: there is nothing to set side by side.
  if (said.length === 0 && known.length === 0) return null;
  const againstEachOther = known.length === 0 && said.length > 1;
  const hasSecondHalf = againstEachOther || known.length > 0;
  const saidWords = (each: SaidOnce) => <SaidWords key={each.quote} said={each} language={language} />;
  return (
    <div class="halves">
      {said.length > 0 && (
        <div class="half" data-part="said">
          <h4 class="half-name">{texts.said}</h4>
          {(againstEachOther ? said.slice(0, 1) : said).map(saidWords)}
        </div>
      )}
      {hasSecondHalf && (
        <div class="half" data-part={againstEachOther ? 'said' : 'known'}>
          {(againstEachOther || known.some(({ text }) => text !== finding.text)) && (
            <h4 class="half-name">{againstEachOther ? texts.saidAgain : texts.known}</h4>
          )}
          {againstEachOther ? said.slice(1).map(saidWords) : <KnownHalf {...{ known, words, finding, above }} />}
        </div>
      )}
    </div>
  );
}

interface KnownHalfProps {
  known: readonly Known[];
  words: Words;
  finding: Finding;
  above: Finding | null;
}

function KnownHalf({ known, words, finding, above }: KnownHalfProps) {
  // Where one pack alone speaks, its name stands behind "how do we know?"; several are told apart.
  const several = new Set(known.map(({ pack }) => pack)).size > 1;
  return known.map((each, i) => (
    <KnownWords
      key={`${each.pack}/${each.entry}/${each.text}`}
      known={each}
      words={words}
      sentence={finding.text}
      named={several}
      source={sourceOf(each, known[i + 1], above)}
    />
  ));
}

/** Which source is told beneath an entry: one that stands right above already, or right below again, is not. */
function sourceOf(known: Known, next: Known | undefined, above: Finding | null): SourceTold {
  if (next && next.source === known.source && next.pack === known.pack) return 'below';
  if (known.source !== null && above?.known.some(({ source }) => source === known.source)) return 'above';
  return 'here';
}

/** Two packs' entries are shown both; the same entry twice is not. */
function onceEach(known: readonly Known[]): Known[] {
  return [...new Map(known.map((each) => [JSON.stringify([each.pack, each.text, each.source]), each])).values()];
}

interface SaidOnce {
  quote: string;
  fields: Said['field'][];
}

/** The same words in several places are quoted once, with all their places; a capital letter makes no other words. */
function sameWordsOnce(said: readonly Said[]): SaidOnce[] {
  const once = new Map<string, SaidOnce>();
  for (const { quote, field } of said) {
    const key = quote.toLowerCase();
    const there = once.get(key);
    if (!there) once.set(key, { quote, fields: [field] });
    else if (!there.fields.includes(field)) there.fields.push(field);
  }
  return [...once.values()];
}

function SaidWords({ said: { quote, fields }, language }: { said: SaidOnce; language: string | null }) {
  return (
    <p class="words">
      <Quote text={quote} language={language} />{' '}
      <span class="origin">{texts.places(fields.map((field) => texts.fields[field]))}</span>
    </p>
  );
}

interface KnownProps {
  known: Known;
  words: Words;
  /** What stands above the halves: it is not said a second time. */
  sentence: string;
  /** Says also which pack it is. */
  named: boolean;
  source?: SourceTold;
}

/** Where the source of an entry is told: here, right below with another entry, or right above with another finding. */
type SourceTold = 'here' | 'below' | 'above';

/** An entry of a pack, and where it has that from. */
export function KnownWords({ known, words, sentence, named, source = 'here' }: KnownProps) {
  const pack = words.packs.get(known.pack);
  return (
    <div class="words">
      {known.text !== sentence && (
        <p lang={langOf(pack?.language)}>
          <Explained text={known.text} words={words} />
        </p>
      )}
      {named && <p class="origin">{packName(known.pack, words)}</p>}
      {source === 'above' && <p class="origin">{texts.sourceAgain}</p>}
      {source === 'here' && <SourceLine source={known.source} />}
    </div>
  );
}

export function SourceLine({ source }: { source: string | null }) {
  return (
    <p class="origin">
      {source === null ? (
        texts.noSource
      ) : (
        <>
          {texts.source} <cite dir="auto">{shown(source)}</cite>
        </>
      )}
    </p>
  );
}
