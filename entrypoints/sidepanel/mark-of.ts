import type { Message } from '../../src/session/messages';
import { hasSomething, type Screen } from '../../src/session/screen';
import { announce } from '../shared/follow-messages';

let told = '';

/** Tells the worker whether the button of the audited tab is to carry its mark. */
export function markOf(screen: Screen): void {
  if (screen.screen !== 'audit') return;
  const { window, tab, number } = screen.reading;
  const message: Message = { type: 'mark', window, tab, number, something: hasSomething(screen) };
  const text = JSON.stringify(message);
  if (text === told) return;
  told = text;
  announce(message);
}
