import { panelTexts } from '../../text/catalogue/panel';
import { wholeMoney } from '../money';
import { type Scale, scaleOf } from '../price-scale';

const texts = panelTexts.price;

interface Props {
  band: { low: number; mid: number; high: number; currency: string };
  /** The advert's price in the band's currency, and as it is written; null without one. */
  asked: { value: number; text: string } | null;
}

/** A ruled line: the usual prices between two brackets, the middle as a tick, this advert's price as a mark above. */
export function PriceScale({ band, asked }: Props) {
  const scale = scaleOf(band, asked?.value ?? null);
  const [low, mid, high] = [band.low, band.mid, band.high].map((each) => wholeMoney(each, band.currency)) as [
    string,
    string,
    string,
  ];
  const label = texts.scaleLabel(asked?.text ?? wholeMoney(band.mid, band.currency), low, mid, high);
  return (
    <svg class="scale" role="img" aria-label={label} width="100%" height="112">
      <line class="scale-line" x1="1%" x2="99%" y1="58" y2="58" />
      <Bracket at={scale.low} opens />
      <Bracket at={scale.high} />
      <line class="scale-band" x1={`${scale.low}%`} x2={`${scale.high}%`} y1="58" y2="58" />
      <line class="scale-tick" x1={`${scale.mid}%`} x2={`${scale.mid}%`} y1="51" y2="65" />
      {bandLabels(scale, low, high).map(({ at, text, anchor }) => (
        <text key={text} class="scale-text" x={`${at}%`} y="92" text-anchor={anchor}>
          {text}
        </text>
      ))}
      {scale.asked !== null && asked && (
        <>
          <line class="scale-asked" x1={`${scale.asked}%`} x2={`${scale.asked}%`} y1="34" y2="66" />
          <circle class="scale-dot" cx={`${scale.asked}%`} cy="34" r="5" />
          <text class="scale-text scale-this" x={`${scale.asked}%`} y="20" text-anchor={anchorAt(scale.asked)}>
            {asked.text}
          </text>
        </>
      )}
    </svg>
  );
}

type Anchor = 'start' | 'middle' | 'end';

/** Hundredths of the width that two labels need between them. */
const APART = 24;

/** The ends of the band, each written away from the other; one label where the brackets stand close together. */
function bandLabels(scale: Scale, low: string, high: string): { at: number; text: string; anchor: Anchor }[] {
  if (scale.high - scale.low < APART) {
    const at = (scale.low + scale.high) / 2;
    return [{ at, text: `${low} – ${high}`, anchor: anchorAt(at) }];
  }
  return [
    { at: scale.low, text: low, anchor: scale.low < APART ? 'start' : 'middle' },
    { at: scale.high, text: high, anchor: scale.high > 100 - APART ? 'end' : 'middle' },
  ];
}

/** A long label near an edge is written inwards, so that it is never cut off. */
function anchorAt(at: number): Anchor {
  if (at < 40) return 'start';
  return at > 60 ? 'end' : 'middle';
}

function Bracket({ at, opens = false }: { at: number; opens?: boolean }) {
  const inward = opens ? 6 : -6;
  return (
    <svg x={`${at}%`} y="44" overflow="visible" aria-hidden="true">
      <path class="scale-bracket" d={`M${inward} 0H0V28H${inward}`} />
    </svg>
  );
}
