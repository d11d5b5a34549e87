// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import type { Screen } from '../../../src/session/screen';
import { originTexts } from '../../../src/text/catalogue/origin';
import { panelTexts as texts } from '../../../src/text/catalogue/panel';
import { Panel } from '../../../src/view/panel/Panel';
import {
  sampleAudit,
  sampleFinding,
  sampleLikely,
  sampleListing,
  sampleNext,
  sampleScreen,
  sampleWords,
} from './sample';

let root: HTMLElement;

function show(screen: Screen, copy: (text: string) => Promise<boolean> = async () => true): HTMLElement {
  root = document.createElement('div');
  document.body.append(root);
  const seen = { saw: () => {}, takeBack: () => {} };
  act(() =>
    render(
      <Panel
        screen={screen}
        workbench="chrome-extension://ours/workbench.html"
        {...{ copy, seen, isPrivate: false, save: () => {}, makeSheet: null }}
      />,
      root,
    ),
  );
  return root;
}

afterEach(() => {
  render(null, root);
  root.remove();
});

const all = (selector: string) => [...root.querySelectorAll(selector)];
const textOf = (selector: string) => root.querySelector(selector)?.textContent ?? '';

/** A click, and all that follows from it. */
async function press(selector: string): Promise<void> {
  await act(async () => {
    root.querySelector<HTMLButtonElement>(selector)?.click();
    await new Promise((resolve) => setTimeout(resolve));
  });
}

