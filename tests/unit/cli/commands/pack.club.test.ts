import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { packCommand } from '../../../../src/cli/commands/pack';
import type { Pack } from '../../../../src/pack/schema/index';
import { openAnswer } from '../../../../src/sharing/propose/answer';
import { applyUpdate } from '../../../../src/sharing/propose/update-file';
import { openSealed } from '../../../../src/sharing/seal/open-seal';
import { readNotice } from '../../../../src/sharing/subscribe/notice';
import { largePack } from '../../sharing/support/large-pack';

// A club that keeps its pack as files: keys, editions, proposals, publication, a change of keys.

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

const at = (name: string): string => join(folder, name);
const read = (name: string): string => readFileSync(at(name), 'utf8');
const put = (name: string, content: unknown): string => {
  writeFileSync(at(name), typeof content === 'string' ? content : JSON.stringify(content, null, 2));
  return at(name);
};
const run = (...argv: string[]): Promise<string> => packCommand(argv);
const says = (argv: string[], line: string | RegExp) => expect(packCommand(argv)).rejects.toThrow(line);
const keyed = (name: string) => ['--key', at(`${name}.key`), '--passphrase', at('pass')];

const club = (edition: number, change: (pack: Pack) => void = () => {}): Pack => {
  const pack = largePack(20, 60);
  pack.about = { ...pack.about, id: 'selvage-bench', edition };
  change(pack);
  return pack;
};
const numbered = (model: number, made: number) => (pack: Pack) => {
  pack.models![model]!.number = made;
};
const opened = async (name: string) => {
  const result = await openSealed(read(name));
  if (result.issues) throw new Error(result.issues[0]?.what);
  return result;
};

let id: string;
beforeAll(async () => {
  put('pass', 'bobbins under the bench\n');
  for (const name of ['keeper', 'member', 'next'])
    expect(await run('key', '--out', at(`${name}.key`), '--passphrase', at('pass'))).toMatch(/(\d{4} ){9}\d{4}\./);
  put('one.json', club(1));
  await run('seal', at('one.json'), ...keyed('keeper'), '--next', at('next.key'), '--out', at('1.pack'));
  id = (await opened('1.pack')).pack.about.id;
});

describe('a keeper', () => {
  it('seals a first edition, which has an id of its own from then on', async () => {
    const again = ['seal', at('one.json'), ...keyed('keeper'), '--out', at('1.pack')];
    await says(again, '1.pack: is there already; --force writes over it');
    const said = await run(...again, '--next', at('next.key'), '--force');
    expect(said).toMatch(
      /^Wrote .*1\.pack, over what was there: pack selvage-bench-[a-z2-7]{26}, edition 1, sealed by/,
    );
    expect(said).toContain('"selvage-bench" is called');
    expect(await run('check', at('1.pack'))).toContain(`pack ${id}, edition 1: 20 models, 60 serial runs, no issues`);
    expect(await run('verify', at('1.pack'))).toContain('It commits to the key that comes next');
  });

  it('seals editions that follow, and no others', async () => {
    put('two.json', club(2, numbered(3, 1234)));
    const seal = ['seal', at('two.json'), ...keyed('keeper'), '--over', at('1.pack'), '--out', at('2.pack')];
    await run(...seal, '--expires', '2027-01-31');
    const { pack, previous, expires, next } = await opened('2.pack');
    expect(pack.about).toMatchObject({ id, edition: 2 });
    expect([previous, expires]).toEqual([{ edition: 1, hash: (await opened('1.pack')).hash }, '2027-01-31']);
    expect(next).toBe((await opened('1.pack')).next);
    const said = await run('verify', at('2.pack'), '--after', at('1.pack'), '--on', '2027-02-01');
    expect(said).toContain('Its time was over on 2027-01-31');
    expect(said).toContain('A later edition by the same key');
    await says(['verify', at('1.pack'), '--after', at('2.pack')], '1.pack: edition 1, expected 2 or a later one');
    await says(
      ['seal', at('one.json'), ...keyed('keeper'), '--over', at('2.pack'), '--out', at('x')],
      'edition 1, expected one above 2',
    );
    await says([...seal, '--next', at('member.key'), '--force'], 'committed to another key');
    await says([...seal, '--force', '--expires', '2027-02-30'], '--expires: "2027-02-30" is not a day');
    const lasting = { ...club(2), about: { ...club(2).about, expires: '2027-01' } };
    put('lasting.json', lasting);
    const other = ['seal', at('lasting.json'), ...keyed('keeper'), '--over', at('1.pack'), '--out', at('lasting.pack')];
    await says([...other, '--expires', '2027-02-01'], 'lasts until 2027-01, and --expires says 2027-02-01');
    await run(...other, '--expires', '2027-01-31');
    await run(...other, '--force');
    expect((await opened('lasting.pack')).expires).toBe('2027-01-31');
    await says(['seal', at('2.pack'), ...keyed('member'), '--out', at('x')], 'is of another key');
  });

  it('tells a changed file, a wrong passphrase and what is no key', async () => {
    put('bad.pack', read('2.pack').replace('Number 3', 'Number 4'));
    await says(['verify', at('bad.pack')], 'bad.pack: the seal does not fit what follows it');
    put('wrong', 'another passphrase');
    const seal = ['seal', at('one.json'), '--out', at('x'), '--key', at('keeper.key'), '--passphrase'];
    await says([...seal, at('wrong')], 'keeper.key: does not open with this passphrase');
    await says(
      ['seal', at('one.json'), '--out', at('x'), '--key', at('one.json'), '--passphrase', at('pass')],
      'no key',
    );
    put('short', 'short');
    await says(['key', '--out', at('x'), '--passphrase', at('short')], 'the passphrase needs 10 characters or more');
    await says(['key', '--out', at('keeper.key'), '--passphrase', at('pass')], 'is there already');
    expect(existsSync(at('x'))).toBe(false);
  });

  it('sees what differs, in words and as JSON', async () => {
    const said = await run('diff', at('1.pack'), at('2.pack'));
    expect(said).toBe('Edition 1 -> 2\n~ model Number 3 (model-3)\n    number: 1003 -> 1234\n');
    expect(JSON.parse(await run('diff', at('1.pack'), at('2.pack'), '--json'))).toHaveLength(2);
    expect(await run('diff', at('1.pack'), at('1.pack'))).toBe('No difference.\n');
  });
});

