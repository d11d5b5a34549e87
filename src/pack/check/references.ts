import { packTexts as texts } from '../../text/catalogue/pack';
import { factList } from '../facts';
import type { PackIssue } from '../issues';
import type { ChoiceAttribute } from '../schema/attributes';
import type { Pack } from '../schema/index';
import type { Facts, FactValue } from '../schema/models';

/** Every reference leads to an entry of this pack, unless another pack is named or extended: then it may lie there. */
export function checkReferences(pack: Pack): PackIssue[] {
  const issues: PackIssue[] = [];
  const own = pack.about.id;
  const open = pack.about.extends !== undefined;
  const ids = {
    models: new Set([...(pack.models ?? []), ...(pack.types ?? [])].map((model) => model.id)),
    families: new Set(pack.families?.map((family) => family.id)),
    attributes: new Map(pack.attributes?.map((attribute) => [attribute.id, attribute])),
  };
  const sources = new Set(Object.keys(pack.about.sources ?? {}));

  const local = (ref: string): string | null => {
    if (!ref.includes('/')) return ref;
    return ref.startsWith(`${own}/`) ? ref.slice(own.length + 1) : null;
  };
  const must = (path: string, ref: string, where: { has(id: string): boolean }, kind: string): void => {
    const id = local(ref);
    if (id === null || where.has(id) || (open && !ref.includes('/'))) return;
    issues.push({ path, what: texts.what.unknown(ref), expected: texts.expected.knownEntry(kind) });
  };
  const model = (path: string, ref: string): void => must(path, ref, ids.models, texts.parts.models);
  const value = (path: string, ref: string, is: FactValue): void => {
    must(path, ref, ids.attributes, texts.parts.attributes);
    const attribute = ids.attributes.get(local(ref) ?? '');
    if (attribute?.kind === 'choice') checkValue(path, attribute, is, issues);
  };
  const facts = (path: string, of: Facts | undefined): void => {
    for (const [ref, fact] of Object.entries(of ?? {})) {
      const at = `${path}.${ref}`;
      for (const one of factList(fact)) {
        value(at, ref, one.is);
        source(at, one.source);
      }
    }
  };
  const source = (path: string, id: string | null | undefined): void => {
    if (id && !sources.has(id))
      issues.push({ path: `${path}.source`, what: texts.what.unknown(id), expected: texts.expected.source });
  };

  pack.families?.forEach((family, i) => {
    facts(`families[${i}].facts`, family.facts);
    facts(`families[${i}].necessary`, family.necessary);
    source(`families[${i}]`, family.source);
  });
  for (const part of ['models', 'types'] as const)
    pack[part]?.forEach((one, i) => {
      const at = `${part}[${i}]`;
      if (one.family) must(`${at}.family`, one.family, ids.families, texts.parts.families);
      if (one.type) model(`${at}.type`, one.type);
      facts(`${at}.facts`, one.facts);
      one.variants?.forEach((variant, j) => {
        facts(`${at}.variants[${j}].facts`, variant.facts);
        source(`${at}.variants[${j}]`, variant.source);
      });
      one.mistakenFor?.forEach((other, j) => {
        model(`${at}.mistakenFor[${j}].model`, other.model);
      });
      source(at, one.source);
    });
  pack.serials?.runs.models.forEach((models, i) => {
    for (const ref of models) model(`serials.runs.models[${i}]`, ref);
  });
  pack.serials?.runs.source?.forEach((id, i) => {
    source(`serials.runs.source[${i}]`, id);
  });
  pack.wording?.forEach((wording, i) => {
    const means = wording.means;
    if (means && 'attribute' in means) {
      if ('is' in means) value(`wording[${i}].means`, means.attribute, means.is);
      else must(`wording[${i}].means.attribute`, means.attribute, ids.attributes, texts.parts.attributes);
    }
    source(`wording[${i}]`, wording.source);
  });
  pack.cautions?.forEach((caution, i) => {
    for (const ref of caution.models ?? []) model(`cautions[${i}].models`, ref);
    for (const fact of caution.facts ?? []) value(`cautions[${i}].facts`, fact.attribute, fact.is);
    source(`cautions[${i}]`, caution.source);
  });
  pack.prices?.bands?.forEach((band, i) => {
    model(`prices.bands[${i}].model`, band.model);
    source(`prices.bands[${i}]`, band.source);
  });
  pack.prices?.observations?.forEach((observation, i) => {
    model(`prices.observations[${i}].model`, observation.model);
  });
  return issues;
}

function checkValue(path: string, attribute: ChoiceAttribute, is: FactValue, issues: PackIssue[]): void {
  const known = new Set(attribute.values.map((value) => value.id));
  for (const one of Array.isArray(is) ? is : [is])
    if (typeof one !== 'string' || !known.has(one))
      issues.push({
        path,
        what: texts.what.is(JSON.stringify(one)),
        expected: texts.expected.valueOf(attribute.id),
      });
}
