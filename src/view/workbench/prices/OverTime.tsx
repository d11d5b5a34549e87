import type { PriceAnswer } from '../../../audit/price-enquiry';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';
import { Disclosure } from '../../panel/Disclosure';

const texts = priceRoomTexts.time;

/** How the price went over the years, where there are enough prices to tell. */
export function OverTime({ band, years }: { band: NonNullable<PriceAnswer['band']>; years: PriceAnswer['years'] }) {
  if (years.length === 0) return null;
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
          {years.map(({ year, middle, count }) => (
            <tr key={year}>
              <th scope="row">{year}</th>
              <td>{wholeMoney(middle, band.currency)}</td>
              <td>{count}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Disclosure>
  );
}
