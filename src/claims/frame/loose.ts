import type { Turn } from './english';
import { isSwitch, type LooseClause, type LooseWord, written } from './loose-clause';
import { personIn } from './loose-persons';
import type { LooseWords } from './loose-words';

export type LooseTurn = { to: Turn['to']; word: LooseWord } | null;

/**
 * What a German or French clause makes of a feature: read by closed lists of words and by what stands beside it, where
 * English is read by its verbs. Doubt is no claim.
 */
export function looseTurns(clause: LooseClause, lists: LooseWords): LooseTurn {
  const { words, first, last, aside } = clause;
  const outside = words.filter((_, i) => i < first || i > last);
  const find = (pattern: RegExp, among: readonly LooseWord[]): LooseWord | undefined =>
    among.find(({ folded }) => pattern.test(folded));
  const said = find(lists.said, [...outside, ...aside]);
  if (said) return { to: 'quotes', word: said };
  const supposed = find(lists.supposed, outside);
  // "Es wurden nur drei gebaut": no "würden".
  if (supposed && !(isPassive(supposed) && PARTICIPLE.test(words[last]!.folded)))
    return { to: 'guesses', word: supposed };
  const apart = find(lists.apart, outside);
  if (apart) return { to: 'other', word: apart };
  const taken = takenUp(clause, lists);
  if (taken) return taken;
  const other =
    thatOne(clause, lists) ??
    ofOthers(clause, lists) ??
    held(clause, lists) ??
    pluralKind(clause) ??
    told(clause, lists);
  if (other) return { to: 'other', word: other };
  const not = notAfter(clause);
  if (not) return { to: 'guesses', word: not };
  const of = apposition(clause, lists) ?? pastOpening(clause, lists) ?? besideNoun(clause, lists);
  if (of) return { to: 'other', word: of };
  const inList = listed(clause, lists);
  if (inList) return { to: 'other', word: inList };
  const beside = governed(clause, lists);
  if (beside) return beside;
  const person = personIn(clause, lists);
  if (person) return { to: 'other', word: person };
  return stranger(clause, lists);
}

const isPassive = ({ folded }: LooseWord): boolean => /^wurden?$/.test(folded);
const PARTICIPLE = /^(?:gebaut|hergestellt|gefertigt|produziert)$/;

