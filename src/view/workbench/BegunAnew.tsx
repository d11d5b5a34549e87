import { workbenchTexts } from '../../text/catalogue/workbench';

const texts = workbenchTexts.begunAnew;

/** That all that was kept here is gone, until it has been read. */
export function BegunAnew({ day, onRead }: { day: string; onRead(): void }) {
  return (
    <div role="alert" class="trouble begun-anew" data-part="begun-anew">
      <p>{texts.told(day)}</p>
      <button type="button" class="button plain" data-part="begun-anew-read" onClick={onRead}>
        {texts.read}
      </button>
    </div>
  );
}
