import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/pack/compile';
import { parsePack } from '../../src/pack/parse';
import type { Pack } from '../../src/pack/schema/index';
import { canonicalJson } from '../../src/sharing/seal/canonical';
import { iJsonProblem } from '../../src/sharing/seal/i-json';
import { openSealed } from '../../src/sharing/seal/open-seal';
import { founded, sealPack } from '../../src/sharing/seal/seal';
import { sealedText } from '../../src/sharing/seal/seal-line';
import { publicKeyOf, sign } from '../../src/sharing/seal/signature';
import { smallPack } from '../unit/pack/support/packs';
import { pack } from './pack-arbitrary/pack';
import { PATIENCE, TIMES } from './pack-arbitrary/times';

const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const own = await founded(smallPack(), keys);
const sealed = await sealPack(own, keys, { expires: '2030-01-01', previous: { edition: 1, hash: '0'.repeat(64) } });

/** What a hostile keeper could do: a sound seal around any bytes. */
async function sealedBody(body: string): Promise<string> {
  const seal = { seal: 1 as const, key: await publicKeyOf(keys), history: [] };
  const signature = await sign('seal', sealedText(seal, body), keys);
  return `${canonicalJson({ ...seal, signature })}\n${body}`;
}

describe('a sealed file', PATIENCE, () => {
  test('of any pack opens as what was sealed', async () => {
    await fc.assert(
      fc.asyncProperty(pack, async (whole) => {
        // References in full lead to another pack once the id is another.
        const extending = { ...whole, about: { ...whole.about, extends: 'elsewhere' } };
        const mine = await founded(JSON.parse(JSON.stringify(extending)) as Pack, keys);
        const opened = await openSealed(await sealPack(mine, keys));
        expect(opened.issues).toBeUndefined();
        expect(opened).toMatchObject({ pack: mine, edition: mine.about.edition, key: await publicKeyOf(keys) });
      }),
      { numRuns: 40 * TIMES },
    );
  });

  test('with any one byte changed, left out or put in is refused', async () => {
    const bytes = new TextEncoder().encode(sealed);
    const refused = async (changed: Uint8Array): Promise<void> => {
      const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(changed);
      const opened = await openSealed(text);
      expect(opened.issues?.length).toBeGreaterThan(0);
    };
    // Every place once with its lowest bit turned, then any byte anywhere.
    for (let at = 0; at < bytes.length; at++) await refused(bytes.map((byte, i) => (i === at ? byte ^ 1 : byte)));
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 }), fc.nat(2), async (at, byte, how) => {
        fc.pre(how !== 0 || bytes[at] !== byte);
        const rest = bytes.slice(how === 2 ? at : at + 1);
        await refused(new Uint8Array([...bytes.slice(0, at), ...(how === 1 ? [] : [byte]), ...rest]));
      }),
      { numRuns: 500 * TIMES },
    );
  });

  test('never throws, whatever the text', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.json(),
          fc.json().map((json) => `${json}\n${json}`),
        ),
        async (text) => {
          expect((await openSealed(text)).issues?.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 * TIMES },
    );
  });
});

