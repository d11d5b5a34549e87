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
  "that thats from than like for with to of unlike reads read reading says said lit steht von als wie für zu de que pour not isn't nicht pas".split(
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
  if (opensWithMine(firstToken, part)) return true;
  let words = 0;
  for (let i = firstToken - 1; i >= 0 && words < IDENTITY_REACH; i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'break' || /^[.!?;]$/.test(token.folded)) return false;
    if (token.kind !== 'word') continue;
    words++;
    if (PARTING.has(token.folded)) return false;
    // "He called the Name an upstart": of another.
    if (/^(?:called|named)$/.test(token.folded) && words > 1 && part.tokens[i - 1]?.folded !== 'also') return false;
    if (IDENTITY.has(token.folded)) return true;
  }
  return false;
}

/** "My Name has been …" at the start of a sentence. */
function opensWithMine(name: number, part: TextPart): boolean {
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
  }
  return mine;
}

function opensSentence(part: TextPart, { first, sentence }: ClauseRange): boolean {
  return part.clauses[clauseIndexAt(part, first) - 1]?.sentence !== sentence;
}
