import type { Follows } from '../../audit/types';
import type { Words } from '../../session/words';
import { likelyTexts as texts } from '../../text/catalogue/likely';
import { shown } from '../shown';
import { Explained } from './Explained';
import { TermName } from './TermName';

/** What follows once it is known what something is: bobbin, weight, stitch. */
export function FollowsList({ follows, words }: { follows: readonly Follows[]; words: Words }) {
  return (
    <dl class="follows" data-part="follows">
      {follows.map((each) => (
        <div key={each.attribute} data-follows={each.attribute}>
          <dt>
            <TermName name={each.name} term={words.terms.get(each.attribute)} />
          </dt>
          <dd>{each.usually ? followsText(each) : <Explained text={each.text} words={words} />}</dd>
        </div>
      ))}
    </dl>
  );
}

export function followsText({ text, usually }: Follows): string {
  return usually ? texts.usually(shown(text, 200)) : shown(text, 200);
}
