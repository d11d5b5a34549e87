import type { FieldName } from '../../listing/types';
import { findingTexts } from '../../text/catalogue/findings';
import { assertions } from '../assertions';
import type { AuditCase } from '../case';
import { hold } from '../claims-held';
import type { Finding, Said } from '../types';
import { knownFact, saidEach } from '../words';

const texts = findingTexts.sourceConflict;

/** Below this the reader itself isn't sure of a field that the page gives twice. */
const UNSURE = 0.7;

/** The page gives a field in two ways, or two packs say different things of one claim: both are shown. */
export function sourceConflict(auditCase: AuditCase): Finding[] {
  return [...pageDisagrees(auditCase), ...packsDisagree(auditCase)];
}

function pageDisagrees({ listing }: AuditCase): Finding[] {
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
      known: [],
      text: texts.page(texts.field[field], listing.priceText, other.value),
      ask: texts.askPrice(listing.priceText, other.value),
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
        known: held.facts.map(({ model, fact }) => knownFact(model, fact)),
        text: texts.packs(said[0]?.quote ?? ''),
        ask: null,
      } satisfies Finding,
    ];
  });
}
