import { readClaims } from '../../../../src/claims/read';
import type { Reading } from '../../../../src/claims/reading';
import type { Stanced } from '../../../../src/claims/types';
import { readDraft } from '../../../../src/listing/draft';
import type { Draft } from '../../../../src/listing/types';
import { demo } from '../../audit/support/demo';

/** All that an advert's words say, by the demo packs. */
export function readingOf(draft: Draft, knowledge = demo): Reading {
  return readClaims(readDraft({ language: 'en', ...draft }), knowledge);
}

/** What a text says in an advert for a Cressiter. */
export function saying(description: string): Reading {
  return readingOf({ title: 'Grindlewade Cressiter sewing machine', description });
}

/** Claims in short: `14 kg`, or `14 kg (denies)`, or `4 kg (other)`. */
export function short(claims: readonly Stanced[]): string[] {
  return claims.map(({ quote, stance, subject }) => {
    const note = subject === 'other' ? 'other' : stance === 'says' ? '' : stance;
    return note ? `${quote} (${note})` : quote;
  });
}
