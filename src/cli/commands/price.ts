import { type PriceAsked, priceEnquiry } from '../../audit/price-enquiry';
import { compile } from '../../engine';
import type { Knowledge, ModelKnown } from '../../pack/knowledge';
import type { Rate } from '../../pack/schema/prices';
import { writtenPrice } from '../../price/written-price';
import { writtenRate } from '../../price/written-rate';
import { priceCliTexts as texts } from '../../text/catalogue/price-cli';
import { priceRoomTexts } from '../../text/catalogue/price-room';
import { dayOf, readArguments } from '../arguments';
import { today } from '../auditor';
import { BadInput } from '../bad-input';
import { pageWidth } from '../layout';
import { loadObservations } from '../observations-file';
import { loadPacks } from '../packs';
import { priceText } from '../price-text';
import { printableJson } from '../printable';
import { NONE_SEALED, type SealedPacks, sealsOf } from '../sealed-packs';

/** `npm run -s price`: what a model in a grade costs, and where an asking price stands. */
export function priceCommand(argv: string[], sealed: SealedPacks = NONE_SEALED): string {
  const { usage } = texts;
  const { values, positionals } = readArguments(
    argv,
    {
      model: { type: 'string' },
      grade: { type: 'string' },
      asking: { type: 'string' },
      finish: { type: 'string' },
      seen: { type: 'string' },
      rate: { type: 'string', multiple: true },
      exact: { type: 'boolean' },
      pack: { type: 'string', multiple: true },
      'as-of': { type: 'string' },
      json: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) return `${usage}\n`;
  if (positionals[0] !== undefined) throw new BadInput(texts.noArguments(positionals[0]));
  if (values.model === undefined) throw new BadInput(texts.noModel(usage));
  const asOf = values['as-of'] === undefined ? today() : dayOf(values['as-of']);
  const knowledge = compile(loadPacks(values.pack ?? [], sealed), sealsOf(sealed));
  const model = modelOf(values.model, knowledge);
  const own = values.seen === undefined ? [] : loadObservations(values.seen, asOf, knowledge);
  const asked: PriceAsked = {
    ...{ model: model.ref, grade: gradeOf(values.grade, model, knowledge), finish: finishOf(values.finish) },
    ...{ asking: askingOf(values.asking), asOf, own, rates: (values.rate ?? []).map((rate) => rateOf(rate, asOf)) },
    robust: !values.exact,
  };
  const answer = priceEnquiry(asked, knowledge)!;
  return values.json
    ? `${printableJson(answer, 2)}\n`
    : `${priceText(answer, asked.asking, pageWidth(process.stdout.columns))}\n`;
}

const MOST_NEAR = 8;

/** A model by its ref, its id, its label or a name of it. @throws BadInput on none, or on several. */
function modelOf(given: string, { models, nameList }: Knowledge): ModelKnown {
  const folded = given.trim().toLowerCase();
  const byRef = models.get(folded);
  if (byRef) return byRef;
  const found = new Map<string, ModelKnown>();
  const near = new Set<string>();
  const weigh = (text: string, model: ModelKnown): void => {
    if (text.toLowerCase() === folded) found.set(model.ref, model);
    else if (folded.length > 2 && text.toLowerCase().includes(folded)) near.add(model.ref);
  };
  for (const model of models.values()) {
    weigh(model.id, model);
    weigh(model.label, model);
  }
  for (const { text, of } of nameList) if ('model' in of) weigh(text, of.model);
  if (found.size === 1) return [...found.values()][0]!;
  if (found.size > 1) throw new BadInput(texts.severalModels(given, [...found.keys()].join(', ')));
  throw new BadInput(texts.noSuchModel(given, [...near].slice(0, MOST_NEAR).join(', ')));
}

function gradeOf(given: string | undefined, model: ModelKnown, { packs }: Knowledge): string | null {
  if (given === undefined) return null;
  const grades = packs.find((pack) => pack.id === model.pack)?.grades ?? [];
  if (!grades.some(({ id }) => id === given))
    throw new BadInput(texts.noSuchGrade(given, grades.map(({ id }) => id).join(', ')));
  return given;
}

function finishOf(given = 'plain'): PriceAsked['finish'] {
  if (given !== 'plain' && given !== 'refinished') throw new BadInput(texts.finish(given));
  return given;
}

function askingOf(given: string | undefined): PriceAsked['asking'] {
  if (given === undefined) return null;
  const found = writtenPrice(given);
  if (found.ok) return { amount: found.amount, currency: found.currency };
  throw new BadInput({ form: texts.notMoney, currency: texts.noCurrency, amount: texts.notAPrice }[found.wrong](given));
}

function rateOf(given: string, asOf: string): Rate {
  const [from = '', to = '', rate = '', date = ''] = given.trim().split(/\s+/);
  const found = writtenRate({ from, to, rate, date }, asOf);
  if (!found.ok) {
    const { field, wrong } = found.problems[0]!;
    throw new BadInput(texts.rateForm(given, priceRoomTexts.rates.wrong(field, wrong)));
  }
  return found.rate;
}
