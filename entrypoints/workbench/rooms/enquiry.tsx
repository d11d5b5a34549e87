import '../../../src/view/style/findings.css';
import '../../../src/view/style/likely.css';
import '../../../src/view/style/time-line.css';
import '../../../src/view/style/enquiry.css';
import { NOTHING_ASKED } from '../../../src/session/machine-asked';
import { EnquiryRoom, type EnquiryState } from '../../../src/view/workbench/EnquiryRoom';
import { NO_PHOTOS } from '../../../src/view/workbench/OwnPhotos';
import type { Bench, OpenRoom } from '../bench';
import { enquiryActions } from '../enquiry-actions';
import { roomState } from '../room-state';
import { takeSelection } from '../take-selection';

export function openRoom({ engine, handed, isPrivate, packs, draw }: Bench): OpenRoom {
  const room = roomState<EnquiryState>(
    {
      ...{
        asked: NOTHING_ASKED,
        told: null,
        serial: '',
        name: '',
        text: '',
        pack: null,
        numbered: null,
        trouble: null,
      },
      ...{ photos: NO_PHOTOS, isPrivate },
    },
    draw,
  );
  const { actions, shelfRead, askAbout } = enquiryActions({ engine, handed, isPrivate }, room.now, room.change);
  packs.onShelf(shelfRead);
  const marked = () => void takeSelection().then((text) => text !== null && askAbout(text));
  addEventListener('hashchange', marked);
  marked();
  return {
    content: () => (
      <EnquiryRoom state={room.now()} actions={actions} packs={packs.state()} packsActions={packs.actions} />
    ),
  };
}
