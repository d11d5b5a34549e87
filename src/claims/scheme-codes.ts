import type { Scheme } from '../pack/schema/serials';
import { digitRange, numberIn } from '../pack/serial-form';
import { normaliseSerial } from '../quantity/serials';
import type { SerialMention } from '../quantity/types';
import { visible } from '../text/visible';

/** Digits, in one piece or parted as sellers part them. */
const DIGITS = /\d+(?:[ ./-]\d+)*/g;
const SEPARATOR = '[ ./\\-]?';

/**
 * Numbers written in the form of a scheme with letters, whichever and however many: "SA 12-345", "234567 LV". The
 * scheme's own letters vouch for it, so that no word need call it a serial. Letters apart count as capitals only.
 */
export function schemeCodes(text: string, schemes: readonly Scheme[]): SerialMention[] {
  const lettered = schemes.filter(({ prefix, suffix = '' }) => /[A-Z]/.test(prefix + suffix)).map(formOf);
  if (lettered.length === 0) return [];
  const out: SerialMention[] = [];
  const seen = visible(text);
  for (const digits of seen.text.matchAll(DIGITS)) {
    const [start, end] = [digits.index, digits.index + digits[0].length];
    const found = lettered.map((form) => written(form, seen.text, start, end)).find((one) => one !== null);
    if (!found) continue;
    const span = seen.toOriginal(found.start, found.end);
    out.push({ ...found, ...span, quote: text.slice(span.start, span.end) });
  }
  return out;
}

interface Form {
  scheme: Scheme;
  before: RegExp;
  after: RegExp;
}

function formOf(scheme: Scheme): Form {
  const { prefix, suffix = '' } = scheme;
  return {
    scheme,
    before: new RegExp(`(?:^|[^A-Za-z0-9])(${spelt(prefix)}${prefix ? SEPARATOR : ''})$`),
    after: new RegExp(`^(${suffix ? SEPARATOR : ''}${spelt(suffix)})(?![A-Za-z0-9])`),
  };
}

/** A scheme's letters are few and ASCII by the pack's form; what else may stand there stands for itself. */
function spelt(letters: string): string {
  return letters.replace(/[^A-Za-z0-9]/g, '\\$&');
}

function written({ scheme, before, after }: Form, text: string, start: number, end: number): SerialMention | null {
  if (end - start < digitRange(scheme)[0]) return null;
  const lead = before.exec(text.slice(Math.max(0, start - scheme.prefix.length - 2), start));
  const tail = after.exec(text.slice(end, end + (scheme.suffix?.length ?? 0) + 2));
  if (!lead || !tail) return null;
  const [from, to] = [start - lead[1]!.length, end + tail[1]!.length];
  const quote = text.slice(from, to);
  const normal = normaliseSerial(quote);
  return numberIn(scheme, normal) === null ? null : { start: from, end: to, quote, normal, cue: null };
}
