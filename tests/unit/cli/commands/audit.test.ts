import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../../src/cli/bad-input';
import { auditCommand } from '../../../../src/cli/commands/audit';
import { ROOT } from '../../../steps/root';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const page = file('page.html', '<!doctype html><html lang="en"><h1>Sewing machine, cast iron</h1><p>£ 45</p></html>');
const draft = (over: object = {}) => ({ title: 'Sewing machine, cast iron', description: 'It works.', ...over });
const one = file('draft.json', JSON.stringify(draft({ id: 'a' })));
const many = file('drafts.json', JSON.stringify([draft({ id: 'a' }), draft(), draft({ id: 'c', priceText: '£ 45' })]));

describe('the audit command', () => {
  it('answers a page, as text and as JSON', () => {
    expect(auditCommand([page])).toMatch(/^Sewing machine, cast iron\n=+\n/);
    const answer = JSON.parse(auditCommand([page, '--json']));
    expect(answer).toMatchObject({ schema: 1, listing: { title: 'Sewing machine, cast iron' } });
    expect(answer.packs.map((pack: { id: string }) => pack.id)).toEqual(['trade']);
  });

  it('answers one draft as it answers a page', () => {
    expect(JSON.parse(auditCommand(['--draft', one, '--json']))).toMatchObject({ schema: 1, kind: 'item' });
    expect(auditCommand(['--draft', one])).toMatch(/^Sewing machine, cast iron\n/);
  });

  it('answers a list of drafts one line of JSON each, in order, with its id', () => {
    const lines = auditCommand(['--draft', many, '--json']).trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).id)).toEqual(['a', null, 'c']);
    expect(JSON.parse(lines[2] ?? '').listing.price).toMatchObject({ amount: '45', currency: 'GBP' });
    expect(auditCommand(['--draft', many]).match(/^Draft .+$/gm)).toEqual(['Draft a', 'Draft 2', 'Draft c']);
  });

  const club = join(ROOT, 'fixtures/packs/grindlewade-circle.json');
  const antique = (over: object) =>
    file('club.json', JSON.stringify(draft({ title: 'Grindlewade Cressiter, antique', ...over })));

  it('lets each pack speak that is given and that covers the advert', () => {
    const packs = (...argv: string[]) =>
      JSON.parse(auditCommand(['--draft', antique({}), '--json', ...argv])).packs.map(
        (pack: { id: string }) => pack.id,
      );
    expect(packs('--pack', club)).toEqual(['trade', 'grindlewade-circle']);
    expect(packs()).not.toContain('grindlewade-circle');
  });

  it('audits for the day that it is told', () => {
    const made = antique({ serialText: 'KD 318472', description: 'An antique machine, over 100 years old.' });
    const on = (day: string) =>
      JSON.parse(auditCommand(['--draft', made, '--pack', club, '--as-of', day, '--json'])).findings;
    expect(on('2026-01-01')).not.toEqual(on('2060-01-01'));
    expect(on('2026-01-01')).toEqual(on('2026-01-01'));
  });

  it('says why when asked: after the text, or as a list in the JSON', () => {
    expect(auditCommand([page])).not.toContain('What was read');
    expect(auditCommand([page, '--explain'])).toContain(auditCommand([page]));
    expect(auditCommand([page, '--explain'])).toMatch(/What was read[\s\S]*“cast iron”: frame: cast iron \[trade\]/);
    const { explain, ...answer } = JSON.parse(auditCommand(['--draft', one, '--explain', '--json']));
    expect(answer).toEqual(JSON.parse(auditCommand(['--draft', one, '--json'])));
    expect(explain).toContainEqual(
      expect.objectContaining({
        field: 'title',
        quote: 'cast iron',
        start: 16,
        end: 25,
        stance: 'says',
      }),
    );
    const lines = auditCommand(['--draft', many, '--explain', '--json']).trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line).explain.length > 0)).toEqual([true, true, true]);
  });

  it.each<[string, string[], RegExp]>([
    ['no argument', [], /^nothing to read; usage: /],
    ['a page and a draft', [page, '--draft', one], /^a page and a draft were given/],
    ['two pages', [page, page], /^2 pages were given/],
    ['a missing page', ['none.html'], /^none\.html: no such file$/],
    ['a folder', [folder], /: this is a folder, not a file$/],
    ['a missing draft', ['--draft', 'none.json'], /^none\.json: no such file$/],
    ['an unknown option', [page, '--score'], /^unknown option --score; usage: /],
    ['an option without its value', [page, '--pack'], /^--pack needs a value; usage: /],
    ['a day that is none', [page, '--as-of', '2026-02-30'], /^--as-of: "2026-02-30" is not a day/],
    ['an address that is none', [page, '--url', 'page'], /^--url: "page" is not an address/],
    ['a draft with an address', ['--draft', one, '--url', 'https://a.example'], /^--url belongs to a page/],
    ['a draft that is no JSON', ['--draft', file('bad.json', '{')], /bad\.json: The draft is not JSON\.$/],
    ['a draft of another shape', ['--draft', file('shape.json', '{"tilte":1}')], /shape\.json: Unknown key "tilte"\.$/],
    ['a page for a pack', [page, '--pack', page], /page\.html: not a pack: 1 issue/],
    ['a missing pack', [page, '--pack', 'none.json'], /^none\.json: no such file$/],
    ['a pack that is none', [page, '--pack', one], /draft\.json: not a pack: \d+ issues?, the first at .+ expected /],
  ])('%s is bad input, in one line', (_what, argv, line) => {
    expect(() => auditCommand(argv)).toThrow(BadInput);
    expect(() => auditCommand(argv)).toThrow(line);
  });
});

describe('its process', () => {
  const run = (...argv: string[]) =>
    spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/audit.ts', ...argv], { cwd: ROOT, encoding: 'utf8' });

  // Two processes that compile their sources first: a loaded machine takes its time.
  it('ends with 0 and an answer, or with 2 and one line on standard error', () => {
    const good = run(page, '--json');
    expect(good).toMatchObject({ status: 0, stderr: '' });
    expect(JSON.parse(good.stdout).schema).toBe(1);
    const bad = run('no\u001bne\n.html');
    expect(bad).toMatchObject({ status: 2, stdout: '', stderr: 'no\\u001bne .html: no such file\n' });
  }, 90_000);
});