describe('the panel with an audit', () => {
  it('sums up in one or two sentences', () => {
    show(sampleScreen());
    expect(textOf('[data-part="summary"]')).toBe(
      'One thing in this advert doesn’t hold against what is known. One more is not shown yet.',
    );
    expect(textOf('[role="status"]')).toBe(textOf('[data-part="summary"]'));
  });

  it('shows said beside known: words, where they stand, source; the pack behind "how do we know?"', () => {
    show(sampleScreen());
    const finding = root.querySelector('[data-group="disproved"] [data-finding="claim-fact"]');
    const said = finding?.querySelector('[data-part="said"]');
    const known = finding?.querySelector('[data-part="known"]');
    expect(said?.querySelector('q')?.textContent).toBe('light alloy body');
    expect(said?.querySelector('q')?.getAttribute('lang')).toBe('en');
    expect(said?.textContent).toContain(texts.fields.description);
    expect(known?.textContent).toContain('The frame is cast iron.');
    expect(known?.textContent).toContain('Works list, page 4');
    const how = finding?.querySelector('[data-part="how"]');
    expect(how?.textContent).toContain(texts.packs.invented('Club handbook, edition 3'));
  });

  it('names the packs beside their entries where several speak', () => {
    const [one] = sampleFinding().known;
    const known = [one!, { pack: 'other', entry: 'o', text: 'The frame is steel.', source: null }];
    show(sampleScreen(sampleAudit({ findings: [sampleFinding({ known })] })));
    const entries = all('[data-part="known"] .words').map((entry) => entry.textContent);
    expect(entries[0]).toContain('Club handbook, edition 3');
    expect(entries[1]).toContain(texts.unknownPack('other'));
    expect(entries[1]).toContain(texts.noSource);
  });

  it('quotes the same words once, with all places where they stand', () => {
    const said = [
      { field: 'title', quote: 'Light alloy', start: 0, end: 11 },
      { field: 'description', quote: 'light alloy', start: 3, end: 14 },
      { field: 'description', quote: 'light alloy', start: 40, end: 51 },
    ] as const;
    show(sampleScreen(sampleAudit({ findings: [sampleFinding({ said: [...said] })] })));
    expect(all('[data-part="said"] .words').map((words) => words.textContent)).toEqual([
      'Light alloy in the title and in the description',
    ]);
  });

  it('tells a source once where entries or findings that stand together have the same', () => {
    const [one] = sampleFinding().known;
    const known = [one!, { ...one!, entry: 'corvane-7', text: 'The lid is wood.' }];
    const findings = [
      sampleFinding({ id: 'a', known }),
      sampleFinding({ id: 'b' }),
      sampleFinding({ id: 'c', known: [{ ...one!, source: null }] }),
    ];
    show(sampleScreen(sampleAudit({ findings })));
    const [first, second, third] = all('[data-group="disproved"] .tag');
    expect(first?.querySelector('.halves')?.textContent?.match(/Works list, page 4/g)).toHaveLength(1);
    expect(second?.querySelector('.halves')?.textContent).toContain(texts.sourceAgain);
    expect(third?.querySelector('.halves')?.textContent).toContain(texts.noSource);
  });

  it('shows two statements of the advert against each other', () => {
    const both = sampleFinding({
      check: 'claim-claim',
      known: [],
      said: [
        { field: 'title', quote: 'free arm', start: 0, end: 8 },
        { field: 'description', quote: 'flat bed', start: 4, end: 12 },
      ],
    });
    show(sampleScreen(sampleAudit({ findings: [both] })));
    expect(all('[data-part="said"] q').map((q) => q.textContent)).toEqual(['free arm', 'flat bed']);
    expect(root.querySelector('[data-part="known"]')).toBeNull();
    expect(all('.half-name').map((name) => name.textContent)).toEqual([texts.said, texts.saidAgain]);
  });

  it('keeps what can happen in sight, and folds what to do about it and the words that called for it', () => {
    const text = 'Old wiring can kill: insulation perishes. Don’t plug it in before a competent person has tested it.';
    const known = [{ pack: 'club', entry: 'mains', text, source: null }];
    const caution = sampleFinding({ check: 'caution', standing: 'caution', text, known, ask: null });
    show(sampleScreen(sampleAudit({ findings: [caution, { ...caution, id: 'c2', said: [] }] })));
    const [withWords, without] = all('[data-finding="caution"]');
    for (const each of [withWords, without]) {
      expect(each?.querySelector('details')?.hasAttribute('open')).toBe(false);
      expect(each?.querySelector('summary')?.textContent).toBe('Old wiring can kill');
      expect(each?.textContent?.match(/Insulation perishes\. Don’t plug it in/g)).toHaveLength(1);
      expect(each?.textContent).toContain(texts.noSource);
    }
    expect(withWords?.querySelector('[data-part="said"] q')?.textContent).toBe('light alloy body');
    expect(without?.querySelector('[data-part="said"]')).toBeNull();
  });

  it('says of words to mind which words, and what to mind; where they stand and the source are opened', () => {
    const text = 'Many a machine is called industrial to sell it.';
    const known = [{ pack: 'club', entry: 'industrial', text, source: 'Works list, page 4' }];
    const said = [{ field: 'title', quote: 'industrial', start: 0, end: 10 }] as const;
    show(
      sampleScreen(
        sampleAudit({
          findings: [sampleFinding({ check: 'wording', standing: 'caution', text, known, said: [...said] })],
        }),
      ),
    );
    const words = root.querySelector('[data-finding="wording"]')?.cloneNode(true) as HTMLElement;
    expect(words.querySelector('[data-part="how"]')?.textContent).toContain('Works list, page 4');
    for (const hidden of words.querySelectorAll('details')) hidden.remove();
    expect(words.textContent).toBe(`industrial${text}`);
  });

  it('folds what agrees away, under a line that says of which words', () => {
    show(sampleScreen());
    const agreeing = root.querySelector('[data-group="agrees"] details');
    expect(agreeing?.hasAttribute('open')).toBe(false);
    expect(agreeing?.querySelector('summary')?.textContent).toBe('Agrees “weight 12 kg”');
    expect(agreeing?.querySelector('.tag')?.textContent).toContain('11 to 13 kg without its case.');
  });

  it('never folds what doesn’t hold or is not shown yet', () => {
    show(sampleScreen());
    for (const standing of ['disproved', 'unproved'])
      for (const tag of all(`[data-standing="${standing}"]`)) expect(tag.closest('details')).toBeNull();
  });

  it('shows three things that are not shown yet at most', () => {
    const findings = [1, 2, 3, 4, 5].map((n) => sampleFinding({ id: `u${n}`, standing: 'unproved' }));
    show(sampleScreen(sampleAudit({ findings })));
    expect(all('[data-group="unproved"] [data-finding]')).toHaveLength(3);
    expect(textOf('[data-part="summary"]')).toContain('three things are not shown yet');
  });

  it('keeps numbers behind "how do we know?"', () => {
    show(sampleScreen());
    for (const details of all('[data-part="how"], [data-part="how-price"], [data-part="what-was-read"]'))
      expect(details.hasAttribute('open')).toBe(false);
    expect(textOf('[data-part="how-price"]')).toContain('about 93 in 100');
    const price = root.querySelector('[data-part="price"]')?.cloneNode(true) as HTMLElement;
    for (const hidden of price.querySelectorAll('details')) hidden.remove();
    expect(price.textContent).not.toMatch(/0\.93|93|1\.60/);
  });

  it('explains a trade term on demand', () => {
    show(sampleScreen());
    expect(textOf('[data-part="term"] summary')).toBe('What is meant by “frame”?');
    expect(textOf('[data-part="term"]')).toContain('Iron draws a magnet.');
  });

  it('explains a word of the trade where it stands, by a click and by keys, one at a time', async () => {
    show(sampleScreen());
    const word = root.querySelector<HTMLElement>('[data-part="known"] .term');
    expect(word?.textContent).toBe('frame');
    expect(word?.tabIndex).toBe(0);
    const note = () => root.querySelector('[role="note"]')?.textContent;
    const key = (name: string) =>
      act(() => void word?.dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true })));
    expect(note()).toBeUndefined();
    await press('[data-part="known"] .term');
    expect(note()).toBe('What carries all else.');
    expect(word?.getAttribute('aria-expanded')).toBe('true');
    expect(root.querySelector(`#${word?.getAttribute('aria-controls')}`)?.textContent).toBe(note());
    key('Escape');
    expect(note()).toBeUndefined();
    key('Enter');
    expect(note()).toBe('What carries all else.');
    key(' ');
    expect(note()).toBeUndefined();
    expect(word?.closest('p')?.textContent).toBe('The frame is cast iron.');
  });

  it('tells the price in words and on a drawn scale with the same content', () => {
    show(sampleScreen());
    expect(textOf('[data-part="price"]')).toContain('The advert asks €240.');
    expect(root.querySelector('svg[role="img"]')?.getAttribute('aria-label')).toBe(
      'Scale of prices: usual from €95 to €220, middle €150, this one €240.',
    );
  });

  it('tells a price in another currency in that of the known prices too', () => {
    const audit = sampleAudit();
    audit.listing.price = { amount: '210', currency: 'GBP', how: 'asking' };
    audit.price.converted = { from: 'GBP', to: 'EUR', amount: 240.2, times: 1.1438, date: '2026-06', pack: null };
    show(sampleScreen(audit));
    expect(textOf('[data-part="price"]')).toContain(
      'The advert asks £210. At the rate of 2026-06, 1.144 EUR for 1 GBP (typed in by you), that is €240.',
    );
  });

  it('leaves out the halves where there is nothing to set side by side, and an entry said twice', () => {
    const twice = [sampleFinding().known[0], sampleFinding().known[0]] as never;
    show(
      sampleScreen(
        sampleAudit({ findings: [sampleFinding({ id: 'a', said: [], known: [] }), sampleFinding({ known: twice })] }),
      ),
    );
    const [empty, full] = all('[data-finding]');
    expect(empty?.querySelector('.halves')).toBeNull();
    expect(full?.querySelectorAll('[data-part="known"] .words')).toHaveLength(1);
  });

  it('names the serial’s runs, by model and source', () => {
    show(sampleScreen());
    expect(textOf('[data-part="serial"]')).toContain('another model');
    expect(textOf('[data-run="club/run-12"]')).toContain('Corvane 7');
    expect(textOf('[data-run="club/run-12"]')).toContain('Works list, page 9');
  });

  it('says nothing of price and serial where no machine is for sale', () => {
    show(sampleScreen(sampleAudit({ kind: 'wanted', findings: [] })));
    expect(root.querySelector('[data-part="price"]')).toBeNull();
    expect(root.querySelector('[data-part="serial"]')).toBeNull();
    expect(textOf('[data-part="summary"]')).toBe(texts.summary.kinds.wanted);
  });

  it('says where the price stands once, and where that is from behind "how do we know?"', () => {
    const known = [{ pack: 'club', entry: 'band', text: 'Eight in ten go for that.', source: 'Sales list' }];
    const finding = sampleFinding({ id: 'price', check: 'price', standing: 'caution', known, text: 'It is dear.' });
    show(sampleScreen(sampleAudit({ findings: [finding] })));
    expect(root.querySelector('[data-finding="price"]')).toBeNull();
    expect(textOf('[data-part="summary"]')).toBe(texts.summary.price.above);
    expect(textOf('[data-part="how-price"]')).toContain('Sales list');
    expect(root.querySelector('#finding-price')?.getAttribute('data-part')).toBe('price');
  });

  it('makes a line of a price of which nothing is known', () => {
    const price = { ...sampleAudit().price, standing: 'no-band', ratio: null, probability: null, band: null } as const;
    show(sampleScreen(sampleAudit({ price, findings: [] })));
    expect(textOf('[data-part="price"]')).toContain(texts.price.standings['no-band']);
    expect(root.querySelector('[data-part="price"] svg')).toBeNull();
  });

  it('doesn’t count what is to be minded of every advert', () => {
    const standing = sampleFinding({ check: 'caution', standing: 'caution', said: [] });
    const agreeing = sampleFinding({ id: 'a', standing: 'agrees' });
    show(sampleScreen(sampleAudit({ findings: [standing, agreeing] })));
    expect(textOf('[data-part="summary"]')).toBe(texts.summary.agrees);
  });

  it('shows the first five questions, and all of them in the message', () => {
    const findings = [1, 2, 3, 4, 5, 6, 7].map((n) => sampleFinding({ id: `q${n}`, ask: `Question ${n}?` }));
    show(sampleScreen(sampleAudit({ findings })));
    expect(all('.questions li')).toHaveLength(5);
    expect(textOf('[data-part="questions"]')).toContain(texts.questions.more(2));
    expect(root.querySelector('textarea')?.value).toContain('Question 7?');
  });

  it.each([
    ['de', 'Guten Tag'],
    ['fr-CA', 'Bonjour'],
    ['nl', 'Hello'],
    [null, 'Hello'],
  ])('greets in the advert’s language, as the questions are: %s', (language, greeting) => {
    const screen = sampleScreen(sampleAudit({ findings: [sampleFinding({ ask: 'Question?' })] }));
    show({ ...screen, listing: { ...screen.listing, language } });
    expect(root.querySelector('textarea')?.value.startsWith(greeting)).toBe(true);
  });

  it('folds the number’s tables away where a finding speaks of the number', () => {
    const finding = sampleFinding({ check: 'serial-model' });
    show(sampleScreen(sampleAudit({ findings: [finding] })));
    expect(root.querySelector('[data-part="serial-runs"]')?.hasAttribute('open')).toBe(false);
    expect(textOf('[data-part="serial-runs"] summary')).toBe(
      `Serial number ${texts.serial.folded('CV 20417', texts.serial.short['another-model'])}`,
    );
    expect(textOf('[data-part="serial-runs"]')).toContain('Works list, page 9');
  });

  it('copies each question once, as one message', async () => {
    const copied: string[] = [];
    const twice = [sampleFinding({ id: 'a' }), sampleFinding({ id: 'b' })];
    show(sampleScreen(sampleAudit({ findings: twice })), async (text) => {
      copied.push(text);
      return true;
    });
    await press('[data-part="copy"]');
    expect(copied).toHaveLength(1);
    expect(copied[0]?.match(/Does a magnet stick to the body\?/g)).toHaveLength(1);
    expect(textOf('[data-part="copy-outcome"]')).toBe(texts.questions.copied);
  });

  it('says so where copying was not allowed', async () => {
    show(sampleScreen(), async () => false);
    await press('[data-part="copy"]');
    expect(textOf('[data-part="copy-outcome"]')).toBe(texts.questions.notCopied);
  });

  it('labels packs: edition, unsealed, invented', () => {
    show(sampleScreen());
    expect(all('[data-pack-id="club"] .labels span').map((label) => label.textContent)).toEqual([
      'edition 3',
      originTexts.unsealed,
      originTexts.demo,
    ]);
    expect(textOf('[data-part="packs"]')).toContain(originTexts.unsealedExplain);
    expect(textOf('[data-part="packs"] summary')).toContain(texts.packs.count(1, 1));
  });

  it('says of a pack that came with the program that it did, not that nobody proves it', () => {
    const club = { ...sampleWords.packs.get('club')!, shipped: true };
    show({ ...sampleScreen(), words: { ...sampleWords, packs: new Map([['club', club]]) } });
    expect(textOf('[data-pack-id="club"]')).toContain(originTexts.shipped);
    expect(textOf('[data-part="packs"]')).not.toContain('nsealed');
  });

  it('tells standings apart by words and marks, in one ink', () => {
    show(sampleScreen());
    expect(all('.tag-mark').map((mark) => mark.textContent)).toEqual(['≠', '?', '=']);
    expect(all('[style]')).toHaveLength(0);
  });
});

