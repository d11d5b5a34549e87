/**
 * General words by which an advert shows that it isn't one thing for sale. Common practice, no source. Divided by "|";
 * matched token by token.
 */
export const WANTED =
  'seeking|in need of|buying old|buying any|wanted|wtd|wtb|want to buy|looking for|looking to buy|in search of|iso|searching for|does anyone have|does anybody have|' +
  'suche|gesucht|ich suche|wir suchen|kaufe|ankauf|achète|recherche|je recherche|cherche|je cherche|gezocht|cerco|cercasi|busco|se busca';

/** These ask for something even inside a text that doesn't begin with them. */
export const WANTED_FIRST_PERSON =
  "i would like to buy|i'd like to buy|would like to buy one|i am after one|i'm after one|i am looking for|i'm looking for|we are looking for|i want to buy|wanted to buy|ich suche|wir suchen|je recherche|je cherche";

export const LOT =
  'machine lot|machine bundle|all must go together|must all go together|contents of|job lot|joblot|bulk lot|lot of|lot of machines|bundle of|collection of|house clearance lot|clearance lot|pair of machines|' +
  'machines|konvolut|sammlung|sammlungsauflösung|posten|paket|lot de|collection de';

/** Words of number that make a plural thing a lot: "three sewing machines". */
export const NUMBER_WORDS =
  'two|three|four|five|six|seven|eight|nine|ten|several|various|assorted|multiple|zwei|drei|vier|fünf|sechs|mehrere|diverse|deux|trois|quatre|cinq|plusieurs|diverses';

export const SERVICE =
  'years experience|years of experience|years’ experience|machine valuations|sewing machine mechanic|machine mechanic|machine technician|machine rewiring|machines cleaned|machines mended|machines freed|machines timed|machines rewired|machines tuned|gears fitted|motors rewound|motors rewired|machines set up|servicing and rewiring|rewiring and servicing|servicing and tuning|i mend|we mend|repairs and services|repairs & services|repair and services|machines serviced|machines repaired|machines overhauled|machines restored|serviced and repaired|repaired and serviced|maschinen repariert|i can help|evening course|weekend course|sewing course|maintenance course|repair service|repair services|repairs and servicing|servicing and repairs|repairs & servicing|servicing & repairs|we repair|we service|i repair|i service|machine repairs|machine repair|repairs to|repair and servicing|servicing and repair|servicing of|service and repair|machine servicing|machine service|mobile repairs|restoration service|' +
  'restorations undertaken|sewing lessons|sewing classes|sewing machine engineer|machine engineer|powder coating|refinishing service|tune-up service|tune up service|valuation service|hire|for hire|to rent|reparaturservice|reparaturdienst|reparaturen|reparatur von|reparatur und wartung|wartung und reparatur|reparatur & wartung|nähmaschinenreparatur|nähmaschinen reparatur|nähmaschinenservice|nähmaschinen service|wir reparieren|ich repariere|' +
  'wartung und reparatur|nähkurs|réparation de|réparations|service de réparation|je répare|nous réparons|réparation machine|réparation machines|réparation et entretien|entretien et réparation|dépannage|cours de couture';

/** Words that begin what a part fits or comes from, after which the thing itself isn't on sale. */
export const FITTING =
  "for|fit|to fit|fits|suit|suits|to suit|suitable for|compatible with|off|off a|from|from a|out of|ex|für|passend für|passend zu|passt auf|passt zu|zu|aus|von|pour|de|de la|d'|compatible|adaptable|provenant";

/** Words after which come things that go with the one on sale. */
export const ACCOMPANYING =
  'with|without|w/o|sans|minus|lacking|missing|needs|no|in|incl|including|includes|and|plus|c/w|w/|comes with|on|auf|sur|complete with|à|mit|ohne|fehlt|inkl|inklusive|samt|im|in der|und|avec|dans|et|en';

