import type { Allowed, AttributeKnown, FactKnown } from '../pack/knowledge';
import type { ChoiceAttribute } from '../pack/schema/attributes';

/** refutes: no machine under these facts is so; agrees: every one is; open: some may be. */
export type Verdict = 'refutes' | 'agrees' | 'open';

/** What is claimed of an attribute: a value, yes or no, or a range; or that it is not so. */
export interface Claimed {
  allowed: Allowed;
  denied: boolean;
}

/** Holds a claim against all facts in force: refuted or agreed only if every fact says so. */
export function judge(claimed: Claimed, attribute: AttributeKnown, facts: readonly FactKnown[]): Verdict {
  if (facts.length === 0) return 'open';
  const verdicts = facts.map((fact) => judgeOne(claimed.allowed, attribute, fact.allowed));
  const plain = verdicts.every((one) => one === 'refutes')
    ? 'refutes'
    : verdicts.every((one) => one === 'agrees')
      ? 'agrees'
      : 'open';
  if (!claimed.denied || plain === 'open') return plain;
  return plain === 'refutes' ? 'agrees' : 'refutes';
}

function judgeOne(claimed: Allowed, attribute: AttributeKnown, fact: Allowed): Verdict {
  if (claimed.kind === 'yes-no' && fact.kind === 'yes-no') return claimed.value === fact.value ? 'agrees' : 'refutes';
  if (claimed.kind === 'range' && fact.kind === 'range') return ranges(claimed, fact);
  if (claimed.kind === 'values' && fact.kind === 'values' && attribute.def.kind === 'choice')
    return values(claimed.values, attribute.def, fact.values);
  return 'open';
}

function ranges(claimed: { from: number; to: number }, fact: { from: number; to: number }): Verdict {
  if (fact.from > claimed.to || fact.to < claimed.from) return 'refutes';
  return fact.from >= claimed.from && fact.to <= claimed.to ? 'agrees' : 'open';
}

/** Claimed values are alternatives ("class 15 or 66"); so are a fact's. */
function values(claimed: ReadonlySet<string>, def: ChoiceAttribute, fact: ReadonlySet<string>): Verdict {
  const pairs = [...fact].map((known) => [...claimed].map((said) => relation(said, known, def)));
  if (pairs.every((row) => row.every((one) => one === 'refutes'))) return 'refutes';
  return pairs.every((row) => row.some((one) => one === 'agrees')) ? 'agrees' : 'open';
}

function relation(said: string, known: string, def: ChoiceAttribute): Verdict {
  if (said === known || isWithin(known, said, def)) return 'agrees';
  if (isWithin(said, known, def)) return 'open';
  return excludes(said, known, def) && excludes(known, said, def) ? 'refutes' : 'open';
}

/** Is the first value a kind of the second? */
function isWithin(narrow: string, wide: string, def: ChoiceAttribute): boolean {
  const seen = new Set<string>();
  for (let at: string | undefined = narrow; at !== undefined && !seen.has(at); ) {
    if (at === wide) return true;
    seen.add(at);
    const here: string = at;
    at = def.values.find((value) => value.id === here)?.within;
  }
  return false;
}

/** What a value excludes it excludes with the narrower kinds of that; without a list it excludes all the others. */
function excludes(value: string, other: string, def: ChoiceAttribute): boolean {
  const list = def.values.find((one) => one.id === value)?.excludes;
  return list === undefined || list.some((excluded) => isWithin(other, excluded, def));
}
