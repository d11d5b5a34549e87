import type { PriceReport, PriceSeen } from '../../../audit/types';
import { median } from '../../../price/quantile';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';
import { Disclosure } from '../../panel/Disclosure';

const texts = priceRoomTexts.time;
/** Fewer prices make no history. */
const LEAST = 10;

/** How the price went over the years, from ten prices on. */
export function OverTime({ band, seen }: { band: NonNullable<PriceReport['band']>; seen: readonly PriceSeen[] }) {
  const years = new Map<string, number[]>();
  for (const { price, kind, date } of seen) {
    if (price === null) continue;
    const year = date.slice(0, 4);
    years.set(year, [...(years.get(year) ?? []), price * inKindOf(band, kind)]);
  }
  const count = [...years.values()].reduce((sum, prices) => sum + prices.length, 0);
  if (count < LEAST) return null;
  return (
    <Disclosure label={texts.heading} part="price-years">
      <table class="price-years">
        <caption class="soft">{texts.intro[band.kind]}</caption>
        <thead>
          <tr>
            <th scope="col">{texts.year}</th>
            <th scope="col">{texts.middle}</th>
            <th scope="col">{texts.count}</th>
          </tr>
        </thead>
        <tbody>
          {[...years].sort().map(([year, prices]) => (
            <tr key={year}>
              <th scope="row">{year}</th>
              <td>{wholeMoney(median(prices), band.currency)}</td>
              <td>{prices.length}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Disclosure>
  );
}

/** What is asked brought to what is paid, or the other way round, so that a year's middle is of one kind. */
function inKindOf(band: NonNullable<PriceReport['band']>, kind: PriceSeen['kind']): number {
  if (kind === band.kind) return 1;
  return kind === 'asked' ? 1 / band.askedToPaid : band.askedToPaid;
}
