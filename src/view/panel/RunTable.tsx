import type { RunReport } from '../../audit/types';
import { modelLabel, type Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { shown } from '../shown';

const texts = panelTexts.serial;

/** Runs as cards of a ledger: a table would not fit a narrow panel. */
export function RunTable({ runs, words }: { runs: readonly (RunReport & { place?: string | null })[]; words: Words }) {
  return (
    <ul class="runs" aria-label={texts.runsCaption}>
      {runs.map((run) => {
        const pack = words.packs.get(run.pack);
        return (
          <li class="run" key={`${run.pack}/${run.entry}`} data-run={`${run.pack}/${run.entry}`}>
            <dl class="facts">
              <dt>{texts.numbers}</dt>
              <dd class="serial-number">{`${run.first} – ${run.last}`}</dd>
              <dt>{texts.model}</dt>
              <dd>{shown(run.models.map((ref) => modelLabel(words, ref)).join(', '))}</dd>
              <dt>{texts.year}</dt>
              <dd>{run.year ?? texts.yearUnknown}</dd>
              {run.place != null && (
                <>
                  <dt>{texts.place}</dt>
                  <dd dir="auto">{shown(run.place, 120)}</dd>
                </>
              )}
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
