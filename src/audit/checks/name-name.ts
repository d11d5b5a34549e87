import { onSale } from '../../claims/claimed';
import type { NameClaim } from '../../claims/reading';
import type { FamilyKnown, ModelKnown } from '../../pack/knowledge';
import type { LocalText } from '../../pack/schema/parts';
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

/** The model that the advert names, with all names that it gives the thing in so many words. */
interface Named {
  model: ModelKnown;
  said: readonly NameClaim[];
  claim: NameClaim;
}

function namedIn({ reading }: AuditCase): Named | null {
  const model = reading.claimedModels.find((one) => !one.isType);
  const said = onSale(reading.names).filter((name) => name.stance === 'says' && !name.misspelt);
  const claim = model && said.find((name) => isOf(name, model));
  return claim ? { model, said, claim } : null;
}

const isOf = ({ of }: NameClaim, model: ModelKnown): boolean => 'model' in of && of.model.ref === model.ref;
const isCalledSo = (name: NameClaim): boolean => name.field === 'title' || name.identity;

/** The title or a "this is a …" gives one maker's name to another maker's model, and nowhere is the model's own maker named apart. */
function anotherMaker(auditCase: AuditCase): Finding[] {
  const named = namedIn(auditCase);
  const own = makerOf(named?.model);
  if (!named || !own) return [];
  const { model, said, claim } = named;
  const makers = said.flatMap((name) => {
    const maker =
      'maker' in name.of ? name.of.maker : 'family' in name.of ? name.of.family.def.maker : makerOf(name.of.model);
    return maker ? [{ name, maker: maker.toLowerCase() }] : [];
  });
  const others = makers.flatMap(({ name, maker }) => (maker !== own && !('model' in name.of) ? [name] : []));
  // "Other Name, number …": right before the model's name, wherever it stands.
  const isBeside = ({ field, end }: NameClaim): boolean =>
    said.some((one) => isOf(one, model) && one.field === field && one.start === end + 1);
  const other = others.find(isCalledSo) ?? others.find(isBeside);
  const ownNamed = makers.some(({ name, maker }) => maker === own && !isOf(name, model));
  // "This Other is in good order" says so, whatever the title says.
  if (!other || (ownNamed && !other.identity)) return [];
  return [
    excluded(auditCase, named, other, {
      of: 'maker',
      known: texts.knownMaker(model.label, model.def.maker ?? own),
      text: texts.anotherMaker(other.quote, claim.quote),
      ask: askTexts.maker,
    }),
  ];
}

/** The title or a "this is a …" counts the model to a line of its maker's that it isn't of: "Name 118, of the … class". */
function anotherFamily(auditCase: AuditCase): Finding[] {
  const named = namedIn(auditCase);
  const family = named?.model.family;
  if (!named || !family) return [];
  const { model, said, claim } = named;
  const other = said.find(
    (name) =>
      'family' in name.of &&
      name.of.family.pack === family.pack &&
      name.of.family.ref !== family.ref &&
      !isMakersOwn(name.of.family) &&
      isCalledSo(name) &&
      !isSamePlace(name, claim),
  );
  if (!other) return [];
  return [
    excluded(auditCase, named, other, {
      of: 'family',
      known: texts.knownFamily(model.label, family.def.label),
      text: texts.anotherFamily(other.quote, claim.quote),
      ask: askTexts.whichIsRight(other.quote, claim.quote),
    }),
  ];
}

/** The model's name excludes another name that the advert gives it. */
function excluded(
  auditCase: AuditCase,
  { model, claim }: Named,
  other: NameClaim,
  { of, known, text, ask }: { of: string; known: string; text: string; ask: LocalText },
): Finding {
  const source = sourceOf(auditCase.knowledge, model.pack, model.def.source);
  return {
    id: `name-name:${model.ref}:${of}`,
    check: 'name-name',
    standing: 'disproved',
    attribute: null,
    said: [saidOf(other), saidOf(claim)],
    known: [{ pack: model.pack, entry: model.id, text: known, source }],
    text,
    ask: askOf(ask, auditCase),
  };
}

/** All that a maker made goes by the maker's name. */
function isMakersOwn({ def }: FamilyKnown): boolean {
  const maker = def.maker?.toLowerCase();
  return def.names.some((name) => (typeof name === 'string' ? name : name.text).toLowerCase() === maker);
}

function makerOf(model: ModelKnown | undefined): string | null {
  return (model?.def.maker ?? model?.family?.def.maker)?.toLowerCase() ?? null;
}
