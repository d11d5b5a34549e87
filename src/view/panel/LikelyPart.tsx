import type { Audit, Ground, Likely } from '../../audit/types';
import type { KindNote } from '../../session/kind-note';
import { surenessOf } from '../../session/sureness';
import type { Words } from '../../session/words';
import { likelyTexts as texts } from '../../text/catalogue/likely';
import { commonFollows, nextBest } from '../likely';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { FollowsList } from './FollowsList';
import { HowLikely } from './HowLikely';
import { hasKindWords, KindWords } from './KindWords';
import { SideBySide } from './SideBySide';

/** Labels that are named while it is open which it is. */
const MOST_NAMED = 3;

interface Props {
  audit: Audit;
  words: Words;
  /** What is known of the kind; null where there is nothing, or where it stands elsewhere. */
  kind: KindNote | null;
}

/** What it most likely is, in words; what follows; what speaks for and against; and the next best beside it. */
export function LikelyPart({ audit: { likely }, words, kind }: Props) {
  const [first] = likely;
  if (!first) return null;
  const sure = surenessOf(first.probability);
  const next = nextBest(likely);
  return (
    <section class="group" data-part="likely" data-sure={sure} aria-labelledby="likely">
      <h2 id="likely">{texts.heading}</h2>
      {sure === 'open' ? <Open likely={likely} words={words} /> : <Named first={first} words={words} />}
      {next && sure !== 'open' && <SideBySide left={first} right={next} />}
      {sure !== 'open' && kind && hasKindWords(kind) && (
        <Disclosure label={texts.kind.more} part="kind">
          <KindWords kind={kind} />
        </Disclosure>
      )}
      <HowLikely likely={likely} />
    </section>
  );
}

function Named({ first, words }: { first: Likely; words: Words }) {
  const { label, kind, follows, for: speaksFor, against } = first;
  return (
    <>
      <p class="likely-name" dir="auto">
        {kind === 'none' ? texts.none : shown(label, 160)}
      </p>
      {kind !== 'model' && <p class="soft">{texts.kinds[kind]}</p>}
      {kind !== 'none' && <p>{texts.sure[surenessOf(first.probability)]}</p>}
      {follows.length > 0 && (
        <>
          <h3 class="likely-head">{surenessOf(first.probability) === 'even' ? texts.follows : texts.followsNow}</h3>
          <FollowsList follows={follows} words={words} />
        </>
      )}
      <Grounds heading={texts.speaksFor} grounds={speaksFor} part="for" />
      <Grounds heading={texts.speaksAgainst} grounds={against} part="against" />
    </>
  );
}

function Open({ likely, words }: { likely: readonly Likely[]; words: Words }) {
  const common = commonFollows(likely);
  const known = likely.filter(({ kind }) => kind !== 'none');
  const more = known.length - MOST_NAMED;
  return (
    <>
      <p class="likely-name">{texts.open}</p>
      {known.length > 0 && (
        <p>
          {texts.openBetween(known.slice(0, MOST_NAMED).map(({ label }) => shown(label, 120)))}{' '}
          {more > 0 && texts.openMore(more)}
        </p>
      )}
      {common.length > 0 && (
        <>
          <h3 class="likely-head">{texts.followsAnyway}</h3>
          <FollowsList follows={common} words={words} />
        </>
      )}
    </>
  );
}

function Grounds({ heading, grounds, part }: { heading: string; grounds: readonly Ground[]; part: string }) {
  if (grounds.length === 0) return null;
  return (
    <>
      <h3 class="likely-head">{heading}</h3>
      <ul class="grounds" data-part={part}>
        {grounds.map(({ text }) => (
          <li key={text} dir="auto">
            {shown(text)}
          </li>
        ))}
      </ul>
    </>
  );
}
