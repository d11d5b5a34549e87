import { type Enquiry, enquire } from '../audit/enquiry';
import type { Knowledge } from '../pack/knowledge';
import type { Words } from './words';
import { NONE_SHIPPED, type Shipped, wordsForModels } from './words-of';

/** What the tables say of a number, with the words for it. */
export interface EnquiryAnswer {
  enquiry: Enquiry;
  words: Words;
}

/** @param pack the id of the pack that is asked alone, or null for all that are switched on */
export function answerToEnquiry(
  serial: string,
  pack: string | null,
  knowledge: Knowledge,
  shipped: Shipped = NONE_SHIPPED,
): EnquiryAnswer {
  const enquiry = enquire(serial, pack, knowledge);
  const runs = [...enquiry.runs, ...enquiry.lines.flatMap((line) => line.runs), ...enquiry.suggestions];
  return { enquiry, words: wordsForModels(new Set(runs.flatMap(({ models }) => models)), knowledge, shipped) };
}
