import type { KindNote } from '../../session/kind-note';
import { likelyTexts } from '../../text/catalogue/likely';
import { shown } from '../shown';

const texts = likelyTexts.kind;

export function hasKindWords({ explain, good, poor, fits, mind, cautions }: KindNote): boolean {
  return explain !== null || [good, poor, fits, mind, cautions].some(({ length }) => length > 0);
}

/** What the packs say of a kind: what it is good for, what fits it, and which words of adverts to mind. */
export function KindWords({ kind }: { kind: KindNote }) {
  const { explain, good, poor, fits, mind, cautions } = kind;
  return (
    <>
      {explain !== null && <p dir="auto">{shown(explain)}</p>}
      <Lines heading={texts.good} lines={good} part="good" />
      <Lines heading={texts.poor} lines={poor} part="poor" />
      <Lines heading={texts.fits} lines={fits} part="fits" />
      <Lines heading={texts.cautions} lines={cautions} part="kind-cautions" />
      {mind.length > 0 && (
        <>
          <h3 class="likely-head">{texts.mind}</h3>
          <dl class="minded" data-part="mind">
            {mind.map(({ words, text }) => (
              <div key={words}>
                <dt>
                  <q dir="auto">{shown(words, 80)}</q>
                </dt>
                <dd dir="auto">{shown(text)}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </>
  );
}

function Lines({ heading, lines, part }: { heading: string; lines: readonly string[]; part: string }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3 class="likely-head">{heading}</h3>
      <ul class="grounds" data-part={part}>
        {lines.map((line) => (
          <li key={line} dir="auto">
            {shown(line)}
          </li>
        ))}
      </ul>
    </>
  );
}