describe('what pages and packs say', () => {
  const evil = '<img src=x onerror="globalThis.ran=1"><script>globalThis.ran=1</script>';

  it('is text and nothing else, in every part', () => {
    const finding = sampleFinding({
      text: evil,
      ask: evil,
      said: [{ field: 'title', quote: evil, start: 0, end: 5 }],
      known: [{ pack: evil, entry: evil, text: evil, source: evil }],
    });
    const packs = [{ id: evil, edition: 1, sealedBy: evil }];
    const follows = [{ attribute: evil, name: evil, text: evil, usually: true, source: evil }];
    const ground = { text: evil, bits: 1 };
    const likely = [sampleLikely({ label: evil, model: evil, follows, for: [ground], against: [ground] })];
    const next = sampleNext({ attribute: evil, name: evil, where: evil, place: evil });
    const nextEvidence = [{ ...next, options: [{ value: evil, text: evil, explain: evil }] }];
    const audit = sampleAudit({ findings: [finding], packs, likely, nextEvidence });
    audit.listing.title = evil;
    audit.serial = { ...audit.serial, asWritten: evil };
    const note = { source: 'page', confidence: 1, alternatives: [{ value: evil, source: 'meta' }] } as const;
    const listing = {
      ...sampleListing,
      title: evil,
      description: evil,
      place: evil,
      condition: evil,
      language: evil,
      serials: [evil],
      photos: ['https://market.example/tracker.png'],
      fields: { title: { ...note, alternatives: [...note.alternatives] } },
    };
    const seen = [{ attribute: evil, name: evil, value: evil, text: evil }];
    const minded = [{ words: evil, text: evil }];
    const each = { good: [evil], poor: [evil], fits: [evil], cautions: [evil], mind: minded };
    show({ ...sampleScreen(audit, listing), seen, kind: { explain: evil, ...each } });
    expect(root.querySelectorAll('img, script, iframe, object, embed, style, link')).toHaveLength(0);
    expect(root.textContent).toContain(evil);
    expect((globalThis as { ran?: number }).ran).toBeUndefined();
    expect(all('[lang]').map((element) => element.getAttribute('lang'))).not.toContain(evil);
    // Both doors lead to our own page; what the advert says stands in the anchor, escaped.
    const doors = all('a').map((a) => a.getAttribute('href')?.split('#') ?? []);
    expect(doors.map(([page]) => page)).toEqual(Array(2).fill('chrome-extension://ours/workbench.html'));
    expect(doors.flat().join('')).not.toMatch(/[<>"'\s]/);
  });

  it('is shown without hidden characters', () => {
    const audit = sampleAudit({
      findings: [sampleFinding({ said: [{ field: 'title', quote: 'rare\u202emodel\u0000', start: 0, end: 11 }] })],
    });
    show(sampleScreen(audit));
    expect(textOf('[data-part="said"] q')).toBe('rare⟨U+202E⟩model⟨U+0000⟩');
  });

  it('is cut where it would bury everything else', () => {
    const audit = sampleAudit({ findings: [] });
    audit.listing.title = 'x'.repeat(50_000);
    show(sampleScreen(audit));
    expect(textOf('h1').length).toBeLessThan(250);
    expect(textOf('h1')).toContain('49840 more characters');
  });
});

describe('the panel without an audit', () => {
  it.each([
    [{ screen: 'waiting' }, texts.waiting.heading],
    [{ screen: 'reading' }, texts.reading.heading],
    [{ screen: 'left' }, texts.left.heading],
    [{ screen: 'refused', reason: 'browser-page' }, texts.refused.heading],
    [{ screen: 'failed', reason: 'storage' }, texts.failed.heading],
    [{ screen: 'broken', problem: 'x' }, texts.broken.heading],
    [{ screen: 'packs-failed', trouble: 'denied' }, texts.packsFailed.heading],
    [{ screen: 'no-listing', unread: [] }, texts.noListing.heading],
    [{ screen: 'list' }, texts.list.heading],
    [{ screen: 'no-pack', listing: sampleListing }, texts.noPack.heading],
  ] as [Screen, string][])('says what is so and what to do: %o', (screen, heading) => {
    show(screen);
    expect(textOf('h1')).toBe(heading);
    expect(textOf('[role="status"]')).toBe(heading);
    expect(textOf('.notice').length).toBeGreaterThan(heading.length + 60);
  });

  it('names the frames of other sites, where no advert was found outside of them', () => {
    const unread = ['https://else.example/ad/7?session=1', 'https://else.example/ad/7?session=2', '//other.example/x'];
    show({ screen: 'no-listing', unread });
    expect([...root.querySelectorAll('[data-part="unread"]')].map(({ textContent }) => textContent)).toEqual([
      texts.read.unread('else.example/ad/7'),
      texts.read.unread('other.example/x'),
    ]);
    show({ screen: 'no-listing', unread: [] });
    expect(root.querySelector('[data-part="unread"]')).toBeNull();
  });

  it.each([{ screen: 'waiting' }, { screen: 'no-pack', listing: sampleListing }] as Screen[])(
    'leads to the one question, for a machine on the table: %o',
    (screen) => {
      show(screen);
      const link = root.querySelector<HTMLAnchorElement>('[data-part="to-enquiry"]');
      expect(link?.getAttribute('href')).toBe('chrome-extension://ours/workbench.html#enquiry');
      expect(link?.textContent).toBe(texts.onTheTable.action);
    },
  );
});
