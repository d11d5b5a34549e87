import type { SeenWords } from '../../session/seen-words';
import { likelyTexts } from '../../text/catalogue/likely';
import { shown } from '../shown';

const texts = likelyTexts.settle;

interface Props {
  seen: readonly SeenWords[];
  keptNote: string | null;
  onTakeBack: (attribute: string) => void;
}

/** What has been answered so far, each to be taken back. */
export function SeenList({ seen, keptNote, onTakeBack }: Props) {
  if (seen.length === 0) return null;
  return (
    <div class="seen" data-part="seen">
      <h3 class="likely-head">{texts.seen}</h3>
      <ul>
        {seen.map((each) => (
          <li key={each.attribute} data-seen={each.attribute}>
            <span dir="auto">
              <b>{likelyTexts.named(shown(each.name, 80))}</b> {seenText(each)}
            </span>
            <button type="button" class="button plain" onClick={() => onTakeBack(each.attribute)}>
              {texts.takeBack}
              <span class="unseen"> {shown(each.name, 80)}</span>
            </button>
          </li>
        ))}
      </ul>
      {keptNote !== null && <p class="soft">{keptNote}</p>}
    </div>
  );
}

export function seenText({ value, text }: SeenWords): string {
  if (value === null) return texts.notTold;
  if (typeof value === 'boolean') return value ? texts.yes : texts.no;
  return shown(text ?? value, 120);
}
