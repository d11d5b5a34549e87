import type {
  AgeClaim,
  CountClaim,
  FitClaim,
  MeasureClaim,
  NameClaim,
  PlaceClaim,
  Reading,
  SerialClaim,
  ValueClaim,
  WordingClaim,
  YearClaim,
} from '../../claims/reading';

/** A claim with what it is, so that one list can hold them all. */
export type Claim =
  | { what: 'value'; claim: ValueClaim }
  | { what: 'wording'; claim: WordingClaim }
  | { what: 'name'; claim: NameClaim }
  | { what: 'measure'; claim: MeasureClaim }
  | { what: 'year'; claim: YearClaim }
  | { what: 'age'; claim: AgeClaim }
  | { what: 'count'; claim: CountClaim }
  | { what: 'place'; claim: PlaceClaim }
  | { what: 'fit'; claim: FitClaim; models: string[] }
  | { what: 'serial'; claim: SerialClaim }
  | { what: 'grade'; claim: Reading['grades'][number] }
  | { what: 'factor'; claim: Reading['factors'][number] }
  | { what: 'caution'; claim: Reading['cautions'][number] };

/** All that was claimed, whatever came of it. */
export function claimsOf(reading: Reading): Claim[] {
  const tagged = <W extends Claim['what']>(what: W, list: readonly Extract<Claim, { what: W }>['claim'][]): Claim[] =>
    list.map((claim) => ({ what, claim }) as Claim);
  return [
    ...tagged('name', reading.names),
    ...tagged('value', reading.values),
    ...tagged('wording', reading.wordings),
    ...tagged('measure', reading.measures),
    ...tagged('year', reading.years),
    ...tagged('age', reading.ages),
    ...tagged('count', reading.counts),
    ...tagged('place', reading.places),
    ...fits(reading.fitting),
    ...tagged('serial', reading.serials),
    ...tagged('grade', reading.grades),
    ...tagged('factor', reading.factors),
    ...tagged('caution', reading.cautions),
  ];
}

/** "Class 15 bobbin" fits many models: one claim, with all of them. */
function fits(fitting: readonly FitClaim[]): Claim[] {
  const byPlace = new Map<string, { what: 'fit'; claim: FitClaim; models: string[] }>();
  for (const claim of fitting) {
    const key = [claim.field, claim.start, claim.end, claim.model.pack].join();
    const there = byPlace.get(key);
    if (there) there.models.push(claim.model.label);
    else byPlace.set(key, { what: 'fit', claim, models: [claim.model.label] });
  }
  return [...byPlace.values()];
}

/** The pack whose phrase it is; null for what is read without one. */
export function packOf({ what, claim }: Claim): string | null {
  switch (what) {
    case 'name':
      return 'maker' in claim.of ? claim.of.pack : 'model' in claim.of ? claim.of.model.pack : claim.of.family.pack;
    case 'measure':
      return claim.attribute.pack;
    case 'fit':
      return claim.model.pack;
    case 'value':
    case 'wording':
    case 'place':
    case 'grade':
    case 'factor':
    case 'caution':
      return claim.pack;
    default:
      return null;
  }
}
