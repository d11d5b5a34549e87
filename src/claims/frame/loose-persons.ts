import { isSwitch, type LooseClause, type LooseWord, written } from './loose-clause';
import type { LooseWords } from './loose-words';

/** Somebody of whom the clause speaks, so that the feature may be theirs; null where they only sell or handle the thing. */
export function personIn(clause: LooseClause, lists: LooseWords): LooseWord | null {
  const { words, first, last } = clause;
  const outside = words.filter((_, i) => i < first || i > last);
  const before = written(words.slice(0, first));
  const person = near(clause).find(
    ({ folded }) =>
      lists.persons.has(folded) &&
      !(
        folded === 'man' &&
        (outside.some((word) => WITH_IT.test(word.folded)) || isSwitch(clause) || canOne(clause))
      ) &&
      !ON_PEUT.test(before) &&
      !(folded === 'on' && ON_DOES.test(before)),
  );
  // "Vends car j'ai reçu une …": what is sold stands before.
  const from = outside.findLastIndex(
    ({ folded, token }) => token < words[first]!.token && /^(?:car|parce|puisque)$/.test(folded),
  );
  const sells = outside.slice(from + 1).some(({ folded }) => lists.uses.test(folded));
  return person && !sells ? person : null;
}

/** The clause without a relative one behind the phrase: "the bobbins that one finds everywhere" are what it takes. */
function near({ words, first, last }: LooseClause): readonly LooseWord[] {
  const after = words.slice(last + 1);
  const relative = after.findIndex(
    ({ folded }, i) =>
      /^(?:qu'|que)$/.test(folded) && after.slice(i).some((one) => /^(?:trouve|achete)/.test(one.folded)),
  );
  return [...words.slice(0, first), ...(relative < 0 ? after : after.slice(0, relative))];
}

/** "Am Knopf kann man … einstellen." */
function canOne({ words, first, last }: LooseClause): boolean {
  const before = written(words.slice(0, first));
  return (
    /\bkann man\b/.test(before) &&
    /^(?:einstellen|wahlen|nahen|sticken|schalten)$/.test(words.slice(last + 1).at(-1)?.folded ?? '')
  );
}

/** "Man kann mit ihr Zickzack nähen." */
const ON_PEUT = /^(?:on|vous) (?:peut|pouvez) (?:aussi )?(?:faire|coudre)\b/;
/** "On lève le levier et elle repart en marche arrière." */
const ON_DOES = /\bon (?:leve|retire|tourne|pousse|appuie|abaisse|baisse|enleve|bascule|tire)\b.* et\b/;
const WITH_IT = /^(?:ihr|damit|darauf)$/;
