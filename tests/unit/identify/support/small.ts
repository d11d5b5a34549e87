import { readClaims } from '../../../../src/claims/read';
import type { NameClaim, Reading, ValueClaim } from '../../../../src/claims/reading';
import { readDraft } from '../../../../src/listing/draft';
import { compile } from '../../../../src/pack/compile';
import type { Knowledge, ModelKnown } from '../../../../src/pack/knowledge';
import type { Pack } from '../../../../src/pack/schema/index';
import type { Model } from '../../../../src/pack/schema/models';

export interface Small {
  /** Attribute id -> its values. */
  attributes: Record<string, readonly string[]>;
  trust?: { seller: number; eye: number };
  models?: readonly (Partial<Model> & { id: string })[];
  types?: readonly (Partial<Model> & { id: string })[];
  families?: readonly string[];
}

/** A pack "small" of a thing called "gadget", with just what a test needs. */
export function knowledgeOf({ attributes, trust, models = [], types = [], families = [] }: Small): Knowledge {
  const named = (model: Partial<Model> & { id: string }): Model => ({ label: model.id, names: [], ...model });
  const pack: Pack = {
    schema: 1,
    about: {
      ...{ id: 'small', title: 'Small', edition: 1, licence: 'none', language: 'en' },
      covers: { thing: 'gadget', words: ['gadget'] },
    },
    attributes: Object.entries(attributes).map(([id, values]) => ({
      ...{ id, kind: 'choice' as const, label: id },
      values: values.map((value) => ({ id: value, label: value })),
      ...(trust ? { trust } : {}),
    })),
    families: families.map((id) => ({ id, label: id, names: [] })),
    models: models.map(named),
    types: types.map(named),
  };
  return compile([pack]);
}

/** An advert for a gadget that claims these features, and is called by this model's name. */
export function readingWith(
  knowledge: Knowledge,
  claims: readonly (readonly [attribute: string, value: string, stance?: 'says' | 'denies' | 'guesses'])[],
  called: string | null = null,
): Reading {
  const plain = { field: 'title', quote: 'gadget', start: 0, end: 6, subject: 'this', trigger: null } as const;
  const model = called === null ? null : modelOf(knowledge, called);
  const values = claims.map(([id, value, stance = 'says']): ValueClaim => {
    const attribute = knowledge.attributes.get(`small/${id}`)!;
    return { ...plain, stance, pack: 'small', attribute, value, read: [] } as unknown as ValueClaim;
  });
  const names = model
    ? [{ ...plain, stance: 'says', of: { model }, name: model.label, misspelt: false, identity: true }]
    : [];
  return {
    ...readClaims(readDraft({ title: 'gadget' }), knowledge),
    values,
    names: names as unknown as NameClaim[],
    claimedModels: model ? [model] : [],
  };
}

export function modelOf(knowledge: Knowledge, id: string): ModelKnown {
  const model = knowledge.models.get(`small/${id}`);
  if (!model) throw new Error(id);
  return model;
}
