import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../../src/audit/checks/index';
import { ROOT } from '../../steps/root';
import { checkRows, withChecksTable } from './checks-table';
import { filesBelow } from './source-files';

const rows = checkRows(filesBelow(['src/audit/checks'], ['.ts']));

describe('the checks', () => {
  it('each file is registered, and each that is registered has its file', () =>
    expect(rows.map(({ id }) => id)).toEqual(checks.map(([id]) => id).sort()));

  it('each says in a sentence what it does', () => expect(rows.filter(({ does }) => does === null)).toEqual([]));

  it('are those of the guide: `npm run checks-table` writes them anew', () => {
    const guide = readFileSync(`${ROOT}/DEVELOPERS.md`, 'utf8');
    expect(guide).toBe(withChecksTable(guide, rows));
  });
});

describe('the table itself', () => {
  const file = (text: string) => [{ path: 'src/audit/checks/made-up.ts', text }];

  it('takes the first sentence of the function that is named after the file', () =>
    expect(
      checkRows(
        file('/** Not this. */\nconst A = 1;\n\n/** Is it\n * so? And more. */\nexport function madeUp() {}\n'),
      ),
    ).toEqual([{ id: 'made-up', does: 'Is it so?' }]));

  it('finds none where there is none', () => {
    expect(checkRows(file('/** Of something else. */\nconst A = 1;\nexport function madeUp() {}'))[0]?.does).toBeNull();
    expect(checkRows(file('/** Another name. */\nexport function other() {}'))[0]?.does).toBeNull();
  });

  it('replaces what stands between the marks, and nothing else', () => {
    const made = withChecksTable('a\n<!-- checks -->\nold\n<!-- /checks -->\nb', [{ id: 'x', does: 'Does it.' }]);
    expect(made).toBe(
      'a\n<!-- checks -->\n\n| check | what it does |\n|---|---|\n| `x` | Does it. |\n\n<!-- /checks -->\nb',
    );
    expect(() => withChecksTable('no marks', [])).toThrow('no <!-- checks -->');
  });
});
