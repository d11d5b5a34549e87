import { describe, expect, it } from 'vitest';
import { saleIn, sellerIn } from '../../../../src/listing/decide/sale-words';

describe('how a sale stands', () => {
  it.each([
    ['SOLD', 'sold'],
    ['This item has been sold.', 'sold'],
    ['Verkauft', 'sold'],
    ['Vendu', 'sold'],
    ['Verkocht', 'sold'],
    ['Venduta', 'sold'],
    ['Vendido', 'sold'],
    ['https://schema.org/SoldOut', 'sold'],
    ['Reserved', 'reserved'],
    ['Reserviert •', 'reserved'],
    ['Réservé', 'reserved'],
    ['Gereserveerd', 'reserved'],
    ['Riservato', 'reserved'],
    ['Reservado', 'reserved'],
    ['Sale pending', 'reserved'],
    ['No longer for sale', 'sold'],
    ['Leider vergeben', 'sold'],
    ['Sprzedane', 'sold'],
    ['Prodáno', 'sold'],
    ['Solgt', 'sold'],
    ['On hold', 'reserved'],
    ['SSTC', 'reserved'],
    ['Under offer', 'reserved'],
    ['Onder optie', 'reserved'],
    ['In trattativa', 'reserved'],
    ['Vorgemerkt', 'reserved'],
    ['Zarezerwowane', 'reserved'],
    ['Rezervováno', 'reserved'],
  ])('%s: %s', (text, kind) => {
    expect(saleIn(text)).toBe(kind);
  });

  it.each([
    'Sold by Henk',
    'Recently sold',
    'Verkauft von Anna',
    'All rights reserved',
    'Vendu récemment',
    '12 sold',
    '',
  ])('%s: neither', (text) => {
    expect(saleIn(text)).toBeNull();
  });
});

describe('who sells', () => {
  it.each([
    ['Private seller', 'private'],
    ['Privater Nutzer', 'private'],
    ['Particulier', 'private'],
    ['Utente privato', 'private'],
    ['Particular', 'private'],
    ['Osoba prywatna', 'private'],
    ['Soukromá osoba', 'private'],
    ['By owner', 'private'],
    ['Individual', 'private'],
    ['C2C', 'private'],
    ['Gewerblicher Anbieter', 'trade'],
    ['Vendeur professionnel', 'trade'],
    ['Zakelijke verkoper', 'trade'],
    ['Dealer', 'trade'],
    ['Rivenditore', 'trade'],
    ['Profesional', 'trade'],
    ['Händler', 'trade'],
    ['Winkel', 'trade'],
    ['Azienda', 'trade'],
    ['Tienda', 'trade'],
    ['Företag', 'trade'],
    ['Obchod', 'trade'],
    ['Firma', 'trade'],
    ['Geschäft', 'trade'],
    ['B2C', 'trade'],
  ])('%s: %s', (text, kind) => {
    expect(sellerIn(text)).toBe(kind);
  });

  it.each(['Private viewing by appointment', 'Privacy', 'Trade safely', 'Shops near you', ''])('%s: nobody', (text) => {
    expect(sellerIn(text)).toBeNull();
  });
});
