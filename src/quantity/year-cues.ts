import { PhraseIndex } from '../text/phrases';
import type { YearKind } from './types';

export interface YearCue {
  kind: YearKind;
  /** Only right before the year, and weaker than any other cue near it: "from", "dated", "of". */
  isWeak: boolean;
  /** German puts the verb behind: "1954 von meiner Mutter gekauft". */
  mayFollow: boolean;
  /** A thing that a year right before it belongs to: "the 1954 manual". */
  isNoun: boolean;
}

export const YEAR_CUES = new PhraseIndex<YearCue>();

function add(kind: YearKind, phrases: string, flags: Partial<YearCue> = {}): void {
  for (const phrase of phrases.split(','))
    YEAR_CUES.add(phrase.trim(), { kind, isWeak: false, mayFollow: false, isNoun: false, ...flags });
}

add(
  'made',
  'it left the factory, it left the works, machine left the factory, machine left the works, this left the factory, which left the factory, she left the factory, it was born in, made, built, manufactured, produced, production, in production, manufacture, year of manufacture, date of manufacture, constructed, made in, built in, serial dates, dates it, dates this, dates the machine, date it, puts it, places it, number says, serial says, number gives, serial gives, number means, number points to, number is from, serial is from',
);
add(
  'made',
  'baujahr, bj, jahrgang, herstellungsjahr, produktionsjahr, nummer sagt, nummer ergibt, nummer gehört zu, nummer steht für',
);
add('made', 'gebaut, hergestellt, produziert, gefertigt, fabriziert, stammt, datiert', { mayFollow: true });
add(
  'made',
  "fabriqué, fabriquée, construite, produite, date de fabrication, année de fabrication, datant, sortie d'usine, sortie de l'usine, numéro donne, numéro indique, numéro correspond à",
);
add(
  'made',
  "dated, datée, dating, dates, dates from, dates back to, dating from, vintage, from, era, period, aus, von, de, des, d', model of, fabrication, époque, d'époque",
  { isWeak: true },
);

add(
  'launched',
  'built these, made these, produced these, built them, made them, turned them out, they were made, these were made, these were built, they were built, launched, launch, introduced, introduction, came out, brought out, released, first sold, first sold in, first made, first made in, first produced, first built, first built in, first appeared, debuted, on the market',
);
add('launched', 'eingeführt, vorgestellt, auf den markt, auf dem markt, erschien, erschienen, erstmals', {
  mayFollow: true,
});
add('launched', 'lancée, lancé, sortie, commercialisée, mise sur le marché');

add(
  'bought',
  'bought, bought new, purchased, purchase, purchase date, date of purchase, got it, got it in, got this, acquired, sold in, sold new, originally sold, was sold, gift, given, present, wedding present, wedding, was new in',
);
add('bought', 'gekauft, erworben, angeschafft, verkauft, geschenkt, bekommen', { mayFollow: true });
add('bought', 'kaufdatum, achat, achetée, acheté, acquise, offerte, cadeau');

add(
  'owned',
  'owned, owned since, had it from, used it from, it from, had it since, had since, had this since, since, in the family, in our family, family since, belonged, inherited, used until, last used, in use, stored since, unused since',
);
add(
  'owned',
  'sat, sat in, stood, stood in, stored, kept, lay, put away, lived in, gelagert, stand im, stand auf, stockée, rangée, dormait',
);
add('owned', 'seit, im familienbesitz, in familienbesitz, besitz');
add('owned', 'geerbt, benutzt', { mayFollow: true });
add('owned', 'depuis, dans la famille, héritée');

add(
  'other',
  'patent, pat, patents, patent date, patent dates, pat date, casting, cast mark, casting mark, casting date, manual, instruction manual, instruction book, instruction, instructions, booklet, handbook, guidebook, brochure, receipt, invoice, bill of sale, guarantee, guarantee card, warranty, warranty card, advert, advertisement, catalogue, catalog, leaflet, magazine, copyright, registered design, design, registered, trade mark, trademark, medal, exhibition, centenary, anniversary, jubilee, badge, jubiläum',
  { isNoun: true },
);
add(
  'other',
  'patented, copyrighted, fitted, replaced, born, birthday, born in, founded, established, registered in, serviced, last serviced, restored, repaired, rewired, overhauled, refurbished, repainted, converted, electrified, tested, posted, listed, published, printed, added, updated, ©',
);
add(
  'other',
  'anleitung, bedienungsanleitung, gebrauchsanleitung, gebrauchsanweisung, handbuch, quittung, rechnung, kaufbeleg, garantieschein, garantiekarte, prospekt, patentschrift, geburtstag',
  { isNoun: true },
);
add(
  'other',
  'patentiert, geboren, geb, gegründet, gewartet, restauriert, repariert, überholt, umgebaut, eingestellt, lackiert',
  { mayFollow: true },
);
add('other', "notice, mode d'emploi, brevet, brevets, facture, garantie, catalogue, manuel", { isNoun: true });
add(
  'other',
  'breveté, brevetée, née en, né en, fondée en, révisée, restaurée, publiée, mise en ligne, arrêtée, cessé, fermé, fermée, transférée',
);
