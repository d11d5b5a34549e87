import type { PriceAnswer } from '../../../audit/price-enquiry';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';

const texts = priceRoomTexts.worth;

/** What the thing is good for, and what else would do. */
export function Worth({ answer, onModel }: { answer: PriceAnswer; onModel: (model: string) => void }) {
  const { suits, alternatives } = answer;
  return (
    <>
      <Listed heading={texts.good} lines={suits.good} />
      <Listed heading={texts.poor} lines={suits.poor} />
      <h3>{texts.alternatives}</h3>
      {alternatives.length === 0 && <p class="soft">{texts.none}</p>}
      <ul class="shelf" data-part="price-alternatives">
        {alternatives.map(({ model, label, common, differs, band }) => (
          <li key={model} class="pack">
            <button type="button" class="button plain" onClick={() => onModel(label)}>
              {label}
            </button>
            {band && (
              <span> {texts.band(wholeMoney(band.low, band.currency), wholeMoney(band.high, band.currency))}</span>
            )}
            <p class="soft">{texts.same(common.join('; '))}</p>
            <ul>
              {differs.map(({ attribute, name, here, there }) => (
                <li key={attribute}>{texts.other(name, there, here)}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </>
  );
}

function Listed({ heading, lines }: { heading: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
