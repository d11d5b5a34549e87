import type { Finding, Likely } from '../audit/types';
import { say } from '../audit/words';
import type { Knowledge } from '../pack/knowledge';
import type { LocalText } from '../pack/schema/parts';
import { cautionsOf } from './kind-cautions';
import { type MindedWords, wordsToMind } from './words-to-mind';

/** What the packs say of the kind that something most likely is, beside what follows from it. */
export interface KindNote {
  explain: string | null;
  /** What it is good for, and what not. */
  good: string[];
  poor: string[];
  /** Parts and consumables that fit it. */
  fits: string[];
  /** Words of adverts that are not to be believed of it, or to be asked about. */
  mind: MindedWords[];
  /** Cautions that what is known of the kind calls for, beside those that the audit has found. */
  cautions: string[];
}

/** Null where it is none that the packs know. */
export function kindNote(likely: Likely | undefined, found: readonly Finding[], knowledge: Knowledge): KindNote | null {
  const model = likely?.model ? knowledge.models.get(likely.model) : undefined;
  if (!model) return null;
  const { explain, suits, fits } = model.def;
  const all = (texts: readonly LocalText[] | undefined) => (texts ?? []).map(say);
  return {
    explain: explain === undefined ? null : say(explain),
    ...{ good: all(suits?.good), poor: all(suits?.poor), fits: all(fits?.map(({ label }) => label)) },
    mind: wordsToMind(model, knowledge),
    cautions: cautionsOf(model, knowledge).filter((text) => !found.some((finding) => finding.text === text)),
  };
}
