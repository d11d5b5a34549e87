import { type Page, price } from './page';

const folded = (title: string, words: string): Page => ({
  name: `a folded section after the description: ${title}`,
  html: `<h1>Hand crank</h1><p>£45</p><div class="product"><h2>Description</h2><div><p>First words.</p><p>More words.</p></div><details><summary>${title}</summary><p>${words}</p></details></div>`,
  expected: { description: 'First words.\nMore words.', price: price('45', 'GBP') },
  absent: [title, words],
});

/** What follows the description without being part of it, by its title. */
export const sectionPages: Page[] = [
  folded('Delivery and returns', 'By courier in two boxes. Money back within 14 days.'),
  folded('Shipping & payment', 'By courier in two boxes, paid on delivery.'),
  folded('Returns, payment and collection', 'Collect it from the workshop.'),
  folded('Warranty', 'Three months on parts and labour.'),
  folded('Versand und Rückgabe', 'Versand in zwei Paketen, Rückgabe binnen 14 Tagen.'),
  folded('Lieferung & Zahlung', 'Abholung in der Werkstatt.'),
  folded('Livraison et retours', 'À retirer à la boutique, reprise sous 14 jours.'),
  folded('Paiement et garantie', 'Trois mois, pièces et main d’œuvre.'),
  folded('Verzending en retourneren', 'Ophalen in de winkel.'),
  folded('Spedizione e resi', 'Ritiro in negozio.'),
  folded('Envíos y devoluciones', 'Recogida en la tienda.'),
  {
    name: 'words of the seller that join what are no titles',
    html: '<h1>Hand crank</h1><p>£45</p><div><h2>Description</h2><p>Needle and thread</p><p>Delivery and a cup of tea</p></div>',
    expected: { description: 'Needle and thread\nDelivery and a cup of tea' },
  },
];
