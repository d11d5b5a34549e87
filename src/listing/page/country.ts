/** A state and a postal code behind it, as one country with a sign that others share writes them. */
const WRITTEN: [country: string, form: RegExp][] = [
  ['us', /, (?!NL|BC)[A-Z]{2},? \d{5}(?:-\d{4})?(?![\d,.-])/],
  ['ca', /\b[A-Z]{2},? [A-Z]\d[A-Z] ?\d[A-Z]\d\b/],
  ['au', /\b(?:NSW|VIC|QLD|TAS|ACT),? \d{4}(?![\d,.])/],
];

/** The country whose way of writing an address a text holds ("Lower Fettle, OR 97099"), or undefined. */
export const countryOfAddress = (text: string): string | undefined => WRITTEN.find(([, form]) => form.test(text))?.[0];
