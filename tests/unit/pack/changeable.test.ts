import { describe, expect, it } from 'vitest';
import { isChangeable } from '../../../src/pack/changeable';
import type { ChoiceAttribute } from '../../../src/pack/schema/attributes';
import { demo } from '../audit/support/demo';

const choice = (id: string): ChoiceAttribute =>
  [...demo.attributes.values()].find(({ def }) => def.id === id)!.def as ChoiceAttribute;

describe('what can be changed for another', () => {
  it.each(['hand-crank', 'treadle', 'motor-belt'])('%s', (id) => expect(isChangeable(id, choice('drive'))).toBe(true));
  it('not what is built in', () => expect(isChangeable('potted-motor', choice('drive'))).toBe(false));
  it('not what it was cast as', () => expect(isChangeable('cast-iron', choice('frame'))).toBe(false));
  it('not the size of its bobbin', () => expect(isChangeable('class-15', choice('bobbin'))).toBe(false));
  it('nothing is where the value isn’t there', () => expect(isChangeable('none', choice('frame'))).toBe(false));
});
