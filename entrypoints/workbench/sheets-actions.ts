import type { KeptSheet } from '../../src/keep/schema';
import { putSheet, readSheets, removeSheet } from '../../src/keep/sheets';
import { NOTHING_SEEN, type Seen, withoutSeen, withSeen } from '../../src/session/seen';
import { sheetPage } from '../../src/session/sheet-page';
import { sheetRoomTexts } from '../../src/text/catalogue/sheet-room';
import type { SheetsActions, SheetsState } from '../../src/view/workbench/sheet/state';
import { announce } from '../shared/follow-messages';
import { withKeep } from '../shared/keep';
import { saveFile } from '../shared/save-file';
import { seenStore } from '../shared/seen-store';
import { today } from '../shared/today';
import type { BenchEngine } from './bench-engine';

export interface SheetsDesk {
  actions: SheetsActions;
  start(): Promise<void>;
  /** The sheet that an address names comes to the front; it may have been made a moment ago. */
  open(about: string): Promise<void>;
  packsChanged(): void;
  /** Answers of a page were given elsewhere. */
  follow(about: string): Promise<void>;
}

/** What can be done with viewing sheets. Their answers are those of the advert's page, in the same place. */
export function sheetsActions(
  engine: BenchEngine,
  state: () => SheetsState,
  show: (change: Partial<SheetsState>) => void,
): SheetsDesk {
  const store = seenStore(state().isPrivate);
  const sheetOf = (about: string | null) => state().sheets?.find((each) => each.about === about);

  async function reread(): Promise<void> {
    if (state().isPrivate) return show({ sheets: [] });
    const done = await withKeep(readSheets);
    show(done.ok ? { sheets: done.value, trouble: null } : { sheets: state().sheets ?? [], trouble: done.trouble });
  }

  async function tell(): Promise<void> {
    const { chosen, seen } = state();
    const sheet = sheetOf(chosen);
    if (!sheet) return;
    const asOf = today();
    const reply = await engine.ask({ about: 'sheet', listing: sheet.listing, asOf, seen });
    // Another sheet was chosen, or more was seen and is told by itself.
    if (state().chosen !== chosen || state().seen !== seen) return;
    if (reply.ok) show({ told: { about: sheet.about, asOf, ...reply.value } });
    else show({ trouble: reply.trouble });
  }

  function nowSeen(seen: Seen): void {
    show({ seen });
    void tell();
  }

  async function choose(about: string): Promise<void> {
    show({ chosen: about, seen: NOTHING_SEEN, language: null, saved: false });
    const seen = await store.read(about);
    if (state().chosen === about) nowSeen(seen);
  }

  async function keepSeen(about: string, kept: Promise<boolean>): Promise<void> {
    if (await kept) announce({ type: 'seen-changed', about });
  }

  async function keepSheet(sheet: KeptSheet): Promise<void> {
    const done = await withKeep((db) => putSheet(db, sheet));
    if (!done.ok) show({ trouble: done.trouble });
    await reread();
  }

  return {
    actions: {
      choose: (about) => void choose(about),
      saw(attribute, value) {
        const { chosen: about, seen } = state();
        if (about === null) return;
        nowSeen(withSeen(seen, attribute, value));
        void keepSeen(about, store.put(about, attribute, value));
      },
      takeBack(attribute) {
        const { chosen: about, seen } = state();
        if (about === null) return;
        nowSeen(withoutSeen(seen, attribute));
        void keepSeen(about, store.remove(about, attribute));
      },
      speak: (language) => show({ language }),
      print: () => print(),
      save(sheet, title) {
        saveFile(sheetRoomTexts.file, sheetPage(sheet, title), 'text/html');
        show({ saved: true });
      },
      async remove(about) {
        const removed = sheetOf(about) ?? null;
        const done = await withKeep((db) => removeSheet(db, about));
        if (!done.ok) return show({ trouble: done.trouble });
        show({ removed, ...(state().chosen === about ? { chosen: null, told: null } : {}) });
        await reread();
      },
      undoRemove() {
        const { removed } = state();
        if (!removed) return;
        show({ removed: null });
        void keepSheet(removed);
      },
    },
    start: reread,
    async open(about) {
      await reread();
      await choose(about);
    },
    packsChanged: () => void tell(),
    async follow(about) {
      if (state().chosen !== about) return;
      const seen = await store.read(about);
      if (state().chosen === about) nowSeen(seen);
    },
  };
}
