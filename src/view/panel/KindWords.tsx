import type { KindNote } from '../../session/kind-note';
import type { Words } from '../../session/words';
import { likelyTexts } from '../../text/catalogue/likely';
import { shown } from '../shown';
import { Explained } from './Explained';

const texts = likelyTexts.kind;

export function hasKindWords({ explain, good, poor, fits, mind, cautions }: KindNote): boolean {
  return explain !== null || [good, poor, fits, mind, cautions].some(({ length }) => length > 0);
}

/** What the packs say of a kind: what it is good for, what fits it, and which words of adverts to mind. */
export function KindWords({ kind, words }: { kind: KindNote; words: Words }) {
  const { explain, good, poor, fits, mind, cautions } = kind;
  return (
    <>
      {explain !== null && (
        <p>
          <Explained text={explain} words={words} />
        </p>
      )}
      <Lines heading={texts.good} lines={good} part="good" words={words} />
      <Lines heading={texts.poor} lines={poor} part="poor" words={words} />
      <Lines heading={texts.fits} lines={fits} part="fits" words={words} />
      <Lines heading={texts.cautions} lines={cautions} part="kind-cautions" words={words} />
      {mind.length > 0 && (
        <>
          <h3 class="likely-head">{texts.mind}</h3>
          <dl class="minded" data-part="mind">
            {mind.map(({ words: quote, text }) => (
              <div key={quote}>
                <dt>
                  <q dir="auto">{shown(quote, 80)}</q>
                </dt>
                <dd>
                  <Explained text={text} words={words} />
                </dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </>
  );
}

interface LinesProps {
  heading: string;
  lines: readonly string[];
  part: string;
  words: Words;
}

function Lines({ heading, lines, part, words }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3 class="likely-head">{heading}</h3>
      <ul class="grounds" data-part={part}>
        {lines.map((line) => (
          <li key={line}>
            <Explained text={line} words={words} />
          </li>
        ))}
      </ul>
    </>
  );
}
