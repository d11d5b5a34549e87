import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { serveMarket } from '../../../src/cli/demo/serve-market';
import { readPageFile } from '../../../src/cli/page-file';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

function page(html: string | Buffer): string {
  const path = join(folder, 'page.html');
  writeFileSync(path, html);
  return path;
}

const advert = (head: string, title: string) =>
  `<!doctype html><html><head>${head}</head><body><main><h1>${title}</h1><p>EUR 110</p></main></body></html>`;

describe('a stored page', () => {
  it('is decoded as a browser would: meta charset, byte-order mark, or neither', () => {
    const title = 'Nähmaschine, Gußeisen';
    const latin = Buffer.from(advert('<meta charset="iso-8859-1">', title), 'latin1');
    expect(readPageFile(page(latin), undefined).title).toBe(title);
    const unmarked = Buffer.from(advert('', title), 'latin1');
    expect(readPageFile(page(unmarked), undefined).title).toBe(title);
    expect(readPageFile(page(advert('<meta charset="utf-8">', title)), undefined).title).toBe(title);
    const wide = Buffer.from(`\ufeff${advert('', title)}`, 'utf16le');
    expect(readPageFile(page(wide), undefined).title).toBe(title);
  });

  it('runs no script and loads nothing', async () => {
    const market = await serveMarket(folder);
    const at = (name: string) => `${market.origin}/${name}`;
    const html = advert(
      `<link rel="stylesheet" href="${at('a.css')}"><script src="${at('a.js')}"></script>`,
      `Title<script>document.querySelector('h1').textContent = 'Changed'</script>`,
    ).replace(
      '<p>',
      `<img src="${at('a.png')}" onerror="document.querySelector('h1').textContent = 'Changed'">
       <iframe src="${at('a.html')}"></iframe><p>`,
    );
    expect(readPageFile(page(html), 'https://market.example/1').title).toBe('Title');
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(market.requests).toEqual([]);
    await market.close();
  });

  it('is read, whatever is in it', () => {
    expect(readPageFile(page(''), undefined).title).toBe('');
    const broken = '<style>@@{{</style><table><tr><div><h1>A <title>B</table><script>{</body>';
    expect(() => readPageFile(page(broken), undefined)).not.toThrow();
    expect(() => readPageFile(page(Buffer.from([0, 255, 254, 0, 60, 60])), undefined)).not.toThrow();
  });
});
