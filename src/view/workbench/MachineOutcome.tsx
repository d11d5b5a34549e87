import type { Answered } from '../../session/answer';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { FindingGroup } from '../panel/FindingGroup';
import { hasKindWords, KindWords } from '../panel/KindWords';
import { LikelyPart } from '../panel/LikelyPart';
import { Questions, questionsOf } from '../panel/Questions';
import { shownFindings } from '../panel/summary';

/** More questions than these are asked by nobody. */
const MOST = 5;

interface Props {
  answer: Answered;
  copy: (text: string) => Promise<boolean>;
}

/** What comes of what was said of a machine: which it is, what follows and fits, what to mind, what to ask. */
export function MachineOutcome({ answer: { audit, words, kind, listing }, copy }: Props) {
  return (
    <div class="outcome" data-part="outcome">
      <LikelyPart audit={audit} words={words} kind={null} folded={false} />
      {kind && hasKindWords(kind) && (
        <section class="group" data-part="kind" aria-labelledby="kind">
          <h2 id="kind">{texts.kind}</h2>
          <KindWords kind={kind} words={words} />
        </section>
      )}
      <FindingGroup
        standing="caution"
        findings={shownFindings(audit, 'caution')}
        language={listing.language}
        words={words}
        asks={false}
      />
      <Questions questions={questionsOf(audit).slice(0, MOST)} words={words} copy={copy} heading={texts.toAsk} />
    </div>
  );
}
