import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import { labelReader } from './words';

type HeadingLabel = 'description' | 'section' | 'away';

/** English; German; French; Dutch; Italian; Spanish; Russian, Ukrainian. Common usage, from memory. */
const single = labelReader<HeadingLabel>({
  description:
    'about this item|about the item|from the seller|more about this item|the details|advert text|' +
    'anzeigentext|uber diesen artikel|' +
    "texte de l'annonce|a propos de cet article|" +
    'descripcion*|acerca de este articulo|acerca de este producto|' +
    "about the machine|about this machine|what the seller says|the seller says|in the seller's words|in their own words|seller's words|seller's notes|notes from the seller|words of the seller|ad text|produktinformationen|der verkaufer schreibt|worte des verkaufers|text der anzeige|le mot du vendeur|mot du vendeur|parole del venditore|testo dell'annuncio|palabras del vendedor|texto del anuncio|om annonsen|kuvaus|lisatiedot|tuotekuvaus|leiras|descriere|toelichting|synopsis|sinopsis|sinopse|sinossi|klappentext" +
    '|описание*|опис*',
  section:
    'additional information|more information|further information|zusatzliche informationen|weitere informationen|informations complementaires|aanvullende informatie|informazioni aggiuntive|altre informazioni|informacion adicional|mas informacion|details|item details|product details|specifications|specification|specs|features|item specifics|at a glance|key facts|overview|photos|pictures|map|contact*|seller|about the seller|about this seller|seller information|delivery|shipping|postage|collection|returns|refunds|payment|warranty|guarantee|location|' +
    'merkmale|eigenschaften|technische daten|artikelmerkmale|auf einen blick|bilder|fotos|kontakt*|verkaufer|anbieter|versand|lieferung|abholung|ruckgabe|rucksendung|retouren|zahlung|bezahlung|garantie|gewahrleistung|standort|' +
    'caracteristiques|criteres|en bref|vendeur|livraison|expedition|envoi|retrait|retours|retour|remboursement|paiement|garanties|localisation|' +
    'kenmerken|specificaties|verkoper|verzending|levering|bezorging|ophalen|retourneren|retourzending|betaling|' +
    'caratteristiche|venditore|spedizione|spedizioni|consegna|ritiro|resi|reso|pagamento|pagamenti|garanzia|' +
    'caracteristicas|vendedor|envio|envios|entrega|recogida|devoluciones|pago|garantia|' +
    'safe trading|seller details|about the author*|autor(es)|uber den autor*|technische details|technische merkmale|key features|product features|caracteristiques principales|caracteristiques techniques|fiche technique|caratteristiche principali|caratteristiche tecniche|scheda tecnica|caracteristicas principales|caracteristicas tecnicas|caracteristicas principais|especificaciones|especificacoes|opening hours|sijainti|saljare|saelger|selger|sprzedawca|prodejce|vendedor*|lokalizacja|parametry|szczegoly|specifikace|egenskaper|egenskaber|specifikationer|tekniska data|leverans|fragt|frakt|betalning|dostawa|doprava|platba|dodatkowe informacje|prijzen en bieden|bieden|biedingen|bids|bid history|gebote|encheres' +
    '|характеристик*|технические характеристики|доставк*|оплат*|гаранти*',
  away:
    'similar*|related*|you may also*|you might also*|people also*|customers also*|recommended*|more like this|more from this seller|other items*|other ads*|other adverts*|more adverts*|more items*|recently viewed*|recent searches|popular*|sponsored*|rezensionen|recensies|beoordelingen|recensioni|valoraciones|opiniones|opinions|omdomen|anmeldelser|opinie|hodnoceni|comments|comment|questions and answers|questions & answers|reviews|customer reviews|ratings|terms*|general terms*|safety*|stay safe*|tips*|buying tips|privacy*|newsletter*|we and our*|we value your*|your privacy*|your choice*|manage your*|this site uses*|support us*|support this*|donat*|share*|follow us|about us|' +
    'ahnliche*|passend dazu*|dazu passend*|spenden*|das konnte*|auch interessant|weitere anzeigen*|weitere artikel*|mehr von*|zuletzt angesehen*|kommentare|fragen und antworten|bewertungen|kunden*|agb|allgemeine geschaftsbedingungen|sicherheitshinweise|sicherheitstipps|tipps*|datenschutz*|teilen|uber uns|wir und unsere*|wir verwenden cookies*|' +
    'annonces similaires|souten*|faire un don*|articles similaires|produits similaires|vous aimerez*|ces annonces*|vus recemment|commentaires|questions et reponses|avis*|conditions generales*|conseils*|partager|mentions legales|nous et nos*|votre vie privee*|' +
    'vergelijkbare*|soortgelijke*|reacties|annunci simili|articoli simili|commenti|anuncios similares|articulos similares|comentarios|consejos*|' +
    "others *|other people*|more from*|more in*|see also*|elsewhere on*|while you are here*|recently added*|latest adverts*|new today*|buyers also*|bidders also*|before you buy*|how to buy*|buying safely*|keep safe*|trade safely*|safe buying*|we use cookies*|cookies*|das sahen sich*|andere *|auch von*|sicher handeln*|vorsicht*|neu eingestellt*|wir schatzen*|vous pourriez*|d'autres *|autres *|soyez prudent*|achetez en*|anderen *|veilig handelen*|ook interessant*|meer van*|altri *|anche *|compra sicuro*|acquista in*|ti potrebbe*|potrebbe*|tambien te*|otros *|mas anuncios*|compra segura*|liknande*|andra *|fler *|lignende*|andre *|flere annoncer*|flere annonser*|trygg *|sikker handel*|zobacz*|inne ogloszenia*|wiecej od*|bezpiecz*|szanujemy*|podobn*|dalsi inzeraty*|bezpecn*|mohlo by*|semelhantes|anuncios semelhantes*|tambem pode*|outros *|dicas de*|samankaltais*|muita *|turvallis*|hasonlo*|kommentarer|komentarze|komentare|kommentit" +
    '|отзыв*|відгук*|похожи*|схожі*|с этим *|вам может*|рекоменд*|комментари*|другие *',
});

