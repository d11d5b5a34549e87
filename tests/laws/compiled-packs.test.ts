import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { audit } from '../../src/audit/audit';
import { enquire } from '../../src/audit/enquiry';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import { compile } from '../../src/pack/compile';
import { knowledgeOf } from '../../src/pack/compile/knowledge-of';
import { partsOf } from '../../src/pack/compile/parts-of';
import { DamagedError, type Stored } from '../../src/pack/compiled/pages';
import { partsIn, partsStored } from '../../src/pack/compiled/read';
import { bytesOf } from '../../src/pack/compiled/write';
import type { Knowledge } from '../../src/pack/knowledge';
import { parsePack } from '../../src/pack/parse';
import type { Pack } from '../../src/pack/schema/index';
import { writtenIn } from '../../src/pack/serial-form';
import { tokenise } from '../../src/text/tokens';
import { ROOT } from '../steps/root';
import { told } from '../unit/pack/support/runs';
import { anyDraft } from './audit-arbitraries';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

/** What the packs know once they have been bytes, as they lie in a browser's storage. */
function fromBytes(packs: readonly Pack[]): Knowledge {
  return knowledgeOf(
    packs.map((one) => partsIn(bytesOf(partsOf(one)).buffer)!),
    new Map(),
  );
}

/** The same where the bytes lie elsewhere, but for the first ones, and are read as they are asked for. */
function fromElsewhere(packs: readonly Pack[], here: number): Knowledge {
  return knowledgeOf(
    packs.map((one) => partsStored(storedBytes(bytesOf(partsOf(one)).buffer, here), false)!),
    new Map(),
  );
}

function storedBytes(all: ArrayBuffer, here: number): Stored {
  const first = all.slice(0, here);
  return { length: all.byteLength, first, read: (from, to) => all.slice(from, to) };
}

/** Packs of different ids, as compile takes them. */
const packs = fc.uniqueArray(pack, { minLength: 1, maxLength: 2, selector: ({ about }) => about.id });

/** A text that holds what the packs speak of: their names and phrases, a few at a time, with other words between. */
function textsAbout(all: readonly Pack[]): string[] {
  const words = all.flatMap(({ about, models = [], types = [], families = [], wording = [], prices }) => [
    ...[about.covers.words, about.covers.parts ?? [], about.covers.not ?? []].flat(),
    ...[...models, ...types, ...families].flatMap(({ names }) => names),
    ...[...models, ...types].flatMap(({ fits }) => fits?.flatMap((fit) => fit.words) ?? []),
    ...wording.flatMap((one) => [...one.words, ...(one.unless ?? [])]),
    ...(prices?.grades?.flatMap((grade) => grade.words ?? []) ?? []),
  ]);
  const plain = words.map((one) => (typeof one === 'string' ? one : one.text));
  return [plain.join(' '), plain.join(', old '), ...plain.slice(0, 8)];
}

/** Ends and middles of runs, and numbers beside them. */
function serialsOf(all: readonly Pack[]): string[] {
  return all.flatMap(({ serials }) =>
    (serials?.runs.first ?? []).flatMap((first, i) => {
      const scheme = serials!.schemes.find(({ id }) => id === serials!.runs.scheme[i])!;
      const number = Number(first.replace(/\D/g, '').slice(0, 12));
      return [number, number + 1, Math.max(0, number - 1)].map((one) => writtenIn(scheme, one));
    }),
  );
}

const draftOf = (text: string, serial: string | undefined): Draft => ({
  ...{ title: text.slice(0, 200), description: text, priceText: '£120' },
  ...(serial === undefined ? {} : { serialText: serial }),
});

function sameAnswers(bytes: Knowledge, text: Knowledge, of: readonly Pack[]): void {
  const plain = (value: unknown) => JSON.stringify(value);
  const serials = serialsOf(of);
  for (const serial of serials) {
    expect(plain(bytes.serials.find(serial).map(told))).toBe(plain(text.serials.find(serial).map(told)));
    expect(plain(enquire(serial, null, bytes))).toBe(plain(enquire(serial, null, text)));
  }
  for (const written of textsAbout(of)) {
    const tokens = tokenise(written);
    expect(bytes.phrases.search(tokens).map(shown)).toEqual(text.phrases.search(tokens).map(shown));
    expect(bytes.names.search(tokens).map(shown)).toEqual(text.names.search(tokens).map(shown));
    const listing = readDraft(draftOf(written, serials[0]));
    expect(plain(audit(listing, bytes, { asOf: '2026-06-01' }))).toBe(
      plain(audit(listing, text, { asOf: '2026-06-01' })),
    );
  }
}

/** A match with what it stands for, models and attributes by their names. */
function shown(match: object): string {
  return JSON.stringify(match, (_, value) =>
    value && typeof value === 'object' && 'ref' in value ? value.ref : value,
  );
}

describe('packs that have been bytes', PATIENCE, () => {
  test('answer as those that were read from their text', () => {
    fc.assert(
      fc.property(packs, (all) => sameAnswers(fromBytes(all), compile(all), all)),
      { numRuns: 25 * TIMES },
    );
  });

  test('answer so where their bytes lie elsewhere, whatever of them is here', () => {
    fc.assert(
      fc.property(packs, fc.integer({ min: 1_000, max: 40_000 }), (all, here) =>
        sameAnswers(fromElsewhere(all, here), compile(all), all),
      ),
      { numRuns: 10 * TIMES },
    );
  });

  test('tell of damage where their bytes lie elsewhere, or answer as sound ones', () => {
    fc.assert(
      fc.property(pack, fc.nat(), fc.nat(7), (one, place, bit) => {
        const bytes = bytesOf(partsOf(one));
        bytes[place % bytes.length]! ^= 1 << bit;
        const parts = partsStored(storedBytes(bytes.buffer, 1_000), false);
        if (parts === null) return;
        let told: unknown = null;
        try {
          sameAnswers(knowledgeOf([parts], new Map()), compile([one]), [one]);
        } catch (error) {
          told = error;
        }
        if (told !== null) expect(told).toBeInstanceOf(DamagedError);
      }),
      { numRuns: 20 * TIMES },
    );
  });

  test('are the same bytes when they are made of what was read from bytes', () => {
    fc.assert(
      fc.property(pack, (one) => {
        const bytes = bytesOf(partsOf(one));
        expect(bytesOf(partsIn(bytes.buffer)!)).toEqual(bytes);
      }),
      { numRuns: 60 * TIMES },
    );
  });

  test('are never read where a bit of them has changed, or a piece is missing', () => {
    fc.assert(
      fc.property(pack, fc.nat(), fc.nat(7), (one, place, bit) => {
        const bytes = bytesOf(partsOf(one));
        const at = place % bytes.length;
        expect(partsIn(bytes.slice(0, at).buffer)).toBeNull();
        bytes[at]! ^= 1 << bit;
        expect(partsIn(bytes.buffer)).toBeNull();
      }),
      { numRuns: 100 * TIMES },
    );
  });

  test('of the invented world answer any advert as those from text do', () => {
    const files = ['src/pack/shipped/trade.json', 'fixtures/packs/grindlewade-circle.json'];
    const all = files.map((path) => parsePack(readFileSync(`${ROOT}/${path}`, 'utf8')).pack!);
    const [bytes, text] = [fromBytes(all), compile(all)];
    fc.assert(
      fc.property(anyDraft, (draft) => {
        const [one, other] = [bytes, text].map((known) => audit(readDraft(draft), known, { asOf: '2026-06-01' }));
        expect(JSON.stringify(one)).toBe(JSON.stringify(other));
      }),
      { numRuns: 150 * TIMES },
    );
  });
});
