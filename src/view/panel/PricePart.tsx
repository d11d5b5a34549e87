import { moneyText } from '../../audit/money-text';
import type { Audit } from '../../audit/types';
import { panelTexts } from '../../text/catalogue/panel';
import { wholeMoney } from '../money';
import { Disclosure } from './Disclosure';
import { PriceScale } from './PriceScale';

const texts = panelTexts.price;

/** The price in words, on its drawn scale, and the numbers behind it for whoever asks. */
export function PricePart({ audit }: { audit: Audit }) {
  const { price: report, listing } = audit;
  const asked = listing.price ? moneyText(listing.price.amount, listing.price.currency) : null;
  const { band, ratio } = report;
  return (
    <section class="group" data-part="price" data-standing={report.standing} aria-labelledby="price">
      <h2 id="price">{texts.heading}</h2>
      <p>
        {listing.price && asked !== null ? texts.hows[listing.price.how](asked) : texts.none}{' '}
        {listing.price && ratio !== null && band && listing.price.currency !== band.currency && (
          <>{texts.converted(wholeMoney(ratio * band.mid, band.currency))} </>
        )}
        {(listing.price || report.standing === 'no-band') && texts.standings[report.standing]}
      </p>
      {band && (
        <>
          <PriceScale
            band={band}
            asked={asked !== null && ratio !== null ? { value: ratio * band.mid, text: asked } : null}
          />
          <p>{texts.band(wholeMoney(band.low, band.currency), wholeMoney(band.high, band.currency))}</p>
          <p class="soft">{texts.askedIsNotPaid}</p>
          <Disclosure label={panelTexts.how} part="how-price">
            <dl class="facts">
              <dt>{texts.numbers.middle}</dt>
              <dd>{wholeMoney(band.mid, band.currency)}</dd>
              {ratio !== null && <Row term={texts.numbers.ratio} value={ratio.toFixed(2)} />}
              {report.probability !== null && (
                <Row term={texts.numbers.share} value={texts.ofHundred(Math.round(report.probability * 100))} />
              )}
              <Row term={texts.numbers.observations} value={String(band.observations)} />
              <Row term={texts.numbers.effective} value={band.effective.toFixed(1)} />
            </dl>
          </Disclosure>
        </>
      )}
    </section>
  );
}

function Row({ term, value }: { term: string; value: string }) {
  return (
    <>
      <dt>{term}</dt>
      <dd>{value}</dd>
    </>
  );
}