/** Longer than any heading of joined labels. */
const JOINED_MOST = 60;
/** What joins two labels to one: "Delivery and returns", "Versand & Zahlung". */
const JOINED = /\s*[,/&+]\s*|\s+(?:and|und|et|en|e|ed|y|o|or|oder|ou|of)\s+/i;

/**
 * What a heading, or a short line of its own, begins: the seller's words, another part of the advert, or a part of the
 * page that is not the advert (similar things, comments, terms). Labels may be joined, if each of them is one.
 * `exactly`: without the words that only begin a label.
 */
export function headingLabel(text: string, exactly = false): HeadingLabel | null {
  if (text === '' || text.length > JOINED_MOST) return null;
  const known = exactly ? knownExactly : knownAtAll;
  let label = known.get(text);
  if (label === undefined) {
    label = read(text, exactly);
    if (known.size >= KNOWN_MOST) known.clear();
    known.set(text, label);
  }
  return label;
}

const KNOWN_MOST = 4000;
/** Several readers ask about the same lines. */
const knownAtAll = new Map<string, HeadingLabel | null>();
const knownExactly = new Map<string, HeadingLabel | null>();

/**
 * A word for a description, alone or with whose or of what it is: "Fahrzeugbeschreibung laut Anbieter". In small
 * patterns: all in one takes a browser a millisecond to get ready.
 */
const OF_WORDS =
  /^(?:(\S+) )?(\S*(?:descri|besch|beskr|omschr|opis)\S*)(?: (?:of|from|by|prodotto|produc?to|przedmiotu|ogloszenia|inzeratu|zbozi|produktu|laut|des|der|vom|von|du|de|van|del|della|dell'|do|av|fra|til)\b.{0,30})?$/;
const WHOSE = fitted('u')`^\p{L}+['’]?s?$`;
const WHOSE_MOST = 23;
const ITS_WORD =
  /^(?:description|descriptif|beschrieb|descrizione|descripcion|descricao|popis|opis)$|(?:beschrijving|omschrijving|beschreibung|beskriv(?:ning|else))$/;
const LETTERS = fitted('u')`^\p{L}+$`;
function isOfWords(text: string): boolean {
  const [found, whose, word = ''] = OF_WORDS.exec(fold(text).text.replace(/[\s:.]+$/, '')) ?? [];
  if (found === undefined || !ITS_WORD.test(word) || !LETTERS.test(word)) return false;
  return whose === undefined || (whose.length > 1 && whose.length <= WHOSE_MOST && WHOSE.test(whose));
}

function read(text: string, exactly: boolean): HeadingLabel | null {
  const whole = single(text, exactly);
  if (whole) return whole;
  if (isOfWords(text)) return 'description';
  const parts = text.split(JOINED).filter((part) => part !== '');
  const labels = parts.map((part) => single(part, true));
  if (parts.length < 2 || labels.includes(null)) return null;
  return labels.includes('description') ? 'description' : (labels.find((label) => label === 'section') ?? 'away');
}

const COMMENTS =
  /^(?:((?:dealer|seller|owner|advertiser|vendor)'?s? )?(?:comments?|remarks|notes)|(?:kommentare?|bemerkung(?:en)?|anmerkungen?|commentaires?|remarques?|opmerking(?:en)?|reacties|commenti|osservazioni|comentarios?|observaciones|kommentar(?:er)?|komentarze|uwagi|komentare|poznamk[ay])( (?:del?|du|des|vom|van de) (?:anunci|vend|annonceur|inser|verk|anbieter)\S*)?)$/;
const OF_COMMENTS = /com|rem|not|kom|bem|anm|opm|reac|oss|obs|uwa|poz/;
const commentsIn = (text: string) => {
  const folded = text.length <= JOINED_MOST ? fold(text).text : '';
  return OF_COMMENTS.test(folded) ? COMMENTS.exec(folded) : null;
};

/** A label under which either the seller speaks, or everybody. */
export const isOfComments = (text: string): boolean => commentsIn(text) !== null;

/** A label under which the seller alone speaks: "Description", "Comentario del vendedor". */
export function isOfSellersWords(text: string): boolean {
  const [, whose, of] = commentsIn(text) ?? [];
  return headingLabel(text) === 'description' || whose !== undefined || of !== undefined;
}
