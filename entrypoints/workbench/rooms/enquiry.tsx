import '../../../src/view/style/findings.css';
import '../../../src/view/style/likely.css';
import '../../../src/view/style/enquiry.css';
import { NOTHING_ASKED } from '../../../src/session/machine-asked';
import { EnquiryRoom, type EnquiryState } from '../../../src/view/workbench/EnquiryRoom';
import type { Bench, OpenRoom } from '../bench';
import { enquiryActions } from '../enquiry-actions';

export function openRoom({ engine, packs, draw }: Bench): OpenRoom {
  let state: EnquiryState = {
    ...{ asked: NOTHING_ASKED, told: null, serial: '', name: '', pack: null, numbered: null, trouble: null },
  };
  const { actions, shelfRead } = enquiryActions(
    engine,
    () => state,
    (change) => {
      state = { ...state, ...change };
      draw();
    },
  );
  packs.onShelf(shelfRead);
  return {
    content: () => <EnquiryRoom state={state} actions={actions} packs={packs.state()} packsActions={packs.actions} />,
  };
}
