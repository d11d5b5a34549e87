import { describe, expect, it } from 'vitest';
import { texts } from '../../../src/text/catalogue/index';
import { htmlTexts, literalTexts, stringsOf } from './literal-texts';
import { filesBelow } from './source-files';

describe('all interface texts stand in the catalogue', () => {
  const components = filesBelow(['src', 'entrypoints'], ['.tsx']);

  it('no component holds words of its own', () => {
    expect(components.length).toBeGreaterThan(0);
    expect(components.flatMap(literalTexts)).toEqual([]);
  });

  it("no page's HTML does, but for a title that the catalogue has as well", () => {
    const pages = filesBelow(['entrypoints'], ['.html']);
    expect(pages.length).toBeGreaterThan(0);
    expect(pages.flatMap((page) => htmlTexts(page, stringsOf(texts)))).toEqual([]);
  });

  it.each([
    ['a text node', '<p>Hello</p>'],
    ['a string in braces', "<p>{'Hello'}</p>"],
    ['a template', `<p>{\`Hello \${name}\`}</p>`],
    ['either side of a condition', "<p>{some ? texts.a : 'Hello'}</p>"],
    ['a default', "<p>{label ?? 'Hello'}</p>"],
    ['a title', '<p title="Hello" />'],
    ['a label for screen readers', "<p aria-label={'Hello'} />"],
    ['a placeholder', '<input placeholder="Hello" />'],
  ])('finds %s', (_what, jsx) => {
    expect(literalTexts({ path: 'src/view/a.tsx', text: `export const a = ${jsx};` })).toEqual([
      'src/view/a.tsx: "Hello"',
    ]);
  });

  it('leaves alone what no user reads', () => {
    const jsx = "<p class=\"wide\" data-part='x' aria-labelledby='y'>{texts.a}: {count} · {list.join('and')}</p>";
    expect(literalTexts({ path: 'src/view/a.tsx', text: `export const a = ${jsx};` })).toEqual([]);
  });

  it('finds words in HTML', () => {
    const html = '<!doctype html><html lang="en"><title>Bedplate</title><body><p>Hello</p></body></html>';
    expect(htmlTexts({ path: 'a.html', text: html }, new Set(['Bedplate']))).toEqual(['a.html: "Hello"']);
    expect(htmlTexts({ path: 'a.html', text: html.replace('Bedplate', 'Other') }, new Set(['Bedplate']))).toHaveLength(
      2,
    );
  });
});
