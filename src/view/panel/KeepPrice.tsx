import type { Audit } from '../../audit/types';
import type { Listing } from '../../listing/types';
import { priceLink } from '../../session/price-link';
import { panelTexts } from '../../text/catalogue/panel';

const texts = panelTexts.price;

/** The way to the room of prices, with this advert's price filled in. */
export function KeepPrice({ workbench, ...advert }: { workbench: string; audit: Audit; listing: Listing }) {
  const link = priceLink(advert);
  if (link === null) return null;
  return (
    <span class="keep-price">
      <a href={`${workbench}${link}`} target="_blank" rel="noreferrer" data-part="keep-price">
        {texts.keep}
      </a>
    </span>
  );
}
