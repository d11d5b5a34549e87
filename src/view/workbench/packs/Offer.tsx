import { useEffect, useRef } from 'preact/hooks';
import type { OfferTold } from '../../../session/following/offer-told';
import { isOver } from '../../../sharing/subscribe/against-known';
import { followTexts } from '../../../text/catalogue/follow';
import { originTexts } from '../../../text/catalogue/origin';
import { sentenceCase } from '../../../text/catalogue/words';
import { langOf, shown } from '../../shown';
import { HandedOver } from '../HandedOver';
import { kB } from './Looked';
import { OfferChanges } from './OfferChanges';

const texts = followTexts.offer;

interface Props {
  told: OfferTold;
  isFollowed: boolean;
  onTake: () => void;
  onLeave: () => void;
}

/** An edition before it is taken: whose it is, what it changes, and the choice. */
export function Offer({ told, isFollowed, onTake, onLeave }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  // What was asked for stands below the fold often, and whoever listens is told where it begins.
  useEffect(() => heading.current?.focus(), [told.hash]);
  const { about, isHere, holds } = told;
  const title = shown(about.title, 160);
  return (
    <section class="offer" data-part="offer" data-edition={about.edition}>
      <h3 ref={heading} tabIndex={-1} lang={langOf(about.language)} dir="auto">
        {texts.title(title, about.edition)}
      </h3>
      <p>{placeOf(told)}</p>
      {told.otherText && <p class="trouble">{texts.otherText}</p>}
      <HandedOver title={about.title} changes={told.handedOver} />
      <Seal told={told} />
      <p>
        {texts.holds(holds.models, holds.runs)}{' '}
        {told.keepers.length > 0 && texts.keptBy(shown(told.keepers.join(', ')))}{' '}
        {texts.licence(shown(about.licence, 160))} {about.demo && `${sentenceCase(originTexts.demo)}.`}
      </p>
      {told.changes && <OfferChanges changes={told.changes} />}
      <p class="soft">{texts.fetched(kB(told.bytes.fetched), kB(told.bytes.whole))}</p>
      <div class="pack-actions">
        <button type="button" class="button" data-part="offer-take" onClick={onTake}>
          {isFollowed ? texts.take : isHere ? texts.followOnly : texts.follow}
        </button>
        <button type="button" class="button plain" data-part="offer-leave" onClick={onLeave}>
          {texts.leave}
        </button>
      </div>
    </section>
  );
}

function placeOf({ here, isHere, address }: OfferTold): string {
  if (isHere) return texts.isHere;
  return here === null ? texts.first(new URL(address).host) : texts.newer(here);
}

function Seal({ told: { about, here, expires } }: { told: OfferTold }) {
  const today = new Date().toISOString().slice(0, 10);
  return (
    <>
      {about.sealedBy === null ? (
        <p class="trouble">{texts.unsealed}</p>
      ) : (
        <p>{here === null ? texts.sealed(about.sealedBy) : texts.sealedAsBefore(about.sealedBy)}</p>
      )}
      {expires !== null &&
        (isOver(expires, today) ? <p class="trouble">{texts.expired(expires)}</p> : <p>{texts.expires(expires)}</p>)}
    </>
  );
}
