import { tokenise } from '../../text/tokens';
import type { Knowledge, NameKnown } from '../knowledge';
import type { Name } from '../schema/models';
import type { Scope } from './scope';

/** Names of models, families and makers as sellers write them. */
export function indexNames(scope: Scope, knowledge: Knowledge): void {
  const seen = new Set<string>();
  const add = (name: Name, of: NameKnown['of']): void => {
    const text = typeof name === 'string' ? name : name.text;
    const weak = typeof name === 'object' && name.weak === true;
    const known: NameKnown = { text, stands: weak ? 'near' : howItStands(text), of };
    knowledge.names.add(text, known);
    knowledge.nameList.push(known);
  };
  const maker = (text: string | undefined): void => {
    if (!text || seen.has(text.toLowerCase())) return;
    seen.add(text.toLowerCase());
    add(text, { maker: text, pack: scope.id });
  };
  for (const def of scope.pack.families ?? []) {
    const family = knowledge.families.get(`${scope.id}/${def.id}`);
    if (family) for (const name of def.names) add(name, { family });
    maker(def.maker);
  }
  for (const def of [...(scope.pack.models ?? []), ...(scope.pack.types ?? [])]) {
    const model = knowledge.models.get(`${scope.id}/${def.id}`);
    if (model) for (const name of def.names) add(name, { model });
    maker(def.maker);
  }
  for (const scheme of scope.pack.serials?.schemes ?? []) maker(scheme.maker);
}

/** "12" and "K" are names only right beside their maker, "Q 41" where the maker is named at all, words by themselves. */
function howItStands(text: string): NameKnown['stands'] {
  const tokens = tokenise(text).filter((token) => token.kind !== 'mark');
  if (tokens.some((token) => token.kind === 'word' && token.folded.length > 1)) return 'alone';
  const hasBoth = tokens.some((token) => token.kind === 'word') && tokens.some((token) => token.kind === 'number');
  return hasBoth ? 'named' : 'near';
}
