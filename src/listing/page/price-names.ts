/** Names of elements that hold a price. English; German; French; Dutch; Italian; Spanish; Nordic; Polish, Czech; Finnish. */
export const PRICE_NAMES =
  /price|preis|prijs|precio|prezzo|\b(?:prix|pris|cena|preco|hinta|amount|amt|bedrag|importe|importo|montant|betrag|sum|somme|summa|cifra|cost|euro|valor)(?!\w)/;
/** Names of what it was or would cost otherwise: where nothing else stands there, of what it costs. */
export const OLD_NAMES =
  /old-?price|price-?old|was-?price|price-?was|\b(?:old|was|before|regular|original|list-price|price-list)(?!\w)/;
/** Names of amounts that are no price: what is saved or compared, postage, instalments. A "button alt" is the second of its kind. */
export const OTHER_NAMES =
  /\b(?:compare|save|savings?|discount|retail|strike\w*|struck|cross(?:ed)?|uvp|rrp|msrp|(?<!button )alt|alter|vecchio|viejo|anterior|precedente|listino|ancien|barre|tachado|shipping|delivery|postage|versand|livraison|frakt|fragt|instal?lments?|monthly|finan(?!cials)\w*|fees?|(?:excl|excluding|without)-(?:tax|vat)|tax-excl\w*|estimate|estimation|approx|converted)(?!\w)/;
