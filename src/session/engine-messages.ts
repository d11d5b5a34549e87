import type { PastPrice, PastTold, PriceAnswer, PriceAsked } from '../audit/price-enquiry';
import type { Kept } from '../keep/trouble';
import type { Described } from '../listing/by-hand';
import type { Draft, Harvest, Listing } from '../listing/types';
import type { PackIssue } from '../pack/issues';
import type { ModelNamed } from '../price/writing';
import type { Answer } from './answer';
import type { EnquiryAnswer } from './enquiry';
import type { SessionEvent, Wanted } from './events';
import type { OfferStep } from './following/offer-told';
import type { InstallStep } from './install';
import type { DeskTold, PublishOutcome } from './keeper/desk-told';
import type { TypedChange } from './own/changed-layer';
import type { EntryChosen, OwnTold } from './own/editable';
import type { PackCard } from './pack-card';
import type { Seen } from './seen';
import type { SheetAnswer } from './sheet-answer';

/** What our pages tell the thread in which the engine runs. */
export type ToEngine =
  /** Read the packs, for the first time or anew. Nothing is read before. */
  | { type: 'packsChanged' }
  | { type: 'audit'; wanted: Wanted; harvest: Harvest; asOf: string; seen: Seen }
  | { type: 'ask'; number: number; question: Question }
  /** Check these files and install them, all or none. */
  | { type: 'install'; files: File[]; installedAt: string; mayGoBack: boolean }
  /** Look at what an address publishes; `followed` is the pack that is followed there already, or null. */
  | { type: 'look'; address: string; followed: string | null };

/** What that thread tells our pages. */
export type FromEngine = PanelAnswer | BenchAnswer;

/** To the panel: events of its session as they are. */
export type PanelAnswer = Extract<SessionEvent, { type: 'packsReady' | 'packsFailed' | 'answered' }>;

/** To the workbench: a reply to the question of that number, or how far an installation has come. */
export type BenchAnswer =
  | { type: 'reply'; number: number; reply: Reply<keyof Replies> }
  | { type: 'installing'; step: InstallStep }
  | { type: 'looking'; step: OfferStep };

/** What the workbench asks; each is answered once the packs have been read. */
export type Question =
  | { about: 'shelf' }
  | { about: 'draft'; draft: Draft; asOf: string; seen: Seen }
  /** A machine that somebody has before them: what it is, and what they see. */
  | { about: 'machine'; described: Described; asOf: string; seen: Seen }
  /** What to look at when going to see what an advert offers, and what the audit makes of it with what was seen. */
  | { about: 'sheet'; listing: Listing; asOf: string; seen: Seen }
  /** A machine's number; of one pack alone, or of all that are switched on. */
  | { about: 'serial'; serial: string; pack: string | null }
  /** What the user has corrected of a pack, and the entries that could be: by part of a name, and the one that is chosen. */
  | { about: 'own'; pack: string; sought: string; chosen: EntryChosen | null }
  /** Whether the pack would be in order with one more correction. */
  | { about: 'correction'; pack: string; typed: TypedChange }
  /** The user's corrections as a signed proposal, as text. */
  | { about: 'proposal'; pack: string; name: string; note: string }
  /** A keeper's desk: proposals beside the pack, and what was decided. */
  | { about: 'desk'; pack: string }
  /** Makes and keeps the next edition; the passphrase is for the backup of a key that is made for it. */
  | { about: 'publish'; pack: string; passphrase: string; at: string }
  /** The models whose prices can be asked or kept. */
  | { about: 'priceModels' }
  /** Without prices or rates of its own it is asked of those that are kept. */
  | {
      about: 'price';
      asked: Omit<PriceAsked, 'own' | 'rates'> & { own: PriceAsked['own'] | null; rates: PriceAsked['rates'] | null };
    }
  /** What a price of the past comes to today. */
  | { about: 'past'; price: PastPrice; asOf: string };

/** What each question is answered with. */
export interface Replies {
  shelf: PackCard[];
  draft: Answer;
  machine: Answer;
  sheet: SheetAnswer;
  serial: EnquiryAnswer;
  priceModels: ModelNamed[];
  price: PriceAnswer | null;
  own: OwnTold | null;
  desk: DeskTold | null;
  publish: PublishOutcome;
  proposal: string | null;
  /** What would be wrong with it; null: nothing. */
  correction: PackIssue | null;
  past: PastTold | null;
}

/** The answer, or why there is none: a trouble of storage. */
export type Reply<About extends keyof Replies> = Kept<Replies[About]>;
