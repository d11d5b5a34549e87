/** Named characters of HTML 4 without the accented letters (Latin-1 in order of code, and the common signs). */
const LATIN_1 =
  'nbsp iexcl cent pound curren yen brvbar sect uml copy ordf laquo not shy reg macr deg plusmn sup2 sup3 acute micro para middot cedil sup1 ordm raquo frac14 frac12 frac34 iquest';
const OTHERS =
  'amp& lt< gt> quot" apos\' AEligÆ aeligæ OEligŒ oeligœ ETHÐ ethð THORNÞ thornþ OslashØ oslashø szligß times× divide÷ euro€ hellip… bull• trade™ minus− ndash– mdash— lsquo‘ rsquo’ sbquo‚ ldquo“ rdquo” bdquo„ prime′ Prime″';
const ENTITIES: ReadonlyMap<string, string> = new Map<string, string>([
  ...LATIN_1.split(' ').map((name, index): [string, string] => [name, String.fromCharCode(160 + index)]),
  ...OTHERS.split(' ').map((pair): [string, string] => [pair.slice(0, -1), pair.slice(-1)]),
  ...['ensp', 'emsp', 'thinsp'].map((name): [string, string] => [name, ' ']),
]);

/** The marks that make a letter another one, by the ends of its name. */
const MARKS: ReadonlyMap<string, string> = new Map([
  ['grave', '\u0300'],
  ['acute', '\u0301'],
  ['circ', '\u0302'],
  ['tilde', '\u0303'],
  ['uml', '\u0308'],
  ['ring', '\u030a'],
  ['caron', '\u030c'],
  ['cedil', '\u0327'],
]);

/** The character that HTML calls so ("eacute"), or undefined: the ones that templates escape. */
export function entity(name: string): string | undefined {
  const mark = MARKS.get(name.slice(1));
  const letter = mark && (name[0] + mark).normalize('NFC');
  return letter?.length === 1 ? letter : ENTITIES.get(name);
}
