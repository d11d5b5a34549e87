import type { PriceAnswer } from '../../../audit/price-enquiry';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { priceTexts } from '../../../text/catalogue/prices';
import { wholeMoney } from '../../money';
import { PriceScale } from '../../prices/PriceScale';
import { SeenBehind } from '../../prices/SeenBehind';
import { OverTime } from './OverTime';
import { PastLines } from './PastLines';
import { Worth } from './Worth';

const texts = priceRoomTexts.answer;

interface Props {
  answer: PriceAnswer;
  asking: string;
  /** Whether it was asked for one in a certain condition. */
  graded: boolean;
  onModel: (model: string) => void;
  /** The way to type in the exchange rate that is missing. */
  onRate: () => void;
  /** Whether wild prices are held down, and the way to change it. */
  robust: boolean;
  onHold: (robust: boolean) => void;
}

/** What such a thing goes for, in words, on a scale and as a table; then what it is worth having for. */
export function PriceOutcome({ answer, asking, graded, onModel, onRate, robust, onHold }: Props) {
  const { band, standing, why, ratio, converted, stated, index, factors, launch } = answer;
  const says = why && why !== 'no-price' ? priceTexts.why[why] : texts.standings[standing];
  return (
    <section class="room-part" data-part="price-answer" data-standing={standing} aria-labelledby="price-of">
      <h2 id="price-of" tabIndex={-1}>
        {texts.of(answer.label, answer.grade?.label ?? null)}
      </h2>
      {(asking !== '' || !band) && (
        <p class="verdict">
          {asking === '' ? says : texts.asking(asking, says)}{' '}
          {converted && priceTexts.converted(converted, wholeMoney(converted.amount, converted.to))}{' '}
          {ratio !== null && texts.ratio(ratio.toFixed(2))}
        </p>
      )}
      {why === 'no-rate' && (
        <button type="button" class="button plain" data-part="type-rate" onClick={onRate}>
          {texts.typeRate}
        </button>
      )}
      {answer.grade && !graded && <p class="soft">{texts.usualGrade(answer.grade.label)}</p>}
      {band && (
        <>
          <p>
            {texts.band(money(band.low, band), money(band.high, band), money(band.mid, band))}{' '}
            {texts.half(money(band.half.low, band), money(band.half.high, band))} {texts.of80[band.kind]}
          </p>
          <p>{texts.behind(String(Math.round(band.stated)), band.observations)}</p>
          <PriceScale
            band={band}
            seen={answer.seen}
            asked={ratio === null ? null : { value: ratio * band.mid, text: asking }}
          />
          <p class="soft">
            {stated && texts.stated(stated.date, stated.source)} {index && texts.index(index.last, index.source)}
          </p>
          {answer.seen.length > 0 && (
            <label class="hold-wild">
              <input
                type="checkbox"
                checked={robust}
                data-part="hold-wild"
                onChange={(event) => onHold(event.currentTarget.checked)}
              />{' '}
              {texts.hold}
            </label>
          )}
          <SeenBehind band={band} seen={answer.seen} looked={answer.looked} />
          <OverTime band={band} years={answer.years} />
        </>
      )}
      {factors.length > 0 && (
        <>
          <h3>{texts.factors}</h3>
          <ul>
            {factors.map(({ id, text, times }) => (
              <li key={id}>{texts.factor(text, String(times))}</li>
            ))}
          </ul>
        </>
      )}
      {launch && (
        <>
          <h3>{priceRoomTexts.past.launch}</h3>
          <PastLines past={launch} part="price-launch" />
        </>
      )}
      <Worth answer={answer} onModel={onModel} />
    </section>
  );
}

function money(amount: number, { currency }: { currency: string }): string {
  return wholeMoney(amount, currency);
}
