/** Closed word lists of a language whose clauses are read less closely than English ones. Folded. */
export interface LooseWords {
  /** "cest" -> "c'", "est": two words that are written as one, or without their apostrophe. */
  split(folded: string): readonly string[];
  articles: ReadonlySet<string>;
  /** They stand between article and noun, or beside a feature, and change nothing. */
  passed: ReadonlySet<string>;
  /** What follows is one of its kind, not this one. */
  generic: ReadonlySet<string>;
  /** Prepositions that a feature may stand behind: always, or only after these words. */
  prepositions: ReadonlyMap<string, RegExp | null>;
  /** The thing, by pronoun or noun. */
  own: ReadonlySet<string>;
  persons: ReadonlySet<string>;
  /** Verbs by which a person says something of the thing all the same: selling, testing. */
  uses: RegExp;
  /** Adjectives of what a thing consists of, which stand behind their noun. */
  material: RegExp;
  /** Anywhere in the clause: wishing, swapping, other offers, other times. */
  apart: RegExp;
  /** Anywhere in the sentence: others say so, or it would be so. */
  said: RegExp;
  supposed: RegExp;
  /** Right before a preposition they tell one from another: "die aus", "celle en". */
  told: RegExp;
  /** Right behind what opens a clause: what was, is no more. */
  past: RegExp;
  /** In a clause before: others of the kind, or what something is wanted for. */
  others: RegExp;
  /** Right behind: "in the box", "on the photo". */
  holder: RegExp;
  /** "That one there", in the words of a clause. */
  thatOne: RegExp;
  /** Adjectives that can stand for a noun. */
  alone: RegExp;
  /** Indefinite articles. */
  one: RegExp;
  /** Before a noun and its adjectives: what something else is of, for or beside. */
  beside: RegExp;
  /** "For example", right behind. */
  example: RegExp;
  not: RegExp;
  /** The clause after speaks of the word itself. */
  word: RegExp;
  /** It opens with what somebody did with the thing named: "je les ai …". */
  takesUp: RegExp;
  mine: RegExp;
  /** Right before a feature and behind an article: an adjective of it. */
  bent: RegExp;
  /** Verbs and small words that may stand where a noun can. */
  notNouns: RegExp;
}

const NEVER = /(?!)/;
/** Sellers leave the apostrophe out: "j ai", "cest", "quune". */
const ELISION = /^(?:([cjlnd]|qu)|([cjn])(est|etait|ai|avais|avait)|(qu|d)(une?|on|il|en))$/;

const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));
/** German words in all their endings. */
const inflected = (stems: string): string =>
  stems.replace(/\S+/g, (stem) => ['', 'e', 'em', 'en', 'er', 'es'].map((ending) => stem + ending).join(' '));

