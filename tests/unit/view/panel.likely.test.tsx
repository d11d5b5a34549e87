// @vitest-environment jsdom

import { act } from 'preact/test-utils';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Likely } from '../../../src/audit/types';
import type { KindNote } from '../../../src/session/kind-note';
import type { Pictures } from '../../../src/session/pictures';
import { besideTexts } from '../../../src/text/catalogue/beside';
import { likelyTexts as texts } from '../../../src/text/catalogue/likely';
import { Beside, LikelyPart } from '../../../src/view/panel/LikelyPart';
import { stage } from './rendered';
import { sampleAudit, sampleLikely, sampleListing, sampleWords } from './sample';

const { root, show, part, all, textWithoutDetails } = stage();
let saved: string[][] = [];
const display = (likely: Likely[], kind: KindNote | null = null, folded = false, pictures: Pictures = new Map()) => {
  saved = [];
  const audit = sampleAudit({ likely });
  const answer = { audit, listing: sampleListing, words: sampleWords, pictures };
  const save = (...file: string[]) => void saved.push(file);
  const beside = { answer, own: [], asOf: '2026-06-01', save };
  show(<LikelyPart audit={audit} words={sampleWords} {...{ kind, folded, beside }} />);
};
beforeAll(() => Beside.fetched());
const other = sampleLikely({
  ...{ model: 'club/alloy', label: 'Full size, aluminium', probability: 0.17 },
  follows: [{ attribute: 'club/frame', name: 'frame', text: 'aluminium', usually: false, source: null }],
});

