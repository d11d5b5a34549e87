import { CONTROL } from '../types';
import { AS_BLOCK, HIDDEN } from './flags';
import type { Sight } from './sight';
import { flagsOfClass, flagsOfStyle, isPictured } from './styles';

/** What the attributes of an element say to the walk. One is used for all elements, each read over the one before. */
export class Told {
  /** Of what is inside it, and whether it is a block. */
  flags = 0;
  /** 1 to 6 for a heading by its role, else 0. */
  level = 0;
  id = '';
  /** It begins a microdata item. */
  isScope = false;
  /** A photograph is set behind it. */
  isDrawn = false;
  /** Said to be hidden from readers of screens. */
  isWaiting = false;

  /** `names`: those of its attributes. Only what is there is asked for. */
  read(sight: Sight, element: Element, names: readonly string[]): void {
    this.flags = 0;
    this.level = 0;
    this.id = '';
    this.isScope = false;
    this.isDrawn = false;
    this.isWaiting = false;
    const get = (name: string): string => sight.attribute(element, name) ?? '';
    for (let index = 0; index < names.length; index++) {
      switch (names[index]) {
        case 'class':
          this.flags |= flagsOfClass(get('class'));
          break;
        case 'id':
          this.id = get('id');
          break;
        case 'itemscope':
          this.isScope = true;
          break;
        case 'style': {
          const style = get('style');
          this.flags |= flagsOfStyle(style);
          if (style.includes('url(')) this.isDrawn = isPictured(style, `${get('class')} ${get('id')}`);
          break;
        }
        case 'hidden':
          this.flags |= HIDDEN;
          break;
        case 'role': {
          const role = get('role');
          if (role === 'button') this.flags |= CONTROL | AS_BLOCK;
          if (role === 'heading') this.level = Math.min(6, Math.max(1, Math.trunc(Number(get('aria-level'))) || 2));
          break;
        }
        case 'aria-hidden':
          this.isWaiting = get('aria-hidden') === 'true';
      }
    }
  }
}
