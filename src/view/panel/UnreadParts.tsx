import { panelTexts } from '../../text/catalogue/panel';
import { shown } from '../shown';

const ADDRESSES_MOST = 3;
const ADDRESS_LONGEST = 80;

/** Frames of the page that show something of another site, which the reader can't look into: the advert may stand there. */
export function UnreadParts({ addresses }: { addresses: readonly string[] }) {
  const named = [...new Set(addresses.map(withoutQuery))];
  return (
    <>
      {named.slice(0, ADDRESSES_MOST).map((address) => (
        <p key={address} class="soft" data-part="unread" dir="auto">
          {panelTexts.read.unread(shown(address, ADDRESS_LONGEST))}
        </p>
      ))}
    </>
  );
}

/** Of the same place many frames may be shown, each asked for with its own words. */
const withoutQuery = (address: string): string => address.replace(/^(?:https?:)?\/\//, '').replace(/[?#].*$/s, '');
