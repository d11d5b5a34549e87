import { pastTold, priceEnquiry } from '../audit/price-enquiry';
import type { Knowledge } from '../pack/knowledge';
import { modelsNamed } from '../price/writing';
import type { OwnPrices } from './answer';
import type { Question, Replies } from './engine-messages';

type PriceQuestion = Extract<Question, { about: 'priceModels' | 'price' | 'past' }>;

/** More than can be told apart on a drawn scale, and more than a table shows. */
const MOST_SEEN = 400;

/**
 * What the room of prices asks.
 * @param kept prices and rates of the user's own that are kept
 */
export function answerToPrice(
  question: PriceQuestion,
  knowledge: Knowledge,
  kept: OwnPrices,
): Replies['priceModels' | 'price' | 'past'] {
  switch (question.about) {
    case 'priceModels':
      return modelsNamed(knowledge);
    case 'price':
      return priceEnquiry(
        { ...question.asked, own: question.asked.own ?? kept.observations, rates: question.asked.rates ?? kept.rates },
        knowledge,
        MOST_SEEN,
      );
    case 'past':
      return pastTold(question.price, null, question.asOf, knowledge);
  }
}
