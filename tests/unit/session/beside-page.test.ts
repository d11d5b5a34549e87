// @vitest-environment jsdom
import { describe, expect, it } from 'vitest';
import { type BesidePage, besidePage } from '../../../src/session/beside-page';
import type { Pictures } from '../../../src/session/pictures';
import { besideTexts } from '../../../src/text/catalogue/beside';
import { sampleAudit, sampleLikely, sampleListing, sampleWords } from '../view/sample';

const DATA = 'data:image/png;base64,AAAA';
const other = sampleLikely({ model: 'club/alloy', label: 'Full size, aluminium', probability: 0.15, follows: [] });
const frame = { attribute: 'club/frame', name: 'frame', text: 'aluminium', usually: true, source: null };

interface Change {
  pictures?: Pictures;
  own?: string[];
  label?: string;
  title?: string;
  url?: string | null;
}

function page({ pictures = new Map(), own = [], label = other.label, title = 'A machine', url = null }: Change = {}) {
  const audit = sampleAudit({ likely: [sampleLikely(), { ...other, label, follows: [frame] }] });
  const answer: BesidePage['answer'] = {
    audit,
    listing: { ...sampleListing, title, url },
    words: sampleWords,
    pictures,
  };
  const text = besidePage({ answer, own, asOf: '2026-06-01' });
  return { text, document: new DOMParser().parseFromString(text, 'text/html') };
}

describe('the page that is sent', () => {
  it('holds the candidates, what differs before what doesn’t, the packs and the day', () => {
    const { document } = page();
    const words = document.body.textContent ?? '';
    for (const each of ['Full size, iron', 'Full size, aluminium', 'usually aluminium', '2026-06-01', 'A machine'])
      expect(words).toContain(each);
    expect(document.querySelector('th[scope="row"]')?.textContent).toBe('frame');
  });

  it('loads nothing from elsewhere and runs nothing', () => {
    const { document } = page({ url: 'https://market.example/1' });
    expect(document.querySelector('meta[http-equiv]')?.getAttribute('content')).toContain("default-src 'none'");
    expect(document.querySelectorAll('script, link, iframe, object, embed, [onclick], [onload]')).toHaveLength(0);
    expect([...document.querySelectorAll('[src]')]).toEqual([]);
    expect(document.querySelector('a')?.getAttribute('rel')).toBe('noreferrer');
  });

  it('escapes whatever stands in adverts and packs', () => {
    const evil = `</title></style><script>alert(1)</script><img src=x onerror=alert(1)>"'\u202e`;
    const picture = { data: `${DATA}" onerror="alert(1)`, shows: evil, credit: evil, licence: evil };
    const sound = { data: DATA, shows: evil, credit: evil, licence: evil };
    const { text, document } = page({
      ...{ label: evil, title: evil, url: `https://market.example/"><script>` },
      ...{ own: [`${DATA}"><script>`, DATA], pictures: new Map([['club/alloy', [picture, sound]]]) },
    });
    expect(document.querySelectorAll('script, [onerror]')).toHaveLength(0);
    expect([...document.querySelectorAll('img')].map(({ src }) => src)).toEqual([DATA, DATA]);
    expect(text).not.toContain('\u202e');
    expect(document.body.textContent).toContain('<script>alert(1)</script>');
  });

  it('follows no address but one of the web', () => {
    expect(page({ url: 'javascript:alert(1)' }).document.querySelector('a')).toBeNull();
  });

  it('carries own photos, and says of the advert’s where they are', () => {
    expect(page().document.body.textContent).toContain(besideTexts.page.elsewhere(1));
    const { document } = page({ own: [DATA] });
    expect(document.querySelector('img')?.alt).toBe(besideTexts.page.photoAlt);
    expect(document.body.textContent).not.toContain(besideTexts.page.elsewhere(1));
  });
});
