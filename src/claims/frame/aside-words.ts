import { french, german, type LooseWords } from './loose-words';
import { english } from './words-en';

export type FramedLanguage = 'en' | 'de' | 'fr';

/** What tells of a language's sentences whether they tell a tale or say what the thing is. On folded words. */
export interface Ways {
  isPerson: (folded: string) => boolean;
  isOwn: (folded: string) => boolean;
  past: RegExp;
  not: RegExp;
  /** They open a clause that says what the thing has or does. */
  verbs: RegExp;
  is: RegExp;
  indefinite: RegExp;
  definite: RegExp;
  /** What follows says what the feature is good for: nothing against it. */
  therefore: RegExp;
}

const loose = ({ persons, own, not }: LooseWords, rest: Omit<Ways, 'isPerson' | 'isOwn' | 'not'>): Ways => ({
  isPerson: (folded) => persons.has(folded) && !/^(?:man|on|nous|wir)$/.test(folded),
  isOwn: (folded) => own.has(folded),
  not,
  ...rest,
});

/** Common practice, no source. */
export const WAYS: Record<FramedLanguage, Ways> = {
  en: {
    isPerson: (folded) =>
      (english.classOf(folded) === 'person' && !/^(?:you|we|those|they)$/.test(folded)) ||
      /^(?:my|his|her|he|she|they|nobody)$/.test(folded),
    isOwn: (folded) =>
      english.classOf(folded) === 'own' || /^(?:it|it's|its|she|she's|this|here's|mine|ours|machine)$/.test(folded),
    past: /^(?:was|were|had|did|didn't|wasn't|went|came|told|called|wanted|bought|gave|took|thought|used|made)$/,
    not: /^(?:not|never|nor|neither|\w+n't)$/,
    verbs:
      /^(?:has|have|having|there's|makes|takes|taking|uses|using|sews|does|comes|runs|made|features|includes|with|fitted|equipped|boasts|offers|needs|powered|driven|works)$/,
    is: /^(?:is|are|isn't|can|will|a|an)$/,
    indefinite: /^an?$/,
    definite: /^the$/,
    therefore: /^(?:so|where|when|which|as|because|and|for|therefore)$/,
  },
  de: loose(german, {
    past: /^(?:war|waren|hatten?|kam|ging|wollten?|wurden?|braucht?en?|brauchte|hiess|meinte|sagte|versprach)$/,
    verbs: /^(?:hat|naht|nimmt|lauft|kann|mit|aus|ist|besitzt|verfugt)$/,
    is: /^(?:ist|sind)$/,
    indefinite: /^ein(?:e[nmrs]?)?$/,
    definite: /^d(?:er|ie|as|en|em)$/,
    therefore: /^(?:wo|damit|sodass|daher|deshalb|weil|und|so|zum)$/,
  }),
  fr: loose(french, {
    past: /^(?:etait|etaient|avait|avaient|voulait|disait|fut|promettait|fallait|aurait)$/,
    verbs: /^(?:a|fait|possede|prend|coud|avec|est|en|dispose|fonctionne|(?:equip|dot)ee?|munie?|pourvue?)$/,
    is: /^(?:est|sont)$/,
    indefinite: /^une?$/,
    definite: /^(?:les?|la|l')$/,
    therefore: /^(?:ou|donc|pour|car|qui|et)$/,
  }),
};

const making = (language: FramedLanguage, made: RegExp): Ways => {
  const ways = WAYS[language];
  const either = (one: RegExp): RegExp => new RegExp(`${one.source}|${made.source}`);
  const past = new RegExp(`(?!${made.source})(?:${ways.past.source})`);
  return { ...ways, verbs: either(ways.verbs), is: either(ways.is), past };
};

/** Of when and where a thing was made it is said in the past: that alone tells no tale. */
export const MAKING: Record<FramedLanguage, Ways> = {
  en: making(
    'en',
    /^(?:made|built|manufactured|produced|assembled|was|dates?|dated|dating|from|circa|year|serial|number)$/,
  ),
  de: making('de', /^(?:gebaut|hergestellt|gefertigt|produziert|wurde|war|stammt|von|aus|baujahr|jahr|nummer)$/),
  fr: making('fr', /^(?:fabriquee?|construite?|produite?|date|datee?|etait|de|des|annee|numero)$/),
};
