import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine';
import { judge } from '../../src/identify/judge';
import { localText } from '../../src/pack/local-text';
import type { LocalText, Phrase } from '../../src/pack/schema/parts';
import { packOf } from './packs';

/** What the shipped pack must keep to, whatever is added to it. */
const trade = packOf('src/pack/shipped/trade.json');
const knowledge = compile([trade]);
const LANGUAGES = ['en', 'de', 'fr'];

const languagesOf = (phrases: readonly Phrase[] = []): Set<string> =>
  new Set(phrases.map((phrase) => (typeof phrase === 'string' ? 'en' : (phrase.lang ?? 'en'))));
const speaksAll = (text: LocalText | undefined): boolean =>
  text !== undefined && new Set(LANGUAGES.map((language) => localText(text, language))).size === LANGUAGES.length;

describe('every entry says where it comes from', () => {
  const entries = [
    ...trade.attributes!,
    ...trade.types!,
    ...trade.wording!,
    ...trade.cautions!,
    ...trade.photographs!,
    ...trade.terms!,
  ];
  it.each(entries.map(({ id, source }) => [id, source]))('%s', (_, source) =>
    expect(Object.keys(trade.about.sources!)).toContain(source),
  );
  it('and most of it is common practice, marked so', () =>
    expect(trade.about.sources!.common).toMatchObject({ common: true }));
});

describe('words to weigh', () => {
  const words =
    'industrial semi-industrial heavy-duty sews-leather antique rare lightweight portable universal-bobbin serviced ' +
    'untested worked-when-put-away motor-runs restored refinished complete serial-refused';
  it.each(words.split(' '))('%s has a sentence, a question and words in each language', (id) => {
    const wording = trade.wording!.find((one) => one.id === id)!;
    expect(speaksAll(wording.mind)).toBe(true);
    expect(speaksAll(wording.ask)).toBe(true);
    const languages = languagesOf(wording.words);
    // Some words are the same in all of them.
    expect(languages.has('und') || LANGUAGES.every((language) => languages.has(language))).toBe(true);
  });

  it('none of them disproves anything by itself, here where no maker is known', () =>
    expect(trade.wording!.filter(({ never }) => never)).toEqual([]));
});

it('photographs and safety notes speak each language, and so do the questions', () => {
  for (const { id, label, tells, ask } of trade.photographs!)
    expect([id, [label, tells, ask].every(speaksAll)]).toEqual([id, true]);
  for (const { id, text } of trade.cautions!) expect([id, speaksAll(text)]).toEqual([id, true]);
  for (const { id, question, ask, kind } of trade.attributes!)
    if (kind !== 'measure') expect([id, speaksAll(question) && speaksAll(ask)]).toEqual([id, true]);
});

describe('the kinds leave room for exceptions', () => {
  const kinds = [...knowledge.models.values()];
  const values = [...knowledge.attributes.values()].flatMap((attribute) => {
    const { def } = attribute;
    if (def.kind === 'measure') return [];
    const each = def.kind === 'choice' ? def.values.map(({ id }) => id) : [true, false];
    return each.map((value) => ({
      attribute,
      value,
      allowed:
        typeof value === 'boolean'
          ? ({ kind: 'yes-no', value } as const)
          : ({ kind: 'values', values: new Set([value]) } as const),
    }));
  });
  type Value = (typeof values)[number];

  const canBe = (kind: (typeof kinds)[number], { attribute, allowed }: Value): boolean => {
    const firm = (kind.facts.get(attribute.ref) ?? []).filter((fact) => fact.always);
    return judge({ allowed, denied: false }, attribute, firm) !== 'refutes';
  };

  it('each value is so of some kind', () =>
    expect(values.filter((value) => !kinds.some((kind) => canBe(kind, value)))).toEqual([]));

  it('and nothing excludes anything else for sure but what carries the bobbin, which bobbin, and where it goes in', () => {
    const pairs = values.flatMap((one, i) =>
      values
        .slice(i + 1)
        .filter((other) => other.attribute !== one.attribute)
        .map((other) => [one, other] as const),
    );
    expect(pairs.length).toBeGreaterThan(200);
    const apart = pairs.filter(([one, other]) => !kinds.some((kind) => canBe(kind, one) && canBe(kind, other)));
    const attributes = new Set(
      apart.map((pair) =>
        pair
          .map(({ attribute }) => attribute.id)
          .sort()
          .join(' '),
      ),
    );
    expect([...attributes].sort()).toEqual(['bobbin loading', 'bobbin mechanism', 'loading mechanism']);
    const long = ['long', 'transverse-shuttle', 'vibrating-shuttle', 'shuttle'];
    for (const [one, other] of apart)
      expect(
        long.includes(String(one.value)) !== long.includes(String(other.value)),
        `${one.value} ${other.value}`,
      ).toBe(true);
  });

  it('the hook does not decide the class of a round bobbin, nor where it goes in', () => {
    const round = kinds.filter((kind) =>
      kind.facts
        .get('trade/mechanism')
        ?.some(({ allowed }) => allowed.kind === 'values' && allowed.values.has('rotary-hook')),
    );
    expect(round.length).toBeGreaterThan(5);
    for (const kind of round) {
      expect((kind.def.facts!.bobbin as { is: string }).is).toBe('round');
      expect((kind.def.facts!.loading as { is: string[] }).is).toEqual(['front', 'side', 'top']);
    }
  });
});
