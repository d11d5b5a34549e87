import { english } from './frame/words-en';
import { type ClauseRange, clauseAt, clauseIndexAt, type TextPart } from './part-text';

/** Words that say of what stands after them that it is the thing's name. */
const IDENTITY = new Set(
  "this it it's mine ours here called known named model modell modele typ dies diese dieses hier c'est ceci cette".split(
    ' ',
  ),
);
const IDENTITY_REACH = 5;
/** After these the name is of something that is only spoken of, or denied. */
const PARTING = new Set(
  "but aber mais when while once until where wenn wo quand lorsque that thats that's from than after before replaced replaces beside alongside against versus contrairement anders nach vor apres avant like for with to of unlike reads read reading says said lit steht von als wie für zu de que pour not isn't nicht pas".split(
    ' ',
  ),
);
const MINE = new Set('my our mein meine unsere unser mon ma notre'.split(' '));
const MINE_REACH = 3;

interface Place {
  firstToken: number;
  lastToken: number;
}

/**
 * "This is a …", "it's the …", "model: …": the advert says of the thing itself that this is its name. "That is the …"
 * speaks of something else.
 */
export function isIdentified({ firstToken, lastToken }: Place, part: TextPart): boolean {
  // "It's the Name that is alloy": of another, as often as of this.
  if (/^(?:that|which|who)$/.test(part.tokens[lastToken + 1]?.folded ?? '')) return false;
  // "C'est la Name de ma sœur".
  if (OF.test(part.tokens[lastToken + 1]?.folded ?? '') && WHOSE.test(part.tokens[lastToken + 2]?.folded ?? ''))
    return false;
  // "It's the Name's works": of something that is the Name's.
  if (part.tokens[lastToken]!.folded.endsWith("'s") && part.tokens[lastToken + 1]?.kind === 'word') return false;
  if (isInOrder(firstToken, lastToken, part) || isReworded(lastToken, part)) return true;
  if (isOfLine(firstToken, lastToken, part)) return true;
  if (opensWithMine(firstToken, part) || isOffered(firstToken, part)) return true;
  const opens = clauseAt(part, firstToken)?.first ?? 0;
  let words = 0;
  for (let i = firstToken - 1; i >= 0 && words < IDENTITY_REACH; i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'break' || /^[.!?;]$/.test(token.folded)) return false;
    if (token.kind !== 'word') continue;
    words++;
    // "The numbers of this and the Name": another one.
    if (token.folded === 'and' && words <= 2) return false;
    if (PARTING.has(token.folded)) return false;
    // "He called the Name an upstart": of another.
    if (/^(?:called|named)$/.test(token.folded) && part.tokens[i - 1]?.folded !== 'also')
      return words === 1 && isOfThis(part, i);
    // "It's the iron one, the Name is alloy".
    // "I had one before this one (a Name)".
    if (token.folded === 'this' && PARTING.has(part.tokens[i - 1]?.folded ?? '')) return false;
    if (IDENTITY.has(token.folded)) return i >= opens || !startsPredicate(part, lastToken);
  }
  return false;
}

/** "The Name is in full working order": so is what is on sale. */
function isInOrder(first: number, last: number, part: TextPart): boolean {
  const behind = part.tokens.slice(last + 1, last + 4).map(({ folded }) => folded);
  return (
    part.field === 'description' &&
    part.tokens[first - 1]?.folded === 'the' &&
    isOpening(part.tokens, first - 1) &&
    /^is in (?:full|good|perfect|excellent|lovely|great|nice|very|fair|working|fine)$/.test(behind.join(' '))
  );
}

/** "This belongs to the Name range". */
function isOfLine(first: number, last: number, { tokens }: TextPart): boolean {
  const before = tokens.slice(Math.max(0, first - 6), first).map(({ folded }) => folded);
  return (
    /^(?:range|family|series|line|group)$/.test(tokens[last + 1]?.folded ?? '') &&
    /(?:^| )(?:this|it|she|machine)(?: one)? (?:belongs to|is from|comes from|is one of|is of|is part of) the$/.test(
      before.join(' '),
    )
  );
}

/** "A Name, in other words". */
function isReworded(last: number, { tokens }: TextPart): boolean {
  const behind = tokens.slice(last + 1, last + 5).flatMap(({ kind, folded }) => (kind === 'word' ? [folded] : []));
  return behind.join(' ').startsWith('in other words');
}

/** The name is what its own clause is about. */
function startsPredicate({ tokens }: TextPart, last: number): boolean {
  return /^(?:is|was|has|had|takes|took|does|weighs|uses|sews|needs|came|ist|hat|est|a)$/.test(
    tokens[last + 1]?.folded ?? '',
  );
}

/** "Also known as the Name": by another name than its own. */
export function isAlias({ firstToken }: Place, { tokens }: TextPart): boolean {
  const known = tokens.slice(Math.max(0, firstToken - ALIAS_REACH), firstToken);
  return known.some(
    ({ folded }, i) => folded === 'also' && /^(?:known|called|named)$/.test(known[i + 1]?.folded ?? ''),
  );
}

