import { describe, expect, it } from 'vitest';
import type { Answered } from '../../../src/session/answer';
import { draftFromEnquiry } from '../../../src/session/draft-from-enquiry';
import { sampleAudit, sampleLikely, sampleListing, sampleWords } from '../view/sample';

const answered = (change: Partial<Answered>): Answered => ({
  ...{ ok: true, audit: sampleAudit({ likely: [sampleLikely()] }), listing: sampleListing, words: sampleWords },
  ...{ kind: null, seen: [], pictures: new Map(), place: null },
  ...change,
});

describe('a draft that begins with what an enquiry found', () => {
  it('says what was seen and said, and the number; not what only follows', () => {
    const seen = [
      { attribute: 'club/frame', name: 'frame', value: 'iron', text: 'cast iron' },
      { attribute: 'club/bed', name: 'bed', value: null, text: null },
    ];
    const draft = draftFromEnquiry(answered({ seen }), { serial: ' 250 ', text: 'Runs well.' }, 'sewing machine');
    expect(draft).toEqual({
      title: sampleLikely().label,
      description: 'frame: cast iron\n\nRuns well.',
      serialText: '250',
    });
  });

  it('is called by the thing alone where it can’t be told which it is', () => {
    const open = sampleAudit({ likely: [sampleLikely({ probability: 0.2 })] });
    const listing = { ...sampleListing, serials: [] };
    expect(draftFromEnquiry(answered({ audit: open, listing }), { serial: '', text: '' }, 'sewing machine')).toEqual({
      title: 'sewing machine',
    });
  });
});
