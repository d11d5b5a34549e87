import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../src/audit/types';
import { audit, compile } from '../../../../src/engine';
import { readDraft } from '../../../../src/listing/draft';
import type { Draft } from '../../../../src/listing/types';
import { AS_OF } from '../../../corpus/labelled';
import { packOf } from '../../../corpus/packs';
import { auditOf, cressiter, demo } from '../support/demo';

const trade = compile([packOf('src/pack/shipped/trade.json')]);
const missing = (draft: Draft, knowledge = demo): Finding[] =>
  auditOf(draft, knowledge).findings.filter((finding) => finding.check === 'missing');
const ids = (draft: Draft, knowledge = demo): string[] =>
  missing(draft, knowledge).map(({ id }) => id.replace('missing:', ''));
/** An advert for a machine of a maker that no pack knows. */
const unknown = (description: string): Draft => ({ title: 'Wexlowby sewing machine', language: 'en', description });

describe('where a pack has tables of numbers', () => {
  it('the number comes first', () => expect(ids(cressiter('Sews well.'))).toEqual(['serial']));
  it('nothing is missing once it is there', () => expect(ids(cressiter('Serial number KD372118.'))).toEqual([]));
  it('an advert that says why it shows none is not asked once more', () =>
    expect(ids(cressiter('I cannot find a serial number.'))).toEqual([]));
  it('the model, where the maker alone is named', () =>
    expect(ids({ title: 'Grindlewade sewing machine', description: '', language: 'en' })).toContain('trade/plate'));
});

describe('of a maker that no pack knows, the photographs that tell its kind', () => {
  it('the bobbin before all', () =>
    expect(ids(unknown('Sews well.'), trade)).toEqual(['trade/bobbin-area', 'trade/plate', 'trade/needle-plate']));

  it.each([
    ['It takes class 15 bobbins.', 'trade/bobbin-area'],
    ['It has a vibrating shuttle.', 'trade/bobbin-area'],
    ['A photo of the bobbin area is the third.', 'trade/bobbin-area'],
    ['It sews a straight stitch only.', 'trade/needle-plate'],
    ['It has a vibrating shuttle, so it sews straight only.', 'trade/needle-plate'],
    ['No badge on it.', 'trade/plate'],
  ])('none that the advert has told: %s', (text, id) => {
    expect(ids(unknown('Sews well.'), trade)).toContain(id);
    expect(ids(unknown(text), trade)).not.toContain(id);
  });

  it('“round bobbin” does not tell which', () =>
    expect(ids(unknown('It takes a round bobbin.'), trade)).toContain('trade/bobbin-area'));

  it.each([
    ['It has a free arm.', 'trade/bed-extension'],
    ['It is electric.', 'trade/plug-and-flex'],
  ])('some are called for by what is claimed: %s', (text, id) => {
    expect(ids(unknown(text), trade)).toContain(id);
    expect(ids(unknown('Sews well.'), trade)).not.toContain(id);
    expect(ids(unknown(text.replace('It has a', 'It has no').replace('It is', 'It is not')), trade)).not.toContain(id);
  });

  it.each(['It has a free arm, and a sleeve goes round the arm.', 'Free arm: see it with the extension off.'])(
    'none that it says it shows: %s',
    (text) => expect(ids(unknown(text), trade)).not.toContain('trade/bed-extension'),
  );

  it('in the advert’s own language', () => {
    const german = (description: string): Draft => ({ title: 'Wexlowby Nähmaschine', language: 'de', description });
    expect(ids(german('Sie ist elektrisch und näht gut.'), trade)).toContain('trade/plug-and-flex');
    expect(ids(german('Sie ist elektrisch, das Kabel ist neu und der Stecker auch.'), trade)).not.toContain(
      'trade/plug-and-flex',
    );
  });

  it('each thing is asked for once', () => {
    const asked = missing(unknown('Sews well.'), trade).map(({ ask }) => ask);
    expect(new Set(asked).size).toBe(asked.length);
  });

  it('never more than three, however little is told', () =>
    expect(ids(unknown('Free arm, electric.'), trade).length).toBe(3));

  it('a fully told one is left alone', () =>
    expect(
      ids(
        unknown(
          'There is no badge on it. Cast iron, full size, hand crank, straight stitch only, vibrating shuttle. Serial number 118402.',
        ),
        trade,
      ),
    ).toEqual([]));
});

describe('photographs', () => {
  it('are missed on a page that shows none; a draft has none to show', () => {
    const page = { ...readDraft(cressiter('Serial number KD372118.')), url: 'https://market.example/1' };
    const found = audit(page, demo, { asOf: AS_OF }).findings.map((finding) => finding.id);
    expect(found).toContain('missing:photos');
    expect(ids(cressiter('Serial number KD372118.'))).not.toContain('photos');
  });

  it('a pack without a list of its own gets the plain questions', () => {
    const platen = compile([packOf('fixtures/packs/platen-circle.json')].map((pack) => ({ ...pack, photographs: [] })));
    expect(ids({ title: 'Old typewriter', description: '', language: 'en' }, platen)).toEqual(['serial', 'model']);
  });
});

it('is a question, with the entry it comes from, and accuses nobody', () => {
  const all = missing(unknown('No serial number visible.'), trade);
  expect(all.length).toBeGreaterThan(0);
  for (const finding of all)
    expect(finding).toMatchObject({
      standing: 'unproved',
      said: [],
      ask: expect.any(String),
      known: [{ pack: 'trade', source: 'Common practice in the trade' }],
    });
});
