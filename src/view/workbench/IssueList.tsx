import type { PackIssue } from '../../pack/issues';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';

const texts = workbenchTexts.install;

/** More than these help nobody at once. */
const MOST = 30;

/** What is wrong with a pack: where, what is there, what is expected. */
export function IssueList({ issues }: { issues: readonly PackIssue[] }) {
  return (
    <>
      <ul class="issues">
        {issues.slice(0, MOST).map(({ path, what, expected }) => (
          <li key={`${path} ${what}`} data-part="issue">
            <dl class="facts">
              <dt>{texts.path}</dt>
              <dd>{path === '' ? texts.wholeFile : <code data-part="issue-path">{shown(path, 200)}</code>}</dd>
              <dt>{texts.what}</dt>
              <dd>{shown(what, 300)}</dd>
              <dt>{texts.expected}</dt>
              <dd>{shown(expected, 300)}</dd>
            </dl>
          </li>
        ))}
      </ul>
      {issues.length > MOST && <p>{texts.more(issues.length - MOST)}</p>}
    </>
  );
}
