import { moneyText } from '../../audit/money-text';
import type { PriceReport, PriceSeen } from '../../audit/types';
import { priceTableTexts as texts } from '../../text/catalogue/price-table';
import { priceTexts } from '../../text/catalogue/prices';
import { wholeMoney } from '../money';
import { SeenWhere } from './SeenWhere';

interface Props {
  band: NonNullable<PriceReport['band']>;
  seen: readonly PriceSeen[];
  /** How many were looked at, where more than these. */
  looked?: number | undefined;
}

/** So many rows are shown; the file that can be saved holds all of one's own. */
const MOST = 100;

/** The prices behind the band, for whoever would rather read than look. Fetched where it is opened, see `SeenBehind`. */
export function SeenTable({ band, seen, looked = seen.length }: Props) {
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reachable by keyboard */}
      <section class="price-table" tabIndex={0} aria-label={texts.heading}>
        <table>
          <caption class="soft">{texts.caption}</caption>
          <thead>
            <tr>
              {[texts.amount, texts.date, texts.of, texts.today, texts.counts, texts.moves, texts.from].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {seen.slice(0, MOST).map((one, i) => (
              <tr key={`${one.entry ?? ''}${i}`} data-kind={one.kind}>
                <td class="whole">
                  {texts.price(priceTexts.kinds[one.kind], moneyText(String(one.amount), one.currency))}
                </td>
                <td class="whole" data-label={texts.date}>
                  {one.date}
                </td>
                <td class="what">
                  {texts.what(one.label, one.grade)}
                  <SeenWhere of={one} />
                </td>
                {one.price === null ? (
                  <td colSpan={3}>{texts.no(texts.leftOut[one.leftOut ?? 'amount'])}</td>
                ) : (
                  <>
                    <td class="whole" data-label={texts.today}>
                      {wholeMoney(one.price, band.currency)}
                    </td>
                    <td class="whole" data-label={texts.counts}>
                      {one.counted.toFixed(2)}
                    </td>
                    <td class="whole" data-label={texts.moves}>
                      {texts.percent((one.pull - 1) * 100)}
                    </td>
                  </>
                )}
                <td data-label={texts.from}>{one.pack ?? texts.own}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {looked > MOST && <p class="soft">{texts.more(looked - MOST)}</p>}
    </>
  );
}
