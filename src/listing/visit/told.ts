import { CONTROL } from '../types';
import { AS_BLOCK, HIDDEN } from './flags';
import type { Sight } from './sight';
import { flagsOfClass, flagsOfStyle, isPictured } from './styles';

/** What the attributes of an element say to the walk. */
export interface Told {
  /** Of what is inside it, and whether it is a block. */
  flags: number;
  /** 1 to 6 for a heading by its role, else 0. */
  level: number;
  id: string;
  /** It begins a microdata item. */
  isScope: boolean;
  /** A photograph is set behind it. */
  isDrawn: boolean;
  /** Said to be hidden from readers of screens. */
  isWaiting: boolean;
}

/** `names`: those of its attributes. Only what is there is asked for. */
export function toldBy(sight: Sight, element: Element, names: readonly string[]): Told {
  let flags = 0;
  let level = 0;
  let id = '';
  let isScope = false;
  let isDrawn = false;
  let isWaiting = false;
  const get = (name: string): string => sight.attribute(element, name) ?? '';
  for (let index = 0; index < names.length; index++) {
    switch (names[index]) {
      case 'class':
        flags |= flagsOfClass(get('class'));
        break;
      case 'id':
        id = get('id');
        break;
      case 'itemscope':
        isScope = true;
        break;
      case 'style': {
        const style = get('style');
        flags |= flagsOfStyle(style);
        if (style.includes('url(')) isDrawn = isPictured(style, `${get('class')} ${get('id')}`);
        break;
      }
      case 'hidden':
        flags |= HIDDEN;
        break;
      case 'role': {
        const role = get('role');
        if (role === 'button') flags |= CONTROL | AS_BLOCK;
        if (role === 'heading') level = Math.min(6, Math.max(1, Math.trunc(Number(get('aria-level'))) || 2));
        break;
      }
      case 'aria-hidden':
        isWaiting = get('aria-hidden') === 'true';
    }
  }
  return { flags, level, id, isScope, isDrawn, isWaiting };
}
