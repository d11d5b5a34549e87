import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { applyUpdate, writeUpdate } from '../../../../src/sharing/propose/update-file';
import { canonicalJson } from '../../../../src/sharing/seal/canonical';
import { type OpenedSeal, openSealed } from '../../../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../../../src/sharing/seal/seal';
import { largePack } from '../support/large-pack';

const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;

async function sealedEdition(whole: Pack, edition: number): Promise<{ sealed: string; opened: OpenedSeal }> {
  const own = await founded({ ...whole, about: { ...whole.about, edition } }, keys);
  const sealed = await sealPack(own, keys);
  const opened = await openSealed(sealed);
  if (opened.issues) throw new Error(opened.issues[0]?.what);
  return { sealed, opened };
}

describe('an update', () => {
  it('of 100 entries in a pack of 5,000 models and 100,000 runs is under 20 kB, and makes the very next edition', async () => {
    const next = largePack(5000, 100_000);
    const models = next.models!;
    const { runs } = next.serials!;
    // 30 facts, 20 new models, 30 years of runs, 10 new runs in the middle, 10 runs and no more.
    for (let i = 0; i < 30; i++) models[i * 151]!.facts = { ...models[i * 151]!.facts, frame: ['iron', 'alloy'] };
    for (let i = 0; i < 20; i++)
      models.splice(i * 200, 0, { ...models[i]!, id: `late-${i}`, label: `Late ${i}`, names: [`Late ${i}`] });
    for (let i = 0; i < 30; i++) runs.year![i * 3001] = 1961;
    for (let i = 0; i < 10; i++) {
      const at = 7000 + i * 5000;
      const row = { scheme: 'k', first: `K0${i}000050`, last: `K0${i}000060`, models: [`late-${i}`], year: 1950 };
      for (const column of ['scheme', 'first', 'last', 'models', 'year'] as const)
        (runs[column] as unknown[]).splice(at, 0, row[column]);
    }
    for (let i = 0; i < 10; i++)
      for (const column of ['scheme', 'first', 'last', 'models', 'year'] as const)
        runs[column]!.splice(90_000 - i * 100, 1);
    const before = await sealedEdition(largePack(5000, 100_000), 1);
    const after = await sealedEdition(next, 2);
    const update = await writeUpdate(before.opened.pack, after.sealed);
    expect(JSON.parse(update.split('\n')[1]!).changes.length).toBe(101);
    expect(Buffer.byteLength(update)).toBeLessThan(20_000);
    expect(applyUpdate(update, before.opened).problem).toBeUndefined();
    expect(applyUpdate(update, before.opened)).toEqual({ sealed: after.sealed });
  }, 60_000);

  it('says what is wrong with it', async () => {
    const [before, after] = [await sealedEdition(largePack(3, 3), 1), await sealedEdition(largePack(4, 3), 2)];
    const update = await writeUpdate(before.opened.pack, after.sealed);
    const [line, body] = update.split('\n') as [string, string];
    const data = JSON.parse(body);
    const written = (parts: object, head = line) => `${head}\n${canonicalJson({ ...data, ...parts })}`;
    const other = await sealedEdition(largePack(5, 3), 3);
    for (const [text, problem] of [
      ['', 'form'],
      [body, 'form'],
      [`${line}\n{}`, 'form'],
      [`${line}\n ${body}`, 'form'],
      [written({ update: 2 }), 'form'],
      [written({ changes: [['+', 'nowhere', {}, null]] }), 'form'],
      [written({ changes: [['=', '', '', ['a', 'b', 'c'], 1]] }), 'form'],
      [written({ from: data.to }), 'another-edition'],
      [written({ changes: [['=', 'models', 'nobody', 'label', 'A']] }), 'result'],
      [`${line}\n${'['.repeat(200_000)}${']'.repeat(200_000)}`, 'form'],
      [' '.repeat(20_000_001), 'too-large'],
    ] as const)
      expect(applyUpdate(text, before.opened), text.slice(0, 80)).toEqual({ problem });
    expect(applyUpdate(written({}), before.opened)).toEqual({ sealed: after.sealed });
    // What is wrong with these shows where the file is opened.
    for (const text of [written({ changes: [] }), written({}, other.sealed.split('\n')[0])]) {
      const made = applyUpdate(text, before.opened);
      expect(made.problem === undefined && (await openSealed(made.sealed))).toMatchObject({ problem: 'signature' });
    }
  });
});
