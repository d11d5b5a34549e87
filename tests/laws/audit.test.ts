import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Audit, Finding } from '../../src/audit/types';
import { audit, compile, parsePack } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import type { Knowledge } from '../../src/pack/knowledge';
import type { Pack } from '../../src/pack/schema/index';
import { AS_OF } from '../corpus/labelled';
import { ROOT } from '../steps/root';
import { anyDraft } from './audit-arbitraries';

const [trade, club, platen] = [
  'src/pack/shipped/trade.json',
  'fixtures/packs/grindlewade-circle.json',
  'fixtures/packs/platen-circle.json',
].map((path): Pack => {
  const { pack, issues } = parsePack(readFileSync(`${ROOT}/${path}`, 'utf8'));
  if (!pack) throw new Error(`${path}: ${JSON.stringify(issues?.[0])}`);
  return pack;
}) as [Pack, Pack, Pack];

const known = compile([trade, club]);
const answer = (draft: Draft, knowledge: Knowledge = known): Audit =>
  audit(readDraft(draft), knowledge, { asOf: AS_OF });

const everyFinding = (holds: (finding: Finding, draft: Draft) => void): void =>
  fc.assert(
    fc.property(anyDraft, (draft) => {
      for (const finding of answer(draft).findings) holds(finding, draft);
    }),
  );

describe('every finding, of any advert', () => {
  it('that something doesn’t hold has one said and one known, or two said', () =>
    everyFinding(({ standing, said, known }) => {
      if (standing !== 'disproved') return;
      expect(said.length >= 2 || (said.length === 1 && known.length >= 1)).toBe(true);
    }));

  it('quotes the advert’s own words, where it says they stand', () =>
    everyFinding(({ said }, draft) => {
      const listing = readDraft(draft);
      for (const { field, quote, start, end } of said) {
        const texts = field === 'serials' ? listing.serials : [field === 'price' ? listing.priceText : listing[field]];
        expect(texts.map((text) => text?.slice(start, end))).toContain(quote);
        expect(quote).not.toBe('');
      }
    }));

  it('says something, and asks a question where one is to be asked', () =>
    everyFinding(({ text, ask }) => {
      expect(text).not.toMatch(/^\s*$|undefined|NaN|\[object/);
      if (ask !== null) expect(ask).not.toMatch(/^\s*$|undefined/);
    }));

  it('has an id of its own', () =>
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const ids = answer(draft).findings.map(({ id }) => id);
        expect(ids).toEqual([...new Set(ids)]);
      }),
    ));

  it('of what is not shown yet there are three at most', () =>
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const open = answer(draft).findings.filter(({ standing }) => standing === 'unproved');
        expect(open.length).toBeLessThanOrEqual(3);
      }),
    ));
});

describe('the audit', () => {
  it('answers the same twice, and changes nothing that it was given', () =>
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const listing = readDraft(draft);
        const before = JSON.stringify(listing);
        const once = JSON.stringify(audit(listing, known, { asOf: AS_OF }));
        expect(JSON.stringify(audit(listing, known, { asOf: AS_OF }))).toBe(once);
        expect(JSON.stringify(listing)).toBe(before);
      }),
    ));

  it('is plain JSON', () =>
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const made = answer(draft);
        expect(JSON.parse(JSON.stringify(made))).toEqual(made);
      }),
    ));

  it('answers without any pack, and then finds nothing', () => {
    const nothing = compile([]);
    fc.assert(
      fc.property(anyDraft, (draft) => {
        expect(answer(draft, nothing)).toMatchObject({ findings: [], packs: [] });
      }),
    );
  });
});

/** Findings in an order of their own: which are there, not where they stand. */
const sorted = ({ findings }: Audit): Finding[] => [...findings].sort((a, b) => (a.id < b.id ? -1 : 1));

describe('packs', () => {
  it('that don’t cover an advert say nothing', () => {
    const more = compile([trade, club, platen]);
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const [small, large] = [answer(draft), answer(draft, more)];
        fc.pre(!large.packs.some(({ id }) => id === platen.about.id));
        expect(sorted(large)).toEqual(sorted(small));
      }),
      // A number was once taken for a serial because another club's numbers have that form.
      { examples: [[{ title: 'Cressiter', description: '5 Seriennummer QX no. 07700 to' }]] },
    );
  });

  it('in another order find the same', () => {
    const turned = compile([club, trade]);
    fc.assert(
      fc.property(anyDraft, (draft) => {
        expect(sorted(answer(draft, turned))).toEqual(sorted(answer(draft)));
      }),
    );
  });
});
