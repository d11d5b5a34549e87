import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../../src/cli/bad-input';
import { packCommand } from '../../../../src/cli/commands/pack';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('the pack command', () => {
  it('writes the JSON Schema of packs, to a file or to standard output', () => {
    const schema = JSON.parse(packCommand(['schema']));
    expect(schema.properties.schema).toMatchObject({ const: 1 });
    const out = join(folder, 'schema.json');
    expect(packCommand(['schema', '--out', out])).toContain(out);
    expect(JSON.parse(readFileSync(out, 'utf8'))).toEqual(schema);
  });

  it('tells what a good pack holds', () => {
    expect(packCommand(['check', 'src/pack/shipped/trade.json'])).toMatch(/pack trade, edition \d+: .+, no issues\n$/);
  });

  it.each([
    [[], /^nothing to read/],
    [['check'], /^nothing to read/],
    [['publish', 'a'], /^unknown command "publish"/],
    [['check', 'none.json'], /^none\.json: no such file$/],
    [['schema', '--out', '/'], /^\/: can't be written/],
  ])('%j is bad input', (argv, line) => {
    expect(() => packCommand(argv)).toThrow(BadInput);
    expect(() => packCommand(argv)).toThrow(line);
  });
});
