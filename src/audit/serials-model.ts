import type { Allowed, AttributeKnown } from '../pack/knowledge';
import { findingTexts } from '../text/catalogue/findings';
import type { AuditCase, HeldAgainst } from './case';
import { type Held, holdFor } from './claims-held';
import { modelsText } from './words';

const texts = findingTexts.otherModel;

/** The models to which the serial was allotted, where that is another one than the advert names; else none. */
export function serialsModels({ serial, claimed, knowledge }: AuditCase): HeldAgainst[] {
  if (!serial?.usable || serial.verdict !== 'another-model') return [];
  const refs = new Set(serial.runs.flatMap((run) => run.models));
  return [...refs].flatMap((ref) => {
    const model = knowledge.models.get(ref);
    if (!model || claimed.includes(model)) return [];
    return [{ model, run: serial.runs.find((run) => run.models.includes(ref)) ?? null }];
  });
}

/** What a claim is for the serial's model: null where there is none, or where it leaves the claim open. */
export function holdForSerials(
  auditCase: AuditCase,
  attribute: AttributeKnown,
  allowed: Allowed,
  denied: boolean,
): Held | null {
  return holdFor(auditCase, serialsModels(auditCase), attribute, allowed, denied);
}

/** "the Name 12", or "the Name 12 or the Name 14" of a shared block. */
export function serialsLabel(auditCase: AuditCase): string {
  return modelsText(
    serialsModels(auditCase).map(({ model }) => model.ref),
    auditCase.knowledge,
  );
}

/** The sentence with what the serial's model says of the same claim, where it decides. */
export function withSerials(auditCase: AuditCase, text: string, verdict: Held['verdict'], other: Held | null): string {
  if (!other) return text;
  const label = serialsLabel(auditCase);
  if (other.verdict === 'agrees') return verdict === 'agrees' ? text : texts.join(text, texts.fits(label));
  return texts.join(text, (verdict === 'agrees' ? texts.but : texts.neither)(label));
}
