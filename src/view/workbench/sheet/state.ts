import type { ViewingSheet } from '../../../audit/viewing-sheet';
import type { KeptSheet } from '../../../keep/schema';
import type { Answer } from '../../../session/answer';
import type { Seen, SeenValue } from '../../../session/seen';
import type { SheetLanguage } from '../../../text/catalogue/sheet';
import type { BenchTrouble } from '../trouble';

export interface SheetsState {
  /** null until they have been read. */
  sheets: readonly KeptSheet[] | null;
  /** The page whose sheet is in front. */
  chosen: string | null;
  /** What the engine made of it. */
  told: { about: string; asOf: string; sheets: readonly ViewingSheet[]; answer: Answer } | null;
  seen: Seen;
  /** null: the first one that the sheet has. */
  language: SheetLanguage | null;
  removed: KeptSheet | null;
  saved: boolean;
  trouble: BenchTrouble | null;
  isPrivate: boolean;
}

export interface SheetsActions {
  choose: (about: string) => void;
  saw: (attribute: string, value: SeenValue) => void;
  takeBack: (attribute: string) => void;
  speak: (language: SheetLanguage) => void;
  print: () => void;
  /** Saves what this element shows as a page of its own. */
  save: (sheet: Element, title: string) => void;
  remove: (about: string) => void;
  undoRemove: () => void;
}
