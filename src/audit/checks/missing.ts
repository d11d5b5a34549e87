import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import type { Finding } from '../types';

const texts = findingTexts.missing;

/** What an advert of this kind should show and doesn't, the most telling first. The audit keeps three at most. */
export function missing({ listing, reading, serial }: AuditCase): Finding[] {
  const out: Finding[] = [];
  const add = (what: string, text: string, ask: string): void => {
    out.push({
      id: `missing:${what}`,
      check: 'missing',
      standing: 'unproved',
      attribute: null,
      said: [],
      known: [],
      text,
      ask,
    });
  };
  if (!serial) add('serial', texts.serial, texts.serialAsk);
  if (reading.claimedModels.every((model) => model.isType) && !reading.names.some((name) => name.subject === 'this'))
    add('model', texts.model, texts.modelAsk);
  // A draft has no photographs to show; a page that shows none is worth knowing.
  if (listing.photos.length === 0 && listing.fields.photo?.source !== 'draft' && listing.url !== null)
    add('photos', texts.photos, texts.photosAsk);
  return out;
}
