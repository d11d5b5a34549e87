/** In what is spelled out: the edge of a text, of a word (`\b`), any letters (`\w*`), and whatever isn't made of words. */
export const EDGE = '\u0001';
export const BOUND = '\u0002';
export const ANY = '\u0003';
export const UNSAID = '\u0004';
/** Where ways part into more than these, those that are told by a word so far are left unsaid. */
const WAYS_MOST = 60;
const IS_TOLD = /\w{3}|\w\W/;

/** Letters, `\w*`, an escape, the beginning of a group of any kind, a class, or a character. */
const PART = /[\w '&-]+(?![?+*{])|\\w\*|\\.|\(\?(?::|<?[=!])|\[[^\]]*\]|./sy;
/** Letters that are a way by themselves. */
const PLAIN = /[\w '&-]+(?=[|)])/y;
const MARKS = new Map([
  ['\\w*', ANY],
  ['\\b', BOUND],
  ['^', EDGE],
  ['$', EDGE],
]);

/**
 * The ways to read a pattern such as `/\b(?:sold|for sale|verk[au]uft?|vendu\w*)\b/`, each as far as it is made of words:
 * behind `UNSAID` it goes on in some other way.
 */
export function spelledOut(source: string): string[] {
  let at = 0;

  const next = (pattern: RegExp): string => {
    pattern.lastIndex = at;
    const [it = ''] = pattern.exec(source) ?? [];
    at += it.length;
    return it;
  };

  const either = (): string[] => {
    const all: string[] = [];
    do {
      const plain = next(PLAIN);
      if (plain) all.push(plain);
      else all.push(...sequence());
    } while (source[at++] === '|');
    return all;
  };

  const sequence = (): string[] => {
    let ways = [''];
    while (at < source.length && source[at] !== '|' && source[at] !== ')') {
      let more = part();
      const times = source[at] ?? '';
      if (times === '?') more = [...more, ''];
      else if (/[+*{]/.test(times)) more = [UNSAID];
      if (times === '{') at = source.indexOf('}', at);
      if (/[?+*{]/.test(times)) at++;
      if (ways.length === 1 && more.length === 1 && !ways[0]!.endsWith(UNSAID)) {
        ways[0] += more[0]!;
        continue;
      }
      const isMuch = ways.length > 1 && more.length > 1 && ways.length * more.length > WAYS_MOST;
      ways = ways.flatMap((way) => {
        if (way.endsWith(UNSAID)) return way;
        return isMuch && IS_TOLD.test(way) ? way + UNSAID : more.map((one) => way + one);
      });
    }
    return ways;
  };

  const part = (): string[] => {
    const it = next(PART);
    if (/\w/.test(it[0]!)) return [it];
    if (it.startsWith('(')) {
      const inner = either();
      return it === '(?:' ? inner : [UNSAID];
    }
    const mark = MARKS.get(it);
    if (mark) return [mark];
    if (/^\[[^\\^-]*\]$/.test(it)) return [...it.slice(1, -1)];
    if (it.startsWith('\\')) return /\w/.test(it[1]!) ? [UNSAID] : [it[1]!];
    return it === '.' || it.startsWith('[') ? [UNSAID] : [it];
  };

  return either();
}
