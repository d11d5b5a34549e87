import { pastTold, priceEnquiry } from '../audit/price-enquiry';
import type { Knowledge } from '../pack/knowledge';
import { modelsNamed } from '../price/writing';
import type { Question, Replies } from './engine-messages';

type PriceQuestion = Extract<Question, { about: 'priceModels' | 'price' | 'past' }>;

/** What the room of prices asks. */
export function answerToPrice(
  question: PriceQuestion,
  knowledge: Knowledge,
): Replies['priceModels' | 'price' | 'past'] {
  switch (question.about) {
    case 'priceModels':
      return modelsNamed(knowledge);
    case 'price':
      return priceEnquiry(question.asked, knowledge);
    case 'past':
      return pastTold(question.price, null, question.asOf, knowledge);
  }
}
