import { outdatedTexts as texts } from '../text/catalogue/outdated';
import { Notice } from './panel/Notice';

interface Props {
  /** What is to be done differs: a panel is opened by a press of the button, a page of its own is reloaded. */
  place: 'panel' | 'workbench';
  reload: () => void;
}

/** Stands where a page of ours stood whose program has been replaced by a newer one. */
export function Outdated({ place, reload }: Props) {
  return (
    <div class={place} data-screen="outdated">
      <main>
        <p role="alert" class="unseen">
          {texts.heading}
        </p>
        <Notice heading={texts.heading}>
          <p>{texts.text}</p>
          <p>{texts[place]}</p>
          {place === 'workbench' && (
            <p>
              <button type="button" class="button" onClick={reload}>
                {texts.reload}
              </button>
            </p>
          )}
        </Notice>
      </main>
    </div>
  );
}
