import type { FamilyKnown, ModelKnown } from '../pack/knowledge';
import { fold } from '../text/fold';
import type { NameClaim } from './reading';

const FIELD_ORDER = ['title', 'details', 'description', 'condition'];

/** The names that may be what is on sale, the surest first. */
export function onSale(names: readonly NameClaim[]): NameClaim[] {
  const meant = names.filter(
    (name) => name.subject === 'this' && (name.stance === 'says' || name.stance === 'guesses'),
  );
  const rank = (name: NameClaim): number =>
    (name.stance === 'says' ? 0 : 10) +
    (name.misspelt ? 1 : 0) -
    (name.identity && !name.alias ? 0.5 : 0) +
    2 * Math.max(0, FIELD_ORDER.indexOf(name.field));
  return meant.sort((a, b) => rank(a) - rank(b) || a.start - b.start);
}

/** The model that claims are held against; more than one where a name belongs to several entries. */
export function claimedModels(names: readonly NameClaim[]): ModelKnown[] {
  const models = onSale(names).filter((name) => 'model' in name.of);
  const first = models[0];
  if (!first || (first.stance === 'guesses' && (isUndecided(models) || isFaint(first)))) return [];
  const same = models.filter(
    (name) => name.field === first.field && name.start === first.start && name.end === first.end,
  );
  const all = same.flatMap((name) => ('model' in name.of ? [name.of.model] : []));
  // A maker's own model before a brand-free type.
  return all.sort((a, b) => Number(a.isType) - Number(b.isType));
}

export function claimedFamily(names: readonly NameClaim[], model: ModelKnown | null): FamilyKnown | null {
  if (model?.family) return model.family;
  const first = onSale(names).find((name) => 'family' in name.of);
  return first && 'family' in first.of ? first.of.family : null;
}

/** "A Name? Or is it the Other?": nothing is claimed. */
function isUndecided(guesses: readonly NameClaim[]): boolean {
  const places = guesses.map((name) => name.name.toLowerCase());
  return new Set(places).size > 1;
}

/** On the folded trigger. */
const FAINT =
  /^(?:could|may|might|perhaps|possibly|maybe|either|konnte|vielleicht|entweder|pourrait|peut|soit|someone|somebody)/;

/** "It could be a Name" names nothing yet; "I think it is a Name", "sold to me as a Name" do. */
function isFaint(name: NameClaim): boolean {
  return (name.trigger === null && name.field !== 'title') || FAINT.test(fold(name.trigger ?? '').text);
}
