import { fittingTo } from '../text/fitted';
import { fold } from '../text/fold';

const NO_WORDS = fittingTo('gu')`[^\p{L}\p{N}]+`;

/** Letters and digits alone: what two writings of one text share. */
export function bare(text: string): string {
  const folded = fold(text).text;
  return folded.replace(NO_WORDS(folded), '');
}

/** Cut off by whoever wrote it. */
export const isCutOff = (text: string): boolean => /(?:…|\.{3})\s*$/.test(text);

/** A question alone, which heads a part of a page and tells nothing: "What's in the box?" */
export const isQuestion = (text: string): boolean => /^[^.!?\n]{0,60}\?$/.test(text);
