import { judge } from '../identify/judge';
import type { Assertion } from './assertions';

/** Can two things that the advert says of one feature not both be true? */
export function exclude(first: Assertion, second: Assertion): boolean {
  if (first.denied && second.denied) return false;
  if (first.denied !== second.denied && excludesNothing(first)) return false;
  const [says, other] = first.denied ? [second, first] : [first, second];
  const fact = {
    attribute: says.attribute,
    allowed: says.allowed,
    when: null,
    always: true,
    necessary: false,
    pack: '',
    entry: '',
    source: null,
  };
  return judge({ allowed: other.allowed, denied: other.denied }, says.attribute, [fact]) === 'refutes';
}

/** "Treadle" and "without the treadle": a value that lets all others stand beside it is a thing that comes with it. */
function excludesNothing({ attribute, allowed }: Assertion): boolean {
  if (attribute.def.kind !== 'choice' || allowed.kind !== 'values') return false;
  const { values } = attribute.def;
  return [...allowed.values].every((id) => values.find((value) => value.id === id)?.excludes?.length === 0);
}
