import type { Listing } from '../listing/types';
import type { Knowledge, Meaning } from '../pack/knowledge';
import { agesIn } from './ages';
import { claimedFamily, claimedModels } from './claimed';
import { countsIn } from './counts';
import { coveringPacks } from './covering';
import { Framer, vocabularyOf } from './frame/framed';
import { type Hit, hitsIn, ofKind } from './hits';
import { KeywordLists } from './keyword-list';
import { kindOf } from './kind';
import { languagesOf } from './language';
import { ListedThings } from './listed-things';
import { measuresIn } from './measures';
import { namesIn } from './names';
import { OtherModels } from './other-models';
import { packsNamed } from './packs-named';
import { type TextPart, textParts } from './part-text';
import { placesIn } from './places';
import type { NameClaim, Reading, YearClaim } from './reading';
import { withoutRepaint } from './repainted';
import { rowValuesIn } from './row-values';
import { serialsOf } from './serials';
import { StanceReader } from './stance';
import { titleNames } from './title-names';
import type { Stanced } from './types';
import { type PartReading, plain, valuesIn, wordingsIn } from './values';
import { yearsIn } from './years';

/** Reads all that an advert's words say, with stance and subject. Holds nothing against anything. */
export function readClaims(listing: Listing, knowledge: Knowledge): Reading {
  const parts = textParts(listing);
  const languages = languagesOf(listing.language, parts);
  const allReadings: PartReading[] = parts.map((part) => ({
    part,
    hits: hitsIn(part, knowledge, languages),
    stances: new StanceReader(part, languages),
    isEnglish: languages.has('en') && languages.size === 1,
    framer: null,
  }));
  const named = packsNamed(parts, knowledge);
  const names = allReadings.flatMap(({ part, hits, stances }) =>
    namesIn(part, knowledge, stances, ofKind(hits, 'thing'), named),
  );
  const allHits = new Map(allReadings.map(({ part, hits }) => [part, hits]));
  const covering = coveringPacks(knowledge, allHits, names, listing.byHand);
  const titled = parts.find((part) => part.field === 'title') ?? null;
  const called = titleNames(titled, (titled && allHits.get(titled)) ?? [], names);
  // A pack that doesn't cover the advert says nothing of it, not even what its words mean.
  const readings = allReadings.map((reading) => {
    const hits = reading.hits.filter((hit) => covering.has(hit.value.pack));
    const isProse = reading.part.field === 'description' || reading.part.field === 'condition';
    return {
      ...reading,
      hits,
      framer: isProse ? new Framer(reading.part, hits, names, vocabularyOf(knowledge), languages, called) : null,
    };
  });
  const hitsOf = new Map<TextPart, readonly Hit[]>(readings.map(({ part, hits }) => [part, hits]));
  const stancesOf = new Map(readings.map(({ part, stances }) => [part, stances]));
  const field = (name: string): TextPart | null => parts.find((part) => part.field === name) ?? null;
  const measurable = [...knowledge.attributes.values()].filter((attribute) => covering.has(attribute.pack));
  const models = claimedModels(names);
  const others = new OtherModels(parts, names, models);
  const listed = new ListedThings(parts, names);
  const keywords = new KeywordLists(parts);
  const each = <C extends Stanced>(read: (reading: PartReading) => C[]): C[] => {
    const found: C[] = [];
    for (const reading of readings) {
      const { part } = reading;
      for (const claim of read(reading))
        found.push(keywords.weigh(listed.weigh(others.weigh(claim, part), part), part));
    }
    return found;
  };
  const plainly = <K extends Meaning['kind'], C extends object>(kind: K, of: (value: Hit<K>['value']) => C) => {
    const found: (Stanced & C)[] = [];
    for (const reading of readings)
      for (const hit of ofKind(reading.hits, kind)) found.push(Object.assign(plain(reading, hit), of(hit.value)));
    return found;
  };
  return {
    parts,
    languages,
    kind: kindOf({ listing, title: field('title'), description: field('description'), hits: hitsOf, names }),
    covering,
    names,
    claimedModels: models,
    claimedFamily: claimedFamily(names, models[0] ?? null),
    values: withoutRepaint([...each(valuesIn), ...each((reading) => rowValuesIn(reading, measurable))], parts),
    wordings: each(wordingsIn),
    measures: each((reading) => measuresIn(reading, measurable, listing.language)),
    years: each(yearsIn).filter((year) => !names.some((name) => holds(name, year))),
    ages: each(agesIn),
    counts: each(countsIn),
    places: each(placesIn),
    fitting: plainly('fit', ({ model, part }) => ({ model, part })),
    serials: serialsOf(listing, parts, knowledge, stancesOf, covering, named),
    grades: plainly('grade', ({ pack, entry }) => ({ pack, entry })),
    factors: plainly('factor', ({ pack, entry }) => ({ pack, entry })),
    cautions: plainly('caution', ({ pack, entry }) => ({ pack, entry })),
  };
}

/** "Name 1650": a number that belongs to the name of a model is no year. */
const holds = (name: NameClaim, { field, start, end }: YearClaim): boolean =>
  'model' in name.of && name.field === field && name.start <= start && name.end >= end;
