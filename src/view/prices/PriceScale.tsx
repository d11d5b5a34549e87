import { moneyText } from '../../audit/money-text';
import type { PriceReport, PriceSeen } from '../../audit/types';
import { priceScaleTexts as texts } from '../../text/catalogue/price-scale';
import { priceTexts } from '../../text/catalogue/prices';
import { wholeMoney } from '../money';
import { rowsOf, type Scale, scaleOf } from '../price-scale';
import { anchorAt } from './anchor';
import { AskedMark, Bracket, SeenMark } from './marks';
import { ScaleLegend } from './ScaleLegend';

interface Props {
  band: Pick<NonNullable<PriceReport['band']>, 'low' | 'mid' | 'high' | 'currency'>;
  /** The advert's price in the band's currency, and as it is written; null without one. */
  asked: { value: number; text: string } | null;
  seen: readonly PriceSeen[];
}

/** So many marks can be told apart, or drawn at all. */
const MOST = 400;
/** Hundredths of the width that two marks of a row stand apart, on the narrowest panel, and how many rows there are. */
const APART = 3.2;
const MOST_ROWS = 8;
const ROW = 11;

/**
 * A ruled line: the usual prices between two brackets, the middle as a tick, above it each price that was counted, and this
 * advert's own. All of it stands in words and in a table too.
 */
export function PriceScale({ band, asked, seen }: Props) {
  const marks = seen.filter((one): one is PriceSeen & { price: number } => one.price !== null).slice(0, MOST);
  const scale = scaleOf(
    band,
    asked?.value ?? null,
    marks.map(({ price }) => price),
  );
  const rows = rowsOf(scale.seen, APART, MOST_ROWS);
  const line = (asked ? 58 : 30) + ROW * (rows.length > 0 ? Math.max(...rows) + 1 : 0);
  const [low, mid, high] = [band.low, band.mid, band.high].map((each) => wholeMoney(each, band.currency)) as [
    string,
    string,
    string,
  ];
  const count = (kind: PriceSeen['kind']) => marks.filter((one) => one.kind === kind).length;
  const label = texts.label(asked?.text ?? null, low, mid, high);
  return (
    <figure class="price-scale">
      <svg
        class="scale"
        role="img"
        aria-label={marks.length > 0 ? `${label} ${texts.labelSeen(count('asked'), count('paid'))}` : label}
        width="100%"
        height={line + 50}
      >
        <line class="scale-line" x1="1%" x2="99%" y1={line} y2={line} />
        <Bracket at={scale.low} y={line} opens />
        <Bracket at={scale.high} y={line} />
        <line class="scale-band" x1={`${scale.low}%`} x2={`${scale.high}%`} y1={line} y2={line} />
        <line class="scale-tick" x1={`${scale.mid}%`} x2={`${scale.mid}%`} y1={line - 7} y2={line + 7} />
        {scale.asked !== null && asked && <AskedMark at={scale.asked} y={line} text={asked.text} />}
        {marks.map((one, i) => (
          <SeenMark
            key={`${one.entry ?? ''}${i}`}
            kind={one.kind}
            at={scale.seen[i]!}
            y={line - 22 - rows[i]! * ROW}
            counted={one.counted}
            title={texts.mark(priceTexts.kinds[one.kind], moneyText(String(one.amount), one.currency), one.date)}
          />
        ))}
        {bandLabels(scale, low, high).map(({ at, text, anchor }) => (
          <text key={text} class="scale-text" x={`${at}%`} y={line + 34} text-anchor={anchor}>
            {text}
          </text>
        ))}
      </svg>
      {marks.length > 0 && <ScaleLegend marks={marks} withThis={asked !== null} beyond={scale.beyond} />}
    </figure>
  );
}

type Anchor = 'start' | 'middle' | 'end';

/** Hundredths of the width that two labels need between them. */
const LABELS_APART = 24;

/** The ends of the band, each written away from the other; one label where the brackets stand close together. */
function bandLabels(scale: Scale, low: string, high: string): { at: number; text: string; anchor: Anchor }[] {
  if (scale.high - scale.low < LABELS_APART) {
    const at = (scale.low + scale.high) / 2;
    return [{ at, text: `${low} – ${high}`, anchor: anchorAt(at) }];
  }
  return [
    { at: scale.low, text: low, anchor: scale.low < LABELS_APART ? 'start' : 'middle' },
    { at: scale.high, text: high, anchor: scale.high > 100 - LABELS_APART ? 'end' : 'middle' },
  ];
}
