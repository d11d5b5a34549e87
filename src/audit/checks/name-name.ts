import { onSale } from '../../claims/claimed';
import type { NameClaim } from '../../claims/reading';
import type { FamilyKnown, ModelKnown } from '../../pack/knowledge';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { sourceOf } from '../source-of';
import type { Finding } from '../types';
import { askOf, saidOf } from '../words';

const texts = findingTexts.nameName;

interface ModelName {
  claim: NameClaim;
  model: ModelKnown;
}

/**
 * The advert calls the thing by two models' names. Only where both are said in so many words (a title's name, or
 * "this is a …", "Model: …") they exclude each other; else it is a question which is on sale.
 */
export function nameName(auditCase: AuditCase): Finding[] {
  return [...twoModels(auditCase), ...anotherMaker(auditCase), ...anotherFamily(auditCase)];
}

function twoModels(auditCase: AuditCase): Finding[] {
  const { reading, knowledge } = auditCase;
  const names: ModelName[] = onSale(reading.names).flatMap((claim) =>
    'model' in claim.of && !claim.of.model.isType ? [{ claim, model: claim.of.model }] : [],
  );
  const first = names[0];
  if (first?.claim.stance !== 'says') return [];
  const own = new Set(reading.claimedModels.map((model) => model.ref));
  const sameAsFirst = (name: ModelName): boolean =>
    own.has(name.model.ref) || names.some((other) => own.has(other.model.ref) && isSamePlace(other.claim, name.claim));
  // "It isn't a Name, the Name is the small one", "I'd been told it was a Name, the Name is …": what it is not said to
  // be is only explained.
  const isExplained = (model: ModelKnown): boolean =>
    reading.names.some(({ of, stance }) => stance !== 'says' && 'model' in of && of.model.ref === model.ref);
  const others = names.filter(
    (name) =>
      !isExplained(name.model) &&
      name.model.pack === first.model.pack &&
      name.claim.stance === 'says' &&
      !sameAsFirst(name) &&
      !contained(name.claim, first.claim),
  );
  const second = others.find((name) => name.claim.identity) ?? others.find((name) => name.claim.field === 'title');
  if (!second) return [];
  const apart = first.claim.field !== second.claim.field || first.claim.identity || second.claim.alias;
  const excludes = second.claim.identity && apart && !second.claim.misspelt;
  return [
    {
      id: `name-name:${first.model.ref}:${second.model.ref}`,
      check: 'name-name',
      standing: excludes ? 'disproved' : 'unproved',
      attribute: null,
      said: [saidOf(first.claim), saidOf(second.claim)],
      known: [
        {
          pack: second.model.pack,
          entry: second.model.id,
          text: texts.known(first.model.label, second.model.label),
          source: sourceOf(knowledge, second.model.pack, second.model.def.source),
        },
      ],
      text: (excludes ? texts.disproved : texts.unproved)(first.claim.quote, second.claim.quote),
      ask: askOf(askTexts.whichModel(first.model.label, second.model.label), auditCase),
    },
  ];
}

function isSamePlace(a: NameClaim, b: NameClaim): boolean {
  return a.field === b.field && a.start < b.end && b.start < a.end;
}

function contained(inner: NameClaim, outer: NameClaim): boolean {
  return inner.field === outer.field && inner.start >= outer.start && inner.end <= outer.end;
}

/** The title or a "this is a …" gives one maker's name to another maker's model, and nowhere is the model's own maker named apart. */
function anotherMaker(auditCase: AuditCase): Finding[] {
  const { reading, knowledge } = auditCase;
  const model = reading.claimedModels.find((one) => !one.isType);
  const own = makerOf(model);
  if (!model || !own) return [];
  const said = onSale(reading.names).filter((name) => name.stance === 'says' && !name.misspelt);
  const makers = said.flatMap((name) => {
    const maker =
      'maker' in name.of ? name.of.maker : 'family' in name.of ? name.of.family.def.maker : makerOf(name.of.model);
    return maker ? [{ name, maker: maker.toLowerCase() }] : [];
  });
  const isModelsName = (name: NameClaim): boolean => 'model' in name.of && name.of.model.ref === model.ref;
  const called = makers.find(
    ({ name, maker }) => (name.field === 'title' || name.identity) && maker !== own && !('model' in name.of),
  );
  const claim = said.find(isModelsName);
  // "Other Name, number …": right before the model's name, wherever it stands.
  const other =
    called ??
    makers.find(
      ({ name, maker }) =>
        maker !== own &&
        !('model' in name.of) &&
        said.some((one) => isModelsName(one) && one.field === name.field && one.start === name.end + 1),
    );
  const ownNamed = makers.some(({ name, maker }) => maker === own && !isModelsName(name));
  // "This Other is in good order" says so, whatever the title says.
  if (!other || (ownNamed && !other.name.identity) || !claim) return [];
  const source = sourceOf(knowledge, model.pack, model.def.source);
  return [
    {
      id: `name-name:${model.ref}:maker`,
      check: 'name-name',
      standing: 'disproved',
      attribute: null,
      said: [saidOf(other.name), saidOf(claim)],
      known: [
        { pack: model.pack, entry: model.id, text: texts.knownMaker(model.label, model.def.maker ?? own), source },
      ],
      text: texts.anotherMaker(other.name.quote, claim.quote),
      ask: askOf(askTexts.maker, auditCase),
    },
  ];
}

/** The title or a "this is a …" counts the model to a line of its maker's that it isn't of: "Name 118, of the … class". */
function anotherFamily(auditCase: AuditCase): Finding[] {
  const { reading, knowledge } = auditCase;
  const model = reading.claimedModels.find((one) => !one.isType);
  const said = onSale(reading.names).filter((name) => name.stance === 'says' && !name.misspelt);
  const claim = said.find(({ of }) => 'model' in of && of.model.ref === model?.ref);
  if (!model?.family || !claim) return [];
  const { family } = model;
  const other = said.find(
    (name) =>
      'family' in name.of &&
      name.of.family.pack === family.pack &&
      name.of.family.ref !== family.ref &&
      !isMakersOwn(name.of.family) &&
      (name.field === 'title' || name.identity) &&
      !isSamePlace(name, claim),
  );
  if (!other || !('family' in other.of)) return [];
  const source = sourceOf(knowledge, model.pack, model.def.source);
  return [
    {
      id: `name-name:${model.ref}:family`,
      check: 'name-name',
      standing: 'disproved',
      attribute: null,
      said: [saidOf(other), saidOf(claim)],
      known: [{ pack: model.pack, entry: model.id, text: texts.knownFamily(model.label, family.def.label), source }],
      text: texts.anotherFamily(other.quote, claim.quote),
      ask: askOf(askTexts.whichIsRight(other.quote, claim.quote), auditCase),
    },
  ];
}

/** All that a maker made goes by the maker's name. */
function isMakersOwn({ def }: FamilyKnown): boolean {
  const maker = def.maker?.toLowerCase();
  return def.names.some((name) => (typeof name === 'string' ? name : name.text).toLowerCase() === maker);
}

function makerOf(model: ModelKnown | undefined): string | null {
  return (model?.def.maker ?? model?.family?.def.maker)?.toLowerCase() ?? null;
}