export const german: LooseWords = {
  split: (folded) => [folded],
  articles: set(`der die das den dem des ein eine einen einem ${inflected('mein unser ihr sein dies eur')}`),
  passed: set(
    `und oder & + auch sehr nur ganz komplett vollig noch leider ${inflected('schon alt gut echt praktisch richtig massiv rein leicht schwer normal klassisch')}`,
  ),
  generic: set(`viele manche einige einer eines ${inflected('jed ander solch spater fruher')}`),
  prepositions: new Map<string, RegExp | null>([
    ['mit', null],
    ['samt', null],
    ['inkl', null],
    ['inklusive', null],
    ['aus', null],
    ['zum', null],
    ['in', /^(?!gab$|gibt$|auch$|habe$|arbeite)/],
    ['fur', /^(?:geeignet|eingerichtet|umschaltbar|gebaut|ausgelegt)$/],
    ['auf', /^(?:umstellbar|schaltet|getestet|lauft)$/],
    ['als', /^(?:auch|sowohl)$/],
    ['uber', /^(?:verfugt)?$/],
    ['durch', /^$|(?:weich|leise|ruhig|schnell|leicht|stabil|robust)$/],
    ...'von vom zu zur beim unter vor an am zwischen im ohne'.split(' ').map((word): [string, RegExp] => [word, /^$/]),
    ...'neben gegen statt nach wie anstelle bei'.split(' ').map((word): [string, RegExp] => [word, NEVER]),
  ]),
  own: set(`
    sie es diese dieses dieser maschine nahmaschine schreibmaschine gehause korpus korper kopf modell stuck ausfuhrung rahmen transporteur bett
    antrieb funktion stich naht stiche maschinchen schatzchen gerat greifer spule spulen oberteil unterteil grundkorper guss arm
  `),
  persons: set(
    'mir uns ich wir du man er mutter oma vater opa tante onkel schwester bruder frau mann tochter sohn nachbar nachbarin freundin freund grossmutter grossvater schwiegermutter enkelin verkaufer handler vorbesitzer vorbesitzerin mama papa',
  ),
  uses: /^(?:verkauf\w*|biete\w*|anbiete\w*|getestet|teste\w*|probier\w*|ausprobiert|benutz\w*|gebe|geb|abzugeben|trenne\w*|naht|nahte)$/,
  material: /^(?:alu|aluminium)$/,
  apart:
    /^(?:tausch\w*|gab|klemmt?|klemmen|klapper\w*|wackel\w*|rattert|abgebildet|dagegen|folgte|folgt|nachfolger\w*|vorganger\w*|loste|abgelost|umgestiegen|umsteigen|wechs\w*|ersetzt|ersatz|gesucht|suche\w*|brauch(?!t$)\w*|bevorzugt|behalt\w*|weg|vergeben|anzeigen?|gelernt|spater|damals|fruher|daneben|wunsch\w*|wer|gehoren|gehort|ausserdem|extra|anderes|anderem|getrennt|separat|neue|neuen)$/,
  said: /^(?:erzahl\w*|dachten?|versprach\w*|versprochen|sagt\w*|meint\w*|liest|lese|heisst|hiess|schrieb|schrieben|geschrieben|behaupte\w*|nenn\w*|genannt|angeblich\w*|sei|seien|hort|stand|standen|stehen|irrtum\w*|falschlich\w*|steht)$/,
  supposed:
    /^(?:ware|waren|woge|hatte|hatten|wurde|wurden|konnte|musste|sollte|wunschte|vielleicht|vermutlich|wohl|moglicherweise)$/,
  told: /^(?:etwas|was|der|die|das|eine?r?|eines|jene[rs]?|diejenige|gerate|modelle|\w*maschinen)$/,
  past: /^(?:war|waren|hatte|hatten|wurde)$/,
  others: /^(?:letzten|spateren|fruhen|fruheren|meisten|anderen|neueren|gab)$/,
  holder:
    /^(?:(?:im|in der|auf dem) (?:karton|kasten|schachtel|dose|bild|foto|schublade|hintergrund)|von (?:einer|der) anderen)\b/,
  thatOne: /\b(?:die|das) (?:da|dort)\b|\bjene\b|\bletztere[rs]?\b|^um\b(?! \d)/,
  alone: /^(?:elektrische|neue|neuere|alte|altere|grosse|kleine|schwarze|grune|andere|moderne|leichte|schwere)$/,
  one: /^ein(?:e|en)?$/,
  beside:
    /\b(?:von|aus|fur|zu|bei|neben|gegen|statt|an|auf|in|mit|auch|noch|existiert|gibt|gab) ein(?:e[mnr]?)?(?: \S+){0,2}$/,
  example: /^(?:zum beispiel|beispielsweise|etwa$|zb)/,
  not: /^(?:nicht|kein|keine|nie|ohne)$/,
  word: /^(?:wort|begriff|bezeichnung)$/,
  takesUp:
    /^das ist d(?:ie|er|as)\b|^das ware?\b|^(?:die|den|das) (?:habe?|hatte|hat|musste|sucht?) (?:ich|man|er|wir)/,
  mine: /^meine?$/,
  bent: /e[mns]?$/,
  notNouns:
    /^(?:macht|geht|wiegt|kommt|sieht|funktioniert|gibt|haben|konnen|naht|schreibt|klappt|halt|lasst|steht|will|muss|ist|sind|war|hat|kann|nicht|lauft|hier|da|dort|nun|jetzt|aber|doch|ja|eben|also|so|wirklich|tatsachlich|naturlich|selbst|immer|hingegen|dagegen|jedoch|hat's|ist's)$/,
};

