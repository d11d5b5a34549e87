import { useState } from 'preact/hooks';
import type { PriceReport, PriceSeen } from '../../audit/types';
import { priceScaleTexts as texts } from '../../text/catalogue/price-scale';
import { lazily } from '../lazily';
import { Disclosure } from '../panel/Disclosure';

interface Props {
  band: NonNullable<PriceReport['band']>;
  seen: readonly PriceSeen[];
  /** How many were looked at, where more than these. */
  looked?: number | undefined;
}

const SeenTable = lazily(async () => (await import('./SeenTable')).SeenTable);

/** The table behind the drawn scale: it is fetched when somebody opens it, so that no page is later for it. */
export function SeenBehind({ band, seen, looked }: Props) {
  const [opened, setOpened] = useState(false);
  if (seen.length === 0) return null;
  return (
    <Disclosure label={texts.behind} part="price-table" onToggle={() => setOpened(true)}>
      {opened && <SeenTable band={band} seen={seen} looked={looked} />}
    </Disclosure>
  );
}
