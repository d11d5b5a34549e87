import type { Knowledge, NameKnown } from '../pack/knowledge';
import { findSerialShapes } from '../quantity/serials';
import type { PhraseMatch } from '../text/phrases';
import { contains } from './hits';
import { misspeltNames } from './misspelt';
import { ofAnother } from './other-thing';
import { clauseAt, quoteOf, type TextPart } from './part-text';
import type { NameClaim } from './reading';
import type { StanceOf, StanceReader } from './stance';

/** Words that make the number or letter after them a model's name. */
const NAMING = new Set('model mod type class no nr number mark mk series modell typ klasse serie modele'.split(' '));
/** Words that say of what stands after them that it is the thing's name. */
const IDENTITY = new Set(
  "this it it's mine ours here called known named model modell modele typ dies diese dieses hier c'est ceci cette".split(
    ' ',
  ),
);
const IDENTITY_REACH = 5;
/** After these the name is of something that is only spoken of. */
const PARTING = new Set(
  'that from than like for with to of unlike reads read reading says said lit steht von als wie für zu de que pour'.split(
    ' ',
  ),
);
const NEAR = 3;

type NameMatch = PhraseMatch<NameKnown> & { misspelt: boolean };

/** The names of models, families and makers in one text, each with what is said of it. */
export function namesIn(
  part: TextPart,
  knowledge: Knowledge,
  stances: StanceReader,
  things: readonly { firstToken: number; lastToken: number }[],
  named: ReadonlySet<string>,
): NameClaim[] {
  const exact = knowledge.names.search(part.tokens).map((match) => ({ ...match, misspelt: false }));
  const all: NameMatch[] = [...exact, ...misspeltNames(part, knowledge, exact, things)];
  const beginning = byFirstToken(all);
  return all
    .filter((match) => !isHeld(match, beginning))
    .filter((match) => isNameHere(match, all, part, named))
    .map((match) => {
      const isName = !('maker' in match.value.of);
      return {
        ...quoteOf(part, match.start, match.end),
        ...ownOf(part, match, stances.at(match.firstToken, match.lastToken, isName)),
        of: match.value.of,
        name: match.value.text,
        misspelt: match.misspelt,
        identity: isIdentified(match, part),
      };
    });
}

/** In tokens: a name that begins farther before another can't hold it. */
const LONGEST_NAME = 80;

/** Stands within a longer name? A model's name within its maker's stands by itself. */
function isHeld(match: NameMatch, beginning: ReadonlyMap<number, readonly NameMatch[]>): boolean {
  for (let first = match.firstToken; first >= 0 && match.firstToken - first <= LONGEST_NAME; first--)
    for (const other of beginning.get(first) ?? [])
      if (contains(other, match) && !(isModel(match) && isMaker(other))) return true;
  return false;
}

function byFirstToken(all: readonly NameMatch[]): ReadonlyMap<number, readonly NameMatch[]> {
  const beginning = new Map<number, NameMatch[]>();
  for (const match of all) {
    const there = beginning.get(match.firstToken);
    if (there) there.push(match);
    else beginning.set(match.firstToken, [match]);
  }
  return beginning;
}

const isMaker = (match: NameMatch): boolean => 'maker' in match.value.of;
const isModel = (match: NameMatch): boolean => 'model' in match.value.of;

function isNameHere(match: NameMatch, all: readonly NameMatch[], part: TextPart, named: ReadonlySet<string>): boolean {
  const { stands, of } = match.value;
  if (stands === 'alone') return true;
  if (stands === 'named' && !('maker' in of) && named.has(packOf(of))) return true;
  return standsByItsMaker(match, all, part);
}

function packOf(of: Exclude<NameKnown['of'], { maker: string; pack: string }>): string {
  return 'model' in of ? of.model.pack : of.family.pack;
}

/** The packs of whose makers, families or models an advert names one anywhere. */
export function packsNamed(parts: readonly TextPart[], knowledge: Knowledge): Set<string> {
  const packs = new Set<string>();
  for (const part of parts)
    for (const { value } of knowledge.names.search(part.tokens))
      if (value.stands === 'alone') packs.add('maker' in value.of ? value.of.pack : packOf(value.of));
  for (const pack of [...packsOfSerials(parts, knowledge), ...packsOfSeveral(parts, knowledge)]) packs.add(pack);
  return packs;
}

/** Two of a pack's short names vouch for each other: "fits Q 7 and Q 9". */
function packsOfSeveral(parts: readonly TextPart[], knowledge: Knowledge): string[] {
  const models = new Map<string, Set<string>>();
  for (const part of parts)
    for (const { value } of knowledge.names.search(part.tokens)) {
      if (value.stands !== 'named' || !('model' in value.of)) continue;
      const { pack, ref } = value.of.model;
      models.set(pack, (models.get(pack) ?? new Set()).add(ref));
    }
  return [...models].flatMap(([pack, refs]) => (refs.size > 1 ? [pack] : []));
}

