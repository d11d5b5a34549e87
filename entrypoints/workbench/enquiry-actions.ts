import { askedThings, chosenThing, thingIn } from '../../src/session/asked-things';
import { draftFromEnquiry } from '../../src/session/draft-from-enquiry';
import { describedMachine, hasBegun, type MachineEvent, stepMachine } from '../../src/session/machine-asked';
import { ENQUIRY_PHOTOS } from '../../src/session/own-photos';
import type { PackCard } from '../../src/session/pack-card';
import { type EnquiryActions, type EnquiryState, fetchOutcome } from '../../src/view/workbench/EnquiryRoom';
import { copyText } from '../shared/copy-text';
import { saveFile } from '../shared/save-file';
import { today } from '../shared/today';
import type { Bench } from './bench';
import { photosActions } from './photos-actions';

export interface EnquiryDesk {
  actions: EnquiryActions;
  shelfRead(shelf: readonly PackCard[]): void;
  /** Words that were marked on a page: they count at once, in the place of what was asked before. */
  askAbout(text: string): void;
}

/**
 * What can be asked of a machine that somebody has before them. Every answer is held against the packs at once; a
 * number is looked up when its form is sent; both anew when the packs change.
 */
export function enquiryActions(
  { engine, handed, isPrivate }: Pick<Bench, 'engine' | 'handed' | 'isPrivate'>,
  state: () => EnquiryState,
  show: (change: Partial<EnquiryState>) => void,
): EnquiryDesk {
  let lookUps = 0;
  let shelf: readonly PackCard[] = [];

  async function lookUp(serial: string): Promise<void> {
    lookUps += 1;
    const mine = lookUps;
    const [reply] = await Promise.all([engine.ask({ about: 'serial', serial, pack: state().pack }), fetchOutcome()]);
    if (mine !== lookUps) return;
    if (reply.ok) show({ numbered: { serial, answer: reply.value }, trouble: null });
    else show({ trouble: reply.trouble });
  }

  async function tell(): Promise<void> {
    const { asked } = state();
    const thing = chosenThing(askedThings(shelf), asked.thing);
    if (!thing) return;
    const asOf = today();
    const described = describedMachine(asked, thing.word);
    const [reply] = await Promise.all([
      engine.ask({ about: 'machine', described, asOf, seen: asked.seen }),
      hasBegun(asked) ? fetchOutcome() : null,
    ]);
    // More was said meanwhile, which is told by itself.
    if (state().asked !== asked) return;
    if (reply.ok) show({ told: { asked, asOf, answer: reply.value }, trouble: null });
    else show({ trouble: reply.trouble });
  }

  /** Which thing it is, where these words say so and nobody has chosen. */
  function guessThing(): void {
    const { asked } = state();
    const things = askedThings(shelf);
    if (asked.text === '' || chosenThing(things, asked.thing)) return;
    const thing = thingIn(asked.text, things);
    if (thing) step({ type: 'thingChosen', thing: thing.pack });
  }

  function takeText(text: string): void {
    step({ type: 'textTaken', text: text.trim() });
    guessThing();
  }

  function step(event: MachineEvent): void {
    const before = state().asked;
    const asked = stepMachine(before, event);
    if (asked === before) return;
    // Another thing's answer is no answer.
    show(asked.thing === before.thing ? { asked } : { asked, told: null });
    void tell();
  }

  const photos = photosActions(
    ENQUIRY_PHOTOS,
    isPrivate,
    () => state().photos,
    (change) => show({ photos: { ...state().photos, ...change } }),
  );
  void photos.start();

  const actions: EnquiryActions = {
    photos: photos.actions,
    chooseThing: (thing) => step({ type: 'thingChosen', thing }),
    saw: (attribute, value) => step({ type: 'saw', attribute, value }),
    takeBack: (attribute) => step({ type: 'tookBack', attribute }),
    startAgain() {
      lookUps += 1;
      show({ serial: '', name: '', text: '', numbered: null });
      step({ type: 'startedAgain' });
    },
    write: (serial) => show({ serial }),
    writeName: (name) => show({ name }),
    choosePack(pack) {
      show({ pack });
      const { numbered } = state();
      if (numbered) void lookUp(numbered.serial);
    },
    ask(serial, name) {
      show({ serial, name });
      void lookUp(serial);
      step({ type: 'numberAsked', serial, name });
    },
    writeText: (text) => show({ text }),
    takeText: () => takeText(state().text),
    toDraft() {
      const { asked, told } = state();
      const thing = chosenThing(askedThings(shelf), asked.thing);
      if (!told?.answer.ok || !thing) return;
      handed.draft = { draft: draftFromEnquiry(told.answer, asked, thing.word), seen: asked.seen };
      location.hash = '#drafts';
    },
    copyText,
    saveFile,
  };

  return {
    actions,
    askAbout(text) {
      actions.startAgain();
      show({ text });
      takeText(text);
    },
    shelfRead(cards) {
      shelf = cards;
      guessThing();
      const { numbered } = state();
      if (numbered) void lookUp(numbered.serial);
      void tell();
    },
  };
}
