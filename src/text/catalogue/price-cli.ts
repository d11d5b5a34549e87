/** What the command line says of prices; English, as all of the command line. */
export const priceCliTexts = {
  usage:
    'npm run -s price -- --model MODEL [--grade GRADE] [--asking "£480"] [--finish plain|refinished] [--seen FILE.csv] [--exact] [--rate "EUR GBP 0.86 2026-06" ...] [--pack FILE ...] [--as-of YYYY-MM-DD] [--json]',
  noModel: (usage: string) => `--model is missing. ${usage}`,
  noArguments: (given: string) => `"${given}" belongs to no option; the model goes after --model`,
  noSuchModel: (given: string, near: string) =>
    near ? `--model: no pack here knows "${given}"; near it: ${near}` : `--model: no pack here knows "${given}"`,
  severalModels: (given: string, refs: string) => `--model: "${given}" can be several: ${refs}`,
  noSuchGrade: (given: string, grades: string) =>
    grades ? `--grade: no grade "${given}" there; there are: ${grades}` : `--grade: that pack knows no grades`,
  finish: (given: string) => `--finish: "${given}" is neither plain nor refinished`,
  notMoney: (given: string) => `--asking: "${given}" is no price`,
  noCurrency: (given: string) => `--asking: "${given}" doesn’t say of which currency it is; write it as "GBP 480"`,
  notAPrice: (given: string) => `--asking: ${given} is no price of one such thing`,
  rateForm: (given: string, why: string) =>
    `--rate: "${given}": ${why} It is written like "EUR GBP 0.86 2026-06": 1 EUR cost 0.86 GBP then`,
  badTable: (file: string, why: string) => `--seen: ${file}: ${why}`,
  badRow: (row: number, problems: string) => `row ${row}: ${problems}`,
  badRows: (file: string, count: number, rows: string) =>
    `--seen: ${file}: ${count} ${count === 1 ? 'row is' : 'rows are'} no good, so that nothing was read; ${rows}`,
  heading: (label: string, grade: string | null, asOf: string) => `${label}${grade ? `, ${grade}` : ''}, on ${asOf}`,
  stated: (pack: string, entry: string, date: string, source: string | null) =>
    `Stated by ${pack}/${entry} in ${date}${source ? ` (${source})` : ''}.`,
  plain: (low: string, mid: string, high: string) =>
    `By plain counting, 80 of 100 of the prices counted lie between ${low} and ${high}, half of them below ${mid}.`,
  index: (last: string, source: string | null) =>
    `In the money of the day by a price index that ends in ${last}${source ? ` (${source})` : ''}.`,
  seen: 'Prices looked at',
  seenLine: (kind: string, amount: string, date: string, label: string, grade: string | null, counted: string) =>
    `${kind} ${amount} in ${date}, ${label}${grade ? `, ${grade}` : ''}: ${counted}`,
  counted: (price: string, share: string) => `${price} in today’s terms, counts for ${share}`,
  leftOut: (why: string) => `not counted: ${why}`,
  factors: 'What the price depends on',
  factor: (label: string, times: string, source: string | null) =>
    `${label}: ${times} times the price${source ? ` (${source})` : ''}`,
  launch: 'When it was new',
  past: (amount: string, date: string) => `${amount} in ${date}`,
  pastToday: (amount: string, last: string, source: string | null) =>
    `${amount} in today’s money, by an index that ends in ${last}${source ? ` (${source})` : ''}`,
  pastWeeks: (weeks: string, last: string, source: string | null) =>
    `${weeks} weeks of an average wage then, by a series that ends in ${last}${source ? ` (${source})` : ''}`,
  suits: 'Good for',
  poor: 'Not for',
  alternatives: 'What else would do',
  alternative: (label: string, low: string, high: string) => `${label}: ${low} to ${high}`,
  alternativeHere: (low: string, high: string) => `, which is ${low} to ${high}`,
  common: (text: string) => `the same: ${text}`,
  gained: (name: string) => `gained: ${name}`,
  lost: (name: string) => `lost: ${name}`,
  differs: (name: string, there: string, here: string) => `${name}: ${there}, not ${here}`,
} as const;
