import { describe, expect, it } from 'vitest';
import { rowLabel } from '../../../../src/listing/page/row-labels';

describe('the label of a number', () => {
  it.each([
    'Engine no.',
    'Engine number',
    'Engine #',
    'Motornummer',
    'Motor-Nr.',
    'N° moteur',
    'Nº de serie',
    'Número de bastidor',
    'Maschinen-Nr.:',
    'N. telaio',
  ])('is one of a serial, however a number is called: %s', (label) => {
    expect(rowLabel(label)).toBe('serial');
  });

  it.each(['Artikel-Nr. 5', 'Item no', 'Advert no. 17'])('is one of the advert: %s', (label) => {
    expect(rowLabel(label)).toBe('skip');
  });

  it.each(['Number of bobbins', 'Numero de puertas', 'No', 'N', 'Nr.', '#'])('is none of either: %s', (label) => {
    expect(rowLabel(label)).toBeNull();
  });
});

describe('two labels in one', () => {
  it('are what both of them are', () => {
    expect(rowLabel('Lagerort / Standort')).toBe('place');
    expect(rowLabel('Price / Location')).toBeNull();
    expect(rowLabel('Oak / Standort')).toBeNull();
  });
});
