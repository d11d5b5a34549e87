/** Words right before an amount, or over it, by which it is what others ask, what it was, or what a measure costs. */
const USUAL =
  /\b(?:(?:reg(?:ular(?:ly)?)?|unit|normal(?:ly)?|usual(?:ly)?)\.?(?: price)?|(?:normal|listen|grund|advies|ord\.? ?|ordinarie |vejl\.? ?|veil\.? ?)pr(?:eis|ijs|is)|prix (?:public|conseille|habituel|catalogue|au \w+)|prezzo (?:consigliato|al \w+)|precio (?:normal|habitual)|cena (?:regularna|katalogowa)|bezna cena)\W*$|\b30 (?:tage|dni|days|derniers jours|giorni|dias|dagen|dagar|dage)(?!\w)/;
const MEASURE = '(?:1 ?|100 ?)?(?:kg|kilo|g|l|ml|cl|lit(?:er|re|ro)|oz|lb)(?!\\w)';
const EQUALS = new RegExp(`\\b${MEASURE} ?= ?$`);
const PER = new RegExp(`^ ?(?:\\/|per|pro|par|por|al|au|je) ?${MEASURE}`);

/**
 * True of an amount that is the price only where no other stands: "Regular price £60", "1 kg = £12", "£12 / kg".
 * Folded: what stands before it, with its label, and what stands behind.
 */
export const isUsual = (before: string, after: string): boolean =>
  USUAL.test(before) || EQUALS.test(before) || PER.test(after);
