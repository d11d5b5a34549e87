import { describe, expect, it } from 'vitest';
import { readClaims } from '../../../src/claims/read';
import { NAME_ASTRAY, NAME_DENIED } from '../../../src/identify/assumptions';
import { fieldOf } from '../../../src/identify/field';
import { modelsMeant, namesHeard } from '../../../src/identify/names-heard';
import { readDraft } from '../../../src/listing/draft';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';
import { knowledgeOf, readingWith } from './support/small';

const of = (title: string, description = '') => {
  const reading = readingOf({ title, description, language: 'en' });
  const field = fieldOf(demo, reading.covering);
  const heard = namesHeard(reading, field);
  const at = (model: string): number => field.positionOf(model, 'grindlewade-circle')!;
  return {
    reading,
    takenFor: (model: string) => heard.takenFor[at(model)]!,
    vague: (model: string) => heard.vague[at(model)]!,
    any: heard.any,
  };
};

describe('the names of an advert', () => {
  it('a model’s is of a seller who takes it for that model, and of hardly any other', () => {
    const { takenFor, vague } = of('Grindlewade Cressiter');
    expect(takenFor('cressiter')).toBe(1 - NAME_ASTRAY);
    expect(takenFor('wendelow')).toBeLessThan(NAME_ASTRAY);
    expect(vague('cressiter')).toBe(takenFor('wendelow'));
  });
  it('a guess is less sure', () =>
    expect(of('Sewing machine', 'I think it is a Cressiter.').takenFor('cressiter')).toBeLessThan(0.9));
  it('a maker’s is of any of its models, from who knows no model too', () => {
    const { takenFor, vague } = of('Grindlewade sewing machine');
    expect(takenFor('cressiter')).toBe(takenFor('quarrendle'));
    expect(takenFor('cressiter')).toBeGreaterThan(10 * takenFor('q-41'));
    expect(vague('cressiter')).toBeGreaterThan(takenFor('cressiter'));
    expect(vague('trade/full-size-iron-round')).toBe(vague('q-41'));
  });
  it('none is rather of an unknown maker, for who offers it; by hand it tells nothing', () => {
    const small = knowledgeOf({ attributes: {}, models: [{ id: 'm' }], types: [{ id: 't' }] });
    const reading = readingWith(small, []);
    const field = fieldOf(small, reading.covering);
    const [known, type, none] = namesHeard(reading, field).vague;
    expect(known).toBeLessThan(type! / 2);
    expect(type).toBe(none);
    expect(modelsMeant(reading)).toBeNull();
    const byHand = namesHeard(reading, field, true);
    expect(new Set([...byHand.vague, ...byHand.takenFor])).toEqual(new Set([1]));
    expect(byHand.any).toBe(false);
  });
  it('what it is said not to be, it rarely is', () => {
    const { takenFor } = of('Grindlewade sewing machine', 'This is not a Cressiter.');
    expect(takenFor('cressiter') / takenFor('quarrendle')).toBeCloseTo(NAME_DENIED, 9);
  });
});

describe('a family’s name that its maker’s other models bear too', () => {
  const model = (id: string, label: string, family: string) => ({
    id,
    label,
    names: [label],
    maker: 'Ottermere',
    family,
  });
  const known = knowing(
    smallPack({
      families: [
        { id: 'early', label: 'Ottermere', names: ['Ottermere'], maker: 'Ottermere' },
        { id: 'late', label: 'Ottermere Sedge', names: ['Ottermere Sedge'], maker: 'Ottermere' },
      ],
      models: [
        model('one', 'Ottermere 12', 'early'),
        model('two', 'Ottermere Sedge 40', 'late'),
        model('three', 'Fen 3', 'late'),
      ],
    }),
  );
  const meant = (title: string): string[] => {
    const { includes } = modelsMeant(readClaims(readDraft({ title, language: 'en' }), known))!;
    return [...known.models.values()].filter(includes).map(({ id }) => id);
  };

  it('can be of any of those', () => expect(meant('Ottermere machine, plate lost')).toEqual(['one', 'two']));
  it('the longer one is of its own', () => expect(meant('Ottermere Sedge, plate lost')).toEqual(['two', 'three']));
});