describe('members', () => {
  const propose = (name: string, change: (pack: Pack) => void) => {
    const pack = structuredClone(JSON.parse(read('2.pack').split('\n')[1]!)) as Pack;
    change(pack);
    put(`${name}.json`, pack);
    return run(
      'propose',
      at('2.pack'),
      at(`${name}.json`),
      ...keyed('member'),
      '--name',
      name,
      '--out',
      at(`${name}.proposal`),
    );
  };

  it('propose, and the keeper sees two proposals on one field together', async () => {
    expect(await propose('Ann', numbered(0, 1))).toContain('1 change for the keeper');
    await propose('Bea', (pack) => {
      pack.models![0]!.number = 2;
      pack.models![1]!.number = 3;
    });
    const merge = ['merge', at('2.pack'), at('Ann.proposal'), at('Bea.proposal')];
    const shown = vi.spyOn(process.stdout, 'write').mockImplementation(() => true);
    await says([...merge, '--out', at('three.json')], '1 place is undecided, so that nothing was written');
    expect(shown.mock.calls.join('')).toBe('models model-0 number: here 1000; Ann wants 1; Bea wants 2\n');
    shown.mockRestore();
    expect(existsSync(at('three.json'))).toBe(false);
    const [row, other] = JSON.parse(await run(...merge, '--rows'));
    expect([row.state, other.state]).toEqual(['conflict', 'open']);
    put('decisions.json', { [row.slot]: { do: 'accept', offer: 1, reason: 'The ledger says two.' } });
    const decided = [...merge, '--decisions', at('decisions.json'), '--out', at('three.json')];
    expect(await run(...decided, '--answers', at('answers'), ...keyed('keeper'))).toContain('2 places changed');
    expect(JSON.parse(read('three.json')).models.slice(0, 2)).toMatchObject([{ number: 2 }, { number: 3 }]);
    const { key } = await opened('2.pack');
    const answers = await Promise.all(
      readdirSync(at('answers')).map((name) => openAnswer(read(`answers/${name}`), key)),
    );
    const outcomes = answers.map((answer) => answer?.changes.map(({ outcome, reason }) => `${outcome}: ${reason}`));
    expect(outcomes).toHaveLength(2);
    expect(outcomes).toContainEqual(['declined: The ledger says two.']);
    expect(outcomes).toContainEqual(['accepted: ', 'accepted: ']);
    for (const [file, line] of [
      [{ nowhere: { do: 'decline', reason: '' } }, 'no row has the slot nowhere'],
      [{ [row.slot]: { do: 'accept', offer: 7 } }, 'has no offer 7'],
      [{ [row.slot]: { do: 'sing' } }, 'not decisions'],
      ['{', 'not decisions'],
    ] as const) {
      put('bad-decisions.json', file);
      await says([...merge, '--decisions', at('bad-decisions.json'), '--out', at('x')], line);
    }
  });

  it('can’t propose nothing, or to another pack', async () => {
    await says(
      ['propose', at('2.pack'), at('2.pack'), ...keyed('member'), '--name', 'Ann', '--out', at('x')],
      'there is no difference',
    );
    await says(
      ['merge', at('one.json'), at('Ann.proposal'), '--out', at('x')],
      `for pack ${id}, not for selvage-bench`,
    );
    put('cut.proposal', read('Ann.proposal').slice(0, -2));
    await says(
      ['merge', at('2.pack'), at('cut.proposal'), '--out', at('x')],
      'no proposal, or not as its author signed it',
    );
  });
});

