import { parsePack } from '../../../../src/pack/parse';
import type { Pack } from '../../../../src/pack/schema/index';

/** The least that is a pack; `parts` are laid over it. All makers and models here are invented. */
export function smallPack(parts: Partial<Pack> = {}, about: Partial<Pack['about']> = {}): Pack {
  return {
    schema: 1,
    about: {
      id: 'small',
      title: 'A small pack',
      edition: 1,
      licence: 'CC0-1.0',
      language: 'en',
      covers: { thing: 'sewing machine', words: ['sewing machine'] },
      ...about,
    },
    ...parts,
  };
}

/** Every part of the format with every field filled, all in order. */
export function fullPack(): Pack {
  return {
    $schema: 'pack.schema.json',
    schema: 1,
    about: {
      id: 'ottermere',
      title: { en: 'Ottermere machines', de: 'Ottermere-Maschinen' },
      edition: 3,
      licence: 'CC-BY-4.0',
      language: 'en',
      currency: 'GBP',
      keepers: [{ name: 'A keeper', contact: 'keeper@example.invalid' }],
      members: [{ name: 'A member', key: 'abc' }],
      covers: {
        thing: { en: 'sewing machine', de: 'Nähmaschine' },
        words: ['sewing machine', { text: 'Nähmaschine', lang: 'de' }],
        parts: ['bobbin'],
        not: ['sewing machine table'],
      },
      extends: 'trade',
      sources: {
        ledger: 'Works ledger, invented',
        page: { text: 'A page, invented', url: 'https://example.invalid/page', date: '2026-01', common: false },
      },
      demo: true,
      expires: '2030-12-31',
      note: 'Invented throughout.',
    },
    attributes: [
      {
        id: 'frame',
        kind: 'choice',
        label: { en: 'Frame', de: 'Gestell' },
        explain: 'What the body is cast of.',
        where: 'Underneath',
        place: 'underside',
        see: 'A magnet holds on iron.',
        ask: { en: 'Does a magnet hold on the bed?' },
        effort: 'visit',
        trust: { seller: 0.8, eye: 0.95 },
        source: 'ledger',
        values: [
          { id: 'iron', label: 'iron', words: ['iron'] },
          {
            id: 'cast-iron',
            label: 'cast iron',
            explain: 'Heavy.',
            words: ['cast iron'],
            within: 'iron',
            excludes: ['alloy'],
          },
          { id: 'alloy', label: 'aluminium', words: [{ text: 'alloy', lang: 'en' }] },
        ],
      },
      { id: 'free-arm', kind: 'yes-no', label: 'Free arm', yes: ['free arm'], no: ['flat bed'], effort: 'photo' },
      { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg', words: ['weighs'], allowance: 3, effort: 'read' },
    ],
    families: [
      {
        id: 'full-size',
        label: 'Ottermere full size',
        names: ['Ottermere full size'],
        maker: 'Ottermere',
        facts: { weight: { from: 10, to: 16 }, 'free-arm': false },
        necessary: { frame: 'cast-iron' },
        explain: { en: 'The large ones.' },
        source: 'ledger',
      },
    ],
    models: [
      {
        id: 'm12',
        label: 'Ottermere 12',
        names: ['Ottermere 12', { text: '12', lang: 'en', weak: true }],
        maker: 'Ottermere',
        family: 'full-size',
        type: 'ottermere/upright',
        made: { from: 1950, to: 1958 },
        places: ['Hallowdene'],
        number: 120000,
        survival: 0.1,
        facts: {
          weight: {
            is: { from: 11, to: 12.5 },
            when: { made: { from: 1952 } },
            holds: 'usually',
            source: 'page',
            note: 'a note',
          },
          'free-arm': [
            { is: false, when: { made: { to: 1955 }, places: ['Hallowdene'] } },
            { is: true, when: { serials: [{ scheme: 'k', first: 'K 20001 B', last: '20400' }] }, source: 'ledger' },
          ],
        },
        variants: [
          {
            id: 'late',
            label: 'Late',
            when: { made: { from: 1957 } },
            facts: { frame: ['cast-iron', 'alloy'] },
            source: 'page',
          },
        ],
        mistakenFor: [{ model: 'm14', rate: 0.05 }],
        launchPrice: { amount: 32.5, currency: 'GBP', year: 1950, source: 'ledger' },
        batches: [{ size: 500, date: '1951-02', source: 'ledger' }],
        fits: [{ id: 'needle', label: 'Needle', words: ['needle'], kind: 'consumable', source: 'page' }],
        suits: { good: ['quilting'], poor: [{ en: 'knits' }] },
        where: { weight: 'On a scale' },
        pictures: [
          {
            data: 'data:image/png;base64,iVBORw0KGgo=',
            shows: 'the front',
            attribute: 'frame',
            credit: 'nobody',
            licence: 'CC0-1.0',
          },
        ],
        explain: 'A plain one.',
        source: 'ledger',
      },
      { id: 'm14', label: 'Ottermere 14', names: ['Ottermere 14'] },
    ],
    types: [{ id: 'upright', label: 'Upright', names: [], facts: { weight: 11 } }],
    serials: {
      schemes: [
        {
          id: 'k',
          maker: 'Ottermere',
          prefix: 'K',
          digits: 5,
          suffix: 'B',
          complete: true,
          where: 'bed',
          source: 'ledger',
        },
        { id: 'plain', prefix: '', digits: [4, 6] },
      ],
      runs: {
        scheme: ['k', 'k', 'plain'],
        first: ['K 20001 B', '20101', '1000'],
        last: ['K20400B', '20150', '199999'],
        models: [['m12'], ['m12', 'm14'], ['trade/other']],
        year: [1952, null, null],
        date: ['1952-04-30', null, '1954'],
        place: ['Hallowdene', null, null],
        source: ['ledger', null, 'page'],
      },
    },
    wording: [
      {
        id: 'light',
        words: ['lightweight'],
        means: { attribute: 'weight', atMost: 8 },
        use: 'loose',
        mind: 'Often said of iron.',
      },
      {
        id: 'iron',
        words: [{ text: 'solid iron', lang: 'en' }],
        means: { attribute: 'frame', is: 'iron' },
        use: 'firm',
        source: 'ledger',
      },
      { id: 'heavy', words: ['heavy'], means: { attribute: 'weight', atLeast: 9 } },
      { id: 'victorian', words: ['Victorian'], means: { made: { to: 1901 } }, ask: 'When was it made?' },
      { id: 'antique', words: ['antique'], means: { ageAtLeast: 100 }, explain: 'Over 100 years.' },
      { id: 'rare', words: ['rare'], means: { madeUnder: 5000 }, unless: ['rare colour'] },
      { id: 'industrial', words: ['industrial'], never: 'None of these is.' },
    ],
    prices: {
      grades: [{ id: 'working', label: 'working', words: ['in working order'], explain: 'It sews.', usual: true }],
      bands: [
        {
          model: 'm12',
          grade: 'working',
          low: 40,
          mid: 70,
          high: 120,
          currency: 'GBP',
          date: '2026-03',
          weight: 12,
          kind: 'asked',
          source: 'page',
        },
        { model: 'm14', low: 40, high: 120, currency: 'GBP', date: '2026' },
      ],
      factors: [
        { id: 'case', label: 'with case', kind: 'completeness', words: ['with case'], times: 1.2, source: 'page' },
      ],
      observations: [
        {
          model: 'm12',
          kind: 'paid',
          amount: 65,
          currency: 'GBP',
          date: '2026-02-28',
          grade: 'working',
          complete: true,
          finish: 'plain',
          place: 'Hallowdene',
          seller: 'private',
          source: 'page',
        },
      ],
      index: [
        {
          currency: 'GBP',
          label: 'Prices',
          points: [
            ['2024', 98],
            ['2025-06', 100],
          ],
          source: 'page',
        },
      ],
      wages: [{ currency: 'GBP', label: 'Wages', points: [['1950', 7.5]] }],
      rates: [{ from: 'EUR', to: 'GBP', date: '2026-01-05', rate: 0.86, source: 'page' }],
    },
    cautions: [
      {
        id: 'mains',
        text: 'Have the wiring tested before you plug it in.',
        models: ['m12'],
        facts: [{ attribute: 'frame', is: 'iron' }],
        words: ['mains'],
        source: 'page',
      },
    ],
    photographs: [
      {
        id: 'underside',
        label: 'the underside',
        tells: 'What it is cast of.',
        ask: { en: 'Could you show the underside?', de: 'Könnten Sie die Unterseite zeigen?' },
        settles: ['frame'],
        names: ['serial', 'model'],
        facts: [{ attribute: 'frame', is: 'iron' }],
        shown: ['underside', { text: 'Unterseite', lang: 'de' }],
        source: 'page',
      },
    ],
    terms: [
      { id: 'boss', label: 'motor boss', explain: 'Where a motor is bolted on.', words: ['boss'], source: 'page' },
    ],
    places: [{ host: 'market.example', field: 'price', path: 'div.price > span' }],
  };
}

/** The issues of a pack that is known to be wrong; an accepted one fails the test. */
export function issuesOf(pack: unknown): { path: string; what: string; expected: string }[] {
  const parsed = parsePack(typeof pack === 'string' ? pack : JSON.stringify(pack));
  if (!parsed.issues) throw new Error('the pack was taken, though it should not be');
  return parsed.issues;
}

export function accepted(pack: unknown): Pack {
  const parsed = parsePack(typeof pack === 'string' ? pack : JSON.stringify(pack));
  if (parsed.issues) throw new Error(`the pack was refused: ${JSON.stringify(parsed.issues, null, 1)}`);
  return parsed.pack;
}
