import type { Difference } from '../../../audit/alternatives';
import type { PriceAnswer } from '../../../audit/price-enquiry';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { wholeMoney } from '../../money';

const texts = priceRoomTexts.worth;

/** What the thing is good for, and what else would do. */
export function Worth({ answer, onModel }: { answer: PriceAnswer; onModel: (model: string) => void }) {
  const { suits, alternatives, band: own } = answer;
  return (
    <>
      <Listed heading={texts.good} lines={suits.good} />
      <Listed heading={texts.poor} lines={suits.poor} />
      <h3>{texts.alternatives}</h3>
      {alternatives.length === 0 && <p class="soft">{texts.none}</p>}
      <ul class="shelf" data-part="price-alternatives">
        {alternatives.map(({ model, label, common, differs, band, here }) => (
          <li key={model} class="pack">
            <button type="button" class="button plain" onClick={() => onModel(label)}>
              {label}
            </button>
            {band && (
              <span>
                {' '}
                {texts.band(...ends(band))}
                {here && texts.about(...ends(here))}
              </span>
            )}{' '}
            {own && <span class="soft">{texts.beside(...ends(own))}</span>}
            <p class="soft">{texts.same(common.join('; '))}</p>
            <ul>
              {differs.map((one) => (
                <li key={one.attribute}>{differenceText(one)}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </>
  );
}

function ends({ low, high, currency }: { low: number; high: number; currency: string }): [string, string] {
  return [wholeMoney(low, currency), wholeMoney(high, currency)];
}

function differenceText({ change, name, here, there }: Difference): string {
  return change === 'other' ? texts.other(name, there, here) : texts[change](name);
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
