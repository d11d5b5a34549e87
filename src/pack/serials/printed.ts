import type { Scheme } from '../schema/serials';
import { digitRange, writtenIn } from '../serial-form';

/** A number printed in a way of its own, which has to be kept as a text. */
export const ODD = 3;

/** The usual ways in which a table prints a number, by their place: "20001", "020001", "K020001". */
const USUAL: readonly ((scheme: Scheme, number: number) => string)[] = [
  (_, number) => String(number),
  (scheme, number) => String(number).padStart(digitRange(scheme)[0], '0'),
  writtenIn,
];

/** In which of the usual ways the number is printed here, or ODD. */
export function formOf(scheme: Scheme, printed: string, number: number): number {
  for (let form = 0; form < USUAL.length; form++) if (USUAL[form]!(scheme, number) === printed) return form;
  return ODD;
}

/** The number as printed in a usual way. */
export function printedAs(form: number, scheme: Scheme, number: number): string {
  return USUAL[form]!(scheme, number);
}
