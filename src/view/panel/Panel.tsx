import type { Screen } from '../../session/screen';
import type { SeenValue } from '../../session/seen';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { AuditView } from './AuditView';
import type { MakeSheet } from './GoAndSee';
import { Notice } from './Notice';
import { summaryOf } from './summary';
import { UnreadParts } from './UnreadParts';

export interface PanelProps {
  screen: Screen;
  /** Address of the workbench; a room's name after # leads there. */
  workbench: string;
  /** Puts a text on the clipboard; answers whether it is there now. */
  copy: (text: string) => Promise<boolean>;
  /** Hands a text to the browser as a file to save. */
  save: (name: string, text: string, type: string) => void;
  /** Makes a viewing sheet; null in a private window. */
  makeSheet: MakeSheet | null;
  seen: SeenActions;
  /** A private window keeps nothing. */
  isPrivate: boolean;
}

/** What can be done with answers. `about` is the page's address. */
export interface SeenActions {
  saw: (about: string, attribute: string, value: SeenValue) => void;
  takeBack: (about: string, attribute: string) => void;
}

/** The side panel: one screen at a time, announced to those who can't see it change. */
export function Panel(props: PanelProps) {
  const { screen, workbench } = props;
  return (
    <div class="panel" data-screen={screen.screen}>
      <header class="plate">
        <p class="plate-name">{texts.product}</p>
        <a
          class="plate-link"
          href={workbench}
          target="_blank"
          rel="noreferrer"
          title={texts.packsLinkTitle}
          data-part="packs-link"
        >
          {texts.packsLink}
        </a>
      </header>
      <p role="status" class="unseen">
        {announcement(screen)}
      </p>
      <main>{content(props)}</main>
    </div>
  );
}

function content({ screen, workbench, ...rest }: PanelProps) {
  switch (screen.screen) {
    case 'audit':
      return (
        <AuditView
          key={`${screen.reading.tab}/${screen.reading.number}`}
          screen={screen}
          workbench={workbench}
          {...rest}
        />
      );
    case 'waiting':
      return (
        <Notice heading={texts.waiting.heading}>
          <p>{texts.waiting.text}</p>
          <p class="soft">{texts.waiting.hint}</p>
          <ToEnquiry workbench={workbench} />
        </Notice>
      );
    case 'no-pack':
      return (
        <Notice heading={texts.noPack.heading}>
          <p>{texts.noPack.text(shown(screen.listing.title, 160))}</p>
          <p>
            <a class="button" href={workbench} target="_blank" rel="noreferrer">
              {texts.noPack.action}
            </a>
          </p>
          <ToEnquiry workbench={workbench} />
        </Notice>
      );
    default: {
      const { heading, text } = plainNotice(screen);
      return (
        <Notice heading={heading}>
          <p>{text}</p>
          {screen.screen === 'no-listing' && <UnreadParts addresses={screen.unread} />}
        </Notice>
      );
    }
  }
}

/** For whoever has a machine before them, and no advert. */
function ToEnquiry({ workbench }: { workbench: string }) {
  return (
    <p class="to-enquiry">
      {texts.onTheTable.text}{' '}
      <a href={`${workbench}#enquiry`} target="_blank" rel="noreferrer" data-part="to-enquiry">
        {texts.onTheTable.action}
      </a>
    </p>
  );
}

type PlainScreen = Exclude<Screen, { screen: 'audit' | 'waiting' | 'no-pack' }>;

function plainNotice(screen: PlainScreen): { heading: string; text: string } {
  switch (screen.screen) {
    case 'refused':
      return { heading: texts.refused.heading, text: texts.refused.reasons[screen.reason] };
    case 'failed':
      return { heading: texts.failed.heading, text: texts.failed.reasons[screen.reason] };
    case 'packs-failed':
      return { heading: texts.packsFailed.heading, text: texts.packsFailed.troubles[screen.trouble] };
    case 'reading':
      return texts.reading;
    case 'left':
      return texts.left;
    case 'broken':
      return texts.broken;
    case 'no-listing':
      return texts.noListing;
    case 'list':
      return texts.list;
  }
}

function announcement(screen: Screen): string {
  switch (screen.screen) {
    case 'audit':
      return summaryOf(screen.audit);
    case 'waiting':
      return texts.waiting.heading;
    case 'no-pack':
      return texts.noPack.heading;
    default:
      return plainNotice(screen).heading;
  }
}
