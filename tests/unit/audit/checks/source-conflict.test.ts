import { describe, expect, it } from 'vitest';
import { audit } from '../../../../src/engine';
import { readDraft } from '../../../../src/listing/draft';
import type { Listing } from '../../../../src/listing/types';
import type { Pack } from '../../../../src/pack/schema/index';
import { AS_OF } from '../../../corpus/labelled';
import { knowing } from '../../pack/support/knowledge';
import { smallPack } from '../../pack/support/packs';
import { cressiter, demo, findingsOf, found } from '../support/demo';

describe('a page that gives its price twice', () => {
  const page = (confidence: number): Listing => {
    const listing = readDraft(cressiter('', { priceText: '£120' }));
    const alternatives = [{ value: '£210', source: 'meta' as const }];
    return { ...listing, fields: { ...listing.fields, price: { source: 'page', confidence, alternatives } } };
  };
  const prices = (confidence: number): string[] =>
    audit(page(confidence), demo, { asOf: AS_OF })
      .findings.filter((finding) => finding.check === 'source-conflict')
      .map((finding) => finding.text);

  it('is asked which it is, where the reader isn’t sure', () =>
    expect(prices(0.5)).toEqual([
      'The page itself disagrees about the price: it shows “£120”, and its head says “£210”.',
    ]));
  it('with what such a thing goes for beside it, where that is known', () => {
    const [finding] = audit(page(0.5), demo, { asOf: AS_OF }).findings.filter((one) => one.check === 'source-conflict');
    expect(finding?.known.map(({ text }) => text)).toEqual([expect.stringMatching(/^Grindlewade Cressiter.*go for £/)]);
  });
  it('not where it is', () => expect(prices(0.95)).toEqual([]));
});

describe('packs that disagree about one claim', () => {
  const club = (id: string, frame: string, values: string[]): Pack =>
    smallPack(
      {
        models: [{ id: 'm', label: 'Ottermere M', names: ['Ottermere M'], facts: { 'base/frame': frame } }],
        ...(values.length > 0
          ? {
              attributes: [
                {
                  id: 'frame',
                  kind: 'choice' as const,
                  label: 'frame',
                  values: values.map((value) => ({ id: value, label: value, words: [`${value} body`] })),
                },
              ],
            }
          : {}),
      },
      id === 'base' ? { id } : { id, extends: 'base' },
    );
  const knowledge = knowing(club('base', 'iron', ['iron', 'alloy']), club('club', 'alloy', []));
  const draft = { title: 'Ottermere M sewing machine', description: 'iron body', language: 'en' };

  it('both are shown and neither accuses', () => {
    const [finding] = findingsOf('source-conflict', draft, knowledge);
    expect(finding).toMatchObject({ standing: 'unproved', said: [{ quote: 'iron body' }] });
    expect(finding?.known.map(({ pack }) => pack).sort()).toEqual(['base', 'club']);
    expect(found('claim-fact', draft, knowledge)).toEqual([]);
  });
});
