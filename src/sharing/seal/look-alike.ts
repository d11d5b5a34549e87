import { splitId } from './pack-id';

/*
 * Ids are lower-case ASCII, so letters of other scripts can't stand for Latin ones. Within ASCII some still look alike;
 * these are brought to one form, after the idea of Unicode Technical Standard 39 (skeletons). The table is our own and
 * from memory of common confusions; it makes a reader look twice and refuses nothing.
 */

const ALIKE: readonly (readonly [RegExp, string])[] = [
  [/rn/g, 'm'],
  [/vv/g, 'w'],
  [/cl/g, 'd'],
  [/[1li]/g, 'l'],
  [/0/g, 'o'],
  [/5/g, 's'],
  [/8/g, 'b'],
  [/2/g, 'z'],
  [/-+/g, ''],
];

/** Ids that an eye takes for one another have the same form. The fingerprint in an id isn't part of it: nobody reads it. */
function lookOf(id: string): string {
  let look = splitId(id).name;
  for (const [from, to] of ALIKE) look = look.replace(from, to);
  return look;
}

/** Which of the known ids is another pack's although it looks like this one? */
export function lookAlikes(id: string, known: Iterable<string>): string[] {
  const look = lookOf(id);
  return [...known].filter((other) => other !== id && lookOf(other) === look);
}
