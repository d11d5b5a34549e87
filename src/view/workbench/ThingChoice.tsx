import type { AskedThing } from '../../session/asked-things';
import { enquiryTexts } from '../../text/catalogue/enquiry';
import { OutlineDrawing } from '../outline/drawings';
import { shown } from '../shown';

const texts = enquiryTexts.things;

interface Props {
  things: readonly AskedThing[];
  chosen: AskedThing | null;
  onChoose: (pack: string | null) => void;
}

/** Which kind of thing it is, where packs speak of several. */
export function ThingChoice({ things, chosen, onChoose }: Props) {
  if (things.length === 0)
    return (
      <p class="room-part" data-part="no-things">
        {texts.none}
      </p>
    );
  if (things.length === 1) return null;
  if (chosen)
    return (
      <p class="thing-chosen" data-part="thing">
        {texts.is(shown(chosen.label, 120))}{' '}
        <button type="button" class="button plain" data-part="other-thing" onClick={() => onChoose(null)}>
          {texts.other}
        </button>
      </p>
    );
  return (
    <section class="room-part" aria-labelledby="things" data-part="things">
      <h2 id="things">{texts.heading}</h2>
      <div class="things">
        {things.map(({ pack, label, outline }) => (
          <button key={pack} type="button" class="answer thing" data-thing={pack} onClick={() => onChoose(pack)}>
            {outline && (
              <span aria-hidden="true">
                <OutlineDrawing outline={outline} place={null} />
              </span>
            )}
            <b>{shown(label, 120)}</b>
          </button>
        ))}
      </div>
    </section>
  );
}
