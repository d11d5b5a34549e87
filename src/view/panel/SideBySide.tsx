import type { Likely } from '../../audit/types';
import { likelyTexts as texts } from '../../text/catalogue/likely';
import { sideBySide } from '../likely';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { followsText } from './FollowsList';

/** The most likely one and the next best as words beside each other, what differs first. */
export function SideBySide({ left, right }: { left: Likely; right: Likely }) {
  const rows = sideBySide(left, right);
  return (
    <Disclosure label={texts.beside} inside={shown(right.label, 120)} part="beside">
      <table class="beside">
        <caption class="soft">{texts.besideExplain}</caption>
        <thead>
          <tr>
            {[texts.besideThis, texts.besideNext].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        {rows.map(({ attribute, name, left: a, right: b, differs }) => (
          <tbody key={attribute} data-differs={String(differs)}>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                {shown(name, 80)}
              </th>
            </tr>
            <tr>
              {differs ? (
                <>
                  <td>{a ? followsText(a) : <span class="soft">{texts.notKnown}</span>}</td>
                  <td>{b ? followsText(b) : <span class="soft">{texts.notKnown}</span>}</td>
                </>
              ) : (
                <td colSpan={2}>
                  {a && followsText(a)} <span class="soft">({texts.same})</span>
                </td>
              )}
            </tr>
          </tbody>
        ))}
      </table>
    </Disclosure>
  );
}
