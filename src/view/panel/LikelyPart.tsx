import type { Audit, Follows, Ground, Likely } from '../../audit/types';
import type { KindNote } from '../../session/kind-note';
import { besideOf } from '../../session/side-by-side';
import { surenessOf, sureWords } from '../../session/sureness';
import type { Words } from '../../session/words';
import { besideTexts } from '../../text/catalogue/beside';
import { likelyTexts as texts } from '../../text/catalogue/likely';
import { lazily } from '../lazily';
import { commonFollows } from '../likely';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { Explained } from './Explained';
import { FollowsList, followsText } from './FollowsList';
import { HowLikely } from './HowLikely';
import { hasKindWords, KindWords } from './KindWords';
import type { BesideProps } from './SideBySide';

/** Labels that are named while it is open which it is. */
const MOST_NAMED = 3;

/** Values that are named in the line under which what follows is folded. */
const MOST_VALUES = 3;

interface Props {
  audit: Audit;
  words: Words;
  /** What is known of the kind; null where there is nothing, or where it stands elsewhere. */
  kind: KindNote | null;
  /** Beside an advert, what follows is folded away: it is read for what the advert says. */
  folded: boolean;
  /** What the candidates are set side by side with. */
  beside: BesideProps;
}

/** Fetched where there are candidates to set side by side. */
export const Beside = lazily(async () => (await import('./SideBySide')).SideBySide);

/** What it most likely is, in words; what follows; what speaks for and against; and the next best beside it. */
export function LikelyPart({ audit, words, kind, folded, beside }: Props) {
  const { likely, claimedModel } = audit;
  const [first] = likely;
  if (!first) return null;
  const sure = surenessOf(first.probability);
  const candidates = besideOf(likely);
  // That it is what the advert says needs no reasons before one asks for them; all stand behind "how do we know?".
  const asClaimed = folded && first.model !== null && first.model === claimedModel;
  return (
    <section class="group" data-part="likely" data-sure={sure} aria-labelledby="likely">
      <h2 id="likely">{texts.heading}</h2>
      {sure === 'open' ? <Open likely={likely} words={words} folded={folded} /> : <Named first={first} words={words} />}
      {sure !== 'open' && (
        <>
          {!asClaimed && <Grounds likely={first} words={words} />}
          <FollowsPart
            heading={sure === 'even' ? texts.follows : texts.followsNow}
            follows={first.follows}
            {...{ words, folded }}
          />
          {kind && hasKindWords(kind) && (
            <Disclosure label={texts.kind.more} part="kind">
              <KindWords kind={kind} words={words} />
            </Disclosure>
          )}
        </>
      )}
      {candidates.length > 0 && (
        <Disclosure
          label={besideTexts.heading}
          inside={besideTexts.inside(candidates.map(({ label }) => shown(label, 80)))}
          part="beside"
        >
          <Beside {...beside} />
        </Disclosure>
      )}
      <HowLikely likely={likely} />
    </section>
  );
}

function Named({ first, words }: { first: Likely; words: Words }) {
  const { label, kind } = first;
  return (
    <>
      <p class="likely-name">{kind === 'none' ? texts.none : <Explained text={label} words={words} />}</p>
      <p>
        {kind !== 'none' && sureWords(first)} <span class="soft">{texts.kinds[kind]}</span>
      </p>
    </>
  );
}

function Open({ likely, words, folded }: { likely: readonly Likely[]; words: Words; folded: boolean }) {
  const known = likely.filter(({ kind }) => kind !== 'none');
  const more = known.length - MOST_NAMED;
  return (
    <>
      <p class="likely-name">{texts.open}</p>
      {known.length > 0 && (
        <>
          <p>{texts.openBetween}</p>
          <ul class="grounds" data-part="candidates">
            {known.slice(0, MOST_NAMED).map(({ model, label }) => (
              <li key={model}>
                <Explained text={label} words={words} />
              </li>
            ))}
          </ul>
        </>
      )}
      {more > 0 && <p>{texts.openMore(more)}</p>}
      <FollowsPart heading={texts.followsAnyway} follows={commonFollows(likely)} {...{ words, folded }} />
    </>
  );
}

interface FollowsProps {
  heading: string;
  follows: readonly Follows[];
  words: Words;
  folded: boolean;
}

/** What follows, under a line that says the most of it where it is folded. */
function FollowsPart({ heading, follows, words, folded }: FollowsProps) {
  if (follows.length === 0) return null;
  if (!folded)
    return (
      <>
        <h3 class="likely-head">{heading}</h3>
        <FollowsList follows={follows} words={words} />
      </>
    );
  const named = follows.slice(0, MOST_VALUES).map(followsText);
  return (
    <Disclosure label={heading} inside={texts.inside(named, follows.length - named.length)} part="what-follows">
      <FollowsList follows={follows} words={words} />
    </Disclosure>
  );
}

function Grounds({ likely: { for: speaksFor, against }, words }: { likely: Likely; words: Words }) {
  return (
    <>
      <GroundList heading={texts.speaksFor} grounds={speaksFor} part="for" words={words} />
      <GroundList heading={texts.speaksAgainst} grounds={against} part="against" words={words} />
    </>
  );
}

interface GroundsProps {
  heading: string;
  grounds: readonly Ground[];
  part: string;
  words: Words;
}

function GroundList({ heading, grounds, part, words }: GroundsProps) {
  if (grounds.length === 0) return null;
  return (
    <>
      <h3 class="likely-head">{heading}</h3>
      <ul class="grounds" data-part={part}>
        {grounds.map(({ text }) => (
          <li key={text}>
            <Explained text={text} words={words} />
          </li>
        ))}
      </ul>
    </>
  );
}