describe('what it most likely is', () => {
  it('is said in plain words: which, how sure, what kind of thing that is', () => {
    display([sampleLikely(), other]);
    const text = part('likely')?.textContent ?? '';
    expect(text).toContain('Full size, iron');
    expect(text).toContain(texts.sure.likely);
    expect(text).toContain(texts.kinds.type);
  });

  it('says what follows, and what of it is only usual', () => {
    display([sampleLikely()]);
    expect(all('[data-part="follows"] > div').map((row) => row.querySelector('dd')?.textContent)).toEqual([
      'cast iron',
      'long',
      'usually 10 to 16 kg',
    ]);
  });

  it('folds what follows away beside an advert, under a line that says the most of it', () => {
    const more = ['a', 'b'].map((name) => ({ ...sampleLikely().follows[0]!, attribute: name, name, text: name }));
    display([sampleLikely({ follows: [...sampleLikely().follows, ...more] })], null, true);
    const folded = part('what-follows');
    expect(folded?.hasAttribute('open')).toBe(false);
    expect(folded?.querySelector('summary')?.textContent).toBe(
      `${texts.followsNow} cast iron, long, usually 10 to 16 kg, two more`,
    );
    expect(all('[data-part="follows"] > div')).toHaveLength(5);
  });

  it('gives no reasons unasked for what the advert says itself, and all behind "how do we know?"', () => {
    const asClaimed = sampleLikely({ model: sampleAudit().claimedModel, label: 'Corvane 6', kind: 'model' });
    display([asClaimed], null, true);
    expect(part('for')).toBeNull();
    expect(part('how-likely')?.textContent).toContain('You saw a long bobbin.');
    display([sampleLikely()], null, true);
    expect(part('for')).not.toBeNull();
  });

  it('says what speaks for and against it', () => {
    display([sampleLikely({ against: [{ text: 'You saw no plate.', bits: -0.4 }] })]);
    expect(part('for')?.textContent).toBe('You saw a long bobbin.');
    expect(part('against')?.textContent).toBe('You saw no plate.');
  });

  it('keeps probabilities and bits behind "how do we know?"', () => {
    display([sampleLikely(), other]);
    expect(textWithoutDetails('[data-part="likely"]')).not.toMatch(/80|17|2\.4/);
    const numbers = part('how-likely');
    expect(numbers?.hasAttribute('open')).toBe(false);
    for (const each of ['80 in 100', '17 in 100', '+2.4', 'Club handbook, page 3'])
      expect(numbers?.textContent).toContain(each);
  });

  it('stands beside the next best, what differs first', () => {
    display([sampleLikely(), other]);
    const rows = all('.beside tbody');
    expect(rows.map((row) => row.dataset.differs)).toEqual(['true', 'true', 'true']);
    expect([...(rows[0]?.querySelectorAll('th, td .entry') ?? [])].map((cell) => cell.textContent)).toEqual([
      ...['frame', 'cast iron', 'aluminium'],
    ]);
    display([sampleLikely()]);
    expect(part('beside')).toBeNull();
  });

  it('folds away what is the same in all, and says of what nothing is known', () => {
    const third = sampleLikely({ model: 'club/third', label: 'Third', probability: 0.03 });
    display([sampleLikely({ probability: 0.9 }), { ...third, follows: sampleLikely().follows.slice(0, 2) }]);
    expect(part('beside-same')?.hasAttribute('open')).toBe(false);
    expect(part('beside-same')?.querySelectorAll('tbody')).toHaveLength(2);
    expect(root.querySelector('[data-differs="true"]')?.textContent).toContain(besideTexts.notKnown);
  });

  it('shows the packs’ pictures with whose they are, and says where there is none', () => {
    const picture = { data: 'data:image/png;base64,AAAA', shows: 'the front', credit: 'A. Member', licence: 'CC0' };
    display([sampleLikely(), other], null, false, new Map([['club/alloy', [picture]]]));
    const [first, second] = all('[data-pictures]');
    expect(first?.textContent).toContain(besideTexts.noPicture);
    expect(second?.querySelector('img')?.getAttribute('src')).toBe(picture.data);
    expect(second?.textContent).toContain(besideTexts.credit('A. Member', 'CC0'));
  });

  it('names no address of the advert’s photos to the browser before somebody asks for them', () => {
    display([sampleLikely(), other]);
    expect(root.innerHTML).not.toContain('https://market.example/1.jpg');
    act(() => part('show-photos')?.click());
    expect(part('advert-photo')?.getAttribute('src')).toBe('https://market.example/1.jpg');
    expect(part('advert-photo')?.getAttribute('referrerpolicy')).toBe('no-referrer');
    act(() => void part('advert-photo')?.dispatchEvent(new Event('error')));
    expect(part('advert-photos')?.textContent).toContain(besideTexts.advert.failed);
  });

  it('is saved as a page to send', () => {
    display([sampleLikely(), other]);
    act(() => part('save-beside')?.click());
    expect(saved[0]?.[0]).toBe(besideTexts.page.file);
    expect(saved[0]?.[1]).toContain('Full size, aluminium');
    expect(part('beside')?.textContent).toContain(besideTexts.saved);
  });

  it('says that it can’t be told while none is likely enough, and what follows anyway', () => {
    const share = { probability: 0.2, follows: sampleLikely().follows };
    display([0, 1, 2, 3, 4].map((n) => sampleLikely({ ...share, model: `club/${n}`, label: `Kind ${n}` })));
    const text = textWithoutDetails('[data-part="likely"]');
    expect(text).toContain(texts.open);
    expect(all('[data-part="candidates"] li').map((line) => line.textContent)).toEqual(['Kind 0', 'Kind 1', 'Kind 2']);
    expect(text).toContain('Two others are possible too.');
    expect(text).toContain(texts.followsAnyway);
    expect(all('.beside thead th').map((head) => head.textContent)).toEqual([]);
    expect(all('[data-part="beside-same"] tbody')).toHaveLength(3);
  });

  it('says so where it is none that the packs know', () => {
    display([sampleLikely({ model: null, kind: 'none', label: 'none', probability: 0.9, follows: [], for: [] })]);
    expect(root.querySelector('.likely-name')?.textContent).toBe(texts.none);
    expect(root.textContent).toContain(texts.kinds.none);
    expect(part('follows')).toBeNull();
  });

  it('explains a trade term in one line, on demand', () => {
    display([sampleLikely()]);
    const term = root.querySelector('.term-name');
    expect(term?.hasAttribute('open')).toBe(false);
    expect(term?.textContent).toBe('frameWhat the body is cast from.');
  });

  it('has more on the kind: what it is for, what fits, what to mind', () => {
    const minded = [{ words: 'industrial', text: 'Said to sell it.' }];
    const kind = {
      explain: 'Heavy.',
      good: ['Seams.'],
      poor: ['Sleeves.'],
      fits: ['Long bobbins'],
      cautions: ['Lift.'],
    };
    display([sampleLikely()], { ...kind, mind: minded });
    for (const each of ['Heavy.', 'Seams.', 'Sleeves.', 'Long bobbins', 'Lift.', 'industrial', 'Said to sell it.'])
      expect(part('kind')?.textContent).toContain(each);
  });
});
