import { describe, expect, it } from 'vitest';
import { plain } from '../../../../src/listing/decide/plain';

describe('a text for machines', () => {
  it.each([
    ['<p>One.</p><p>Two<br/>three</p>', 'One.\nTwo\nthree'],
    ['&lt;b&gt;Bold&lt;/b&gt; &amp;amp; plain', 'Bold & plain'],
    ['<script>x</script>10 &pound; &euro; &Uuml;ber &#8217; &#x2019;', 'x10 £ € Über ’ ’'],
    ['a < b and c > d', 'a < b and c > d'],
    ['&unknown; &#0; &#xd800; &#9999999;', '&unknown; &#0; &#xd800; &#9999999;'],
    ['  many   \r\n\r\n\r\n  spaces\u00a0here ', 'many\nspaces here'],
    ['Hand%20crank%2C%20oak%20case', 'Hand crank, oak case'],
    ['Hand%20crank%', 'Hand%20crank%'],
    ['20 %20 off', '20 %20 off'],
    ['lone \ud800 half, \u0007 bell', 'lone \ufffd half, bell'],
  ])('%j reads %j', (text, expected) => {
    expect(plain(text, true)).toBe(expected);
  });

  it('is read in time proportional to its length', () => {
    for (const part of ['<', '<!--', '&', '&#', '<p ', '</', '&lt;', '<br'])
      expect(plain(part.repeat(50_000), true)).toBeDefined();
  });
});

describe('a text on the page', () => {
  it('keeps what looks like tags, and loses escapes that a template wrote twice', () => {
    expect(plain('needle <b> and feed &amp; foot', false)).toBe('needle <b> and feed & foot');
  });
});
