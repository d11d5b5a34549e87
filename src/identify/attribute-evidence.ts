import { TRUST } from './assumptions';
import type { NumberedIn } from './condition-share';
import type { Field } from './field';
import { heard } from './hearing';
import type { Rows } from './leaf-tables';
import type { Leaves } from './leaves';
import { type Said, saidLikelihood } from './said';

/** What an advert and a viewer say of one attribute. Natural logarithms for each row of facts. */
export interface AttributeEvidence {
  attribute: string;
  leaves: Leaves;
  rows: Rows;
  said: readonly Said[];
  /** Likelihoods per leaf of the advert's words, and of what the viewer saw; null where there is nothing. */
  claimed: Float64Array | null;
  seen: Float64Array | null;
  claimedLogs: Float64Array;
  seenLogs: Float64Array;
  /** Both at once, where the words are of the very thing that is seen: they meet in the value that it has. */
  bothLogs: Float64Array;
}

interface Heard {
  field: Field;
  numbered: ReadonlyMap<string, NumberedIn>;
  leaves: Leaves;
  said: readonly Said[];
  /** A value that is none of the attribute, and null ("can't tell"), tell nothing. */
  answer: string | boolean | null;
  /** The words are of somebody who has the thing before them. */
  byHand?: boolean | undefined;
}

/** null where nothing is said of it. */
export function attributeEvidence(of: Heard): AttributeEvidence | null {
  const { field, numbered, leaves, said, answer } = of;
  const claimed = saidLikelihood(said, leaves, of.byHand);
  const eye = leaves.attribute.def.trust?.eye ?? TRUST.eye;
  const seen = answer === null ? null : heard(answer, false, eye, leaves);
  if (!claimed && !seen) return null;
  const attribute = leaves.attribute.ref;
  const rows = field.tables.numbered(attribute, positionsOf(field, numbered));
  const count = leaves.values.length;
  const size = rows.shares.length / count;
  const out = {
    claimedLogs: new Float64Array(size),
    seenLogs: new Float64Array(size),
    bothLogs: new Float64Array(size),
  };
  for (let row = 0; row < size; row++) {
    let said = 0;
    let saw = 0;
    let both = 0;
    for (let leaf = 0; leaf < count; leaf++) {
      const share = rows.shares[row * count + leaf]!;
      const heardHere = claimed ? claimed[leaf]! : 1;
      const seenHere = seen ? seen[leaf]! : 1;
      said += share * heardHere;
      saw += share * seenHere;
      both += share * heardHere * seenHere;
    }
    out.claimedLogs[row] = Math.log(said);
    out.seenLogs[row] = Math.log(saw);
    out.bothLogs[row] = Math.log(both);
  }
  return { attribute, leaves, rows, said, claimed, seen, ...out };
}

/** Where the models stand whose number is known. */
export function positionsOf(
  field: Field,
  numbered: ReadonlyMap<string, NumberedIn>,
): { position: number; at: NumberedIn }[] {
  return [...numbered].flatMap(([ref, at]) => {
    const position = field.positionOf(ref, '');
    return position === undefined ? [] : [{ position, at }];
  });
}
