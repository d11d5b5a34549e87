import { describe, expect, it } from 'vitest';
import { auditOf } from '../../audit/support/demo';

// The demo's Cressiter sews straight only, is of cast iron and has a flat bed. What an advert says of it that isn't so
// doesn't hold; what a tale mentions is at most left open.
const standingOf = (description: string, language = 'en'): string[] =>
  auditOf({ title: 'Grindlewade Cressiter', description, language })
    .findings.filter(({ check }) => check === 'claim-fact' || check === 'family')
    .map(({ standing }) => standing);

describe('what is said of the thing, whoever else is spoken of', () => {
  it.each([
    'You will find that the machine sews zigzag as well as straight.',
    'What I like best is that the body is aluminium so it never rusts.',
    'My cousin calls it a toy, but it has a free arm for sleeves.',
    'A Cressiter with a free arm, rare.',
  ])('%s', (words) => expect(standingOf(words)).toContain('disproved'));
});

describe('what a tale mentions', () => {
  it.each([
    ['He had thought about zigzag for a while and then about sleeves.', 'en'],
    ['Downstairs there stood, sold last week, something with zigzag.', 'en'],
    ['Ein Bastler versprach ihr einen Motor und Zickzack; der Hund bellte.', 'de'],
    ['La surjeteuse est vendue, la machine à bras libre aussi.', 'fr'],
  ])('%s', (words, language) => expect(standingOf(words, language)).not.toContain('disproved'));
});
