import { useRef } from 'preact/hooks';
import { moneyText } from '../../audit/money-text';
import { type Lapsed, PICKABLE, type Pickable } from '../../listing/picks';
import type { FieldName, Listing } from '../../listing/types';
import { panelTexts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';
import { Disclosure } from './Disclosure';
import { asked } from './ReadingNote';
import { type PickActions, ReadingPick } from './ReadingPick';

const texts = panelTexts.read;
const LONGEST = 240;
/** Fields whose words are the advert's own, in its language. */
const OF_THE_ADVERT: ReadonlySet<FieldName> = new Set(['title', 'description', 'details', 'condition', 'place']);

interface Props extends PickActions {
  listing: Listing;
  lapsed: readonly Lapsed[];
  /** Where the user's word is kept, in words. */
  keptNote: string;
}

/**
 * What stands in each field, where on the page it came from, and what other places of the page said: with the way to say
 * otherwise. Open by itself where something should be looked at.
 */
export function WhatWasRead(props: Props) {
  const { listing, lapsed } = props;
  const { checked, own } = asked(listing, lapsed);
  const isOpen = useRef(false);
  isOpen.current ||= checked.length + own.length > 0;
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
      <Disclosure label={texts.heading} part="what-was-read" row="h2" open={isOpen.current}>
        <p class="soft">{texts.intro}</p>
        <dl class="facts">
          {rows.map(([field, value]) => (
            <ReadField key={field} field={field} value={value} {...props} />
          ))}
        </dl>
      </Disclosure>
    </section>
  );
}

function ReadField({ field, value, lapsed, ...rest }: Props & { field: FieldName; value: string }) {
  const { listing } = rest;
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
            {texts.sources[note.source]}
            {note.source !== 'user' && `, ${note.byUser ? texts.yours : texts.confidence(note.confidence)}`}
          </span>
        )}
        {isPickable(field) ? (
          <ReadingPick field={field} lapsed={lapsed.find((one) => one.field === field)} {...rest} />
        ) : note && note.alternatives.length > 0 ? (
          <span class="origin">
            {' '}
            {texts.alternatives}{' '}
            {note.alternatives.slice(0, 3).map((other) => (
              <q key={other.source + other.value} dir="auto">
                {shown(other.value, 80)}
              </q>
            ))}
          </span>
        ) : null}
      </dd>
    </>
  );
}

const isPickable = (field: FieldName): field is Pickable => (PICKABLE as readonly FieldName[]).includes(field);
