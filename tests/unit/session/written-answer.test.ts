import { describe, expect, it } from 'vitest';
import type { Answered } from '../../../src/session/answer';
import { writtenAnswer } from '../../../src/session/written-answer';
import { enquiryTexts } from '../../../src/text/catalogue/enquiry';
import { sampleAudit, sampleLikely, sampleListing, sampleWords } from '../view/sample';

const run = {
  ...{ pack: 'club', entry: 'k', models: ['club/corvane-6'], year: 1954, first: 'CV20001', last: 'CV21000' },
  ...{ source: 'Allotment book', place: 'Harrowslade', size: 1_000, holds: true },
};
const answered: Answered = {
  ...{ ok: true, audit: sampleAudit({ likely: [sampleLikely()] }), listing: sampleListing, words: sampleWords },
  ...{ kind: null, seen: [], pictures: new Map() },
  place: {
    ...{ normal: 'CV20417', years: [], batches: [] },
    lines: [
      {
        pack: 'club',
        scheme: 'k',
        maker: null,
        complete: false,
        gapAfter: null,
        runs: [run, { ...run, holds: false, first: 'CV21001' }],
      },
    ],
  },
};

describe('the written answer', () => {
  it('says what it is, how sure that is and why, when and where it was made, with sources, and the day', () => {
    const text = writtenAnswer(answered, null, '2026-06-01');
    for (const each of [
      'Full size, iron',
      'You saw a long bobbin.',
      enquiryTexts.written.number('CV20417'),
      '1954, made in Harrowslade (Allotment book)',
      'Club handbook, page 3',
      '2026-06-01',
    ])
      expect(text).toContain(each);
    expect(text).not.toContain('CV21001');
  });

  it('is silent on the number where none was asked for and nobody’s words hold one', () => {
    expect(writtenAnswer({ ...answered, place: null }, null, '2026-06-01')).not.toContain('number');
  });

  it('takes the number that was asked for by itself before the one in somebody’s words', () => {
    const enquiry = { normal: 'QQ1', verdict: 'bad-form' as const, runs: [], lines: [], suggestions: [], forms: [] };
    const text = writtenAnswer(answered, { enquiry, words: sampleWords }, '2026-06-01');
    expect(text).toContain(enquiryTexts.written.numberUnknown('QQ1'));
    expect(text).not.toContain('CV20417');
  });
});
