import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { audit, explain } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Draft, Listing } from '../../src/listing/types';
import { AS_OF, demoKnowledge, labelled } from '../corpus/labelled';
import { anyDraft } from './audit-arbitraries';
import { TIMES } from './pack-arbitrary/times';

const known = demoKnowledge();
const options = { asOf: AS_OF };

const always = (law: (listing: Listing) => void): void =>
  fc.assert(
    fc.property(anyDraft, (draft: Draft) => law(readDraft(draft))),
    { numRuns: 200 * TIMES },
  );

const sorted = (list: readonly string[]): string[] => [...new Set(list)].sort();

describe('an explanation', { timeout: 120_000 }, () => {
  it('tells every finding of the audit, and no other as shown', () =>
    always((listing) => {
      const { phrases, wordless } = explain(listing, known, options);
      const told = [...phrases.flatMap(({ findings }) => findings), ...wordless];
      const shown = told.filter(({ unshown }) => unshown === null);
      expect(sorted(shown.map(({ id, standing }) => `${id} ${standing}`))).toEqual(
        sorted(audit(listing, known, options).findings.map(({ id, standing }) => `${id} ${standing}`)),
      );
    }));

  it('leaves no phrase without what came of it', () =>
    always((listing) => {
      for (const phrase of explain(listing, known, options).phrases)
        expect([phrase.quote, phrase.findings.length > 0 || phrase.reason !== null]).toEqual([phrase.quote, true]);
    }));

  it('quotes what stands between its offsets, phrase and clause', () =>
    always((listing) => {
      for (const { field, quote, start, end, clause } of explain(listing, known, options).phrases) {
        const text = field === 'serials' ? quote : field === 'price' ? listing.priceText : listing[field];
        expect(text?.slice(start, end)).toBe(quote);
        if (!clause) continue;
        expect(listing[field as 'title']?.slice(clause.start, clause.end)).toBe(clause.quote);
        expect(clause.start).toBeLessThanOrEqual(start);
        expect(clause.end).toBeGreaterThan(start);
      }
    }));

  it('says by what, wherever words were read as anything but said of this thing', () =>
    always((listing) => {
      for (const { stance, subject, why } of explain(listing, known, options).phrases)
        if (subject === 'other' || (stance !== null && stance !== 'says')) expect(why).not.toEqual([]);
    }));

  it('changes nothing: the audit answers the same afterwards', () =>
    always((listing) => {
      const before = JSON.stringify(audit(listing, known, options));
      explain(listing, known, options);
      expect(JSON.stringify(audit(listing, known, options))).toBe(before);
    }));
});

describe('on the labelled adverts', { timeout: 120_000 }, () => {
  // Every advert in the long run; a part of them, spread over all, in the usual one.
  const adverts = labelled('tuned/grindlewade-circle')
    .filter((_, i) => process.env.BEDPLATE_LONG || i % 5 === 0)
    .map(({ id, draft }) => ({ id, listing: readDraft(draft) }));

  it('nothing that is said of something else, likened or quoted disproves anything of this thing', () => {
    const wrong = adverts.flatMap(({ id, listing }) => {
      if (audit(listing, known, options).kind !== 'item') return [];
      return explain(listing, known, options).phrases.flatMap(({ quote, subject, stance, findings }) =>
        (subject === 'other' || stance === 'quotes' || stance === 'likens') &&
        findings.some(({ standing }) => standing === 'disproved')
          ? [`${id}: ${quote}`]
          : [],
      );
    });
    expect(wrong).toEqual([]);
  });

  it('every finding that has words of the text is told on a phrase', () => {
    const homeless = adverts.flatMap(({ id, listing }) => {
      const wordy = new Set(
        audit(listing, known, options).findings.flatMap((one) =>
          one.said.some(({ field }) => field !== 'price') ? [one.id] : [],
        ),
      );
      return explain(listing, known, options).wordless.flatMap((one) =>
        wordy.has(one.id) ? [`${id}: ${one.id}`] : [],
      );
    });
    expect(homeless).toEqual([]);
  });
});
