import { PhraseIndex } from '../text/phrases';
import { giveFacts } from './compile/facts';
import { indexNames } from './compile/names';
import { indexPhrases } from './compile/phrases';
import { Scope } from './compile/scope';
import type { AttributeKnown, BandKnown, FamilyKnown, Knowledge, ModelKnown, PackKnown } from './knowledge';
import type { Pack } from './schema/index';
import { SerialIndex } from './serial-index';
import { tabulate } from './serials/run-table';

/**
 * Packs made ready to be asked. Packs stand beside each other: none overrides another, a reference without a pack id
 * means this pack's own entry, else that of the pack it extends. Of a pack given twice the higher edition counts.
 * @param seals pack id -> fingerprint of the key that sealed it, for packs that came sealed.
 * Never throws on packs that `parsePack` gave; a reference that leads nowhere (a base that isn't installed) is left out.
 */
export function compile(packs: readonly Pack[], seals: ReadonlyMap<string, string> = new Map()): Knowledge {
  const chosen = newestOfEach(packs);
  const knowledge: Knowledge = {
    packs: [],
    attributes: new Map(),
    models: new Map(),
    families: new Map(),
    phrases: new PhraseIndex(),
    names: new PhraseIndex(),
    nameList: [],
    serials: new SerialIndex([]),
    bands: new Map(),
  };
  const scopes = chosen.map((pack) => new Scope(pack, knowledge, seals.get(pack.about.id) ?? null));
  for (const { pack } of scopes) addAttributes(pack, knowledge);
  for (const scope of scopes) addModels(scope, knowledge);
  for (const scope of scopes) linkModels(scope, knowledge);
  giveFacts(scopes, knowledge);
  for (const { known } of scopes) known.grades = gradesOf(known, knowledge);
  for (const scope of scopes) {
    addBands(scope, knowledge);
    indexPhrases(scope, knowledge);
    indexNames(scope, knowledge);
  }
  knowledge.serials = new SerialIndex(
    scopes.flatMap((scope) =>
      scope.pack.serials
        ? [
            {
              pack: scope.id,
              table: tabulate(scope.pack.serials),
              modelRef: (ref: string) => scope.ref(ref, knowledge.models),
              citation: (id: string | null | undefined) => scope.citation(id),
            },
          ]
        : [],
    ),
  );
  return knowledge;
}

function newestOfEach(packs: readonly Pack[]): Pack[] {
  const byId = new Map<string, Pack>();
  for (const pack of packs) {
    const there = byId.get(pack.about.id);
    if (!there || there.about.edition <= pack.about.edition) byId.set(pack.about.id, pack);
  }
  return [...byId.values()];
}

function addAttributes(pack: Pack, knowledge: Knowledge): void {
  for (const def of pack.attributes ?? []) {
    const known: AttributeKnown = { ref: `${pack.about.id}/${def.id}`, pack: pack.about.id, id: def.id, def };
    knowledge.attributes.set(known.ref, known);
  }
}

function addModels(scope: Scope, knowledge: Knowledge): void {
  for (const def of scope.pack.families ?? []) {
    const family: FamilyKnown = { ref: `${scope.id}/${def.id}`, pack: scope.id, def, models: [], facts: new Map() };
    knowledge.families.set(family.ref, family);
  }
  for (const part of ['models', 'types'] as const)
    for (const def of scope.pack[part] ?? []) {
      const model: ModelKnown = {
        ref: `${scope.id}/${def.id}`,
        pack: scope.id,
        id: def.id,
        label: def.label,
        def,
        isType: part === 'types',
        family: null,
        facts: new Map(),
      };
      knowledge.models.set(model.ref, model);
    }
}

function linkModels(scope: Scope, knowledge: Knowledge): void {
  for (const def of [...(scope.pack.models ?? []), ...(scope.pack.types ?? [])]) {
    if (!def.family) continue;
    const model = knowledge.models.get(`${scope.id}/${def.id}`);
    const family = knowledge.families.get(scope.ref(def.family, knowledge.families));
    if (!model || !family) continue;
    model.family = family;
    family.models.push(model);
  }
}

function addBands(scope: Scope, knowledge: Knowledge): void {
  scope.pack.prices?.bands?.forEach((def, index) => {
    const ref = scope.ref(def.model, knowledge.models);
    const band: BandKnown = { pack: scope.id, entry: `band-${index + 1}`, def, source: scope.citation(def.source) };
    const there = knowledge.bands.get(ref);
    if (there) there.push(band);
    else knowledge.bands.set(ref, [band]);
  });
}

/** A pack's own grades, then those of the pack it extends. */
function gradesOf({ about, grades }: PackKnown, knowledge: Knowledge): PackKnown['grades'] {
  const base = about.extends === about.id ? undefined : knowledge.packs.find((one) => one.id === about.extends);
  const own = new Set(grades.map((grade) => grade.id));
  return [...grades, ...(base?.grades ?? []).filter((grade) => !own.has(grade.id))];
}
