import { packTexts as texts } from '../../text/catalogue/pack';
import { whatIs } from '../issues';
import type { Pack } from '../schema/index';
import type { Caution, Means } from '../schema/wording';
import type { FactCheck } from './facts';
import type { Lookup } from './lookup';
import { checkSpan } from './order';

/** What words mean, and what cautions and photographs are tied to. */
export function checkWording(pack: Pack, lookup: Lookup, facts: FactCheck): void {
  pack.wording?.forEach((wording, i) => {
    if (wording.means) checkMeans(`wording[${i}].means`, wording.means, lookup, facts);
    lookup.source(`wording[${i}]`, wording.source);
  });
  pack.cautions?.forEach((caution, i) => {
    caution.models?.forEach((ref, j) => {
      lookup.ref(`cautions[${i}].models[${j}]`, ref, 'models');
    });
    checkTies(`cautions[${i}].facts`, caution.facts, lookup, facts);
    lookup.source(`cautions[${i}]`, caution.source);
  });
  pack.photographs?.forEach((photograph, i) => {
    photograph.settles?.forEach((ref, j) => {
      lookup.ref(`photographs[${i}].settles[${j}]`, ref, 'attributes');
    });
    checkTies(`photographs[${i}].facts`, photograph.facts, lookup, facts);
    lookup.source(`photographs[${i}]`, photograph.source);
  });
  pack.terms?.forEach((term, i) => {
    lookup.source(`terms[${i}]`, term.source);
  });
}

function checkTies(path: string, ties: Caution['facts'], lookup: Lookup, facts: FactCheck): void {
  ties?.forEach((tie, i) => {
    lookup.ref(`${path}[${i}].attribute`, tie.attribute, 'attributes');
    facts.value(`${path}[${i}].is`, tie.attribute, tie.is);
  });
}

function checkMeans(path: string, means: Means, lookup: Lookup, facts: FactCheck): void {
  if ('made' in means) checkSpan(`${path}.made`, means.made, lookup);
  if (!('attribute' in means)) return;
  lookup.ref(`${path}.attribute`, means.attribute, 'attributes');
  if ('is' in means) {
    facts.value(`${path}.is`, means.attribute, means.is);
    return;
  }
  const { atLeast, atMost } = means;
  if (atLeast === undefined && atMost === undefined) lookup.add(path, whatIs(means), texts.expected.aLimit);
  checkSpan(path, { from: atLeast, to: atMost }, lookup);
  const attribute = lookup.attribute(means.attribute);
  if (attribute && attribute.kind !== 'measure')
    lookup.add(`${path}.attribute`, whatIs(means.attribute), texts.expected.aMeasure);
}
