import type { Scheme } from './schema/serials';

/** A number as its scheme sees it: its digits as a number, or null when it isn't of the scheme's form. */
export function numberIn(scheme: Scheme, normal: string): number | null {
  const suffix = scheme.suffix ?? '';
  if (!normal.startsWith(scheme.prefix) || !normal.endsWith(suffix)) return null;
  const digits = normal.slice(scheme.prefix.length, normal.length - suffix.length);
  if (digits.length === 0 || !/^\d+$/.test(digits)) return null;
  const [least, most] = digitRange(scheme);
  return digits.length >= least && digits.length <= most ? Number(digits) : null;
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
