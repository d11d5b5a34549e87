import type { Stanced } from '../../claims/types';
import type { CheckId, Finding } from '../types';
import type { Claim } from './claims';
import type { CameFinding, Softer, Unshown } from './types';

const FEATURE: ReadonlySet<CheckId> = new Set<CheckId>([
  'claim-fact',
  'claim-claim',
  'family',
  'fits',
  'weight',
  'rarity',
  'age-words',
  'wording',
  'source-conflict',
]);

/** The checks that look at each kind of claim. */
const CHECKS: Record<Claim['what'], ReadonlySet<CheckId>> = {
  value: FEATURE,
  wording: FEATURE,
  name: new Set<CheckId>(['name-name', 'serial-model', 'look-alike', 'fits']),
  measure: new Set<CheckId>(['weight', 'claim-fact']),
  year: new Set<CheckId>(['serial-year', 'age-words', 'claim-claim']),
  age: new Set<CheckId>(['age-words']),
  count: new Set<CheckId>(['rarity']),
  place: new Set<CheckId>(['made-where']),
  fit: new Set<CheckId>(['fits']),
  serial: new Set<CheckId>(['serial-model', 'serial-year', 'serial-form']),
  caution: new Set<CheckId>(['caution']),
  grade: new Set(),
  factor: new Set<CheckId>(['price']),
};

/** The findings that quote a claim, each with why it is softer than "doesn't hold" or not shown. */
export function findingsOn(one: Claim, found: readonly Finding[], shown: readonly Finding[]): CameFinding[] {
  return found.filter((finding) => restsOn(finding, one)).map((finding) => came(finding, one, shown));
}

export function came(finding: Finding, one: Claim | null, shown: readonly Finding[]): CameFinding {
  const { id, check, standing } = finding;
  return { id, check, standing, softer: one ? softer(finding, one) : null, unshown: unshown(finding, shown) };
}

function restsOn(finding: Finding, { what, claim }: Claim): boolean {
  if (!CHECKS[what].has(finding.check)) return false;
  // Two packs' words can stand at one place: each has its own finding.
  if (finding.check === 'wording' && (what !== 'wording' || finding.id !== `wording:${claim.pack}/${claim.entry.id}`))
    return false;
  if (what === 'caution' && finding.id !== `caution:${claim.pack}/${claim.entry.id}`) return false;
  const attribute = what === 'value' || what === 'measure' ? claim.attribute.id : null;
  if (attribute !== null && finding.attribute !== null && attribute !== finding.attribute) return false;
  const denial = 'denial' in claim ? claim.denial : undefined;
  return finding.said.some(
    ({ field, quote, start, end }) =>
      field === claim.field &&
      // Serials of a field of their own all begin at 0.
      ((start === claim.start && quote === claim.quote) || (start === denial?.start && end === denial.end)),
  );
}

const BY_FACTS: ReadonlySet<CheckId> = new Set<CheckId>(['claim-fact', 'family', 'weight']);

function softer({ check, standing }: Finding, { what, claim }: Claim): Softer | null {
  if (standing !== 'caution' && standing !== 'unproved') return null;
  const { stance, aside } = claim as Partial<Stanced>;
  if (stance === 'guesses') return 'a-guess';
  if (aside) return 'in-passing';
  if (what === 'wording' && claim.entry.use === 'loose' && check !== 'wording') return 'loose-word';
  return standing === 'caution' && BY_FACTS.has(check) ? 'usually-only' : null;
}

function unshown(finding: Finding, shown: readonly Finding[]): Unshown | null {
  if (shown.some(({ id }) => id === finding.id)) return null;
  if (finding.standing === 'agrees') return 'same-said';
  return finding.standing === 'unproved' ? 'too-many' : 'said-better';
}
