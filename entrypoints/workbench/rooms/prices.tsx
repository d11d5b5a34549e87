import '../../../src/view/style/disclosure.css';
import '../../../src/view/style/enquiry.css';
import '../../../src/view/style/price.css';
import '../../../src/view/style/prices.css';
import { NOTHING_WRITTEN, OBSERVATION_FIELDS } from '../../../src/price/observation-fields';
import { writtenInLink } from '../../../src/session/price-link';
import { PricesRoom } from '../../../src/view/workbench/prices/PricesRoom';
import { NO_PAST } from '../../../src/view/workbench/prices/past';
import { NO_RATES } from '../../../src/view/workbench/prices/rates';
import type { PricesState } from '../../../src/view/workbench/prices/state';
import { onMessage } from '../../shared/follow-messages';
import type { Bench, OpenRoom } from '../bench';
import { pricesActions } from '../prices-actions';
import { roomState } from '../room-state';

export function openRoom({ engine, isPrivate, packs, draw }: Bench): OpenRoom {
  const room = roomState<PricesState>(
    {
      ...{
        models: null,
        model: '',
        grade: '',
        finish: 'plain',
        robust: true,
        asking: '',
        problem: null,
        answer: null,
        looking: false,
        askedFor: '',
        askedGrade: false,
      },
      ...{ kept: isPrivate ? [] : null, form: NOTHING_WRITTEN, formProblems: [], saved: false, removed: null },
      ...{ bringing: { step: 'none' }, rates: { ...NO_RATES, kept: isPrivate ? [] : null }, past: NO_PAST },
      ...{ trouble: null, isPrivate },
    },
    draw,
  );
  const prices = pricesActions(engine, room.now, room.change);
  const filled = () => {
    const written = writtenInLink(location.hash, OBSERVATION_FIELDS);
    if (Object.keys(written).length > 0) prices.fillIn(written);
  };
  addEventListener('hashchange', filled);
  filled();
  onMessage('prices-changed', () => void prices.follow());
  packs.onShelf(() => void prices.packsRead());
  void prices.start();
  return { content: () => <PricesRoom state={room.now()} actions={prices.actions} /> };
}
