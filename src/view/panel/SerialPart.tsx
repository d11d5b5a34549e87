import type { NumberPlace } from '../../audit/number-place';
import type { Audit, SerialReport } from '../../audit/types';
import { modelLabel, type Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { lazily } from '../lazily';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { IndexLine } from './IndexLine';
import { Quote } from './Quote';
import { RunTable } from './RunTable';

const texts = panelTexts.serial;

/**
 * The serial number that decides: what the tables say of it, and the runs that hold it. Folded where a finding says it
 * already.
 */
export function SerialPart({ audit, words, place }: { audit: Audit; words: Words; place: NumberPlace | null }) {
  const { serial, findings } = audit;
  const told = serial.asWritten !== null && findings.some(({ check }) => check.startsWith('serial-'));
  const body = (
    <>
      <OneSerial report={serial} words={words} written={!told} />
      <PlaceLines place={place} words={words} />
      <OtherSerials audit={audit} words={words} />
    </>
  );
  if (told && serial.asWritten !== null)
    return (
      <section class="group fold" data-part="serial" data-verdict={serial.verdict}>
        <Disclosure
          label={texts.heading}
          inside={texts.folded(shown(serial.asWritten, 40), texts.short[serial.verdict])}
          part="serial-runs"
          row="h2"
        >
          {body}
        </Disclosure>
      </section>
    );
  if (serial.asWritten === null)
    return (
      <section class="group fold" data-part="serial" data-verdict={serial.verdict}>
        <IndexLine name={texts.heading}>{texts.short[serial.verdict]}</IndexLine>
      </section>
    );
  return (
    <section class="group" data-part="serial" data-verdict={serial.verdict} aria-labelledby="serial">
      <h2 id="serial">{texts.heading}</h2>
      {body}
    </section>
  );
}

/** Fetched with the first number that has a place among others. */
export const Line = lazily(async () => (await import('./RunLine')).RunLine);

function PlaceLines({ place, words }: { place: NumberPlace | null; words: Words }) {
  return (place?.lines ?? []).map((line) => (
    <Line
      key={`${line.pack}/${line.scheme}`}
      line={line}
      serial={place?.normal ?? ''}
      words={words}
      years={place?.years ?? []}
      batches={place?.batches ?? []}
    />
  ));
}

function OtherSerials({ audit: { serial, serials }, words }: { audit: Audit; words: Words }) {
  const others = serials.filter(({ asWritten }) => asWritten !== serial.asWritten);
  if (others.length === 0) return null;
  return (
    <Disclosure label={texts.others} part="other-serials">
      {others.map((report) => (
        <OneSerial key={report.asWritten} report={report} words={words} written />
      ))}
    </Disclosure>
  );
}

/** @param written says also how the advert writes it */
function OneSerial({ report, words, written }: { report: SerialReport; words: Words; written: boolean }) {
  const { asWritten, verdict, runs, suggestions } = report;
  return (
    <>
      {written && asWritten !== null && (
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
