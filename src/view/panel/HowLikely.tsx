import type { Follows, Likely } from '../../audit/types';
import { likelyTexts as texts } from '../../text/catalogue/likely';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';

/** More candidates than these say nothing to anybody. */
const MOST = 6;

/** The numbers behind it: how probable each is, what each thing weighs, and where what follows is from. */
export function HowLikely({ likely }: { likely: readonly Likely[] }) {
  const [first] = likely;
  const grounds = first ? [...first.for, ...first.against] : [];
  const follows = first?.follows ?? [];
  return (
    <Disclosure label={texts.how} part="how-likely">
      <h3 class="likely-head">{texts.chances}</h3>
      <dl class="numbers">
        {likely.slice(0, MOST).map(({ model, label, kind, probability }) => (
          <div key={model ?? kind}>
            <dt dir="auto">{kind === 'none' ? texts.none : shown(label, 120)}</dt>
            <dd>{texts.inHundred(probability)}</dd>
          </div>
        ))}
      </dl>
      {grounds.length > 0 && (
        <>
          <h3 class="likely-head">{texts.weights}</h3>
          <dl class="numbers">
            {grounds.map(({ text, bits }) => (
              <div key={text}>
                <dt dir="auto">{shown(text)}</dt>
                <dd>{texts.bits(bits)}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      {follows.length > 0 && (
        <>
          <h3 class="likely-head">{texts.sources}</h3>
          <dl class="numbers wide">
            {bySource(follows).map(({ source, names }) => (
              <div key={source}>
                <dt>{shown(names.join(', '))}</dt>
                <dd>{source === null ? texts.noSource : <cite dir="auto">{shown(source)}</cite>}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </Disclosure>
  );
}

/** Each source once, with all that is known from it. */
function bySource(follows: readonly Follows[]): { source: string | null; names: string[] }[] {
  const sources = new Map<string | null, string[]>();
  for (const { source, name } of follows) sources.set(source, [...(sources.get(source) ?? []), name]);
  return [...sources].map(([source, names]) => ({ source, names }));
}
