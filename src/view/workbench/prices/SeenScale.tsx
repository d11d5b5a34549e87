import type { PriceReport, PriceSeen } from '../../../audit/types';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';

const texts = priceRoomTexts.scale;

interface Props {
  band: NonNullable<PriceReport['band']>;
  seen: readonly PriceSeen[];
  asking: { value: number; text: string } | null;
}

/** So many marks can be told apart, or drawn at all. */
const MOST = 400;
/** Room at either end, in hundredths of the width. */
const MARGIN = 6;

/** A ruled line with the band between brackets, and every price that was counted: rings are asked, squares are paid. */
export function SeenScale({ band, seen, asking }: Props) {
  const marks = seen.filter((one): one is PriceSeen & { price: number } => one.price !== null).slice(0, MOST);
  const at = placing([band.low, band.high, ...(asking ? [asking.value] : []), ...marks.map(({ price }) => price)]);
  const count = (kind: PriceSeen['kind']) => marks.filter((one) => one.kind === kind).length;
  const [low, high] = [wholeMoney(band.low, band.currency), wholeMoney(band.high, band.currency)];
  return (
    <figure class="seen">
      <svg
        class="scale"
        role="img"
        aria-label={texts.label(low, high, count('asked'), count('paid'), asking?.text ?? null)}
        width="100%"
        height="104"
      >
        <line class="scale-line" x1="1%" x2="99%" y1="56" y2="56" />
        <line class="scale-band" x1={`${at(band.low)}%`} x2={`${at(band.high)}%`} y1="56" y2="56" />
        <Bracket at={at(band.low)} inward={6} />
        <Bracket at={at(band.high)} inward={-6} />
        {marks.map((one, i) => (
          <Mark key={`${one.entry ?? ''}${i}`} seen={one} at={at(one.price)} row={i % 3} />
        ))}
        <text class="scale-text" x={`${at(band.low)}%`} y="92" text-anchor="start">
          {low}
        </text>
        <text class="scale-text" x={`${at(band.high)}%`} y="92" text-anchor="end">
          {high}
        </text>
        {asking && (
          <>
            <line class="scale-asked" x1={`${at(asking.value)}%`} x2={`${at(asking.value)}%`} y1="20" y2="66" />
            <text
              class="scale-text scale-this"
              x={`${at(asking.value)}%`}
              y="14"
              text-anchor={at(asking.value) > 50 ? 'end' : 'start'}
            >
              {`${asking.text}, ${texts.this}`}
            </text>
          </>
        )}
      </svg>
      <figcaption class="soft">
        {texts.asked}; {texts.paid}. {texts.paler}
      </figcaption>
    </figure>
  );
}

/** Above the line in three rows, so that equal prices don't hide each other. */
function Mark({ seen: { kind, counted }, at, row }: { seen: PriceSeen; at: number; row: number }) {
  const y = 48 - row * 10;
  const opacity = 0.35 + 0.65 * Math.min(1, counted);
  return kind === 'asked' ? (
    <circle class="seen-asked" cx={`${at}%`} cy={y} r="4" opacity={opacity} data-kind={kind} />
  ) : (
    <svg x={`${at}%`} y={y} overflow="visible" aria-hidden="true">
      <rect class="seen-paid" x="-4" y="-4" width="8" height="8" opacity={opacity} data-kind={kind} />
    </svg>
  );
}

function Bracket({ at, inward }: { at: number; inward: number }) {
  return (
    <svg x={`${at}%`} y="42" overflow="visible" aria-hidden="true">
      <path class="scale-bracket" d={`M${inward} 0H0V28H${inward}`} />
    </svg>
  );
}

/** Laid out by ratios: half the price and twice the price are equally far away. */
function placing(values: readonly number[]): (value: number) => number {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const value of values) [least, most] = [Math.min(least, value), Math.max(most, value)];
  const width = Math.max(Math.log(most / least), 0.1);
  return (value) => MARGIN + (Math.log(value / least) / width) * (100 - 2 * MARGIN);
}
