import { fingerprintOf, spokenFingerprint } from '../../sharing/seal/fingerprint';
import { type Judgement, judge } from '../../sharing/seal/judge';
import { judgeTexts } from '../../text/catalogue/judged';
import { packCliTexts as texts } from '../../text/catalogue/pack-cli';
import { dayOf } from '../arguments';
import { today } from '../auditor';
import { BadInput } from '../bad-input';
import { readSealed } from '../sealed-file';
import { one, type PackValues } from './pack-options';

/** `pack verify`: is a sealed file what its keeper sealed, and may it take the place of an earlier edition? */
export async function verifyCommand(files: string[], values: PackValues): Promise<string> {
  const path = one('verify', files);
  const opened = await readSealed(path);
  const lines = [
    `${path}: ${texts.sealedFile(opened.pack.about.id, opened.edition, spokenFingerprint(opened.fingerprint))}`,
  ];
  lines.push(texts.hash(opened.hash));
  for (const { edition, from, key } of opened.history)
    lines.push(texts.handedOver(edition, await spoken(from), await spoken(key)));
  const day = values.on === undefined ? today() : dayOf(values.on, '--on');
  if (opened.expires !== null) lines.push(texts.expires(opened.expires, day > opened.expires));
  if (opened.next !== null) lines.push(texts.committed);
  if (values.after !== undefined) {
    const before = await readSealed(values.after);
    const judgement = await judge((await judge(null, before)).remember, opened);
    if (!judgement.accepted) throw new BadInput(refusal(path, judgement, opened.edition, before.edition));
    lines.push(verdictText(judgement));
  }
  return `${lines.join('\n')}\n`;
}

function verdictText({ verdict }: Judgement): string {
  return verdict === 'rollback' || verdict === 'fork' || verdict === 'refused' ? '' : texts.verdicts[verdict];
}

/** Why a file can't take the place of the edition that is known. */
export function refusal(path: string, { verdict, reason }: Judgement, edition: number, known: number): string {
  if (reason !== null)
    return texts.notOpened(path, judgeTexts.refused[reason].what, judgeTexts.refused[reason].expected);
  if (verdict === 'fork') {
    const { what, expected } = judgeTexts.fork(edition, known);
    return texts.notOpened(path, what, expected);
  }
  return texts.rollback(path, edition, known);
}

async function spoken(key: string): Promise<string> {
  return spokenFingerprint(await fingerprintOf(key));
}
