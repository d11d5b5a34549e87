/** What the audit says. Plain words first; the exact words of the advert and the packs stand beside each sentence. */
export const findingTexts = {
  serialModel: {
    known: (label: string, first: string, last: string, year: string, place: string) =>
      `Numbers ${first} to ${last} were allotted to ${label}${year ? ` in ${year}` : ''}${place ? `, ${place}` : ''}.`,
    disproved: (serial: string, allotted: string, claimed: string) =>
      `The serial ${serial} was allotted to ${allotted}, not to ${claimed}.`,
    agrees: (serial: string, claimed: string) => `The serial ${serial} is one of those allotted to ${claimed}.`,
    shared: (serial: string, models: string) => `The serial ${serial} is from a block shared by ${models}.`,
    ask: 'Could you send a photo of the serial number, close up, and of any model plate?',
  },
  serialYear: {
    disproved: (serial: string, year: string, claimed: string) =>
      `The serial ${serial} was allotted in ${year}, which doesn’t fit “${claimed}”.`,
    agrees: (serial: string, year: string) => `The serial ${serial} was allotted in ${year}, as the advert says.`,
    ask: 'How do you know when it was made? Could you send a photo of the serial number?',
  },
  serialForm: {
    misread: (serial: string, suggestion: string) =>
      `No known number looks like ${serial}; it may be a slip for ${suggestion}.`,
    badForm: (serial: string) => `${serial} doesn’t have the form of a serial of this maker.`,
    formKnown: (maker: string, form: string) => `Serials of ${maker} have this form: ${form}.`,
    unknown: (serial: string) => `The serial ${serial} is in none of the tables here.`,
    complete: (maker: string, form: string) =>
      `The table of ${maker}’s numbers of the form ${form} is complete: one that it doesn’t hold was not allotted, unless the table is wrong.`,
    anyMaker: 'this maker',
    ask: 'Could you read the serial again, and send a photo of it close up?',
  },
  claimFact: {
    known: (model: string, attribute: string, value: string) => `${model}: ${attribute}: ${value}.`,
    knownSometimes: (model: string, attribute: string, value: string) => `${model}: ${attribute}: usually ${value}.`,
    disproved: (model: string, attribute: string, value: string, quote: string) =>
      `“${quote}” doesn’t hold for ${model}. What is known of its ${attribute}: ${value}.`,
    usually: (model: string, attribute: string, value: string, quote: string) =>
      `“${quote}” would be unusual for ${model}. Its ${attribute} is usually: ${value}.`,
    bothWays: (quote: string, other: string, model: string) =>
      `The advert says both “${quote}” and “${other}”. For ${model} only the second can be so.`,
    agrees: (model: string, quote: string) => `“${quote}” is what is known of ${model}.`,
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
    withCase: (quote: string, model: string, range: string) =>
      `“${quote}” is more than ${model} weighs by itself (${range}); it may be with the case on.`,
    unusual: (quote: string, model: string, range: string) =>
      `“${quote}” would be unusual for ${model}, which weighs ${range}.`,
    agrees: (quote: string, model: string, range: string) => `“${quote}” fits ${model}, which weighs ${range}.`,
    ask: 'What does it weigh on a scale, and is the case on it?',
  },
  nameName: {
    disproved: (first: string, second: string) =>
      `The advert calls it both “${first}” and “${second}”, which are two different models.`,
    unproved: (first: string, second: string) =>
      `The advert names “${first}” and “${second}”: which of the two is on sale?`,
    known: (label: string, other: string) => `${label} and ${other} are two models.`,
    knownMaker: (label: string, maker: string) => `${label} was made by ${maker}.`,
    anotherMaker: (maker: string, model: string) => `“${maker}” didn’t make the “${model}”.`,
    askMaker: 'Could you send a photo of the maker’s name and of any model plate?',
    ask: (first: string, second: string) =>
      `Is it the ${first} or the ${second}? Could you send a photo of the whole machine and of any model plate?`,
  },
  rarity: {
    known: (label: string, number: string) => `About ${number} of ${label} were made.`,
    disproved: (quote: string, label: string, number: string) =>
      `“${quote}” doesn’t hold: about ${number} of ${label} were made.`,
    caution: (quote: string, label: string, number: string) =>
      `Weigh the word “${quote}”: about ${number} of ${label} were made.`,
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
    ask: 'How do you know when it was made? Could you send a photo of the serial number?',
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
      `${attribute}: ${first} and ${second} exclude each other.`,
    ask: (first: string, second: string) => `Which is right, “${first}” or “${second}”?`,
  },
  family: {
    disproved: (quote: string, label: string) => `If “${quote}” is right, it can’t be a ${label}.`,
    agrees: (quote: string, label: string) => `“${quote}” is so of every ${label}.`,
    known: (label: string, attribute: string, value: string) => `Every ${label}: ${attribute}: ${value}.`,
    ask: 'Could you send a photo of the whole machine and of any maker’s plate?',
  },
  fits: {
    disproved: (quote: string, model: string, attribute: string, value: string) =>
      `“${quote}” doesn’t fit ${model}, which takes this ${attribute}: ${value}.`,
    agrees: (quote: string, model: string) => `“${quote}” is what fits ${model}.`,
    unproved: (part: string, model: string, others: string) =>
      `“${part}” is known to fit ${others}; nothing here says that it fits ${model}.`,
    knownFit: (model: string, part: string) => `${part} fits ${model}.`,
    ask: 'Could you send a photo of the part beside a ruler, and of any number on it?',
  },
  madeWhere: {
    disproved: (quote: string, label: string, places: string) =>
      `“${quote}” doesn’t hold: ${label} was made at ${places}.`,
    serial: (quote: string, serial: string, place: string) =>
      `“${quote}” doesn’t hold: ${serial} was allotted at ${place}.`,
    agrees: (quote: string, label: string) => `${label} was made there: “${quote}”.`,
    known: (label: string, places: string) => `${label} was made at ${places}.`,
    ask: 'Where does it say so? Could you send a photo of the plate?',
  },
  lookAlike: {
    unproved: (model: string, other: string, attribute: string, own: string, others: string) =>
      `${model} and ${other} are taken for each other. What tells them apart is the ${attribute}: ${own} here, ${others} there.`,
    plain: (model: string, other: string) => `${model} and ${other} are taken for each other.`,
    ask: (other: string) => `How do you know that it isn’t a ${other}? Could you send a photo of any plate or number?`,
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
      photo: 'photo',
    },
    page: (field: string, shown: string, other: string) =>
      `The page itself disagrees about the ${field}: “${shown}” and “${other}”. Please check.`,
    packs: (quote: string) => `The packs disagree about “${quote}”.`,
    knownPage: (other: string, source: string) => `The page also gives “${other}” (${source}).`,
    askPrice: (shown: string, other: string) => `Is the price ${shown} or ${other}?`,
  },
  missing: {
    serial: 'The advert gives no serial number.',
    serialAsk: 'Could you send me the serial number, with a photo of it close up?',
    photos: 'The advert shows no photograph.',
    photosAsk: 'Could you send photos of the whole machine from all sides and of the underside?',
    model: 'The advert names no model that is known here.',
    photograph: (label: string, tells: string) => `Look for, or ask for, a photo of ${label}. ${tells}`,
    modelAsk: 'Is there a model name or number on a plate or decal? A photo would help.',
  },
  source: {
    none: 'no source given',
  },
} as const;
