/** Letters of a state and a postal code behind them, as one country alone writes them: "Lower Fettle, OR 97099". */
const OF_STATE: [country: string, written: RegExp][] = [
  [
    'us',
    /, (?:A[KLRZ]|C[AOT]|D[CE]|FL|GA|HI|I[ADLN]|K[SY]|LA|M[ADEINOST]|N[CDEHJMVY]|O[HKR]|PA|RI|S[CD]|T[NX]|UT|V[AT]|W[AIVY]),? \d{5}(?![\d,.])/,
  ],
  ['ca', /\b(?:AB|BC|MB|N[BLS]|ON|PE|QC|SK),? [A-Z]\d[A-Z] ?\d[A-Z]\d\b/],
  ['au', /\b(?:NSW|VIC|QLD|TAS|ACT),? \d{4}(?![\d,.])/],
];

/** The country whose way of writing an address a text holds, or null. */
export const countryOfAddress = (text: string): string | null =>
  (/[A-Z],? [A-Z\d]/.test(text) && OF_STATE.find(([, written]) => written.test(text))?.[0]) || null;
