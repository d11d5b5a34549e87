import { moneyText } from '../../audit/money-text';
import type { FieldName, Listing } from '../../listing/types';
import { panelTexts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';
import { Disclosure } from './Disclosure';

const texts = panelTexts.read;
const LONGEST = 240;
/** Fields whose words are the advert's own, in its language. */
const OF_THE_ADVERT: ReadonlySet<FieldName> = new Set(['title', 'description', 'details', 'condition', 'place']);

/** What stands in each field, where on the page it came from, and what other places of the page said. */
export function WhatWasRead({ listing }: { listing: Listing }) {
  const rows: [FieldName, string][] = [
    ['title', listing.title],
    ['description', listing.description],
    ['details', listing.details],
    ['price', listing.price ? moneyText(listing.price.amount, listing.price.currency) : listing.priceText],
    ['serial', listing.serials.join(', ')],
    ['condition', listing.condition ?? ''],
    ['place', listing.place ?? ''],
    ['listedDate', listing.listedDate ?? ''],
    ['sale', listing.sale ? texts.sales[listing.sale] : ''],
    ['seller', listing.seller ? texts.sellers[listing.seller] : ''],
    ['photo', texts.photos(listing.photos.length)],
  ];
  return (
    <section class="group fold" data-part="read">
      <Disclosure label={texts.heading} part="what-was-read" row="h2">
        <p class="soft">{texts.intro}</p>
        <dl class="facts">
          {rows.map(([field, value]) => (
            <ReadField key={field} field={field} value={value} listing={listing} />
          ))}
        </dl>
      </Disclosure>
    </section>
  );
}

function ReadField({ field, value, listing }: { field: FieldName; value: string; listing: Listing }) {
  const note = listing.fields[field];
  return (
    <>
      <dt>{texts.fields[field]}</dt>
      <dd>
        {value === '' ? (
          <span class="soft">{texts.none}</span>
        ) : (
          <span dir="auto" lang={OF_THE_ADVERT.has(field) ? langOf(listing.language) : undefined}>
            {shown(value, LONGEST)}
          </span>
        )}
        {note && (
          <span class="origin">
            {' '}
            {texts.sources[note.source]}, {texts.confidence(note.confidence)}
          </span>
        )}
        {field !== 'photo' && note && note.alternatives.length > 0 && (
          <span class="origin">
            {' '}
            {texts.alternatives}{' '}
            {note.alternatives.slice(0, 3).map((other) => (
              <q key={other.source + other.value} dir="auto">
                {shown(other.value, 80)}
              </q>
            ))}
          </span>
        )}
      </dd>
    </>
  );
}
