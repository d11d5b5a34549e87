import { packPhrases } from '../../text/packed-phrases';
import { tokenise } from '../../text/tokens';
import type { Knowledge, NameKnown } from '../knowledge';
import type { NameTable, PackParts } from '../parts';
import type { Pack } from '../schema/index';
import type { Name } from '../schema/models';
import { Column } from '../serials/column';

/** Kept as numbers: only ever append. */
const OWNERS = ['family', 'model', 'maker'] as const;
const STANDS: readonly NameKnown['stands'][] = ['alone', 'named', 'near'];

/** Names of models, families and makers as sellers write them. */
export function namesOf(pack: Pack): NameTable {
  const texts: string[] = [];
  const makers: string[] = [];
  const [kinds, owners, stands]: [number[], number[], number[]] = [[], [], []];
  const add = (name: Name, kind: (typeof OWNERS)[number], owner: number): void => {
    const text = typeof name === 'string' ? name : name.text;
    const isWeak = typeof name === 'object' && name.weak === true;
    texts.push(text);
    kinds.push(OWNERS.indexOf(kind));
    owners.push(owner);
    stands.push(STANDS.indexOf(isWeak ? 'near' : howItStands(text)));
  };
  const seen = new Set<string>();
  const maker = (text: string | undefined): void => {
    if (!text || seen.has(text.toLowerCase())) return;
    seen.add(text.toLowerCase());
    add(text, 'maker', makers.push(text) - 1);
  };
  pack.families?.forEach((def, i) => {
    for (const name of def.names) add(name, 'family', i);
    maker(def.maker);
  });
  [...(pack.models ?? []), ...(pack.types ?? [])].forEach((def, i) => {
    for (const name of def.names) add(name, 'model', i);
    maker(def.maker);
  });
  for (const scheme of pack.serials?.schemes ?? []) maker(scheme.maker);
  return {
    tree: packPhrases(texts.map((text, i) => [text, i] as const)),
    texts: { length: texts.length, at: (place) => texts[place]! },
    ...{ kinds: Column.of(kinds), owners: Column.of(owners), stands: Column.of(stands), makers },
  };
}

/** "12" and "K" are names only right beside their maker, "Q 41" where the maker is named at all, words by themselves. */
function howItStands(text: string): NameKnown['stands'] {
  const tokens = tokenise(text).filter((token) => token.kind !== 'mark');
  if (tokens.some((token) => token.kind === 'word' && token.folded.length > 1)) return 'alone';
  const hasBoth = tokens.some((token) => token.kind === 'word') && tokens.some((token) => token.kind === 'number');
  return hasBoth ? 'named' : 'near';
}

/** A pack's names by their numbers, each one object however often it is asked for. */
export function nameReader(parts: PackParts, knowledge: Knowledge): NameReader {
  const known: NameKnown[] = [];
  const { about, models, families } = parts;
  const owner = (kind: (typeof OWNERS)[number], place: number): NameKnown['of'] => {
    if (kind === 'maker') return { maker: parts.names.makers[place]!, pack: about.id };
    if (kind === 'family') return { family: knowledge.families.get(`${about.id}/${families.ids.at(place)}`)! };
    return { model: knowledge.models.get(`${about.id}/${models.ids.at(place)}`)! };
  };
  return (name) => {
    const { texts, stands, kinds, owners } = parts.names;
    known[name] ??= {
      text: texts.at(name),
      stands: STANDS[stands.at(name)]!,
      of: owner(OWNERS[kinds.at(name)]!, owners.at(name)),
    };
    return known[name];
  };
}

export type NameReader = (name: number) => NameKnown;
