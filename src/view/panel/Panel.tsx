import type { Screen } from '../../session/screen';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { AuditView } from './AuditView';
import { Notice } from './Notice';
import { summaryOf } from './summary';

export interface PanelProps {
  screen: Screen;
  /** Address of the page with the packs. */
  packsPage: string;
  /** Puts a text on the clipboard; answers whether it is there now. */
  copy: (text: string) => Promise<boolean>;
}

/** The side panel: one screen at a time, announced to those who can't see it change. */
export function Panel({ screen, packsPage, copy }: PanelProps) {
  return (
    <div class="panel" data-screen={screen.screen}>
      <header class="plate">
        <p class="plate-name">{texts.product}</p>
        <a
          class="plate-link"
          href={packsPage}
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
      <main>{content(screen, packsPage, copy)}</main>
    </div>
  );
}

function content(screen: Screen, packsPage: string, copy: PanelProps['copy']) {
  switch (screen.screen) {
    case 'audit':
      return <AuditView key={`${screen.reading.tab}/${screen.reading.number}`} screen={screen} copy={copy} />;
    case 'waiting':
      return (
        <Notice heading={texts.waiting.heading}>
          <p>{texts.waiting.text}</p>
          <p class="soft">{texts.waiting.hint}</p>
        </Notice>
      );
    case 'no-pack':
      return (
        <Notice heading={texts.noPack.heading}>
          <p>{texts.noPack.text(shown(screen.listing.title, 160))}</p>
          <p>
            <a class="button" href={packsPage} target="_blank" rel="noreferrer">
              {texts.noPack.action}
            </a>
          </p>
        </Notice>
      );
    default: {
      const { heading, text } = plainNotice(screen);
      return (
        <Notice heading={heading}>
          <p>{text}</p>
        </Notice>
      );
    }
  }
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
