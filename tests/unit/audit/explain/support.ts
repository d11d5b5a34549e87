import type { Explained } from '../../../../src/audit/explain/types';
import { explain } from '../../../../src/engine';
import { readDraft } from '../../../../src/listing/draft';
import type { Draft } from '../../../../src/listing/types';
import { AS_OF } from '../../../corpus/labelled';
import { demo } from '../support/demo';

export const explained = (draft: Draft) => explain(readDraft({ language: 'en', ...draft }), demo, { asOf: AS_OF });

/** What came of a phrase: its findings, else the reason, with the words behind it. */
export function came({ findings, reason, by }: Explained): string {
  const list = findings.map(({ check, standing, softer, unshown }) =>
    [check, standing, softer, unshown].filter(Boolean).join(' '),
  );
  return [...list, ...(reason ? [by ? `${reason} (${by})` : reason] : [])].join(', ');
}

/** What came of these words in an advert for a Cressiter: one line for each thing that they were taken for. */
export function of(quote: string, description: string, rest: Draft = {}): string[] {
  const { phrases } = explained({ title: 'Grindlewade Cressiter sewing machine', description, ...rest });
  return phrases
    .filter((phrase) => phrase.field === 'description' && phrase.quote === quote)
    .map((phrase) => `${phrase.what}: ${came(phrase)}`);
}
