import type { Rule, Stanced } from './types';

/**
 * The claim, of something else than the thing on sale.
 * @param word the word that shows it; without one the claim keeps the trigger that it has.
 */
export function ofAnother<C extends Pick<Stanced, 'subject' | 'trigger' | 'why'>>(
  claim: C,
  rule: Rule,
  word: string | null = null,
): C {
  return {
    ...claim,
    subject: 'other',
    trigger: word ?? claim.trigger,
    why: [...(claim.why ?? []), { rule, makes: 'other', word }],
  };
}
