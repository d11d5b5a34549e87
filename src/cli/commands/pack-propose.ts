import { contentHash } from '../../pack/compiled/content-hash';
import { diffPacks } from '../../sharing/propose/diff-packs';
import { MOST_CHANGES, openProposal, proposable, writeProposal } from '../../sharing/propose/proposal';
import { toText } from '../../sharing/propose/signed-file';
import { canonicalJson } from '../../sharing/seal/canonical';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { BadInput } from '../bad-input';
import { readKeys } from '../key-file';
import { writeOutput } from '../output-file';
import { readAnyPack } from '../sealed-file';
import { needed, type PackValues, two } from './pack-options';

/** `pack propose`: what a member changed in a copy of a pack, as a signed file for its keeper. */
export async function proposeCommand(files: string[], values: PackValues): Promise<string> {
  const [first, second] = two('propose', files);
  const out = needed(values, 'out');
  const name = needed(values, 'name');
  const [before, after] = [await readAnyPack(first), await readAnyPack(second)];
  const changes = proposable(diffPacks(before, after));
  if (changes.length === 0) throw new BadInput(texts.nothingToPropose);
  if (changes.length > MOST_CHANGES) throw new BadInput(texts.tooManyChanges(changes.length, MOST_CHANGES));
  const keys = await readKeys(needed(values, 'key'), needed(values, 'passphrase'));
  const base = { edition: before.about.edition, hash: await contentHash(canonicalJson(before)!) };
  const proposal = { pack: before.about.id, base, author: { name }, note: values.note ?? '', changes };
  const file = await writeProposal(proposal, keys);
  if (!(await openProposal(file))) throw new BadInput(texts.badNameOrNote);
  writeOutput(out, values.text ? `${toText('proposal', file)}\n` : file, values.force);
  return `${texts.proposed(out, changes.length)}\n`;
}