const ALIAS_REACH = 5;

/** "It is called", "called": not "the zigzag version is called". */
function isOfThis(part: TextPart, called: number): boolean {
  const verb = part.tokens[called - 1];
  if (!/^(?:is|are|was|were|'s)$/.test(verb?.folded ?? '')) return true;
  const subject = part.tokens[called - 2]?.folded ?? '';
  return /^(?:it|this|she|machine|mine)$/.test(subject);
}

const OF = /^(?:of|von|de|du)$/;
const WHOSE = /^(?:my|his|her|our|their|the|meine[rms]?|seine[rms]?|ihre[rms]?|ma|mon|mes|sa|son|ses|la|notre)$/;
const OFFERS = /^(?:selling|sell|offering|biete|verkaufe|vends|vend|propose|proposons)$/;
/** Two words before a name and its article that say what is on sale. Folded. */
const OFFERED =
  /^(?:for sale|sale :|saisir :|vendre :|verkaufen :|verkauf :|(?:see|offer|offered|looking at|sale) is|(?:biete|bieten|verkaufe|verkaufen) (?:ich|wir)|handelt sich um|agit d'|(?:angeboten|verkauft) wird)$/;
/** "Also selling a Name": another thing. */
const ANOTHER = /^(?:also|and|too|not|never|auch|noch|und|aussi|et|egalement|pas)$/;

const TOO = /^(?:too|also|auch|aussi|egalement)$/;

/** "Selling my Name", "made by Name", "das ist eine Name": said right before it. */
function isOffered(name: number, { tokens }: TextPart): boolean {
  let at = name - 1;
  while (
    at >= 0 &&
    name - at <= 4 &&
    /^(?:a|an|my|our|this|the|ein|eine|meine|unsere|une|ma|la|ici|old|alte|vieille|[a-z]+'s)$/.test(tokens[at]!.folded)
  )
    at--;
  const [before, word] = [tokens[at - 1]?.folded ?? '', tokens[at]?.folded ?? ''];
  // "I am selling a Name too".
  if (tokens.slice(name + 1, name + 4).some(({ folded }) => TOO.test(folded))) return false;
  // "Un voisin vend une Name".
  if (word === 'vend' && /^(?!je$|on$)[a-z]/.test(before)) return false;
  if (OFFERS.test(word)) return !ANOTHER.test(before) && !ANOTHER.test(tokens[at - 2]?.folded ?? '');
  const pair = `${before} ${word}`;
  if (OFFERED.test(pair) || OFFERED.test(`${tokens[at - 2]?.folded ?? ''} ${pair}`))
    return !tokens.slice(Math.max(0, at - 4), at).some(({ folded }) => ANOTHER.test(folded));
  if (word === 'by') return /^(?:made|built|manufactured)$/.test(before) && isOpening(tokens, at - 1);
  if (word === 'voici') return true;
  if (/^(?:is|ist|est)$/.test(word))
    return (/^(?:das|c')$/.test(before) && isOpening(tokens, at - 1)) || MAKER.test(before);
  return word === ':' && MAKER.test(before);
}

const MAKER = /^(?:maker|make|brand|manufacturer|hersteller|marke|fabrikat|marque|fabricant)$/;

const SIGN = /^\p{Extended_Pictographic}/u;

/** Nothing stands before it in its sentence, but signs. */
function isOpening(tokens: TextPart['tokens'], at: number): boolean {
  let behind = at - 1;
  while (SIGN.test(tokens[behind]?.folded ?? '')) behind--;
  const before = tokens[behind];
  return before === undefined || before.kind === 'break' || /^[.!?]$/.test(before.folded);
}

/** "My Name has been …" at the start of a sentence. */
export function opensWithMine(name: number, part: TextPart): boolean {
  const clause = clauseAt(part, name);
  if (!clause || part.field === 'title' || !opensSentence(part, clause)) return false;
  let mine = false;
  let words = 0;
  for (let i = clause.first; i < name; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind !== 'word') continue;
    if (words === 0) mine = MINE.has(folded);
    words++;
    // "My own Name is": not the one that I sell.
    if (!mine || words > MINE_REACH || /'s$|^(?:own|other|eigene)$/.test(folded)) return false;
    // "My husband repairs Names".
    if (english.classOf(folded) === 'person') return false;
  }
  // "My Name weighs 18 kg, this one 14".
  return mine && !THIS_ONE.test(part.text.slice(part.tokens[name]!.end, part.tokens[name]!.end + NEAR));
}

const THIS_ONE = /^[^.!?]*[,;–-][^.!?]*\b(?:this one|cel(?:le|ui)[- ]ci|diese hier)\b/i;
const NEAR = 120;

function opensSentence(part: TextPart, { first, sentence }: ClauseRange): boolean {
  return part.clauses[clauseIndexAt(part, first) - 1]?.sentence !== sentence;
}
