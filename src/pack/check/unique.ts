import { packTexts as texts } from '../../text/catalogue/pack';
import { MOST_ISSUES, type PackIssue } from '../issues';
import type { Pack } from '../schema/index';

/** Entries are referred to as packId/entryId, so an id stands once in the whole pack. */
export function checkUnique(pack: Pack): PackIssue[] {
  const issues: PackIssue[] = [];
  const seen = new Set<string>();
  const meet = (path: string, list: readonly { id: string }[] | undefined, scope: Set<string>): void => {
    list?.forEach((item, index) => {
      if (scope.has(item.id) && issues.length < MOST_ISSUES)
        issues.push({
          path: `${path}[${index}].id`,
          what: texts.what.duplicate(item.id),
          expected: texts.expected.unique,
        });
      scope.add(item.id);
    });
  };
  // Attributes have a space of their own: facts name them, and "bobbin" may well be a wording's id too.
  meet('attributes', pack.attributes, new Set());
  for (const part of ['families', 'models', 'types'] as const) meet(part, pack[part], seen);
  meet('serials.schemes', pack.serials?.schemes, new Set());
  meet('wording', pack.wording, new Set());
  meet('cautions', pack.cautions, new Set());
  meet('photographs', pack.photographs, new Set());
  meet('terms', pack.terms, new Set());
  meet('prices.grades', pack.prices?.grades, new Set());
  meet('prices.factors', pack.prices?.factors, new Set());
  for (const part of ['models', 'types'] as const)
    pack[part]?.forEach((model, index) => {
      meet(`${part}[${index}].variants`, model.variants, new Set());
      meet(`${part}[${index}].fits`, model.fits, new Set());
    });
  pack.attributes?.forEach((attribute, index) => {
    if (attribute.kind === 'choice') meet(`attributes[${index}].values`, attribute.values, new Set());
  });
  return issues;
}