describe('three packs of version control', () => {
  it('merge where they are disjoint, and name what both changed', async () => {
    put('base.json', club(3));
    put('ours.json', club(4, numbered(0, 5)));
    put(
      'theirs.json',
      club(3, (pack) => {
        pack.serials!.runs.year![4] = 1950;
      }),
    );
    expect(
      await run('merge', at('base.json'), at('ours.json'), at('theirs.json'), '--out', at('merged.json')),
    ).toContain('1 place changed');
    const merged = JSON.parse(read('merged.json')) as Pack;
    expect([merged.about.edition, merged.models![0]!.number, merged.serials!.runs.year![4]]).toEqual([4, 5, 1950]);
    put('other.json', club(3, numbered(0, 6)));
    const shown = vi.spyOn(process.stdout, 'write').mockImplementation(() => true);
    await says(['merge', at('base.json'), at('ours.json'), at('other.json'), '--out', at('x')], '1 place is undecided');
    expect(shown.mock.calls.join('')).toBe('models model-0 number: here 5; THEIRS wants 6\n');
    shown.mockRestore();
    // Each by itself is in order: one speaks of a model that the other takes away.
    const spare = { id: 'spare', label: 'Spare', names: ['Spare'] };
    put(
      'with.json',
      club(3, (pack) => {
        pack.models!.push(spare);
      }),
    );
    put(
      'speaks.json',
      club(3, (pack) => {
        pack.models!.push(spare);
        pack.cautions = [{ id: 'heavy', text: 'Heavy.', models: ['spare'] }];
      }),
    );
    await says(
      ['merge', at('with.json'), at('speaks.json'), at('base.json'), '--out', at('x')],
      'make no pack: 1 issue',
    );
  });
});

describe('publishing', () => {
  it('writes a folder that any host can serve, and the next edition beside it as a small update', async () => {
    expect(await run('publish', at('1.pack'), '--folder', at('web'))).toContain(
      'edition 1 is the one that is published',
    );
    expect(await run('publish', at('1.pack'), '--folder', at('web'))).toContain('is published already');
    const said = await run('publish', at('2.pack'), '--folder', at('web'));
    expect(said).toContain('edition 2 is published in place of 1');
    const notice = readNotice(read('web/selvage-bench.notice.json'));
    expect(notice).toMatchObject({ pack: id, edition: 2, changes: [{ from: 1 }] });
    expect(read(`web/${notice!.file.sha256}.pack`)).toBe(read('2.pack'));
    const update = read(`web/${notice!.changes[0]!.file.sha256}.changes`);
    expect(applyUpdate(update, await opened('1.pack'))).toEqual({ sealed: read('2.pack') });
    expect(readdirSync(at('web'))).toHaveLength(4);
    await says(['publish', at('1.pack'), '--folder', at('web')], 'edition 1, expected 2 or a later one');
  });

  it('refuses another pack under one number, and what somebody else put there', async () => {
    put('fork.json', club(2, numbered(3, 9)));
    await run('seal', at('fork.json'), ...keyed('keeper'), '--over', at('1.pack'), '--out', at('fork.pack'));
    await says(['publish', at('fork.pack'), '--folder', at('web')], 'another pack under the same number');
    put('web/selvage-bench.notice.json', '{}');
    await says(['publish', at('2.pack'), '--folder', at('web')], 'is no notice of this pack');
  });
});

describe('a change of keys', () => {
  const handOver = (name: string, out: string) => {
    put('three.json', club(3));
    return ['seal', at('three.json'), ...keyed(name), '--over', at('2.pack'), '--out', at(out)];
  };

  it('is signed by both keys, goes to the key that was committed to, and is told', async () => {
    await says(handOver('next', '3.pack'), 'Hand the pack over with --old-key');
    const old = ['--old-key', at('keeper.key'), '--old-passphrase', at('pass')];
    await says([...handOver('member', 'x'), ...old], 'committed to another key than this one');
    await says([...handOver('next', 'x'), '--old-key', at('member.key')], 'is sealed by another key');
    await run(...handOver('next', '3.pack'), ...old);
    const said = await run('verify', at('3.pack'), '--after', at('2.pack'));
    expect(said).toMatch(/From edition 3: handed over from (\d{4} ?){10} to (\d{4} ?){10}\n/);
    expect(said).toContain('A later edition by a key to which the pack was handed over');
  });
});
