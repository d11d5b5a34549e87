import { sentenceCase } from './words';

/** What the audit says. Plain words first; the exact words of the advert and the packs stand beside each sentence. */
export const findingTexts = {
  /** Said after a claim that was held against the model named, where the serial is another model's. */
  otherModel: {
    join: (first: string, second: string) => `${first} ${second}`,
    fits: (other: string) => `It fits ${other}, to which the serial was allotted.`,
    neither: (other: string) => `Nor does it hold for ${other}, to which the serial was allotted.`,
    but: (other: string) => `It doesn’t hold for ${other}, to which the serial was allotted.`,
    price: (other: string) => `By its number it is another one: ${other}.`,
    only: (quote: string, other: string, attribute: string, value: string) =>
      `“${quote}” doesn’t hold for ${other}, to which the serial was allotted (${attribute}: ${value}).`,
  },
  serialModel: {
    known: (label: string, first: string, last: string, year: string, place: string) =>
      `Numbers ${first} to ${last} were allotted to ${label}${year ? ` in ${year}` : ''}${place ? `, ${place}` : ''}.`,
    disproved: (serial: string, allotted: string, claimed: string) =>
      `The serial ${serial} was allotted to ${allotted}, not to ${claimed}: the name is wrong, or the number is misread, or its plate is another machine’s.`,
    agrees: (serial: string, claimed: string) => `The serial ${serial} is one of those allotted to ${claimed}.`,
  },
  serialYear: {
    disproved: (serial: string, year: string, claimed: string) =>
      `The serial ${serial} was allotted in ${year}, which doesn’t fit “${claimed}”.`,
    bothYears: (serial: string, year: string, claimed: string, other: string) =>
      `The serial ${serial} was allotted in ${year}. The advert names “${claimed}” and “${other}”: of what is the first?`,
    agrees: (serial: string, year: string) => `The serial ${serial} was allotted in ${year}, as the advert says.`,
  },
  serialForm: {
    misread: (serial: string, suggestion: string, models: string) =>
      `The serial ${serial} is in none of the tables as written. Read as ${suggestion}, it is a number of ${models}.`,
    badForm: (serial: string) => `${serial} doesn’t have the form of a serial of this maker.`,
    formKnown: (maker: string, form: string) => `Serials of ${maker} have this form: ${form}.`,
    gap: (serial: string) =>
      `The serial ${serial} was never allotted, if the table is right: it is said to be complete, and it leaves this number out.`,
    complete: (maker: string, form: string) =>
      `The table of ${maker}’s numbers of the form ${form} is said to be complete: one that it leaves out was not allotted.`,
    anyMaker: 'this maker',
  },
  claimFact: {
    known: (model: string, attribute: string, value: string) => `${model}, ${attribute}: ${value}.`,
    knownSometimes: (model: string, attribute: string, value: string) => `${model}, ${attribute}: usually ${value}.`,
    kind: (kind: string) => `The kind “${kind}”`,
    ofKind: (model: string, kind: string) => `${model} is of the kind “${kind}”.`,
    disproved: (model: string, attribute: string, value: string, quote: string) =>
      `“${quote}” doesn’t hold for ${model} (${attribute}: ${value}).`,
    usually: (model: string, attribute: string, value: string, quote: string) =>
      `“${quote}” would be unusual for ${model} (${attribute}: usually ${value}).`,
    bothWays: (quote: string, other: string, model: string) =>
      `The advert says both “${quote}” and “${other}”. For ${model} only the second can be so.`,
    agrees: (model: string, quote: string) => `“${quote}” fits what is known of ${model}.`,
    whichever: 'any machine that this can be',
    yes: 'yes',
    no: 'no',
    or: (values: readonly string[]) =>
      values.length < 2 ? (values[0] ?? '') : `${values.slice(0, -1).join(', ')} or ${values.at(-1)}`,
    range: (from: number | null, to: number | null, unit: string) =>
      from === null
        ? `at most ${to} ${unit}`
        : to === null
          ? `at least ${from} ${unit}`
          : from === to
            ? `${from} ${unit}`
            : `${from} to ${to} ${unit}`,
  },
  weight: {
    disproved: (quote: string, model: string, range: string) =>
      `“${quote}” doesn’t hold for ${model}, which weighs ${range}.`,
    bothWeights: (quote: string, other: string, model: string, range: string) =>
      `The advert says both “${quote}” and “${other}”. Only the second fits ${model}, which weighs ${range}.`,
    withCase: (quote: string, model: string, range: string) =>
      `“${quote}” is more than ${model} weighs by itself (${range}); it may be with the case on.`,
    unusual: (quote: string, model: string, range: string) =>
      `“${quote}” would be unusual for ${model}, which weighs ${range}.`,
    agrees: (quote: string, model: string, range: string) => `“${quote}” fits ${model}, which weighs ${range}.`,
  },
  nameName: {
    disproved: (first: string, second: string) =>
      `The advert calls it both “${first}” and “${second}”, which are two different models.`,
    unproved: (first: string, second: string) =>
      `The advert names “${first}” and “${second}”: which of the two is on sale?`,
    known: (label: string, other: string) => `${label} and ${other} are two models.`,
    knownMaker: (label: string, maker: string) => `${label} was made by ${maker}.`,
    anotherMaker: (maker: string, model: string) => `“${maker}” didn’t make the “${model}”.`,
    knownFamily: (label: string, family: string) => `${label} belongs to ${family}.`,
    anotherFamily: (family: string, model: string) =>
      `“${family}” is another line of machines than that of the “${model}”.`,
  },
  rarity: {
    known: (label: string, number: string) => `About ${number} were made of ${label}.`,
    disproved: (quote: string, label: string, number: string) =>
      `“${quote}” doesn’t hold: about ${number} were made of ${label}.`,
    caution: (quote: string, label: string, number: string) =>
      `Weigh the word “${quote}”: about ${number} were made of ${label}.`,
  },
  ageWords: {
    knownSerial: (serial: string, year: string) => `Serial ${serial} was allotted in ${year}.`,
    knownModel: (label: string, years: string) => `${label} was made ${years}.`,
    years: (from: number | null, to: number | null) =>
      from === null
        ? `until ${to}`
        : to === null
          ? `from ${from} on`
          : from === to
            ? `in ${from}`
            : `from ${from} to ${to}`,
    disproved: (quote: string, basis: string) => `“${quote}” doesn’t hold: ${basis}`,
    caution: (quote: string, basis: string) => `Weigh the word “${quote}”: ${basis}`,
    agrees: (quote: string, basis: string) => `“${quote}” fits: ${basis}`,
  },
  price: {
    known: {
      asked: (label: string, grade: string, low: string, high: string) =>
        `${label}${grade ? `, ${grade}` : ''}: 80 of 100 are offered at ${low} to ${high}.`,
      paid: (label: string, grade: string, low: string, high: string) =>
        `${label}${grade ? `, ${grade}` : ''}: 80 of 100 go for ${low} to ${high}.`,
    },
    behind: (stated: number, date: string, seen: number) => {
      const prices = (n: number) => `${n} ${n === 1 ? 'price' : 'prices'}`;
      if (stated === 0) return `Behind it: ${prices(seen)} seen, and no pack’s word.`;
      if (seen === 0) return `Behind it: the pack’s word of ${date}, worth ${prices(stated)}.`;
      return `Behind it: the pack’s word of ${date}, worth ${prices(stated)}, and ${prices(seen)} seen.`;
    },
    ratio: (ratio: number, middle: string) =>
      ratio > 0.95 && ratio < 1.05
        ? `about the middle, ${middle}`
        : `${ratio.toFixed(ratio < 0.1 ? 2 : 1)} times the middle, ${middle}`,
    factor: (label: string, times: string) => `${label}: ${times} times the price. The band counts that in.`,
    above: (price: string, label: string, ratio: string) => `${price} is above what ${label} goes for: ${ratio}.`,
    highSide: (price: string, label: string, ratio: string) => `${price} is on the high side for ${label}: ${ratio}.`,
    within: (price: string, label: string, ratio: string) =>
      `${price} is within what ${label} usually goes for: ${ratio}.`,
    lowSide: (price: string, label: string, ratio: string) => `${price} is on the low side for ${label}: ${ratio}.`,
    below: (price: string, label: string, ratio: string) =>
      `${price} is far below what ${label} goes for: ${ratio}. See it before paying, pay nothing ahead, and ask why.`,
  },
  wording: {
    never: (quote: string, why: string) => `“${quote}” doesn’t hold: ${why}`,
  },
  claimClaim: {
    disproved: (first: string, second: string, attribute: string) =>
      `The advert says both “${first}” and “${second}” (${attribute}): not both can hold.`,
    apart: (first: string, second: string) => `“${second}” doesn’t go with “${first}”: not both can hold.`,
    unusual: (first: string, second: string) => `“${second}” would be unusual of a machine with “${first}”.`,
    years: (first: string, second: string) => `The advert says both “${first}” and “${second}” of when it was made.`,
    known: (attribute: string, first: string, second: string) =>
      `${sentenceCase(attribute)}: ${first} and ${second} exclude each other.`,
  },
  family: {
    disproved: (quote: string, label: string) => `If “${quote}” is right, it can’t be a ${label}.`,
    agrees: (quote: string, label: string) => `“${quote}” is so of every ${label}.`,
    every: (label: string) => `Every ${label}`,
    usual: (label: string) => label,
  },
  fits: {
    disproved: (quote: string, model: string, attribute: string, value: string) =>
      `“${quote}” doesn’t fit ${model} (${attribute}: ${value}).`,
    agrees: (quote: string, model: string) => `“${quote}” is what fits ${model}.`,
    unproved: (part: string, model: string, others: string) =>
      `“${part}” is known to fit ${others}; nothing here says that it fits ${model}.`,
    knownFit: (model: string, part: string) => `${part} fits ${model}.`,
  },
  madeWhere: {
    disproved: (quote: string, label: string, places: string) =>
      `“${quote}” doesn’t hold: ${label} was made at ${places}.`,
    serial: (quote: string, serial: string, place: string) =>
      `“${quote}” doesn’t hold: ${serial} was allotted at ${place}.`,
    agrees: (quote: string, label: string, places: string) => `“${quote}” fits: ${label} was made at ${places}.`,
    serialAgrees: (quote: string, serial: string, place: string) =>
      `“${quote}” fits: ${serial} was allotted at ${place}.`,
    known: (label: string, places: string) => `${label} was made at ${places}.`,
  },
  lookAlike: {
    unproved: (model: string, other: string, attribute: string, own: string, others: string) =>
      `${model} and ${other} are taken for each other. What tells them apart is the ${attribute}: ${own} here, ${others} there.`,
    plain: (model: string, other: string) => `${model} and ${other} are taken for each other.`,
  },
  sourceConflict: {
    field: {
      title: 'title',
      description: 'description',
      details: 'details',
      price: 'price',
      serial: 'serial',
      condition: 'condition',
      place: 'place',
      listedDate: 'date',
      sale: 'sale',
      seller: 'seller',
      photo: 'photo',
    },
    page: (field: string, shown: string, other: string, source: string) =>
      `The page itself disagrees about the ${field}: it shows “${shown}”, and ${source} “${other}”.`,
    /** Where the page's other word stands. */
    sources: {
      'json-ld': 'its embedded data say',
      microdata: 'marks in its text say',
      rdfa: 'marks in its text say',
      state: 'data inside its scripts say',
      meta: 'its head says',
      page: 'elsewhere it shows',
      draft: 'elsewhere it says',
    },
    packs: (quote: string) => `The packs disagree about “${quote}”.`,
  },
  missing: {
    serial: 'The advert gives no serial number.',
    photos: 'The advert shows no photograph.',
    model: 'The advert names no model that is known here.',
    photograph: (label: string, tells: string) => `Look for, or ask for, a photo of ${label}. ${tells}`,
  },
} as const;
