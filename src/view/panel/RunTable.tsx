import type { RunReport } from '../../audit/types';
import type { Lexicon } from '../../session/lexicon';
import { panelTexts } from '../../text/catalogue/panel';
import { shown } from '../shown';

const texts = panelTexts.serial;

/** Runs as cards of a ledger: a table would not fit a narrow panel. */
export function RunTable({ runs, lexicon }: { runs: readonly RunReport[]; lexicon: Lexicon }) {
  return (
    <ul class="runs" aria-label={texts.runsCaption}>
      {runs.map((run) => {
        const pack = lexicon.pack(run.pack);
        return (
          <li class="run" key={`${run.pack}/${run.entry}`} data-run={`${run.pack}/${run.entry}`}>
            <dl class="facts">
              <dt>{texts.numbers}</dt>
              <dd class="serial-number">{`${run.first} – ${run.last}`}</dd>
              <dt>{texts.model}</dt>
              <dd>{shown(run.models.map(lexicon.model).join(', '))}</dd>
              <dt>{texts.year}</dt>
              <dd>{run.year ?? texts.yearUnknown}</dd>
              <dt>{texts.source}</dt>
              <dd>
                {run.source === null ? panelTexts.noSource : <cite dir="auto">{shown(run.source)}</cite>}
                {pack && <span class="origin"> {panelTexts.fromPack(shown(pack.title, 120), pack.edition)}</span>}
              </dd>
            </dl>
          </li>
        );
      })}
    </ul>
  );
}
