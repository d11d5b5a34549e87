import type { Audit, SerialReport } from '../../audit/types';
import { modelLabel, type Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { Quote } from './Quote';
import { RunTable } from './RunTable';

const texts = panelTexts.serial;

/** The serial number that decides: what the tables say of it, and the runs that hold it. */
export function SerialPart({ audit, words }: { audit: Audit; words: Words }) {
  const others = audit.serials.filter((each) => each.asWritten !== audit.serial.asWritten);
  return (
    <section class="group" data-part="serial" data-verdict={audit.serial.verdict} aria-labelledby="serial">
      <h2 id="serial">{texts.heading}</h2>
      <OneSerial report={audit.serial} words={words} />
      {others.length > 0 && (
        <Disclosure label={texts.others} part="other-serials">
          {others.map((report) => (
            <OneSerial key={report.asWritten} report={report} words={words} />
          ))}
        </Disclosure>
      )}
    </section>
  );
}

function OneSerial({ report, words }: { report: SerialReport; words: Words }) {
  const { asWritten, verdict, runs, suggestions } = report;
  return (
    <>
      {asWritten !== null && (
        <p>
          {texts.written} <Quote text={asWritten} language={null} />
        </p>
      )}
      <p>{texts.verdicts[verdict]}</p>
      {suggestions.length > 0 && (
        <>
          <p>{texts.suggestions}</p>
          <ul>
            {suggestions.map(({ normal, models, year }) => (
              <li key={normal}>
                {texts.suggestion(normal, shown(models.map((ref) => modelLabel(words, ref)).join(', ')), year)}
              </li>
            ))}
          </ul>
        </>
      )}
      {runs.length > 0 && (
        <>
          <RunTable runs={runs} words={words} />
          <p class="soft">{texts.yearIsAllotment}</p>
        </>
      )}
    </>
  );
}
