import { fold } from '../text/fold';

/** Letters and digits alone: what two writings of one text share. */
export const bare = (text: string): string => fold(text).text.replace(/[^\p{L}\p{N}]+/gu, '');

/** Cut off by whoever wrote it. */
export const isCutOff = (text: string): boolean => /(?:…|\.{3})\s*$/.test(text);
