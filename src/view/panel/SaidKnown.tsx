import type { Finding, Known, Said } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';
import { Quote } from './Quote';

/** The two halves of a finding, side by side; two statements of the advert where they speak against each other. */
export function SaidKnown({ finding, language, words }: { finding: Finding; language: string | null; words: Words }) {
  const { said } = finding;
  const known = onceEach(finding.known);
  // A question of what is missing: there is nothing to set side by side.
  if (said.length === 0 && known.length === 0) return null;
  const againstEachOther = known.length === 0 && said.length > 1;
  // What holds for every such advert needs no words of this one.
  const holdsAnyway = finding.check === 'caution' && said.length === 0;
  return (
    <div class="halves">
      {!holdsAnyway && (
        <div class="half" data-part="said">
          <h4 class="half-name">{texts.said}</h4>
          {said.length === 0 && <p class="soft">{texts.saidNothing}</p>}
          {(againstEachOther ? said.slice(0, 1) : said).map((each) => (
            <SaidWords key={`${each.field}${each.start}`} said={each} language={language} />
          ))}
        </div>
      )}
      <div class="half" data-part={againstEachOther ? 'said' : 'known'}>
        <h4 class="half-name">{againstEachOther ? texts.saidAgain : texts.known}</h4>
        {againstEachOther
          ? said
              .slice(1)
              .map((each) => <SaidWords key={`${each.field}${each.start}`} said={each} language={language} />)
          : known.map((each) => (
              <KnownWords
                key={`${each.pack}/${each.entry}/${each.text}`}
                known={each}
                words={words}
                sentence={finding.text}
              />
            ))}
        {known.length === 0 && !againstEachOther && <p class="soft">{texts.knownNothing}</p>}
      </div>
    </div>
  );
}

/** Two packs' entries are shown both; the same entry twice is not. */
function onceEach(known: readonly Known[]): Known[] {
  return [...new Map(known.map((each) => [JSON.stringify([each.pack, each.text, each.source]), each])).values()];
}

function SaidWords({ said, language }: { said: Said; language: string | null }) {
  return (
    <p class="words">
      <Quote text={said.quote} language={language} /> <span class="origin">{texts.fields[said.field]}</span>
    </p>
  );
}

/** An entry of a pack, and where it has that from. The sentence above the halves is not said a second time. */
function KnownWords({ known, words, sentence }: { known: Known; words: Words; sentence: string }) {
  const pack = words.packs.get(known.pack);
  return (
    <div class="words">
      {known.text !== sentence && (
        <p lang={langOf(pack?.language)} dir="auto">
          {shown(known.text)}
        </p>
      )}
      <p class="origin">
        {pack ? texts.fromPack(shown(pack.title, 120), pack.edition) : texts.unknownPack(known.pack)}
        {pack?.demo && ` (${texts.packs.demoShort})`}
      </p>
      <p class="origin">
        {known.source === null ? (
          texts.noSource
        ) : (
          <>
            {texts.source} <cite dir="auto">{shown(known.source)}</cite>
          </>
        )}
      </p>
    </div>
  );
}