export const french: LooseWords = {
  split: (folded) => {
    const [elided, ...rest] = ELISION.exec(folded)?.slice(1).filter(Boolean) ?? [];
    return elided ? [`${elided}'`, ...rest] : [folded];
  },
  articles: set("le la les l' un une des du mon ma mes notre son sa ses cette ce cet"),
  passed: set(`
    et ou & + aussi tres beau belle bon bonne joli jolie grand grande petit petite vrai vraie vieux vieille superbe magnifique ancien ancienne
    solide legere leger lourde lourd robuste toute tout tous entierement completement double simple seul seule super parfait parfaite de d'
  `),
  generic: set('chaque autre autres certaines certains plusieurs quelques toutes telle telles'),
  prepositions: new Map<string, RegExp | null>([
    ['avec', null],
    ['en', null],
    ['pour', null],
    ['a', /^(?:n'|elle|il|qui|celle|ci|mecanisme|systeme|machine|coudre|ecrire|modele|version|passe|passer|equipee?)$/],
    ['au', /^(?:passe|passer)$/],
    [
      'de',
      /^(?:faite?|fabriquee?|construite?|corps|bati|point|points|machine|fonction|couture|levier|est|dispose|equipee?|dotee?|munie?|pourvue?|possibilite|plus|pas|coudre)$/,
    ],
    ["d'", /^(?:faite?|corps|bati|machine|fonction|dispose|equipee?|dotee?|munie?|pourvue?|plus|pas|est)$/],
    ['que', /^(?:fait|faire|coud|coudre)$/],
    ..."sur par qu' vers dans sans aux cote".split(' ').map((word): [string, RegExp] => [word, /^$/]),
    ...'contre comme chez entre depuis avant apres malgre'.split(' ').map((word): [string, RegExp] => [word, NEVER]),
  ]),
  own: set(`
    elle il celle ci machine coudre ecrire tete corps bati modele c' ce cette ensemble fonction point points couture entrainement carter chassis
    mecanisme aiguille crochet piqure boitier carrosserie coque c'est structure version construction fabrication matiere materiel levier
  `),
  persons: set(
    "je j' nous on maman mere grand-mere mamie papi papy tata tonton pere tante oncle soeur frere femme mari fille fils voisine voisin amie ami grand vendeur proprietaire petit-fils",
  ),
  uses: /^(?:vend\w*|propose\w*|teste\w*|essaye?\w*|utilise\w*|cede\w*|garantis)$/,
  material: /^(?:alu|aluminium|alliage)$/,
  apart:
    /^(?:maintenant|semaine|succed\w*|precedente?s?|suivante?s?|desormais|echang\w*|troc|remplac\w*|passee?s?|besoin|cherche\w*|souhait\w*|veux|veut|veulent|voulait|voulaient|voulez|represente\w*|voudrais|prefer\w*|garde\w*|chose|separement|vendue?s?|nouvelle|appris|apprendre|tard|epoque|autrefois|alors|deuxieme|viennent|vient|provien\w*|dommage|avait|avais|annonces?|disponible|partag\w*|cotoy\w*)$/,
  said: /^(?:raconte\w*|promett\w*|promis|dit|disait|disent|dis|lit|ecrit|pretend\w*|appell\w*|appele\w*|paraitrait|parait|selon|nomme\w*|soi-disant|faux|erreur|mythe)$/,
  supposed: /^(?:aurais|faisait|feraient|si|s'il|peut-etre|sans-doute|probablement|\w*[^f]rait)$/,
  told: /^(?:chose|celle|celui|celles|ceux|une|un)$/,
  past: /^(?:etait|etaient|avait|fut)$/,
  others: /^(?:dernieres|derniers|premieres|premiers|suivantes|recentes|pour)$/,
  holder:
    /^d'une autre\b|^(?:de la|dans la|dans le|du|sur la|de l'|dans un|dans une) ?(?:boite|carton|photo|image|tiroir|sachet)\b|^(?:sur|chez) (?:la|les|mon|ma|mes) ?(?:anciennes?|autres?|vieilles?|premieres?|modernes?|nouvelles?|precedentes?)\b|^a (?:donner|jeter)\b|^(?:jusqu'en|avant|apres|a partir de) 1[89]/,
  thatOne:
    /\bcel(?:le|ui)s?[ -]la\b|^(?:et |mais )?cel(?:le|ui)s? (?:que|qui|dont|du|des?)\b(?!.* (?:vend|vent|propos))|^(?:la|une) (?:\w+ ){1,3}(?:derriere|a cote|d'a cote|au fond|du fond)\b/,
  alone: /^(?:electrique|nouvelle|ancienne|vieille|grosse|grande|petite|noire|verte|moderne|recente)$/,
  one: /^une?$/,
  beside: NEVER,
  example: /^par exemple/,
  not: /^(?:ne|n'|pas|sans|aucune?)$/,
  word: /^(?:mot|mots|terme)$/,
  takesUp:
    /^c'est (?:la|le|l'|cel)|^c'etait\b|^ce serait\b|^c(?:e n)?'est pas (?:cel|l[ae] mien)|^(?:je|on|nous|il) (?:les?|la|l')/,
  mine: /^(?:mon|ma)$/,
  bent: NEVER,
  notNouns:
    /^(?:a|fait|coud|pique|brode|existe|etait|peut|bien|plus|pas|ne|n'|y|qui|sont)$|(?:(?<!^poign)ee|ees|es?t|ment|er|ir)$/,
};