/** A number with letters that lies in a table names the table's pack as well as a maker's name does. */
function packsOfSerials(parts: readonly TextPart[], knowledge: Knowledge): string[] {
  return parts.flatMap((part) =>
    findSerialShapes(part.text)
      .filter(({ normal }) => /[A-Z]/.test(normal))
      .flatMap(({ normal }) => knowledge.serials.find(normal).map((run) => run.pack)),
  );
}

/** A bare number or letter is a name only near its own maker or family, or after a naming word beside such a name. */
function standsByItsMaker(match: NameMatch, all: readonly NameMatch[], part: TextPart): boolean {
  const of = match.value.of;
  const named = hasNamingWord(match, part);
  const clause = clauseAt(part, match.firstToken);
  return (
    all.some((other) => {
      if (other === match || other.value.stands !== 'alone' || !isRelated(of, other.value.of)) return false;
      const sameClause = clause !== null && other.firstToken >= clause.first && other.lastToken <= clause.last;
      if (named && (part.field === 'title' || sameClause)) return true;
      const gap =
        other.lastToken < match.firstToken ? match.firstToken - other.lastToken : other.firstToken - match.lastToken;
      return sameClause && gap >= 0 && gap <= NEAR;
    }) ||
    (named && part.field === 'details')
  );
}

function isRelated(of: NameKnown['of'], other: NameKnown['of']): boolean {
  if ('maker' in of) return false;
  const makers = new Set(makersOf(of).map((maker) => maker.toLowerCase()));
  if ('maker' in other) return makers.has(other.maker.toLowerCase());
  if ('family' in other) return 'model' in of && of.model.family === other.family;
  return false;
}

function makersOf(of: Exclude<NameKnown['of'], { maker: string; pack: string }>): string[] {
  const makers = 'model' in of ? [of.model.def.maker, of.model.family?.def.maker] : [of.family.def.maker];
  return makers.filter((maker) => maker !== undefined);
}

function hasNamingWord(match: NameMatch, part: TextPart): boolean {
  for (let i = match.firstToken - 1; i >= Math.max(0, match.firstToken - 3); i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'word') return NAMING.has(token.folded);
    if (token.kind === 'break') return false;
  }
  return false;
}

/**
 * "This is a …", "it's the …", "model: …": the advert says of the thing itself that this is its name. "That is the …"
 * speaks of something else.
 */
const MINE = new Set('my our mein meine unsere unser mon ma notre'.split(' '));

function isIdentified(match: NameMatch, part: TextPart): boolean {
  // "It's the Name that is alloy": of another, as often as of this.
  if (/^(?:that|which|who)$/.test(part.tokens[match.lastToken + 1]?.folded ?? '')) return false;
  if (opensWithMine(match, part)) return true;
  let words = 0;
  for (let i = match.firstToken - 1; i >= 0 && words < IDENTITY_REACH; i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'break' || /^[.!?;]$/.test(token.folded)) return false;
    if (token.kind !== 'word') continue;
    words++;
    if (PARTING.has(token.folded)) return false;
    if (IDENTITY.has(token.folded)) return true;
  }
  return false;
}

/** "My Name has been …" at the start of a sentence. */
function opensWithMine(match: NameMatch, part: TextPart): boolean {
  const clause = clauseAt(part, match.firstToken);
  if (!clause || part.field === 'title') return false;
  const words = part.tokens.slice(clause.first, match.firstToken).filter((token) => token.kind === 'word');
  const opens = part.clauses.find((one) => one.sentence === clause.sentence)?.first === clause.first;
  return (
    opens && words.length <= 3 && MINE.has(words[0]?.folded ?? '') && !words.some((word) => /'s$/.test(word.folded))
  );
}

/** "My daughter's Name", "a Name one is too long": somebody else's, or another of its kind. */
function ownOf(part: TextPart, match: NameMatch, stance: StanceOf): StanceOf {
  const before = part.tokens[match.firstToken - 1];
  const after = part.tokens[match.lastToken + 1];
  const theirs =
    before?.kind === 'word' && /^\p{Ll}.*'s$/u.test(part.text.slice(before.start, before.end).replace('’', "'"));
  const another = after?.folded === 'one' || after?.folded === 'ones';
  if (!theirs && !another) return stance;
  const { start, end } = (theirs ? before : after)!;
  return ofAnother(stance, 'owner', part.text.slice(start, end));
}