/** What comes right after a phrase that ends its clause: "…, a word that all use", "…, I threw them out". */
function takenUp({ words, first, last, aside, goesOn }: LooseClause, lists: LooseWords): LooseTurn {
  const after = written(words.slice(last + 1));
  const example = words[last + 1];
  if (example && lists.example.test(after) && aside.some(({ folded }) => lists.not.test(folded)))
    return { to: 'guesses', word: example };
  if (after !== '') return null;
  const answer = goesOn[0];
  if (answer && goesOn.length === 1 && /^(?:non|nein|nee|no)$/.test(answer.folded))
    return { to: 'guesses', word: answer };
  const word = goesOn.find(({ folded }) => lists.word.test(folded));
  if (word) return { to: 'quotes', word };
  const done = lists.takesUp.test(written(goesOn.slice(0, 5))) && !goesOn.some(({ folded }) => lists.uses.test(folded));
  if (done) return { to: 'other', word: goesOn[0]! };
  const owner = words[first - 1];
  // "Un bras libre, c'est pratique": of the kind.
  if (owner && first === 1 && lists.one.test(owner.folded) && /^(?:c'est|das ist)\b/.test(written(goesOn)))
    return { to: 'other', word: owner };
  return owner && lists.mine.test(owner.folded) && !words.some(({ folded }) => lists.uses.test(folded))
    ? { to: 'other', word: owner }
    : null;
}

/** "Celle-là est en alu." */
function thatOne({ words, first }: LooseClause, lists: LooseWords): LooseWord | null {
  return lists.thatOne.test(written(words.slice(0, first))) ? words[0]! : null;
}

/** "Die letzten hatten, kaum zu glauben, einen Motor innen", "pour le zigzag, la marche arrière, …". */
function ofOthers({ aside }: LooseClause, lists: LooseWords): LooseWord | null {
  return aside.find(({ folded }, i) => lists.others.test(folded) && (folded !== 'pour' || i === 0)) ?? null;
}

/** "Les canettes longues de la boîte": of what lies there. */
function held({ words, last }: LooseClause, lists: LooseWords): LooseWord | null {
  const after = words.slice(last + 1);
  return lists.holder.test(written(after)) ? after[0]! : null;
}

/** "Die aus Aluminium": a phrase that begins with the preposition, right behind an article. */
function told({ words, first }: LooseClause, lists: LooseWords): LooseWord | null {
  const before = words[first - 1];
  if (!before || !lists.prepositions.has(words[first]!.folded)) return null;
  // "Passend zu euren Möbeln aus der Vorkriegszeit".
  const isOfNoun = lists.articles.has(words[first - 2]?.folded ?? '') && isStranger(words, first - 1, lists);
  return isOfNoun || lists.told.test(before.folded) ? before : null;
}

/** "Dreiviertelmaschinen sind …", "les machines de ce temps ont …": of all of a kind. */
function pluralKind({ words, first }: LooseClause): LooseWord | null {
  const at = /^(?:die|alle|les|ces|diese)$/.test(words[0]?.folded ?? '') ? 1 : 0;
  const noun = words[at];
  const isKind = noun && at < first && /(?:maschinen|modelle)$|^(?:machines|modeles)$/.test(noun.folded);
  const says = words.slice(at + 1, first).some(({ folded }) => /^(?:sind|haben|sont|ont|waren|etaient)$/.test(folded));
  return isKind && says ? noun : null;
}

const HAS = /^(?:vermisst|braucht|nimmt|macht|kann|hat|ist|gibt|gab|hatte|konnte)$/;
const UNTRIED =
  /^(?:getestet|gepruft|probiert|ausprobiert|nur|schlecht|ganz|mehr|original|benutzt|gebraucht|verbastelt)$/;

/** "Mit Tretgestell lässt sie sich nicht betreiben": German denies behind. */
function notAfter({ words, last }: LooseClause): LooseWord | null {
  const rest = words.slice(last + 1);
  const at = rest.findIndex(
    ({ folded }, i) =>
      /^(?:nicht|weder|unmoglich|uberschatzt)$/.test(folded) ||
      (folded === 'nichts' && /^(?:am|zu|von)$/.test(rest[i + 1]?.folded ?? '')) ||
      (i > 0 && /^kein(?:e[nrs]?|s)?$/.test(folded) && HAS.test(rest[0]!.folded)),
  );
  if (at < 0 || rest.slice(0, at).some(({ folded }) => /^(?:und|oder|aber|&|\+)$/.test(folded))) return null;
  return UNTRIED.test(rest[at + 1]?.folded ?? '') ? null : rest[at]!;
}

/** "La grosse de la troupe, une industrielle, restait": of what the clause before speaks of, where that isn't the thing. */
function apposition({ words, first, last, aside, goesOn }: LooseClause, lists: LooseWords): LooseWord | null {
  const article = words[0];
  if (first !== 1 || last !== words.length - 1 || !article || !lists.one.test(article.folded)) return null;
  if (aside.length === 0 || goesOn.length === 0) return null;
  return aside.some(({ folded, known }) => known !== null || lists.own.has(folded)) ? null : article;
}

/** "Industrielle était la plus proche": what opens its clause and was so. */
function pastOpening({ words, first, last }: LooseClause, lists: LooseWords): LooseWord | null {
  const next = words[last + 1];
  return first === 0 && next && lists.past.test(next.folded) ? next : null;
}

/** "Hab mir eine mit Zickzack, Freiarm und … geholt": an item behind a comma is of whose the list is. */
function listed({ words, first, aside }: LooseClause, lists: LooseWords): LooseWord | null {
  if (aside.at(-1)?.known !== 'feature') return null;
  const list = [...aside, ...words.slice(0, first)];
  for (let i = list.length - 1; i >= 0; i--) {
    const word = list[i]!;
    const before = list[i - 1];
    if (word.folded === 'wer' || lists.persons.has(word.folded) || lists.apart.test(word.folded)) return word;
    if (lists.prepositions.get(word.folded) === null)
      return before && (lists.told.test(before.folded) || isOfOne(list, i, lists)) ? before : null;
    if (!lists.articles.has(word.folded) && !lists.passed.has(word.folded) && word.known !== 'feature') return null;
  }
  return null;
}

/** "Plaque signalétique aluminium", "Garnrollenhalter Alu": of the noun right before it. */
function besideNoun({ words, first }: LooseClause, lists: LooseWords): LooseWord | null {
  if (!lists.material.test(words[first]!.folded)) return null;
  const at = /(?:ique|ante?|able)$/.test(words[first - 1]?.folded ?? '') ? first - 2 : first - 1;
  const noun = words[at];
  const isOther = noun && (noun.known === 'part' || (isStranger(words, at, lists) && !lists.bent.test(noun.folded)));
  return isOther && opensPhrase(words, at, lists) ? noun : null;
}

/** The words right before the feature: a preposition that isn't of the thing, or a word for any of its kind. */
function governed(clause: LooseClause, lists: LooseWords): LooseTurn {
  const { words, first, last, denied } = clause;
  // "Im Set mit einer elektrischen Zickzackmaschine": a machine that comes with the machine.
  const isBeside = /\bmit ein(?:e[mnr]?)?(?: \S+){0,2}$/.test(written(words.slice(0, first)));
  if (isBeside && /maschine$/.test(words[last]!.folded)) return { to: 'other', word: words[first - 1]! };
  for (let i = first - 1; i >= 0; i--) {
    const word = words[i]!;
    const before = words[i - 1];
    if (lists.generic.has(word.folded)) return { to: 'other', word };
    const after = lists.prepositions.get(word.folded);
    if (after !== undefined) {
      if (denied && /^(?:ohne|sans)$/.test(word.folded)) return null;
      // "Die aus Aluminium", "celle en fonte": told apart by it.
      if (before && i === first - 1 && lists.told.test(before.folded)) return { to: 'other', word: before };
      // "À bras libre.": nothing stands before that it could be of.
      const isPartOf = word.folded === 'a' && (before ? before.known !== null : clause.aside.length === 0);
      // "Pour le zigzag, …": what one may want.
      if (word.folded === 'pour' && i === 0) return { to: 'guesses', word };
      if (isOfOne(words, i, lists)) return { to: 'other', word };
      // "Die elektrische mit dem Freiarm": an adjective alone, with its article, tells one from another.
      if (before && i >= 2 && lists.alone.test(before.folded) && lists.told.test(words[i - 2]!.folded))
        return { to: 'other', word: before };
      if (word.folded === 'auf' && isSwitch(clause)) return null;
      if (after !== null && !isPartOf && !after.test(before?.folded ?? '')) return { to: 'other', word };
      // "Griff aus Aluminium", "couvercle en aluminium": what consists of it stands before.
      if (
        /^(?:aus|en)$/.test(word.folded) &&
        before &&
        opensPhrase(words, i - 1, lists) &&
        isStranger(words, i - 1, lists)
      )
        return { to: 'other', word: before };
      return null;
    }
    if (!lists.articles.has(word.folded) && !lists.passed.has(word.folded) && word.known === null) return null;
  }
  return null;
}

/** "Der Anlasser stammt von einer Maschine mit …": the noun before is any of its kind, and governed itself. */
function isOfOne(words: readonly LooseWord[], preposition: number, { own, beside }: LooseWords): boolean {
  const noun = words[preposition - 1];
  return noun !== undefined && own.has(noun.folded) && beside.test(written(words.slice(0, preposition - 1)));
}

/** "Poignée en", "la poignée en": a noun; "machine légère en": an adjective after one. */
function opensPhrase(words: readonly LooseWord[], at: number, lists: LooseWords): boolean {
  const before = words[at - 1];
  return (
    before === undefined ||
    lists.articles.has(before.folded) ||
    lists.prepositions.has(before.folded) ||
    lists.passed.has(before.folded)
  );
}

/** The nearest noun before the feature that can be the subject: the thing, or another. */
function stranger({ words, first }: LooseClause, lists: LooseWords): LooseTurn {
  let isAnother = false;
  for (let i = first - 1; i >= 0; i--) {
    const word = words[i]!;
    // "Die Anleitung beschreibt ein Modell mit …".
    if (lists.own.has(word.folded) && i > 2 && lists.one.test(words[i - 1]!.folded)) isAnother = true;
    if (isAnother && lists.own.has(word.folded)) continue;
    if (isAnother && word.known === 'part') return { to: 'other', word };
    if (word.known !== null || lists.own.has(word.folded)) return null;
    if ((i === first - 1 && lists.bent.test(word.folded)) || !isStranger(words, i, lists)) continue;
    let j = i - 1;
    while (j >= 0 && lists.passed.has(words[j]!.folded)) j--;
    const article = words[j];
    if (!article || !lists.articles.has(article.folded)) continue;
    if (lists.prepositions.has(words[j - 1]?.folded ?? '')) continue;
    // "En tournant le bouton l'aiguille va à droite."
    if (/ant$/.test(words[j - 1]?.folded ?? '') && words[j - 2]?.folded === 'en') continue;
    return { to: 'other', word };
  }
  return null;
}

function isStranger(words: readonly LooseWord[], at: number, lists: LooseWords): boolean {
  const word = words[at]!;
  if (
    word.known !== null ||
    lists.own.has(word.folded) ||
    lists.passed.has(word.folded) ||
    lists.articles.has(word.folded)
  )
    return false;
  if (lists.prepositions.has(word.folded) || lists.persons.has(word.folded)) return false;
  // "Le mercier": no verb behind an article that opens the clause.
  return (
    !lists.notNouns.test(word.folded) ||
    (at === 1 && /..ier$/.test(word.folded) && lists.articles.has(words[0]!.folded))
  );
}
