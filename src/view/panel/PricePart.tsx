import type { ComponentChildren } from 'preact';
import { moneyText } from '../../audit/money-text';
import type { Audit } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { priceTexts } from '../../text/catalogue/prices';
import { findingAnchor } from '../finding-anchor';
import { wholeMoney } from '../money';
import { PriceScale } from '../prices/PriceScale';
import { SeenBehind } from '../prices/SeenBehind';
import { Disclosure } from './Disclosure';
import { IndexLine } from './IndexLine';
import { KnownWords } from './SaidKnown';

const texts = panelTexts.price;

/** Whether a part of its own tells where the price stands, so that no finding need say it too. */
export function hasPricePart({ kind, price }: Audit): boolean {
  return (kind === 'item' || kind === 'lot') && price.band !== null;
}

interface Keeping {
  audit: Audit;
  /** The way to keep it; nothing for a draft, whose price nobody has asked yet. */
  keep?: ComponentChildren;
}

/** The price in words, on its drawn scale, and the numbers and the source behind it for whoever asks. */
export function PricePart({ audit, words, keep }: Keeping & { words: Words }) {
  const { price: report, listing } = audit;
  const { band, ratio } = report;
  if (!band) return null;
  const finding = audit.findings.find(({ check }) => check === 'price');
  const asked = listing.price ? moneyText(listing.price.amount, listing.price.currency) : null;
  return (
    <section
      class="group"
      id={finding && findingAnchor(finding.id)}
      tabIndex={-1}
      data-part="price"
      data-standing={report.standing}
      aria-labelledby="price"
    >
      <h2 id="price">{texts.heading}</h2>
      <p>{priceText(audit)}</p>
      <PriceScale
        band={band}
        asked={asked !== null && ratio !== null ? { value: ratio * band.mid, text: asked } : null}
        seen={report.seen}
      />
      <p>{texts.band(wholeMoney(band.low, band.currency), wholeMoney(band.high, band.currency))}</p>
      {keep}
      <Disclosure label={panelTexts.how} part="how-price">
        {finding?.known.map((each) => (
          <KnownWords key={each.entry} known={each} words={words} sentence="" named />
        ))}
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
        <p class="soft">{texts.askedIsNotPaid}</p>
        <SeenBehind band={band} seen={report.seen} />
      </Disclosure>
    </section>
  );
}

/** A price of which the packs know nothing: a line, where the other one has a part. */
export function PriceLine({ audit, keep }: Keeping) {
  if (audit.price.band) return null;
  return (
    <section class="group fold" data-part="price" data-standing={audit.price.standing}>
      <IndexLine name={texts.heading}>
        {priceText(audit)}
        {keep}
      </IndexLine>
    </section>
  );
}

/** What is asked, and where that stands. */
function priceText({ price: { converted, taken, standing, why }, listing: { price } }: Audit): string {
  return [
    price ? texts.hows[price.how](moneyText(price.amount, price.currency)) : texts.none,
    taken ? priceTexts.taken(taken) : '',
    converted ? priceTexts.converted(converted, wholeMoney(converted.amount, converted.to)) : '',
    price || standing === 'no-band' ? (why ? priceTexts.why[why] : texts.standings[standing]) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function Row({ term, value }: { term: string; value: string }) {
  return (
    <>
      <dt>{term}</dt>
      <dd>{value}</dd>
    </>
  );
}
