import { labelReader } from './words';

/**
 * What the value beside a label is. `postage` is money that is not the price; `skip` is about the advert's own
 * machinery, not about the thing. A number is "nr" here, whatever it is called. Languages as for headings; common usage,
 * from memory.
 */
export const rowLabel = labelReader({
  price:
    'price|current price|present price|now only|only|reduced to|buyout price|asking|asking price|our price|buy it now|buy now|sale price|price now|now|guide price|current bid|starting bid|starting price|highest bid|winning bid|bid|sold for|hammer price|price from|total price|' +
    'preis|verkaufspreis|festpreis|kaufpreis|sofortkauf|sofort-kaufen|vb|vhb|aktuelles gebot|hochstgebot|startpreis|startgebot|gebot|preis ab|verkauft fur|preisvorstellung|zuschlag|' +
    'prix|prix demande|prix de vente|achat immediat|enchere actuelle|mise a prix|prix de depart|vendu|' +
    'prijs|vraagprijs|huidig bod|prezzo|prezzo richiesto|offerta attuale|precio|precio de venta|puja actual|' +
    'asking price (ono)|offers over|pris|begart pris|utgangspris|ledande bud|hogsta bud|slutpris|mindstepris|hojeste bud|prisantydning|hoyeste bud|cena|kup teraz|aktualna cena|cena wywolawcza|vyvolavaci cena|aktualni cena|kup ihned|preco|valor|lance atual|hinta|hintapyynto|korkein tarjous|vetelar|iranyar|pret' +
    '|цена|ціна|стоимость',
  postage:
    "postage*|shipping*|delivery*|p&p|carriage|handling*|collection fee|buyer's premium|buyer fee|fee|fees|deposit|" +
    'versand|versandkosten|porto|lieferung|kaution|gebuhr*|aufgeld|livraison*|frais*|port|caution|verzendkosten*|spedizione|spese*|envio|gastos*|' +
    'frakt*|fragt*|wysylka*|dostawa*|przesylka*|koszt*|doprava*|postovne*|frete*|portes*|postikulut*|toimitus*|szallitas*|verzending*|protezione acquisti|totale|total|gesamt|totaal|summa' +
    '|доставк*',
  condition:
    'condition|cond|state|overall condition|item condition|state of repair|zustand|artikelzustand|etat|conditie|staat|condizione|condizioni|stato|estado|condicion|' +
    'condition of*|building condition|objektzustand|etat d*|condicion d*|estado d*|stato d*|condizioni d*|zustand d*|fahrzeugzustand|maschinenzustand|geratezustand|allgemeinzustand|erhaltung|erhaltungszustand|skick|stand|tilstand|varens tilstand|stan|stan przedmiotu|stan techniczny|stav|stav zbozi|condicao|conservacao|kunto|allapot|stare' +
    '|состояние|стан|състояние',
  serial:
    'serial*|s/n|sn|nr de plaque|nr on the bed|seriennr|fabriknr|maschinennr|gehausenr|' +
    'nr de serie|serienr|serie nr|nr di serie|matricola|nr di matricola|nr de fabricacion|' +
    'cadre nr|chassis nr|frame nr|motornr|engine nr|nr moteur|nr motore|nr de motor|vin|machine nr|factory nr|works nr|body nr|fahrgestellnr|rahmennr|werknr|fertigungsnr|herstellungsnr|nr de chassis|nr de cadre|nr de fabrication|nr de machine|nr du cadre|nr du chassis|framenr|chassisnr|fabrieksnr|machinenr|nr di telaio|nr telaio|nr di fabbrica|nr de bastidor|bastidor|nr de cuadro|nr de chasis|ramnr|stelnr|rammenr|chassinr|nr ramy|nr nadwozia|cislo ramu|' +
    'tillverkningsnr|nr seryjny|nr fabryczny|vyrobni cislo|seriove cislo|sarjanumero|valmistusnumero|sorozatszam|gyari szam',
  place:
    'location|where|ships from|sent from|posted from|dispatched from|dispatches from|item location|located in|place|town|area|pick-up location|collection from|collection|pickup|pick up|ort|wo|standort|artikelstandort|plz / ort|abholort|lagerort|region|lieu|ou|localisation|ville|situe a|a retirer a|plaats|locatie|ophalen in|luogo|localita|citta|comune|provincia|lugar|localidad|ubicacion|poblacion|' +
    'commune|gemeente|gemeinde|municipio|to be collected from|collect from|kept at|kept in|based in|depot|branch|staat in|steht in|standplaats|se trouve a|visible a|si trova a|visibile a|se encuentra en|esta en|' +
    'situated in|can be seen in|city|plats|stad|kommun|finns i|hamtas i|sted|beliggenhed|beliggenhet|poststed|lokalizacja|miejscowosc|miasto|lokalita|misto|mesto|obec|localizacao|cidade|local|paikkakunta|sijainti|kunta|helyszin|telepules|varos|localitate|oras|localite|citta / zona|zona|woonplaats|wohnort|abholung in|plz|comune di',
  listedDate:
    'listed|listed on|date listed|posted|posted on|date posted|published|published on|ad placed|added|added on|date|listing date|online since|' +
    'eingestellt|eingestellt am|erstellt|erstellt am|veroffentlicht|veroffentlicht am|inseriert am|anzeige vom|datum|online seit|' +
    'publiee le|publie le|mise en ligne|mise en ligne le|mis en ligne le|deposee le|date de publication|geplaatst|geplaatst op|pubblicato|pubblicato il|data|publicado|publicado el|fecha|' +
    'advertised|first listed|upplagd|inlagd|publicerad|oprettet|indrykket|publisert|lagt ut|opprettet|dodano|dodane|opublikowano|data dodania|vlozeno|zverejneno|pridano|publicado em|inserido em|data de publicacao|julkaistu|ilmoitus jatetty|lisatty|feladva|feladas datuma|data publicarii|data inserimento|inserzione del|fecha de publicacion|sinds|aangeboden sinds',
  skip:
    'tip*|note to buyers|views|viewed|visits|watchers|ad id|ad ref*|ad nr*|advert nr*|item nr|item id|listing id|listing nr*|lot|lot nr*|reference|ref|sku|member since|seller|seller name|seller type|feedback|rating|phone|telephone|tel|e-mail|email|website|category|categories|tags|quantity|available|availability|ends|time left|returns|payment|stock|ean|gtin|isbn|' +
    'aufrufe|anzeigennr*|anzeigen-id|artikelnr*|artikel-id|mitglied seit|aktiv seit|verkaufer|anbieter|bewertung|telefon|kategorie|menge|verfugbar*|endet|restzeit|rucknahme|zahlung|bestand|' +
    "vues|nr d'annonce|nr annonce|reference de l'annonce|membre depuis|vendeur|categorie|quantite|disponib*|fin|retours|paiement|" +
    'advertentienr|bekeken|lid sinds|verkoper|categoria|visite|venditore|visitas|vendedor|' +
    'annonsnr|annonce-id|annoncenr|annonsenr|saljare|saelger|selger|sprzedawca|prodejce|myyja|elado|visningar|visninger|wyswietlenia|zobrazeno|visualizacoes|betalning|betaling|platnosc|platba|pagamento|pago|kategori|kategoria|osasto|id|id ogloszenia|cislo inzeratu|ilmoitusnumero|hirdeteskod|codigo|codigo do anuncio|rif|riferimento|annuncio nr',
});
