import type { Standing } from '../../audit/types';
import { pickAnswer, pickName } from '../../session/picks';
import type { Screen } from '../../session/screen';
import { likelyTexts } from '../../text/catalogue/likely';
import { likelyAdds } from '../likely';
import { langOf, shown } from '../shown';
import { FindingGroup } from './FindingGroup';
import { GoAndSee, type MakeSheet } from './GoAndSee';
import { KeepPrice } from './KeepPrice';
import { LikelyPart } from './LikelyPart';
import { NextPart } from './NextPart';
import { PacksSpoke } from './PacksSpoke';
import type { SeenActions } from './Panel';
import { PriceLine, PricePart } from './PricePart';
import { Questions, questionsOf } from './Questions';
import { ReadingNote } from './ReadingNote';
import { SerialPart } from './SerialPart';
import type { BesideProps } from './SideBySide';
import { shownFindings, summaryOf } from './summary';
import { UnreadParts } from './UnreadParts';
import { WhatWasRead } from './WhatWasRead';

/** What speaks against the advert comes first; after what it is instead, what to mind and what confirms it. */
export const FIRST: readonly Standing[] = ['disproved', 'unproved'];
export const LAST: readonly Standing[] = ['caution', 'agrees'];

interface Props {
  screen: Extract<Screen, { screen: 'audit' }>;
  copy: (text: string) => Promise<boolean>;
  save: BesideProps['save'];
  makeSheet: MakeSheet | null;
  seen: SeenActions;
  isPrivate: boolean;
  /** Address of the workbench. */
  workbench: string;
}

/**
 * The audit of one advert, from the sentence that sums up to what was read on the page: what speaks against the advert,
 * what it is instead and what it costs, what would settle it, what to ask and to mind; then, folded, what agrees.
 */
export function AuditView({ screen, copy, save, makeSheet, seen: actions, isPrivate, workbench }: Props) {
  const { audit, listing, words, seen, kind, place, pending, reading, lapsed = [] } = screen;
  const about = reading.address;
  // Of a part, a wish or a service there is no machine's price and no machine's number to speak of.
  const forSale = audit.kind === 'item' || audit.kind === 'lot';
  const keptNote = isPrivate ? likelyTexts.settle.keptNot : likelyTexts.settle.kept;
  const keep = <KeepPrice workbench={workbench} audit={audit} listing={listing} />;
  const group = (standing: Standing) => (
    <FindingGroup
      key={standing}
      standing={standing}
      findings={shownFindings(audit, standing)}
      language={listing.language}
      words={words}
      asks={false}
    />
  );
  return (
    <article>
      <h1 class="advert" dir="auto" lang={langOf(listing.language)}>
        {shown(audit.listing.title, 160)}
      </h1>
      <p class="summary" data-part="summary">
        {summaryOf(audit)}
      </p>
      <ReadingNote listing={listing} lapsed={lapsed} />
      {FIRST.map(group)}
      {likelyAdds(audit, seen.length) && (
        <LikelyPart
          audit={audit}
          words={words}
          kind={kind}
          folded
          beside={{ answer: screen, own: [], asOf: reading.asOf, save }}
        />
      )}
      {forSale && <PricePart audit={audit} words={words} keep={keep} />}
      <NextPart
        next={audit.nextEvidence}
        {...{ seen, words, pending }}
        keptNote={keptNote}
        onSaw={(attribute, value) => actions.saw(about, attribute, value)}
        onTakeBack={(attribute) => actions.takeBack(about, attribute)}
      />
      {forSale && <GoAndSee about={about} listing={listing} makeSheet={makeSheet} />}
      <Questions questions={questionsOf(audit)} words={words} language={listing.language} copy={copy} />
      {LAST.map(group)}
      {forSale && <PriceLine audit={audit} keep={keep} />}
      {forSale && <SerialPart audit={audit} words={words} place={place} />}
      <PacksSpoke audit={audit} words={words} />
      <UnreadParts addresses={screen.reading.harvest.unread} />
      <WhatWasRead
        {...{ listing, lapsed, keptNote }}
        onPick={(field, pick) => actions.saw(about, pickName(field), pickAnswer(pick))}
        onTakeBack={(field) => actions.takeBack(about, pickName(field))}
      />
    </article>
  );
}
