import type { Standing } from '../../audit/types';
import type { Answered } from '../../session/answer';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { FindingGroup } from '../panel/FindingGroup';
import { hasKindWords, KindWords } from '../panel/KindWords';
import { LikelyPart } from '../panel/LikelyPart';
import { Questions, questionsOf } from '../panel/Questions';
import type { BesideProps } from '../panel/SideBySide';
import { shownFindings, summaryOf } from '../panel/summary';

/** What speaks against the words comes before what it is. */
const FIRST: readonly Standing[] = ['disproved', 'unproved'];

/** More questions than these are asked by nobody. */
const MOST = 5;

interface Props {
  answer: Answered;
  /** Somebody's words count too: what doesn't hold of them comes first. */
  withWords: boolean;
  /** The user's own photos, as inline pictures. */
  own: readonly string[];
  asOf: string;
  copy: (text: string) => Promise<boolean>;
  save: BesideProps['save'];
}

/** What comes of what was said of a machine: which it is, what follows and fits, what to mind, what to ask. */
export function MachineOutcome({ answer, own, asOf, withWords, copy, save }: Props) {
  const { audit, words, kind, listing } = answer;
  const group = (standing: Standing) => (
    <FindingGroup
      key={standing}
      standing={standing}
      findings={shownFindings(audit, standing)}
      language={listing.language}
      words={words}
      asks={false}
    />
  );
  return (
    <div class="outcome" data-part="outcome">
      {withWords && (
        <p class="summary" data-part="summary">
          {summaryOf(audit)}
        </p>
      )}
      {withWords && FIRST.map(group)}
      <LikelyPart audit={audit} words={words} kind={null} folded={false} beside={{ answer, own, asOf, save }} />
      {kind && hasKindWords(kind) && (
        <section class="group" data-part="kind" aria-labelledby="kind">
          <h2 id="kind">{texts.kind}</h2>
          <KindWords kind={kind} words={words} />
        </section>
      )}
      {group('caution')}
      {withWords && group('agrees')}
      <Questions questions={questionsOf(audit).slice(0, MOST)} words={words} copy={copy} heading={texts.toAsk} />
    </div>
  );
}
