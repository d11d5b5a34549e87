import { type Leaves, leavesOf } from '../identify/leaves';
import { READS_OTHERWISE, SERIAL_LOOK } from '../identify/serial-look';
import type { Knowledge } from '../pack/knowledge';
import { normaliseSerial } from '../quantity/serials';
import { identifyCliTexts as texts } from '../text/catalogue/identify-cli';
import { BadInput } from './bad-input';

/** Ways to write an answer of yes or no, and that it can't be told. */
const YES = new Set(['yes', 'true', 'y']);
const NO = new Set(['no', 'false', 'n']);
const UNKNOWN = '?';

/**
 * What was seen, "frame=aluminium" each, as answers: attribute ref -> value. A feature is named by its id or in full
 * ("trade/frame"); "?" is "can't tell". The number on the machine is `serial=` what it reads, or "other".
 * @throws BadInput on what no pack knows.
 */
export function seenOf(given: readonly string[], { attributes }: Knowledge): Record<string, string | boolean | null> {
  const out: Record<string, string | boolean | null> = {};
  for (const one of given) {
    const at = one.indexOf('=');
    const name = one.slice(0, Math.max(0, at)).trim();
    const value = one.slice(at + 1).trim();
    if (at < 1 || name === '' || value === '') throw new BadInput(texts.seenForm(one));
    const found = [...attributes.values()].filter(({ ref, id }) => ref === name || id === name);
    if (found.length === 0 && name === SERIAL_LOOK) {
      out[name] = value === UNKNOWN ? null : value === READS_OTHERWISE ? value : normaliseSerial(value);
      continue;
    }
    if (found.length === 0) throw new BadInput(texts.noSuchFeature(name, [...attributes.keys()].join(', ')));
    if (found.length > 1) throw new BadInput(texts.severalFeatures(name, found.map(({ ref }) => ref).join(', ')));
    const leaves = leavesOf(found[0]!);
    if (!leaves) throw new BadInput(texts.notAsked(name));
    out[found[0]!.ref] = givenValue(value, leaves);
  }
  return out;
}

function givenValue(given: string, { attribute, covers }: Leaves): string | boolean | null {
  if (given === UNKNOWN) return null;
  const folded = given.toLowerCase();
  if (covers.has(true)) {
    if (YES.has(folded)) return true;
    if (NO.has(folded)) return false;
    throw new BadInput(texts.noSuchValue(given, attribute.id, 'yes, no, ?'));
  }
  if (covers.has(folded)) return folded;
  throw new BadInput(texts.noSuchValue(given, attribute.id, [...covers.keys(), UNKNOWN].join(', ')));
}
