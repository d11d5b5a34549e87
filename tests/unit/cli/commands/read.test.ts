import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../../src/cli/bad-input';
import { readCommand } from '../../../../src/cli/commands/read';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

const page = join(folder, 'page.html');
writeFileSync(page, '<!doctype html><html lang="en"><h1>Sewing machine</h1><p>Price: £ 45</p><img src="a.jpg"></html>');

describe('the read command', () => {
  it('answers the listing as JSON, with the address that it is told', () => {
    const listing = JSON.parse(readCommand([page, '--url', 'https://market.example/1', '--json']));
    expect(listing).toMatchObject({ title: 'Sewing machine', url: 'https://market.example/1' });
    expect(listing.price).toEqual({ amount: '45', currency: 'GBP', how: 'asking' });
  });

  it('lays it out as text, with where each field was read', () => {
    const text = readCommand([page]);
    expect(text).toMatch(/^Title +Sewing machine\n +\(from the visible page, confidence \d\.\d\d\)$/m);
    expect(text).toMatch(/^Price +45 GBP, asked$/m);
    expect(text).toMatch(/^Serial +-$/m);
  });

  it.each([
    [[], /^nothing to read/],
    [[page, page], /^2 pages/],
    [['none.html'], /no such file/],
    [[page, '--pack', 'x'], /^unknown option --pack/],
  ])('%j is bad input', (argv, line) => {
    expect(() => readCommand(argv)).toThrow(BadInput);
    expect(() => readCommand(argv)).toThrow(line);
  });
});
