import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { caseOf } from '../../../src/audit/audit';
import { sheetLanguages, type ViewingSheet, viewingSheet } from '../../../src/audit/viewing-sheet';
import { SERIAL_LOOK } from '../../../src/identify/serial-look';
import { readDraft } from '../../../src/listing/draft';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';
import { type SheetLanguage, sheetTexts } from '../../../src/text/catalogue/sheet';

const packOf = (path: string) => {
  const { pack, issues } = parsePack(readFileSync(path, 'utf8'));
  if (!pack) throw new Error(JSON.stringify(issues));
  return pack;
};
const trade = packOf('src/pack/shipped/trade.json');
const knowledge = compile([trade, packOf('fixtures/packs/grindlewade-circle.json')]);

function sheetOf(draft: Parameters<typeof readDraft>[0], language: SheetLanguage = 'en'): ViewingSheet | null {
  return viewingSheet(caseOf(readDraft(draft), knowledge, { asOf: '2026-06-01' }), language);
}
const CRANK = {
  title: 'Old hand crank sewing machine',
  description: 'Cast iron.',
  priceText: '£60',
  location: 'Harbour',
};

describe('a viewing sheet', () => {
  it('is written in the advert’s language where the catalogue has it, and in the interface’s', () => {
    expect(sheetLanguages('de-AT')).toEqual(['de', 'en']);
    expect(sheetLanguages('en-GB')).toEqual(['en']);
    for (const none of ['nl', null, 'constructor']) expect(sheetLanguages(none)).toEqual(['en']);
  });

  it('asks after features, most telling first, with where to look and answers to tick, and what was said too', () => {
    const sheet = sheetOf(CRANK);
    const features = sheet?.checks.filter(({ attribute }) => attribute !== SERIAL_LOOK) ?? [];
    expect(features.length).toBeGreaterThan(4);
    expect(features.length).toBeLessThanOrEqual(10);
    expect(features.map(({ attribute }) => attribute)).toContain('trade/drive');
    const frame = features.find(({ attribute }) => attribute === 'trade/frame');
    expect(frame?.place).toBe('arm');
    expect(frame?.outline).toBe('sewing-machine');
    expect(frame?.options.map(({ value }) => value)).toContain('cast-iron');
    expect([sheet?.price, sheet?.place]).toEqual(['£60', 'Harbour']);
  });

  it('looks at the number first, where packs have tables of such things', () => {
    const sheet = sheetOf({ title: 'Grindlewade Haddercombe sewing machine', serialText: 'KD 439114' });
    const [first] = sheet?.checks ?? [];
    expect(first?.attribute).toBe(SERIAL_LOOK);
    expect(first?.options[0]).toEqual({ value: 'KD439114', text: sheetTexts.en.number.reads('KD439114') });
    expect(sheet?.model).toBe('Grindlewade Haddercombe');
    expect(sheet?.cautions.some((text) => text.includes('built-in motors'))).toBe(true);
  });

  it('is all the same where the number has settled it: somebody stands there and may as well look', () => {
    const sheet = sheetOf({ title: 'Grindlewade Haddercombe sewing machine', serialText: 'KD 439114' });
    expect(sheet?.checks.length).toBeGreaterThan(5);
  });

  it('speaks German and French as far as the packs do', () => {
    const frame = (language: SheetLanguage) =>
      sheetOf(CRANK, language)?.checks.find(({ attribute }) => attribute === 'trade/frame');
    expect(frame('de')?.question).toBe('Hält ein kleiner Magnet am Arm?');
    expect(frame('fr')?.options.map(({ text }) => text)).toContain('fonte');
    expect(sheetOf(CRANK, 'de')?.photographs.map(({ label }) => label)).toContain('der geöffnete Spulenraum');
  });

  it('is none for what is no thing on sale', () => {
    expect(sheetOf({ title: 'Wanted: old sewing machine' })).toBeNull();
  });

  it.each(['en', 'de', 'fr'] as const)(
    'warns of mains, motors, capacitors, lifting, strangers and paying in %s',
    (language) => {
      expect(sheetTexts[language].cautions).toHaveLength(sheetTexts.en.cautions.length);
      const words = sheetTexts[language].cautions.join(' ');
      const meant = {
        en: [/local code/, /licensed/, /Motors/, /Capacitors/, /Lifting/, /Meeting/, /not ahead/],
        de: [
          /örtlichen Vorschriften/,
          /zugelassene/,
          /Motoren/,
          /Kondensatoren/,
          /Heben/,
          /Treffen/,
          /nichts im Voraus/,
        ],
        fr: [/règles locales/, /habilitée/, /Moteurs/, /Condensateurs/, /Soulever/, /rencontrer/, /jamais d’avance/],
      }[language];
      for (const each of meant) expect(words).toMatch(each);
    },
  );
});
