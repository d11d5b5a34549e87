import type { Audit, Finding, Likely, NextEvidence } from '../../../src/audit/types';
import type { Listing } from '../../../src/listing/types';
import type { ReadReading } from '../../../src/session/reading';
import type { Screen } from '../../../src/session/screen';
import type { Words } from '../../../src/session/words';
import { sampleHarvest } from '../session/sample-harvest';

/** A finding with one said and one known, to be varied. */
export function sampleFinding(change: Partial<Finding> = {}): Finding {
  return {
    id: 'claim-fact/club/frame/description/10',
    check: 'claim-fact',
    standing: 'disproved',
    attribute: 'club/frame',
    said: [{ field: 'description', quote: 'light alloy body', start: 10, end: 26 }],
    known: [{ pack: 'club', entry: 'corvane-6', text: 'The frame is cast iron.', source: 'Works list, page 4' }],
    text: 'The advert says the frame is aluminium; this model’s is cast iron.',
    ask: 'Does a magnet stick to the body?',
    ...change,
  };
}

export function sampleAudit(change: Partial<Audit> = {}): Audit {
  return {
    schema: 1,
    kind: 'item',
    listing: {
      title: 'Corvane 6 sewing machine, light alloy, rare',
      description: 'Lovely old light alloy body.',
      details: '',
      price: { amount: '240', currency: 'EUR', how: 'asking' },
      serials: ['CV 20417'],
      condition: 'used',
      place: 'Harbour Street',
      photos: ['https://market.example/1.jpg'],
      fields: {
        title: { source: 'json-ld', confidence: 0.95, alternatives: [{ value: 'Corvane 6', source: 'meta' }] },
      },
    },
    claimedModel: 'club/corvane-6',
    claimed: [{ model: 'club/corvane-6', field: 'title', quote: 'Corvane 6', start: 0, end: 9, stance: 'says' }],
    serial: {
      asWritten: 'CV 20417',
      normal: 'CV20417',
      verdict: 'another-model',
      runs: [
        {
          pack: 'club',
          entry: 'run-12',
          models: ['club/corvane-7'],
          year: 1954,
          first: 'CV20000',
          last: 'CV20999',
          source: 'Works list, page 9',
        },
      ],
      suggestions: [],
    },
    serials: [],
    likely: [],
    findings: [
      sampleFinding(),
      sampleFinding({
        id: 'm1',
        check: 'missing',
        standing: 'unproved',
        attribute: null,
        said: [],
        text: 'No photograph of the underside is mentioned.',
        ask: 'Could you send a photograph of the underside?',
      }),
      sampleFinding({
        id: 'c1',
        check: 'caution',
        standing: 'caution',
        attribute: null,
        said: [],
        known: [
          {
            pack: 'club',
            entry: 'mains',
            text: 'Old mains wiring loses its insulation. Don’t plug it in before a competent person has tested it to the local code.',
            source: null,
          },
        ],
        text: 'Mind the old wiring.',
        ask: null,
      }),
      sampleFinding({
        id: 'a1',
        check: 'weight',
        standing: 'agrees',
        attribute: null,
        said: [{ field: 'details', quote: 'weight 12 kg', start: 0, end: 12 }],
        known: [
          { pack: 'club', entry: 'corvane-6', text: '11 to 13 kg without its case.', source: 'Works list, page 4' },
        ],
        text: 'The weight fits the model.',
        ask: null,
      }),
    ],
    nextEvidence: [],
    price: {
      standing: 'above',
      ratio: 1.6,
      probability: 0.93,
      ...{ why: null, converted: null, taken: null, factors: [], seen: [] },
      band: {
        ...{ low: 95, mid: 150, high: 220, half: { low: 120, high: 185 }, currency: 'EUR', kind: 'paid', grade: null },
        ...{ askedToPaid: 1.1, observations: 14, effective: 9.5, stated: 4 },
      },
    },
    packs: [{ id: 'club', edition: 3, sealedBy: null }],
    ...change,
  };
}

export const sampleListing: Listing = {
  url: 'https://market.example/advert',
  language: 'en',
  title: 'Corvane 6 sewing machine, light alloy, rare',
  description: 'Lovely old light alloy body.',
  details: '',
  price: { amount: '240', currency: 'EUR', how: 'asking' },
  priceText: '240 EUR',
  serials: ['CV 20417'],
  condition: 'used',
  place: 'Harbour Street',
  listedDate: '2026-05-01',
  sale: null,
  seller: null,
  photos: ['https://market.example/1.jpg'],
  offers: 1,
  fields: { title: { source: 'json-ld', confidence: 0.95, alternatives: [{ value: 'Corvane 6', source: 'meta' }] } },
};

export const sampleWords: Words = {
  models: new Map([
    ['club/corvane-6', 'Corvane 6'],
    ['club/corvane-7', 'Corvane 7'],
  ]),
  terms: new Map([
    [
      'club/frame',
      {
        label: 'frame',
        question: null,
        explain: 'What the body is cast from.',
        where: 'Underside.',
        see: 'Iron draws a magnet.',
      },
    ],
  ]),
  spots: new Map([['The frame is cast iron.', [{ start: 4, end: 9, explain: 'What carries all else.' }]]]),
  packs: new Map([
    [
      'club',
      {
        id: 'club',
        title: 'Club handbook',
        edition: 3,
        language: 'en',
        sealedBy: null,
        shipped: false,
        demo: true,
        outline: 'sewing-machine',
      },
    ],
  ]),
};

export const sampleReading: ReadReading = {
  state: 'read',
  window: 1,
  tab: 2,
  number: 1,
  asOf: '2026-06-01',
  document: 'D1',
  address: 'https://market.example/advert',
  harvest: sampleHarvest(),
};

export function sampleScreen(
  audit: Audit = sampleAudit(),
  listing: Listing = sampleListing,
): Extract<Screen, { screen: 'audit' }> {
  const rest = { pending: false, seen: [], kind: null, words: sampleWords, pictures: new Map(), place: null };
  return { screen: 'audit', reading: sampleReading, listing, audit, ...rest };
}

/** A kind with what follows from it, to be varied. */
export function sampleLikely(change: Partial<Likely> = {}): Likely {
  const follows = (attribute: string, text: string, usually = false) => ({
    ...{ attribute: `club/${attribute}`, name: attribute, text, usually, source: 'Club handbook, page 3' },
  });
  return {
    ...{ model: 'club/iron', label: 'Full size, iron', kind: 'type', probability: 0.8, restsOn: null, against: [] },
    for: [{ text: 'You saw a long bobbin.', bits: 2.4 }],
    follows: [follows('frame', 'cast iron'), follows('bobbin', 'long'), follows('weight', '10 to 16 kg', true)],
    ...change,
  };
}

/** A question with two answers, to be varied. */
export function sampleNext(change: Partial<NextEvidence> = {}): NextEvidence {
  return {
    ...{ attribute: 'club/loading', name: 'bobbin loading', bits: 1.2, effort: 'photo', ask: 'From where, please?' },
    ...{ where: 'Near the needle.', see: null, place: 'slide-plate' },
    options: [
      { value: 'shuttle', text: 'in a shuttle', explain: 'A long thin bobbin.' },
      { value: 'front', text: 'from the front', explain: null },
    ],
    ...change,
  };
}
