import { describe, expect, it } from 'vitest';
import { audit } from '../../../../src/engine';
import { readDraft } from '../../../../src/listing/draft';
import type { Draft } from '../../../../src/listing/types';
import { AS_OF } from '../../../corpus/labelled';
import { auditOf, cressiter, demo } from '../support/demo';

const ids = (draft: Draft): string[] =>
  auditOf(draft)
    .findings.filter((finding) => finding.check === 'missing')
    .map((finding) => finding.id);

describe('what an advert should show and doesn’t', () => {
  it('a serial', () => {
    expect(ids(cressiter('Sews well.'))).toEqual(['missing:serial']);
    expect(ids(cressiter('Serial number KD372118.'))).toEqual([]);
  });

  it('the model', () =>
    expect(ids({ title: 'Old sewing machine', description: '', language: 'en' })).toEqual([
      'missing:serial',
      'missing:model',
    ]));

  it('photographs, on a page; a draft has none to show', () => {
    const page = { ...readDraft(cressiter('Serial number KD372118.')), url: 'https://market.example/1' };
    const found = audit(page, demo, { asOf: AS_OF }).findings.map((finding) => finding.id);
    expect(found).toContain('missing:photos');
    expect(ids(cressiter('Serial number KD372118.'))).not.toContain('missing:photos');
  });

  it('is a question, and accuses nobody', () => {
    const draft: Draft = { title: 'Sewing machine', description: 'No serial number visible.', language: 'en' };
    const all = auditOf(draft).findings.filter((finding) => finding.check === 'missing');
    expect(all.length).toBeGreaterThan(0);
    for (const finding of all)
      expect(finding).toMatchObject({ standing: 'unproved', said: [], ask: expect.any(String) });
  });
});
