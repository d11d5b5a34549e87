import type { Standing } from '../../audit/types';
import type { Screen } from '../../session/screen';
import { langOf, shown } from '../shown';
import { FindingGroup } from './FindingGroup';
import { PacksSpoke } from './PacksSpoke';
import { PricePart } from './PricePart';
import { Questions, questionsOf } from './Questions';
import { SerialPart } from './SerialPart';
import { shownFindings, summaryOf } from './summary';
import { WhatWasRead } from './WhatWasRead';

/** What speaks against the advert comes first, what confirms it last. */
export const ORDER: readonly Standing[] = ['disproved', 'unproved', 'caution', 'agrees'];

interface Props {
  screen: Extract<Screen, { screen: 'audit' }>;
  copy: (text: string) => Promise<boolean>;
}

/** The audit of one advert, from the sentence that sums up to what was read on the page. */
export function AuditView({ screen: { audit, listing, words }, copy }: Props) {
  // Of a part, a wish or a service there is no machine's price and no machine's number to speak of.
  const forSale = audit.kind === 'item' || audit.kind === 'lot';
  return (
    <article>
      <h1 class="advert" dir="auto" lang={langOf(listing.language)}>
        {shown(audit.listing.title, 160)}
      </h1>
      <p class="summary" data-part="summary">
        {summaryOf(audit)}
      </p>
      {ORDER.map((standing) => (
        <FindingGroup
          key={standing}
          standing={standing}
          findings={shownFindings(audit, standing)}
          language={listing.language}
          words={words}
        />
      ))}
      {forSale && <PricePart audit={audit} />}
      {forSale && <SerialPart audit={audit} words={words} />}
      <Questions questions={questionsOf(audit)} copy={copy} />
      <PacksSpoke audit={audit} words={words} />
      <WhatWasRead listing={listing} />
    </article>
  );
}
