/** A unit as it is written, and what one of it is in kg or mm. */
export interface Unit {
  name: string;
  /** In kg for weights, in mm for lengths; exact. */
  size: number;
  /** A smaller unit that may follow: "21 lb 8 oz". */
  smaller?: 'lb' | 'oz' | 'in';
  /** How many of the smaller one make one of this. */
  holds?: number;
}

/** The international pound, exactly (NIST SP 811, appendix B.8). */
const POUND_IN_KG = 0.45359237;
/** The international inch, exactly (NIST SP 811, appendix B.8). */
const INCH_IN_MM = 25.4;

const table = (entries: readonly (readonly [string, Unit])[]) =>
  new Map(entries.flatMap(([words, unit]) => words.split(' ').map((word) => [word, unit] as const)));

export const WEIGHTS = table([
  ['kg kgs kilo kilos kilogram kilograms kilogramm kilogramme kilogrammes kilogrammen', { name: 'kg', size: 1 }],
  ['g gr gram grams gramm gramme grammes', { name: 'g', size: 0.001 }],
  ['lb lbs pound pounds', { name: 'lb', size: POUND_IN_KG, smaller: 'oz', holds: 16 }],
  ['st stone stones', { name: 'st', size: POUND_IN_KG * 14, smaller: 'lb', holds: 14 }],
  ['oz ozs ounce ounces unze unzen once onces', { name: 'oz', size: POUND_IN_KG / 16 }],
  // Half a kilogram wherever German is spoken today.
  ['pfund', { name: 'pfund', size: 0.5 }],
]);

export const LENGTHS = table([
  ['mm millimetre millimetres millimeter millimeters', { name: 'mm', size: 1 }],
  ['cm cms centimetre centimetres centimeter centimeters zentimeter', { name: 'cm', size: 10 }],
  ['m metre metres meter meters mtr mtrs', { name: 'm', size: 1000 }],
  ["in ins inch inches zoll pouce pouces \" ''", { name: 'in', size: INCH_IN_MM }],
  ["ft foot feet '", { name: 'ft', size: INCH_IN_MM * 12, smaller: 'in', holds: 12 }],
]);
