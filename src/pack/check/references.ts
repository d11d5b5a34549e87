import { packTexts as texts } from '../../text/catalogue/pack';
import type { PackIssue } from '../issues';
import type { Pack } from '../schema/index';
import type { Model } from '../schema/models';
import { checkAttributes } from './attributes';
import { FactCheck } from './facts';
import { Lookup } from './lookup';
import { checkSpan } from './order';
import { checkPriceReferences } from './price-references';
import { checkWording } from './wording';

/** Every reference leads to an entry of this pack, unless another pack is named or extended: then it may lie there. */
export function checkReferences(pack: Pack): PackIssue[] {
  const lookup = new Lookup(pack);
  const facts = new FactCheck(pack, lookup);
  if (pack.about.extends === pack.about.id)
    lookup.add('about.extends', texts.what.itself(pack.about.id), texts.expected.anotherPack);
  lookup.ref('about.covers.first', pack.about.covers.first, 'attributes');
  checkAttributes(pack, lookup);
  pack.families?.forEach((family, i) => {
    facts.facts(`families[${i}].facts`, family.facts);
    facts.facts(`families[${i}].necessary`, family.necessary);
    lookup.source(`families[${i}]`, family.source);
  });
  for (const part of ['models', 'types'] as const)
    pack[part]?.forEach((model, i) => {
      checkModel(`${part}[${i}]`, model, lookup, facts);
    });
  checkSerials(pack, lookup);
  checkWording(pack, lookup, facts);
  checkPriceReferences(pack, lookup);
  return lookup.issues;
}

function checkModel(at: string, model: Model, lookup: Lookup, facts: FactCheck): void {
  lookup.ref(`${at}.family`, model.family, 'families');
  lookup.ref(`${at}.type`, model.type, 'models');
  checkSpan(`${at}.made`, model.made, lookup);
  facts.facts(`${at}.facts`, model.facts);
  model.variants?.forEach((variant, j) => {
    facts.when(`${at}.variants[${j}].when`, variant.when);
    facts.facts(`${at}.variants[${j}].facts`, variant.facts);
    lookup.source(`${at}.variants[${j}]`, variant.source);
  });
  model.mistakenFor?.forEach((other, j) => {
    lookup.ref(`${at}.mistakenFor[${j}].model`, other.model, 'models');
  });
  lookup.source(`${at}.launchPrice`, model.launchPrice?.source);
  model.batches?.forEach((batch, j) => {
    lookup.source(`${at}.batches[${j}]`, batch.source);
  });
  model.fits?.forEach((part, j) => {
    lookup.source(`${at}.fits[${j}]`, part.source);
  });
  for (const ref of Object.keys(model.where ?? {})) lookup.ref(`${at}.where.${ref}`, ref, 'attributes');
  model.pictures?.forEach((picture, j) => {
    lookup.ref(`${at}.pictures[${j}].attribute`, picture.attribute, 'attributes');
  });
  lookup.source(at, model.source);
}

function checkSerials(pack: Pack, lookup: Lookup): void {
  pack.serials?.schemes.forEach((scheme, i) => {
    lookup.source(`serials.schemes[${i}]`, scheme.source);
  });
  pack.serials?.runs.models.forEach((models, i) => {
    for (const ref of models) lookup.ref(`serials.runs.models[${i}]`, ref, 'models');
  });
  pack.serials?.runs.source?.forEach((id, i) => {
    lookup.sourceAt(`serials.runs.source[${i}]`, id);
  });
}
