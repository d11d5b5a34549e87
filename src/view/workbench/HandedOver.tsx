import type { KeyHandedOver } from '../../session/judged';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';

const texts = workbenchTexts.install;

/** That a pack changed hands, as its old and its new key have both signed; nothing where it didn't. */
export function HandedOver({ title, changes }: { title: string; changes: readonly KeyHandedOver[] }) {
  return changes.map(({ edition, from, to }) => (
    <p key={edition} class="trouble" data-part="handed-over">
      {texts.handedOver(shown(title, 160), edition, from, to)}
    </p>
  ));
}