/** A title that asks so, wherever in it, asks for a thing. */
export const ASKING =
  'does anyone have|does anybody have|has anyone got|has anybody got|anyone selling|anybody selling|anyone got|wer hat|wer verkauft|qui vend|qui aurait|wtb|want to buy';

/** A text that says so offers work, not a thing. */
export const SERVICE_FIRST_PERSON =
  "i clean oil and|i clean, oil and|years repairing|years of repairing|strip clean and set up|bring it to me|bring them to me|i rewire|we rewire|i come to you|we come to you|send me your|send us your|we scan|i scan|we transfer|we digitise|i refinish|i overhaul|we overhaul|i will refinish|i'll refinish|i mend|we mend|i repair|we repair|i service|we service|i fix|we fix|i restore|we restore|ich repariere|wir reparieren|ich warte|ich restauriere|je répare|nous réparons|je restaure|i teach|we teach|i offer repairs|i offer servicing|call out|per visit|hourly rate";

/** Words that make several named machines one offer: "X and Y, the pair". */
export const TOGETHER =
  "pair|the pair|both|im paket|als paket|im set|en lot|as one lot|not splitting|joint sale|the two|together|as a set|beide|zusammen|les deux|ensemble|won't split|will not split";

/** A machine sold so is still a machine: these name its condition, not parts. */
export const AS_DONOR =
  'spares or repair|spares or repairs|spares and repair|spares and repairs|spare or repair|spares repair|spares repairs|parts or repair|parts or repairs|for spares|for parts|for parts only|as parts|for spares only|als ersatzteilspender|als ersatzteillager|für ersatzteile|für bastler|an bastler|zum ausschlachten|pour pièces|pour bricoleur';

/** They look like a wish and are an offer. */
export const NOT_WANTED =
  'for sale|for collection|looking for a new home|looking for a good home|looking for a new owner|looking for its next owner|looking for its next|looking to swap|looking to sell|looking to exchange|' +
  "if you are looking for|if you're looking for|anyone looking for|suche tausch|ich suche einen käufer|suche ein neues zuhause|suche neuen besitzer|je cherche à échanger|je cherche à vendre|je cherche un acheteur|cherche nouveau propriétaire";

/** A title that begins so offers work. */
export const SERVICE_FIRST =
  'tune ups|learn to use|learn to|hole ihre|hole deine|i fix|we fix|i test|electrical testing|hole alte|wir holen|abholung alter|abholung von|haul away|enlèvement de|réparation|réparation et|reparatur|instandsetzung|tune-up|tune up|rewiring|respraying|overhaul of|überholung|überholungen|wartung|entretien de|learn to sew|talk and demonstration|lessons|repairs|servicing|restorations|restoration service|tuition|reparaturen|réparations|cours|dépannage|révision|révisions|rewinding|motor rewinding';

/** Machines counted without their full name: "three machines as one lot". */
export const COUNTED = 'machines|heads|maschinen|hand cranks|treadles';

/** The name of a machine is that of what the parts are of: "Name motor and pedal. No machine." */
export const NO_MACHINE =
  'no machine|machine not included|machine is not included|without the machine|keine maschine|ohne maschine|sans la machine|sans machine|pas de machine';

/** Before a name these ask for it: "I'm after a Name", not "after a quick sale". */
export const AFTER = "i'm after a|i'm after an|i'm after the|i am after a|i am after an|we are after a|we're after a";

/** What only shows a machine: neither one nor a part of one. */
export const PICTURE =
  'photograph of|old photograph|vintage advert|old advert|pocket mirror|the history of|in the shape of|fridge magnet|keyring|share certificate|cigarette card|poster|showcard|show card|calendar|kalender|calendrier|advertising card|display card|counter card|shop card|enamel sign|shop sign|advertising sign|tin sign|window sign|magazine ad|magazine advert|magazine advertisement|newspaper advertisement|trade card|postcard|tea towel|' +
  'werbeplakat|plakat|emailschild|emailleschild|blechschild|werbeschild|ansichtskarte|postkarte|werbeanzeige|affiche|plaque émaillée|carte postale|publicité ancienne';
