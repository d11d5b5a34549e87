import { useRef } from 'preact/hooks';
import type { ViewingSheet } from '../../../audit/viewing-sheet';
import type { Answer } from '../../../session/answer';
import { surenessOf, sureWords } from '../../../session/sureness';
import { likelyTexts } from '../../../text/catalogue/likely';
import { sheetTexts } from '../../../text/catalogue/sheet';
import { sheetRoomTexts as texts } from '../../../text/catalogue/sheet-room';
import { shown } from '../../shown';
import { Sheet } from './Sheet';
import type { SheetsActions, SheetsState } from './state';

/** One sheet with what can be done with it, and what has come of the answers so far. */
export function SheetDesk({ state, actions }: { state: SheetsState; actions: SheetsActions }) {
  const paper = useRef<HTMLElement>(null);
  const { told, chosen, seen, language, saved } = state;
  if (told?.about !== chosen || told === null) return <p role="status">{texts.making}</p>;
  const sheet = told.sheets.find((each) => each.language === language) ?? told.sheets[0];
  if (!told.answer.ok || !sheet)
    return (
      <p role="alert" class="trouble" data-part="broken">
        {texts.broken}
      </p>
    );
  const answered = sheet.checks.filter(({ attribute }) => seen.has(attribute)).length;
  return (
    <div class="room-part" data-part="sheet-desk">
      <div class="sheet-tools screen-only">
        {told.sheets.length > 1 && <Languages sheets={told.sheets} sheet={sheet} onSpeak={actions.speak} />}
        <button type="button" class="button" data-part="print-sheet" onClick={() => actions.print()}>
          {texts.print}
        </button>
        <button
          type="button"
          class="button plain"
          data-part="save-sheet"
          onClick={() => paper.current && actions.save(paper.current, sheetTexts[sheet.language].heading(sheet.title))}
        >
          {texts.save}
        </button>
        <p role="status" class="soft">
          {saved && texts.saved}
        </p>
      </div>
      <article class="sheet" ref={paper} lang={sheet.language} data-part="sheet" data-language={sheet.language}>
        <Sheet sheet={sheet} seen={seen} day={told.asOf} onSaw={actions.saw} onTakeBack={actions.takeBack} />
      </article>
      <p role="status" class="screen-only" data-part="sheet-answered">
        {texts.answered(answered, sheet.checks.length)}
      </p>
      {answered > 0 && <ByNow answer={told.answer} />}
    </div>
  );
}

function Languages(props: { sheets: readonly ViewingSheet[]; sheet: ViewingSheet; onSpeak: SheetsActions['speak'] }) {
  const { sheets, sheet, onSpeak } = props;
  return (
    <div class="field">
      <label for="sheet-language">{texts.language}</label>
      <select
        id="sheet-language"
        value={sheet.language}
        onChange={({ currentTarget }) => {
          const chosen = sheets.find(({ language }) => language === currentTarget.value);
          if (chosen) onSpeak(chosen.language);
        }}
      >
        {sheets.map(({ language }) => (
          <option key={language} value={language}>
            {sheetTexts[language].name}
          </option>
        ))}
      </select>
    </div>
  );
}

/** What the answers have come to, in one line; the whole of it stands beside the advert. */
function ByNow({ answer }: { answer: Extract<Answer, { ok: true }> }) {
  const [first] = answer.audit.likely;
  if (!first) return null;
  const open = surenessOf(first.probability) === 'open';
  const label = first.kind === 'none' ? likelyTexts.none : shown(first.label, 160);
  return (
    <section class="screen-only" aria-labelledby="by-now" data-part="by-now">
      <h2 id="by-now">{texts.now}</h2>
      <p class="likely-name">{open ? likelyTexts.open : label}</p>
      {!open && first.kind !== 'none' && <p>{sureWords(first)}</p>}
    </section>
  );
}
