import { describe, expect, it } from 'vitest';
import { messageFrom } from '../../../src/session/messages';

const we = { id: 'ours', pages: 'chrome-extension://ours/' };
const mark = { type: 'mark', window: 1, tab: 2, number: 3, something: true };
const ourPage = { id: 'ours', url: 'chrome-extension://ours/sidepanel.html' };

describe('messages', () => {
  it('are taken from our own pages', () => {
    expect(messageFrom(mark, ourPage, we)).toEqual(mark);
    for (const type of ['packs-changed', 'drafts-changed'])
      expect(messageFrom({ type }, ourPage, we)).toEqual({ type });
    const seen = { type: 'seen-changed', about: 'https://market.example/1' };
    expect(messageFrom(seen, ourPage, we)).toEqual(seen);
  });

  it.each([
    ['another extension', { id: 'theirs', url: 'chrome-extension://theirs/sidepanel.html' }],
    ['another extension that names our page', { id: 'theirs', url: ourPage.url }],
    ['a script of ours that runs in a web page', { id: 'ours', url: 'https://market.example/sidepanel.html' }],
    ['an address that only begins like ours', { id: 'ours', url: 'chrome-extension://ours.evil/sidepanel.html' }],
    ['nobody that the browser names', {}],
    ['no address', { id: 'ours' }],
  ])('are ignored from %s', (_who, sender) => {
    expect(messageFrom(mark, sender, we)).toBeNull();
  });

  it.each([
    ['nothing', undefined],
    ['a text', 'mark'],
    ['another type', { ...mark, type: 'install' }],
    ['a negative tab', { ...mark, tab: -1 }],
    ['a tab that is no number', { ...mark, tab: '2' }],
    ['a missing part', { type: 'mark', window: 1, tab: 2 }],
    ['a list', [mark]],
    ['about nothing', { type: 'seen-changed' }],
    ['about more than an address', { type: 'seen-changed', about: 'x'.repeat(4_001) }],
  ])('are ignored when they are %s', (_what, value) => {
    expect(messageFrom(value, ourPage, we)).toBeNull();
  });

  it('carry nothing beside what is declared', () => {
    const extra = JSON.parse('{"type":"packs-changed","__proto__":{"admin":true},"more":1}');
    const read = messageFrom(extra, ourPage, we);
    expect(Object.keys(read ?? {})).toEqual(['type']);
    expect((read as unknown as { admin?: boolean }).admin).toBeUndefined();
  });
});
