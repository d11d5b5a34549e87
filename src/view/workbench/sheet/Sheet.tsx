import type { SheetCheck, ViewingSheet } from '../../../audit/viewing-sheet';
import type { Seen, SeenValue } from '../../../session/seen';
import { sheetTexts } from '../../../text/catalogue/sheet';
import { sheetRoomTexts } from '../../../text/catalogue/sheet-room';
import { OutlineDrawing } from '../../outline/drawings';
import { shown } from '../../shown';

interface Props {
  sheet: ViewingSheet;
  seen: Seen;
  day: string;
  onSaw: (attribute: string, value: SeenValue) => void;
  onTakeBack: (attribute: string) => void;
}

/** What is printed, saved and filled in: cautions, what to look at in order, what to photograph, room for notes. */
export function Sheet({ sheet, seen, day, onSaw, onTakeBack }: Props) {
  const texts = sheetTexts[sheet.language];
  const { title, url, place, price, model, checks, photographs, cautions, packs } = sheet;
  return (
    <>
      <h2 class="sheet-title" dir="auto">
        {texts.heading(shown(title, 160))}
      </h2>
      {model !== null && <p class="sheet-model">{shown(model, 120)}</p>}
      <p>{[price, place].flatMap((each) => (each === null ? [] : [shown(each, 120)])).join(' · ')}</p>
      {url !== null && <p class="sheet-address">{shown(url, 200)}</p>}
      <section>
        <h3>{texts.before}</h3>
        <p>{texts.beforeIntro}</p>
        <ul class="sheet-cautions" data-part="sheet-cautions">
          {[...texts.cautions, ...cautions.map((each) => shown(each, 600))].map((each) => (
            <li key={each}>{each}</li>
          ))}
        </ul>
        <p>{texts.take}</p>
      </section>
      <section>
        <h3>{texts.checks}</h3>
        <p>{checks.length === 0 ? texts.none : texts.checksIntro}</p>
        <ol class="sheet-checks">
          {checks.map((check) => (
            <li key={check.attribute} data-check={check.attribute}>
              <Check check={check} sheet={sheet} seen={seen} onSaw={onSaw} onTakeBack={onTakeBack} />
            </li>
          ))}
        </ol>
      </section>
      {photographs.length > 0 && (
        <section>
          <h3>{texts.photos}</h3>
          <ul class="sheet-photographs">
            {photographs.map(({ label, tells }) => (
              <li key={label}>
                {shown(label, 160)}. <span class="soft">{shown(tells, 300)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="sheet-notes">
        <h3>{texts.notes}</h3>
        <div class="sheet-lines" />
      </section>
      <p class="soft">{texts.from(packs.map((pack) => shown(pack, 120)).join('; '), day)}</p>
    </>
  );
}

type CheckProps = Pick<Props, 'sheet' | 'seen' | 'onSaw' | 'onTakeBack'> & { check: SheetCheck };

/** One thing to look at: a fieldset, so that its answers belong together for everybody. */
function Check({ check, sheet, seen, onSaw, onTakeBack }: CheckProps) {
  const texts = sheetTexts[sheet.language];
  const { attribute, name, question, where, see, place, outline, ask, options } = check;
  const answer = seen.get(attribute);
  const all: { value: SeenValue; text: string }[] = [...options, { value: null, text: texts.cannotTell }];
  return (
    <fieldset>
      <legend>{shown(question ?? name, 200)}</legend>
      {outline && place !== null && <OutlineDrawing outline={outline} place={place} />}
      {where !== null && (
        <p>
          <span class="soft">{texts.where}</span> {shown(where, 300)}
        </p>
      )}
      {see !== null && (
        <p>
          <span class="soft">{texts.see}</span> {shown(see, 400)}
        </p>
      )}
      <p>
        <span class="soft">{texts.ask}</span> {shown(ask, 300)}
      </p>
      {options.length === 0 ? (
        <div class="sheet-lines one" />
      ) : (
        <div class="sheet-options">
          {all.map(({ value, text }) => (
            <label key={String(value)}>
              <input
                type="radio"
                name={attribute}
                checked={answer !== undefined && answer === value}
                data-option={value === null ? 'cannot-tell' : String(value)}
                onChange={() => onSaw(attribute, value)}
              />{' '}
              {shown(text, 160)}
            </label>
          ))}
        </div>
      )}
      {answer !== undefined && (
        <p class="below screen-only">
          <button type="button" class="button plain" data-part="clear-answer" onClick={() => onTakeBack(attribute)}>
            {sheetRoomTexts.clear}
            <span class="unseen"> {shown(name, 80)}</span>
          </button>
        </p>
      )}
    </fieldset>
  );
}
