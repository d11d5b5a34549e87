// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import type { Likely } from '../../../src/audit/types';
import type { KindNote } from '../../../src/session/kind-note';
import { likelyTexts as texts } from '../../../src/text/catalogue/likely';
import { LikelyPart } from '../../../src/view/panel/LikelyPart';
import { stage } from './rendered';
import { sampleAudit, sampleLikely, sampleWords } from './sample';

const { root, show, part, all, textWithoutDetails } = stage();
const display = (likely: Likely[], kind: KindNote | null = null, folded = false) =>
  show(<LikelyPart audit={sampleAudit({ likely })} words={sampleWords} {...{ kind, folded }} />);
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
    expect([...(rows[0]?.querySelectorAll('th, td') ?? [])].map((cell) => cell.textContent)).toEqual([
      ...['frame', 'cast iron', 'aluminium'],
    ]);
    display([sampleLikely()]);
    expect(part('beside')).toBeNull();
  });

  it('says that it can’t be told while none is likely enough, and what follows anyway', () => {
    const share = { probability: 0.2, follows: sampleLikely().follows };
    display([0, 1, 2, 3, 4].map((n) => sampleLikely({ ...share, model: `club/${n}`, label: `Kind ${n}` })));
    const text = textWithoutDetails('[data-part="likely"]');
    expect(text).toContain(texts.open);
    expect(all('[data-part="candidates"] li').map((line) => line.textContent)).toEqual(['Kind 0', 'Kind 1', 'Kind 2']);
    expect(text).toContain('Two others are possible too.');
    expect(text).toContain(texts.followsAnyway);
    expect(part('beside')).toBeNull();
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
