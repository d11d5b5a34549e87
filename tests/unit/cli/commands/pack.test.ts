import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../../src/cli/bad-input';
import { packCommand } from '../../../../src/cli/commands/pack';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

const put = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};
const LEAST =
  '{"schema":1,"about":{"id":"a","title":"A","edition":1,"licence":"CC0","language":"en","covers":{"thing":"m","words":["m"]}}';

describe('the pack command', () => {
  it('writes the JSON Schema of packs, to a file or to standard output', async () => {
    const schema = JSON.parse(await packCommand(['schema']));
    expect(schema.properties.schema).toMatchObject({ const: 1 });
    const out = join(folder, 'schema.json');
    expect(await packCommand(['schema', '--out', out])).toContain(out);
    expect(JSON.parse(readFileSync(out, 'utf8'))).toEqual(schema);
  });

  it('tells what a good pack holds', async () => {
    expect(await packCommand(['check', 'src/pack/shipped/trade.json'])).toMatch(
      /pack trade, edition \d+: .+, no issues\n$/,
    );
    expect(await packCommand(['check', put('least.json', `${LEAST}}`)])).toContain('no issues');
  });

  it('refuses what JSON readers take without a word, and says where it stands', async () => {
    for (const [tail, said] of [
      [',\n"x-a":{"k":1,"k":2}}', 'the key "k" stands twice in one object, at line 2, column 14'],
      [',"x-a":"\\ud800"}', 'half a character'],
      [',"x-a":"\\uffff"}', 'keeps for no use'],
    ]) {
      const said1 = await printed(() => packCommand(['check', put('i.json', LEAST + tail)]));
      expect(said1).toContain(said);
      expect(said1).toContain('I-JSON');
    }
  });

  it.each([
    [[], /^nothing to read/],
    [['check'], /^nothing to read/],
    [['unseal', 'a'], /^unknown command "unseal"/],
    [['check', 'none.json'], /^none\.json: no such file$/],
    [['schema', '--out', '/'], /^\/: this is a folder/],
    [['schema', '--out', '/nowhere/a'], /^\/nowhere\/a: can't be written/],
    [['key'], /^--passphrase is missing/],
    [['key', 'a', '--passphrase', 'b'], /^key takes no file, 1 was given/],
    [['seal', 'a'], /^--out is missing/],
    [['seal', 'a', 'b'], /^seal takes one file, 2 were given/],
    [['verify', 'src/pack/shipped/trade.json'], /trade\.json: not a sealed pack$/],
    [['diff', 'a'], /^diff takes two files, 1 was given/],
    [['merge', 'src/pack/shipped/trade.json'], /^merge takes a pack and proposals, or three packs/],
    [['merge', 'src/pack/shipped/trade.json', 'package.json'], /^package\.json: no proposal/],
    [['publish', 'a'], /^--folder is missing/],
  ])('%j is bad input', async (argv, line) => {
    await expect(packCommand(argv)).rejects.toThrow(BadInput);
    await expect(packCommand(argv)).rejects.toThrow(line);
  });
});

/** What a command prints before it ends with bad input. */
async function printed(run: () => Promise<string>): Promise<string> {
  const write = process.stdout.write;
  let text = '';
  process.stdout.write = ((part: string) => {
    text += part;
    return true;
  }) as typeof process.stdout.write;
  try {
    await run();
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
  } finally {
    process.stdout.write = write;
  }
  return text;
}
