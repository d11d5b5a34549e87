import type { Scheme } from './schema/serials';

/** A number as its scheme sees it: its digits as a number, or null when it isn't of the scheme's form. */
export function numberIn(scheme: Scheme, normal: string): number | null {
  const { prefix, suffix = '' } = scheme;
  const end = normal.length - suffix.length;
  const [least, most] = digitRange(scheme);
  const count = end - prefix.length;
  if (count < least || count > most || !normal.startsWith(prefix) || !normal.endsWith(suffix)) return null;
  let number = 0;
  for (let i = prefix.length; i < end; i++) {
    const digit = normal.charCodeAt(i) - 48;
    if (digit < 0 || digit > 9) return null;
    number = number * 10 + digit;
  }
  return number;
}

/** A table prints a number whole ("K20001") or its digits alone ("20001"): both are taken. */
export function numberInTable(scheme: Scheme, printed: string): number | null {
  const normal = printed.toUpperCase().replace(/[ ./-]/g, '');
  const whole = numberIn(scheme, normal);
  if (whole !== null) return whole;
  const most = digitRange(scheme)[1];
  return /^\d+$/.test(normal) && normal.length <= most ? Number(normal) : null;
}

/** The number as it would be stamped. */
export function writtenIn(scheme: Scheme, number: number): string {
  return `${scheme.prefix}${String(number).padStart(digitRange(scheme)[0], '0')}${scheme.suffix ?? ''}`;
}

export function digitRange(scheme: Scheme): readonly [number, number] {
  return typeof scheme.digits === 'number' ? [scheme.digits, scheme.digits] : scheme.digits;
}

/** "K + 5 digits", for people. */
export function formText(scheme: Scheme): string {
  const [least, most] = digitRange(scheme);
  const count = least === most ? `${least}` : `${least} to ${most}`;
  return [scheme.prefix, `${count} digits`, scheme.suffix ?? ''].filter((part) => part !== '').join(' + ');
}
