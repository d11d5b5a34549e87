import type { ComponentChildren } from 'preact';
import { workbenchTexts as texts } from '../../text/catalogue/workbench';
import { ROOMS, type Room } from './rooms';

/** The workbench: one room at a time, and the way to the others. */
export function Workbench({ room, children }: { room: Room; children: ComponentChildren }) {
  return (
    <div class="bench" data-room={room}>
      <header class="plate">
        <p class="plate-name">{texts.product}</p>
        <nav class="rooms" aria-label={texts.rooms.label}>
          {ROOMS.map((each) => (
            <a
              key={each}
              class="plate-link"
              href={`#${each}`}
              aria-current={each === room ? 'page' : undefined}
              data-part={`to-${each}`}
            >
              {texts.rooms[each]}
            </a>
          ))}
        </nav>
      </header>
      <main>{children}</main>
    </div>
  );
}
