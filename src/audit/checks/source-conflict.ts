import { UNSURE } from '../../listing/doubt';
import type { FieldName } from '../../listing/types';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { assertions } from '../assertions';
import type { AuditCase } from '../case';
import { hold } from '../claims-held';
import type { Finding, Said } from '../types';
import { askOf, knownFacts, saidEach } from '../words';
import { knownBand } from './price';

const texts = findingTexts.sourceConflict;

/** The page gives a field in two ways, or two packs say different things of one claim: both are shown. */
export function sourceConflict(auditCase: AuditCase): Finding[] {
  return [...pageDisagrees(auditCase), ...packsDisagree(auditCase)];
}

function pageDisagrees(auditCase: AuditCase): Finding[] {
  const { listing } = auditCase;
  const note = listing.fields.price;
  const other = note?.alternatives[0];
  if (!note || !other || note.confidence >= UNSURE || !listing.priceText) return [];
  const field: FieldName = 'price';
  const said: Said[] = [{ field, quote: listing.priceText, start: 0, end: listing.priceText.length }];
  return [
    {
      id: 'source-conflict:price',
      check: 'source-conflict',
      standing: 'unproved',
      attribute: null,
      said,
      // What such a thing goes for tells which of the two is more likely.
      known: knownBand(auditCase),
      text: texts.page(texts.field[field], listing.priceText, other.value, texts.sources[other.source]),
      ask: askOf(askTexts.price(listing.priceText, other.value), auditCase),
    },
  ];
}

function packsDisagree(auditCase: AuditCase): Finding[] {
  return assertions(auditCase).flatMap((one) => {
    const held = hold(auditCase, one.attribute, one.allowed, one.denied);
    if (held?.verdict !== 'conflict') return [];
    const said = saidEach(one.said);
    return [
      {
        id: `source-conflict:${one.key.replaceAll(' ', ':')}`,
        check: 'source-conflict',
        standing: 'unproved',
        attribute: one.attribute.id,
        said,
        known: knownFacts(held.facts, auditCase.knowledge, held.facts.length),
        text: texts.packs(said[0]?.quote ?? ''),
        ask: null,
      } satisfies Finding,
    ];
  });
}
