import { packTexts as texts } from '../../text/catalogue/pack';
import { whatIs } from '../issues';
import type { Pack } from '../schema/index';
import type { Means } from '../schema/wording';
import type { FactCheck } from './facts';
import type { Lookup } from './lookup';
import { checkSpan } from './order';

/** What words mean, and what cautions are tied to. */
export function checkWording(pack: Pack, lookup: Lookup, facts: FactCheck): void {
  pack.wording?.forEach((wording, i) => {
    if (wording.means) checkMeans(`wording[${i}].means`, wording.means, lookup, facts);
    lookup.source(`wording[${i}]`, wording.source);
  });
  pack.cautions?.forEach((caution, i) => {
    caution.models?.forEach((ref, j) => {
      lookup.ref(`cautions[${i}].models[${j}]`, ref, 'models');
    });
    caution.facts?.forEach((fact, j) => {
      lookup.ref(`cautions[${i}].facts[${j}].attribute`, fact.attribute, 'attributes');
      facts.value(`cautions[${i}].facts[${j}].is`, fact.attribute, fact.is);
    });
    lookup.source(`cautions[${i}]`, caution.source);
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
