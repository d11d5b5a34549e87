import { describe, expect, it } from 'vitest';
import { came, explained, of } from './support';

const title = 'Grindlewade Cressiter sewing machine';

describe('each phrase says what came of it', () => {
  it.each([
    ['zigzag', 'It does a zigzag.', 'wording: claim-fact disproved'],
    ['aluminium', 'It is not aluminium.', 'value: claim-fact agrees'],
    ['zigzag', 'I think it does zigzag.', 'wording: claim-fact unproved a-guess'],
    ['vibrating shuttle', 'My sister has one with a vibrating shuttle.', 'value: of-another'],
    ['rotary hook', 'It is as nimble as a rotary hook.', 'value: likened'],
    ['zigzag', '"It has a proper zigzag on it."', 'wording: quoted'],
    ['Wendelow', 'I also have a Wendelow.', 'name: of-another'],
    ['14.5 kg', 'It weighs 14.5 kg.', 'measure: weight agrees'],
    ['14.5 kg', 'The parcel weighs 14.5 kg.', 'measure: of-another'],
    ['1962', 'I bought it in 1962.', 'year: year-of-other'],
    ['Over 100 years old', 'Over 100 years old.', 'age: age-words disproved'],
    ['zigzag', 'With a zigzag foot.', 'wording: inside-longer (zigzag foot)'],
    ['rare', 'A rare colour.', 'wording: inside-longer (rare colour)'],
  ])('%s in %j', (quote, text, expected) => expect(of(quote, text)).toContain(expected));

  it('softer than "doesn’t hold", with the reason', () => {
    expect(of('Antique', 'Antique.', { serialText: 'KD372118' })).toContain(
      'wording: age-words caution loose-word, wording caution said-better',
    );
  });

  it('one place of what is said over and over shares the finding with the places that it quotes', () => {
    const times = Array.from({ length: 6 }, () => 'It does a zigzag.').join(' ');
    const all = of('zigzag', times).filter((line) => line.startsWith('wording'));
    expect(all).toEqual(Array.from({ length: 6 }, () => 'wording: claim-fact disproved'));
  });

  it('the name on sale says so, beside its findings', () => {
    const { phrases } = explained({ title, serialText: 'KD372118' });
    const name = phrases.find(({ what, quote }) => what === 'name' && quote === 'Cressiter')!;
    expect(came(name)).toBe('serial-model agrees, claimed-model');
    expect(name).toMatchObject({ means: 'the model Grindlewade Cressiter', stance: 'says', subject: 'this' });
  });

  it('says by what stance and subject were decided, and in which clause', () => {
    const { phrases } = explained({ title, description: 'It works, but it is not aluminium. Sews well.' });
    expect(phrases.find(({ quote }) => quote === 'aluminium')).toMatchObject({
      means: 'frame: aluminium',
      pack: 'trade',
      clause: { field: 'description', quote: 'but it is not aluminium.', start: 10, end: 34 },
      stance: 'denies',
      why: [{ rule: 'trigger', makes: 'denies', word: 'is not' }],
    });
  });

  it('findings that rest on no words stand apart', () => {
    const { wordless } = explained({ title, description: 'It sews.' });
    expect(wordless.map(({ id }) => id)).toContain('missing:serial');
    expect(wordless.map(({ id }) => id)).toContain('caution:trade/meeting');
  });

  it('goes by field and place, the longer first', () => {
    const { phrases } = explained({ title, description: 'Class 15 bobbins.' });
    expect(phrases.map(({ field, start }) => `${field} ${start}`)).toEqual(
      phrases
        .map(({ field, start }) => ({ field, start }))
        .sort((a, b) => Number(a.field === 'description') - Number(b.field === 'description') || a.start - b.start)
        .map(({ field, start }) => `${field} ${start}`),
    );
    const at0 = phrases.filter(({ field, start }) => field === 'description' && start === 0);
    expect(at0.map(({ end }) => end)).toEqual(at0.map(({ end }) => end).sort((a, b) => b - a));
  });
});
