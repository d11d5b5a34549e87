import type { Enquiry } from '../../audit/enquiry';
import type { EnquiryAnswer } from '../../session/enquiry';
import { modelLabel, type Words } from '../../session/words';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { panelTexts } from '../../text/catalogue/panel';
import { RunLine } from '../panel/RunLine';
import { RunTable } from '../panel/RunTable';
import { shown } from '../shown';

interface Props {
  answer: EnquiryAnswer;
  /** As the user wrote it. */
  serial: string;
  /** The name that stands on the machine, as far as it was said; "" for none. */
  name: string;
  onTry: (serial: string) => void;
  onName: (name: string) => void;
}

/** What the tables say of one number: in words, block by block, and among its neighbours. */
export function EnquiryResult({ answer: { enquiry, words }, serial, name, onTry, onName }: Props) {
  const written = shown(serial.trim(), 60);
  return (
    <section class="group" aria-labelledby="result" data-part="enquiry" data-verdict={enquiry.verdict}>
      <h2 id="result">{texts.result}</h2>
      <p role="status" class="verdict">
        {verdictText(enquiry, written)}
      </p>
      {enquiry.runs.length > 0 && (
        <>
          <RunTable runs={enquiry.runs} words={words} />
          <p class="soft">{panelTexts.serial.yearIsAllotment}</p>
          <p>{texts.notProof}</p>
          {name === '' && <Makers enquiry={enquiry} onName={onName} />}
        </>
      )}
      {enquiry.suggestions.length > 0 && <Suggestions enquiry={enquiry} words={words} onTry={onTry} />}
      {enquiry.forms.length > 0 && <Forms enquiry={enquiry} />}
      {enquiry.lines
        .filter(({ runs }) => runs.length > 0)
        .map((line) => (
          <RunLine key={`${line.pack}/${line.scheme}`} line={line} serial={enquiry.normal} words={words} />
        ))}
    </section>
  );
}

function verdictText({ verdict, runs, lines }: Enquiry, written: string): string {
  switch (verdict) {
    case 'found':
      return texts.verdicts.found(written, runs.length);
    case 'gap':
      return lines.every(({ complete }) => complete)
        ? texts.verdicts.notAllotted(written)
        : texts.verdicts.gap(written);
    case 'none':
      return texts.verdicts.none;
    default:
      return texts.verdicts[verdict](written);
  }
}

/** A number alone says nothing of who made the machine: other makers have numbers like it. The name on it does. */
function Makers({ enquiry, onName }: { enquiry: Enquiry; onName: Props['onName'] }) {
  const makers = [...new Set(enquiry.lines.flatMap(({ maker }) => maker ?? []))];
  if (makers.length === 0) return null;
  return (
    <div data-part="makers">
      <p>{texts.bears}</p>
      {makers.map((maker) => (
        <p class="below" key={maker}>
          <button type="button" class="button plain" data-maker={maker} onClick={() => onName(maker)}>
            {texts.itBears(shown(maker, 80))}
          </button>
        </p>
      ))}
    </div>
  );
}

function Suggestions({ enquiry, words, onTry }: { enquiry: Enquiry; words: Words; onTry: Props['onTry'] }) {
  return (
    <>
      <p>{texts.suggestions}</p>
      <ul class="suggestions">
        {enquiry.suggestions.map(({ normal, models, year }) => (
          <li key={normal}>
            {panelTexts.serial.suggestion(normal, shown(models.map((ref) => modelLabel(words, ref)).join(', ')), year)}{' '}
            <button type="button" class="button plain" onClick={() => onTry(normal)}>
              {texts.tryIt(normal)}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function Forms({ enquiry }: { enquiry: Enquiry }) {
  return (
    <>
      <p>{texts.forms}</p>
      <ul>
        {enquiry.forms.map(({ pack, maker, form, where }) => (
          <li key={`${pack} ${maker} ${form}`}>
            {texts.form(maker && shown(maker, 80), form)}
            {where !== null && <span class="origin"> {shown(where, 160)}</span>}
          </li>
        ))}
      </ul>
    </>
  );
}
