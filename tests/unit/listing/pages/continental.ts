import { jsonLd, type Page, price } from './page';

export const continental: Page[] = [
  {
    name: 'German, a definition list',
    html: `<html lang="de-DE"><title>Versenkmaschine im Tisch | Kramwinkel</title><meta property="og:site_name" content="Kramwinkel"><body>
      <h1>Versenkmaschine im Tisch</h1><p class="preis">1.340,00 € VB</p><p>Versand ab 49,90 €</p>
      <dl><dt>Zustand</dt><dd>Gebraucht, läuft</dd><dt>Ort</dt><dd>34117 Niederhummel</dd><dt>Seriennummer</dt><dd>C 118 220</dd><dt>Eingestellt am</dt><dd>3. März 2024</dd><dt>Farbe</dt><dd>Schwarz</dd><dt>Aufrufe</dt><dd>212</dd></dl>
      <h2>Beschreibung</h2><p>Von der Großmutter geerbt.<br>Näht einwandfrei &amp;amp; leise.</p>
      <h2>Ähnliche Anzeigen</h2><p>Noch eine Maschine für 20 €, die niemand braucht und die hier nur wirbt.</p>`,
    expected: {
      title: 'Versenkmaschine im Tisch',
      description: 'Von der Großmutter geerbt.\nNäht einwandfrei & leise.',
      details: 'Farbe: Schwarz',
      price: price('1340.00', 'EUR'),
      priceText: '1.340,00 € VB',
      serials: ['C 118 220'],
      condition: 'Gebraucht, läuft',
      place: '34117 Niederhummel',
      listedDate: '2024-03-03',
      language: 'de-de',
    },
    absent: ['212', 'niemand braucht'],
  },
  {
    name: 'German, wanted, without a price',
    html: `<html lang="de"><body><h1>Suche Schiffchen für alte Nähmaschine</h1><p>Mir fehlt das lange Schiffchen, gerne auch mit Spulen. Bitte alles anbieten.</p><p>Ort: Altbrück</p>`,
    expected: {
      title: 'Suche Schiffchen für alte Nähmaschine',
      description: 'Mir fehlt das lange Schiffchen, gerne auch mit Spulen. Bitte alles anbieten.',
      price: null,
      place: 'Altbrück',
      offers: 1,
    },
  },
  {
    name: 'German, a comma in the price that machines are told',
    html: `<html lang="de">${jsonLd({ '@type': 'Product', name: 'Koffermaschine', offers: { '@type': 'Offer', price: '1.340', priceCurrency: 'EUR' } })}<body><h1>Koffermaschine</h1><p>1.340 €</p>`,
    expected: { price: price('1340', 'EUR'), priceText: '1.340 €' },
  },
  {
    name: 'French, labels before their values',
    html: `<html lang="fr"><title>Machine à pédale, plateau marqueté</title><body><main><h1>Machine à pédale, plateau marqueté</h1>
      <p>Prix : 180 €</p><p>Livraison : 35 €</p><p>État : Bon état, courroie à changer</p><p>Lieu : Saint-Ouvray</p><p>Numéro de série : 41 772</p><p>Publiée le : 14 février 2024</p>
      <h2>Description de l'annonce</h2><p>Elle vient de ma tante.</p><p>La canette manque.</p>
      <h2>Annonces similaires</h2><p><a href="/x">Une autre machine à coudre</a> 20 €</p></main>`,
    expected: {
      title: 'Machine à pédale, plateau marqueté',
      description: 'Elle vient de ma tante.\nLa canette manque.',
      price: price('180', 'EUR'),
      condition: 'Bon état, courroie à changer',
      place: 'Saint-Ouvray',
      serials: ['41 772'],
      listedDate: '2024-02-14',
      details: '',
    },
  },
  {
    name: 'French, product metadata alone',
    html: `<html><head><title>Tête de machine en fonte</title><meta property="og:locale" content="fr_FR"><meta property="og:type" content="product"><meta property="og:title" content="Tête de machine en fonte"><meta property="og:description" content="Tête seule, sans meuble."><meta property="product:price:amount" content="45.00"><meta property="product:price:currency" content="EUR"><meta property="og:image" content="/tete.jpg"></head><body><div id="root"></div>`,
    expected: {
      title: 'Tête de machine en fonte',
      description: 'Tête seule, sans meuble.',
      price: price('45.00', 'EUR'),
      photos: ['https://market.example/tete.jpg'],
      language: 'fr-fr',
    },
  },
  {
    name: 'Dutch and Italian labels',
    html: `<html lang="nl"><body><h1>Trapnaaimachine met kast</h1><p>Vraagprijs: € 75,-</p><p>Conditie: gebruikt</p><p>Serienummer: 90 2211</p><h2>Omschrijving</h2><p>Staat al jaren op zolder.</p>`,
    expected: {
      price: price('75', 'EUR'),
      condition: 'gebruikt',
      serials: ['90 2211'],
      description: 'Staat al jaren op zolder.',
    },
  },
];
