import type { AttributeKnown, ModelKnown } from '../pack/knowledge';
import type { LocalText } from '../pack/schema/parts';

/** Where to look on this very model, where its pack says that it differs. */
export function ownWhere(
  model: ModelKnown | null,
  attribute: Pick<AttributeKnown, 'ref' | 'id'>,
): LocalText | undefined {
  const own = Object.entries(model?.def.where ?? {}).find(
    ([ref]) => ref === attribute.ref || ref === attribute.id || `${model!.pack}/${ref}` === attribute.ref,
  );
  return own?.[1];
}
