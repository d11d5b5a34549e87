import { headOf } from '../../session/head-of';
import { findingAnchor } from '../finding-anchor';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { Explained } from './Explained';
import type { FindingProps } from './FindingTag';
import { SaidKnown } from './SaidKnown';

/**
 * A note on safety or dealing: what can happen is always in sight, what to do about it, why it is said here and where
 * it is from are opened.
 */
export function StandingCaution({ finding, language, words }: FindingProps) {
  const { head, rest } = headOf(finding.text);
  return (
    <li
      class="mind"
      id={findingAnchor(finding.id)}
      tabIndex={-1}
      data-finding={finding.check}
      data-standing={finding.standing}
    >
      <Disclosure label={<span dir="auto">{shown(head)}</span>} part="caution" row="h3">
        {rest !== '' && (
          <p>
            <Explained text={rest} words={words} />
          </p>
        )}
        <SaidKnown finding={finding} language={language} words={words} />
      </Disclosure>
    </li>
  );
}
