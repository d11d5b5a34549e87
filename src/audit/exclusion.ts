import { judge } from '../identify/judge';
import { isChangeable } from '../pack/changeable';
import type { Assertion } from './assertions';

/** Can two things that the advert says of one feature not both be true? */
export function exclude(first: Assertion, second: Assertion): boolean {
  if (first.denied && second.denied) return false;
  if (first.denied !== second.denied && comesWithIt(first)) return false;
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

/** "Treadle" and "without the treadle": a value that can be changed for another is a thing that comes with it. */
function comesWithIt({ attribute: { def }, allowed }: Assertion): boolean {
  if (def.kind !== 'choice' || allowed.kind !== 'values') return false;
  return [...allowed.values].every((id) => isChangeable(id, def));
}
