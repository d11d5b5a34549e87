import type { Described } from '../listing/by-hand';
import { NOTHING_SEEN, type Seen, type SeenValue, withoutSeen, withSeen } from './seen';

/** What a person has said so far of a machine before them. */
export interface MachineAsked {
  /** The id of the pack whose kind of thing it is, or null before that is chosen. */
  thing: string | null;
  seen: Seen;
  /** The number that was looked up last, and the name that stands on the machine; "" for none. */
  serial: string;
  name: string;
  /** What somebody says of it, in their own words: an advert's, or what was marked on a page; "" for nothing. */
  text: string;
}

export const NOTHING_ASKED: MachineAsked = { thing: null, seen: NOTHING_SEEN, serial: '', name: '', text: '' };

export type MachineEvent =
  | { type: 'thingChosen'; thing: string | null }
  | { type: 'saw'; attribute: string; value: SeenValue }
  | { type: 'tookBack'; attribute: string }
  | { type: 'numberAsked'; serial: string; name: string }
  | { type: 'textTaken'; text: string }
  /** All is forgotten, save which thing it is about. */
  | { type: 'startedAgain' };

/** What has been said after an event. Pure; the same object where nothing changed. */
export function stepMachine(asked: MachineAsked, event: MachineEvent): MachineAsked {
  switch (event.type) {
    case 'thingChosen':
      // What was seen of a sewing machine says nothing of a typewriter; its number is looked up by itself.
      return event.thing === asked.thing ? asked : { ...asked, thing: event.thing, seen: NOTHING_SEEN };
    case 'saw':
      return { ...asked, seen: withSeen(asked.seen, event.attribute, event.value) };
    case 'tookBack': {
      const seen = withoutSeen(asked.seen, event.attribute);
      return seen === asked.seen ? asked : { ...asked, seen };
    }
    case 'numberAsked':
      return event.serial === asked.serial && event.name === asked.name
        ? asked
        : { ...asked, serial: event.serial, name: event.name };
    case 'textTaken':
      return event.text === asked.text ? asked : { ...asked, text: event.text };
    case 'startedAgain':
      return { ...NOTHING_ASKED, thing: asked.thing };
  }
}

/** Whether anything has been said at all, beside what thing it is about. */
export function hasBegun({ seen, serial, name, text }: MachineAsked): boolean {
  return seen.size > 0 || serial !== '' || name !== '' || text !== '';
}

/** The machine as it is given to the engine. @param word what such a thing is called */
export function describedMachine({ serial, name, text }: MachineAsked, word: string): Described {
  const written = serial.trim();
  const named = name.trim();
  const said = text.trim();
  return {
    what: word,
    ...(written === '' ? {} : { serial: written }),
    ...(named === '' ? {} : { text: named }),
    ...(said === '' ? {} : { said }),
  };
}
