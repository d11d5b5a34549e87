import { besideTexts } from './beside';
import { changesTold } from './changes-told';
import { cli } from './cli';
import { draftRoomTexts } from './draft-room';
import { draftTexts } from './drafts';
import { enquiryTexts } from './enquiry';
import { explainTexts } from './explain';
import { followTexts } from './follow';
import { goAndSeeTexts } from './go-and-see';
import { identifyTexts } from './identify';
import { identifyCliTexts } from './identify-cli';
import { judgeTexts } from './judged';
import { keeperTexts } from './keeper';
import { likelyTexts } from './likely';
import { originTexts } from './origin';
import { outdatedTexts } from './outdated';
import { outlineTexts } from './outline';
import { ownTexts } from './own';
import { packCliTexts } from './pack-cli';
import { panelTexts } from './panel';
import { photoTexts } from './photos';
import { pickTexts } from './picks';
import { priceCliTexts } from './price-cli';
import { priceFieldTexts } from './price-fields';
import { priceRoomTexts } from './price-room';
import { priceScaleTexts } from './price-scale';
import { priceTableTexts } from './price-table';
import { priceTexts } from './prices';
import { proposeTexts } from './propose';
import { rememberedTexts } from './remembered';
import { sealTexts } from './seal';
import { selectionTexts } from './selection';
import { sheetTexts } from './sheet';
import { sheetRoomTexts } from './sheet-room';
import { shownTexts } from './shown';
import { timeLineTexts } from './time-line';
import { installTexts, workbenchTexts } from './workbench';
export const texts = {
  beside: besideTexts,
  changesTold,
  follow: followTexts,
  judged: judgeTexts,
  keeper: keeperTexts,
  cli,
  drafts: draftTexts,
  draftRoom: draftRoomTexts,
  enquiry: enquiryTexts,
  explain: explainTexts,
  goAndSee: goAndSeeTexts,
  likely: likelyTexts,
  identify: identifyTexts,
  identifyCli: identifyCliTexts,
  origin: originTexts,
  outdated: outdatedTexts,
  outline: outlineTexts,
  own: ownTexts,
  packCli: packCliTexts,
  panel: panelTexts,
  photos: photoTexts,
  picks: pickTexts,
  price: priceTexts,
  priceCli: priceCliTexts,
  priceRoom: priceRoomTexts,
  priceFields: priceFieldTexts,
  priceScale: priceScaleTexts,
  priceTable: priceTableTexts,
  propose: proposeTexts,
  remembered: rememberedTexts,
  seal: sealTexts,
  selection: selectionTexts,
  sheet: sheetTexts,
  sheetRoom: sheetRoomTexts,
  shown: shownTexts,
  timeLine: timeLineTexts,
  install: installTexts,
  workbench: workbenchTexts,
  product: {
    name: 'Bedplate',
    description: 'Holds listings of old machines against what clubs know.',
    buttonTitle: 'Read this advert',
  },
} as const;
