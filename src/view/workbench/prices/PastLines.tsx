import { moneyText } from '../../../audit/money-text';
import type { PastTold } from '../../../audit/price-enquiry';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';

const texts = priceRoomTexts.past;

/** What a price of the past comes to, each line with its source and how far that goes. */
export function PastLines({ past, part }: { past: PastTold; part: string }) {
  const { amount, currency, date, today, weeks } = past;
  return (
    <ul data-part={part}>
      <li>{texts.cost(moneyText(String(amount), currency), date)}</li>
      {today && <li>{texts.today(wholeMoney(today.amount, currency), today.last, today.source)}</li>}
      {weeks && <li>{texts.weeks(weeks.number.toFixed(1), weeks.last, weeks.source)}</li>}
      {!today && !weeks && <li>{texts.nothing(currency)}</li>}
    </ul>
  );
}