describe('a hostile keeper’s own seal', () => {
  const body = canonicalJson(own)!;
  const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
  const inTitle = (title: string) => body.replace('"A small pack"', `"${title}"`);
  test.each([
    ['as it should be', body, null],
    ['a key that stands twice', body.replace('"licence"', '"edition":1,"licence"'), 'i-json'],
    ['a key that stands twice, once as an escape', body.replace('"licence"', '"editi\\u006fn":1,"licence"'), 'i-json'],
    ['keys out of order', body.replace('"edition":1,', '').replace('"title"', '"edition":1,"title"'), 'not-canonical'],
    ['a space', `${body} `, 'not-canonical'],
    ['a number in another form', body.replace('"edition":1', '"edition":1.0'), 'not-canonical'],
    ['half a character', inTitle('\\ud800'), 'pack'],
    ['half a character under x-', body.replace(/\}$/, ',"x-a":"\\udead"}'), 'i-json'],
    ['a noncharacter under x-', body.replace(/\}$/, ',"x-a":"\uffff"}'), 'i-json'],
    ['a control that turns the reading direction', inTitle('A \u202epack'), 'pack'],
    ['letters that are not in normal form', inTitle('A\u030a'), 'pack'],
    ['an id of letters that look alike', body.replace('"id":"small-', '"id":"sm\u0430ll-'), 'pack'],
    ['an id of capitals', body.replace('"id":"small-', '"id":"Small-'), 'pack'],
    [
      'another key’s id',
      body.replace(/"id":"small-./, (id) => id.slice(0, -1) + (id.endsWith('a') ? 'b' : 'a')),
      'key-history',
    ],
    ['a plain id', body.replace(/"id":"small-[a-z2-7]{26}"/, '"id":"small"'), 'key-history'],
    ['deep nesting under x-', body.replace(/\}$/, `,"x-a":${deep}}`), 'pack'],
    ['deep nesting alone', deep, 'pack'],
    ['a key named __proto__', body.replace(/\}$/, ',"x-a":{"__proto__":1}}'), 'pack'],
  ])('around %s', async (_what, text, problem) => {
    const opened = await openSealed(await sealedBody(text));
    expect('problem' in opened ? opened.problem : null).toBe(problem);
    for (const { what, expected } of opened.issues ?? [])
      expect([what, expected].every((words) => words.length > 5)).toBe(true);
  });

  test('around 5,000 runs at one number: a reader is given 64 of them', async () => {
    const many = <T>(of: T): T[] => Array(5000).fill(of);
    const crowded = await founded(
      smallPack({
        models: [{ id: 'm', label: 'M', names: ['M'] }],
        serials: {
          schemes: [{ id: 'k', prefix: 'K', digits: 5 }],
          runs: { scheme: many('k'), first: many('K00001'), last: many('K99999'), models: many(['m']) },
        },
      }),
      keys,
    );
    const opened = await openSealed(await sealPack(crowded, keys));
    if (opened.issues) throw new Error(opened.problem);
    expect(compile([opened.pack]).serials.find('K20001')).toHaveLength(64);
  });
});

describe('I-JSON', () => {
  test('finds half characters and noncharacters in what JSON.stringify writes, and nothing else', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        const text = JSON.stringify(value);
        // Unicode Standard, section 23.7: the last two of each plane, and 32 more.
        const isNone = (code: number) => (code & 0xfffe) === 0xfffe || (code >= 0xfdd0 && code <= 0xfdef);
        const clean = !/\\ud[89a-f]/.test(text) && [...text].every((letter) => !isNone(letter.codePointAt(0)!));
        expect(iJsonProblem(text) === null).toBe(clean);
      }),
      { numRuns: 300 * TIMES },
    );
  });

  test('finds a key that stands twice, however deep and however it is written', () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1 }),
        fc.jsonValue(),
        fc.array(fc.constantFrom('list', 'object')),
        (key, value, around) => {
          const plain = JSON.stringify(key);
          const escaped = `"${[...Array(key.length)].map((_, i) => `\\u${key.charCodeAt(i).toString(16).padStart(4, '0')}`).join('')}"`;
          fc.pre(iJsonProblem(JSON.stringify(value)) === null && iJsonProblem(plain) === null);
          let text = `{${plain}:${JSON.stringify(value)},${escaped}:0}`;
          for (const how of around) text = how === 'list' ? `[1,${text}]` : `{"a":"}","b":${text}}`;
          expect(iJsonProblem(text)).toMatchObject({ what: 'key-twice', key });
          expect(() => JSON.parse(text)).not.toThrow();
        },
      ),
      { numRuns: 300 * TIMES },
    );
  });

  test('a plain pack with a key twice is read by its last: what the check is for', () => {
    const text = canonicalJson(smallPack())!.replace('"licence"', '"edition":9,"licence"');
    expect(parsePack(text).pack?.about.edition).toBe(9);
    expect(iJsonProblem(text)).toMatchObject({ what: 'key-twice', key: 'edition' });
  });
});
