import type { Term } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';

/** A trade term, explained on demand. */
export function TermNote({ term }: { term: Term }) {
  return (
    <Disclosure label={texts.term(shown(term.label, 80))} part="term">
      {term.explain && <p>{shown(term.explain)}</p>}
      {term.where && (
        <p>
          <b>{texts.termWhere}</b> {shown(term.where)}
        </p>
      )}
      {term.see && (
        <p>
          <b>{texts.termSee}</b> {shown(term.see)}
        </p>
      )}
    </Disclosure>
  );
}
