import type { Scheme } from '../pack/schema/serials';
import { digitRange, numberIn } from '../pack/serial-form';
import { isSmallWord } from '../quantity/serial-codes';
import { normaliseSerial } from '../quantity/serials';
import type { SerialMention } from '../quantity/types';
import { inEitherForm } from '../text/either-form';
import type { Span } from '../text/span';
import { visible } from '../text/visible';

/** Digits, in one piece or parted as sellers part them. */
const DIGITS = /\d+(?:[ .,/\-–]\d+)*/g;
const GROUP = /\d+/g;
/** More groups than these are no number of a machine. */
const MOST_GROUPS = 6;
/** What sellers write between letters and digits: "QT 12", "QT-12", "QT - 12", "QT: 12", "QT-Nr. 12", "QT No 12". */
const BETWEEN = '(?:[ .:/\\-–]|(?:nr|no|n°)(?![a-z])\\.?){0,4}';
/** The letters before the digits begin at most so far back. */
const FARTHEST = 16;

/**
 * Numbers written in the form of a scheme with letters, whichever and however many: "SA 12-345", "234567 LV". The
 * scheme's own letters vouch for it, so that no word need call it a serial. Small letters count where they are glued to
 * the digits, or are two at least and no word of a language.
 */
export function schemeCodes(text: string, schemes: readonly Scheme[]): SerialMention[] {
  const lettered = schemes.filter(({ prefix, suffix = '' }) => /[A-Z]/.test(prefix + suffix)).map(formOf);
  if (lettered.length === 0) return [];
  const seen = visible(text);
  const fewest = Math.min(...lettered.map(({ least }) => least));
  const codes: SerialMention[] = [];
  for (const digits of seen.text.matchAll(DIGITS)) {
    if (digits[0].length < fewest) continue;
    for (const { start, end, count } of stretches(digits[0], digits.index)) {
      const found = lettered
        .map((form) => (count < form.least || count > form.most ? null : written(form, seen.text, start, end)))
        .find((one) => one !== null);
      if (!found) continue;
      const span = seen.toOriginal(found.start, found.end);
      codes.push(Object.assign(found, span, { quote: text.slice(span.start, span.end) }));
      break;
    }
  }
  return codes;
}

/** "667 432 1958": all groups of digits together, then fewer, from the first on and from later ones. */
function stretches(digits: string, at: number): Stretch[] {
  const groups = [...digits.matchAll(GROUP)];
  if (groups.length > MOST_GROUPS) return [];
  const found: Stretch[] = [];
  groups.forEach(({ index }, first) => {
    let count = 0;
    const ends = groups.slice(first).map((group) => {
      count += group[0].length;
      return { start: at + index, end: at + group.index + group[0].length, count };
    });
    found.push(...ends.reverse());
  });
  return found;
}

interface Stretch extends Span {
  /** How many digits. */
  count: number;
}

interface Form {
  scheme: Scheme;
  /** How many digits it has. */
  least: number;
  most: number;
  before: RegExp;
  after: RegExp;
}

const forms = new WeakMap<Scheme, Form>();

function formOf(scheme: Scheme): Form {
  const there = forms.get(scheme);
  if (there) return there;
  const { prefix, suffix = '' } = scheme;
  const [least, most] = digitRange(scheme);
  const made = {
    ...{ scheme, least, most },
    before: new RegExp(`(?:^|[^\\p{L}\\d])(${spelt(prefix)}${prefix ? BETWEEN : ''})$`, 'iu'),
    after: new RegExp(`^(${suffix ? '[ ./\\-]?' : ''}${spelt(suffix)})(?![\\p{L}\\d])`, 'iu'),
  };
  forms.set(scheme, made);
  return made;
}

/** A scheme's letters are few and ASCII by the pack's form; what else may stand there stands for itself. "K.D." is KD. */
function spelt(letters: string): string {
  return [...letters].map((letter) => letter.replace(/[^A-Za-z0-9]/g, '\\$&')).join('\\.?');
}

function written({ scheme, before, after }: Form, text: string, start: number, end: number): SerialMention | null {
  const lead = before.exec(text.slice(Math.max(0, start - scheme.prefix.length - FARTHEST), start));
  const tail = after.exec(text.slice(end, end + (scheme.suffix?.length ?? 0) * 2 + 2));
  if (
    !lead ||
    !tail ||
    !areLetters(lead[1]!, scheme.prefix, isCalled(text, start - lead[1]!.length)) ||
    !areLetters(tail[1]!, scheme.suffix ?? '', false)
  )
    return null;
  const [from, to] = [start - lead[1]!.length, end + tail[1]!.length];
  const normal = scheme.prefix + normaliseSerial(text.slice(start, end)) + (scheme.suffix ?? '');
  if (numberIn(scheme, normal) === null) return null;
  return { start: from, end: to, quote: text.slice(from, to), normal, cue: null };
}

const CALLED = inEitherForm(
  /(?:\b(?:no|nr|num|numero|numéro|number|nummer|serial|seriennummer|s\/n|série)(?: (?:on it|is|reads|ist|lautet|est))*|n°)[.:]?\s{0,2}$/iu,
);

/** "No. t 23 105", "numero h 1.920.400": words right before say that a number comes. */
function isCalled(text: string, at: number): boolean {
  return CALLED.test(text.slice(Math.max(0, at - FARTHEST), at));
}

/** Capitals always; small letters only where nobody takes them for a word. */
function areLetters(beside: string, letters: string, called: boolean): boolean {
  const there = beside.replace(/[^\p{L}]/gu, '').slice(0, letters.length);
  if (there === letters) return true;
  if (there !== there.toLowerCase()) return false;
  return called || beside.length === letters.length || (letters.length > 1 && !isSmallWord(there));
}
