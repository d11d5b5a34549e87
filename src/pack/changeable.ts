import type { ChoiceAttribute } from './schema/attributes';

/**
 * Does a value let another one stand beside it or take its place? A crank can give way to a motor, where a metal is what
 * it was cast as. Narrower and wider values are no others.
 */
export function isChangeable(id: string, { values }: ChoiceAttribute): boolean {
  const value = values.find((one) => one.id === id);
  if (!value?.excludes) return false;
  return values.some(
    (other) =>
      other !== value && other.within !== id && value.within !== other.id && !value.excludes!.includes(other.id),
  );
}
