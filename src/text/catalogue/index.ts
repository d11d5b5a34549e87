import { cli } from './cli';
import { draftRoomTexts } from './draft-room';
import { draftTexts } from './drafts';
import { enquiryTexts } from './enquiry';
import { explainTexts } from './explain';
import { outdatedTexts } from './outdated';
import { panelTexts } from './panel';
import { installTexts, workbenchTexts } from './workbench';
export const texts = {
  cli,
  drafts: draftTexts,
  draftRoom: draftRoomTexts,
  enquiry: enquiryTexts,
  explain: explainTexts,
  outdated: outdatedTexts,
  panel: panelTexts,
  install: installTexts,
  workbench: workbenchTexts,
  product: {
    name: 'Bedplate',
    description: 'Holds listings of old machines against what clubs know.',
    buttonTitle: 'Read this advert',
  },
} as const;
