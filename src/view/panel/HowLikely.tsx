import type { Likely } from '../../audit/types';
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
            {follows.map(({ attribute, name, source }) => (
              <div key={attribute}>
                <dt>{shown(name, 80)}</dt>
                <dd>{source === null ? texts.noSource : <cite dir="auto">{shown(source)}</cite>}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </Disclosure>
  );
}
