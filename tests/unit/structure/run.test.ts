import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { judgeRemarks } from '../../steps/add-on';
import { BUDGETS, type Budget, checkBudgets } from '../../steps/budgets';
import { ROOT } from '../../steps/root';
import { exitCode, lastLine, sum } from '../../steps/tally';
import { countReport } from '../../steps/vitest-report';

describe('a run of npm test', () => {
  const tally = (passed: number, failed: number, skipped: number) => ({ passed, failed, skipped, notes: [] });

  it('ends with its counts', () => {
    expect(lastLine(sum([tally(3, 0, 1), tally(1, 2, 0)]))).toBe('4 passed, 2 failed, 1 skipped');
  });

  it('fails on a failure, on nothing at all, and in CI on a skip', () => {
    expect(exitCode(tally(5, 0, 0), true)).toBe(0);
    expect(exitCode(tally(5, 1, 0), false)).toBe(1);
    expect(exitCode(tally(0, 0, 0), false)).toBe(1);
    expect(exitCode(tally(5, 0, 1), false)).toBe(0);
    expect(exitCode(tally(5, 0, 1), true)).toBe(1);
  });

  it('counts tests, files that do not load, and errors outside of tests', () => {
    const test = (status: string) => ({ status, fullName: status });
    const report = {
      testResults: [
        { name: '/p/a.test.ts', status: 'failed', assertionResults: [test('passed'), test('failed'), test('skipped')] },
        { name: '/p/b.test.ts', status: 'failed', message: 'no such module\n at x', assertionResults: [] },
      ],
    };
    const counted = countReport(report, false, '/p');
    expect(lastLine(counted)).toBe('1 passed, 2 failed, 1 skipped');
    expect(counted.notes).toContain('failed: b.test.ts: no such module');
    const good = { testResults: [{ name: 'a', status: 'passed', assertionResults: [test('passed')] }] };
    expect(countReport(good, true, '/p').failed).toBe(0);
    expect(countReport(good, false, '/p').failed).toBe(1);
  });
});

describe('what the add-on linter remarks', () => {
  const remark = (_type: 'error' | 'warning', code: string, file: string) => ({ _type, code, file, message: 'x' });
  const judged = (...remarks: Parameters<typeof judgeRemarks>[0]) => lastLine(judgeRemarks(remarks, () => {}));

  it('passes without a remark and with an explained one', () => {
    expect(judged()).toBe('1 passed, 0 failed, 0 skipped');
    expect(judged(remark('warning', 'UNSAFE_VAR_ASSIGNMENT', 'chunks/a.js'))).toBe('2 passed, 0 failed, 0 skipped');
  });

  it('fails with an error, and with what nobody explained', () => {
    expect(judged(remark('error', 'UNSAFE_VAR_ASSIGNMENT', 'chunks/a.js'))).toContain('1 failed');
    expect(judged(remark('warning', 'UNSAFE_VAR_ASSIGNMENT', 'reader.js'))).toContain('1 failed');
    expect(judged(remark('warning', 'DANGEROUS_EVAL', 'chunks/a.js'))).toContain('1 failed');
  });
});

describe('byte budgets', () => {
  const folders: string[] = [];
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true });
  });
  const build = () => {
    mkdirSync(join(ROOT, '.test'), { recursive: true });
    const folder = mkdtempSync(join(ROOT, '.test/build-'));
    folders.push(folder);
    writeFileSync(join(folder, 'reader.js'), 'export const a = 1;');
    writeFileSync(
      join(folder, 'sidepanel.html'),
      '<link rel="stylesheet" href="/panel.css"><script type="module" crossorigin src="/panel.js"></script>',
    );
    writeFileSync(join(folder, 'panel.js'), "import './shared.js'; import('./later.js');");
    writeFileSync(join(folder, 'shared.js'), "export * from './reader.js';");
    writeFileSync(join(folder, 'panel.css'), 'p{}');
    writeFileSync(join(folder, 'engine.worker-1.js'), "import('./parse-1.js');");
    writeFileSync(join(folder, 'parse-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'workbench.html'), '<script type="module" src="./later.js"></script>');
    const doors = ['packs', 'drafts', 'enquiry', 'sheets', 'prices'].map((room) => `import('./${room}-12345678.js');`);
    writeFileSync(join(folder, 'later.js'), doors.join(''));
    writeFileSync(join(folder, 'packs-12345678.js'), '');
    writeFileSync(join(folder, 'prices-12345678.js'), '');
    writeFileSync(join(folder, 'sheets-12345678.js'), '');
    writeFileSync(join(folder, 'price-answers-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'open-seal-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'look-at-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'sheet-answer-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'page-answer-1.js'), "import './engine.worker-1.js';");
    writeFileSync(join(folder, 'drafts-12345678.js'), "import './list-_abcdef-.js';");
    writeFileSync(join(folder, 'enquiry-12345678.js'), "import './list-_abcdef-.js'; import './shared.js';");
    writeFileSync(join(folder, 'list-_abcdef-.js'), '');
    writeFileSync(join(folder, 'DraftAnswered-12345678.js'), "import './list-_abcdef-.js';");
    writeFileSync(join(folder, 'MachineOutcome-12345678.js'), "import './own.js';");
    writeFileSync(join(folder, 'SeenTable-12345678.js'), '');
    writeFileSync(join(folder, 'own.js'), '');
    writeFileSync(join(folder, 'OwnPart-12345678.js'), '');
    writeFileSync(join(folder, 'SideBySide-12345678.js'), "import './shared.js';");
    for (const style of ['drafts-87654321.css', 'list-87654321.css', 'other-87654321.css'])
      writeFileSync(join(folder, style), 'p{}');
    writeFileSync(join(folder, 'background.js'), '');
    return folder;
  };

  it('count what a page loads at once, through imports and re-exports', () => {
    const lines: string[] = [];
    expect(checkBudgets(build(), BUDGETS, (line) => lines.push(line)).failed).toBe(0);
    expect(lines[1]).toContain('(panel.js, reader.js, shared.js, panel.css)');
  });

  it('count a room with its page: what it imports, and the style sheets that belong to that', () => {
    const lines: string[] = [];
    checkBudgets(build(), BUDGETS, (line) => lines.push(line));
    const filesWith = (room: string) => lines.find((line) => line.includes(`room ${room}`))?.match(/\((.*)\)/)?.[1];
    expect(filesWith('packs')).toBe('later.js, packs-12345678.js');
    expect(filesWith('drafts')).toBe(
      'later.js, drafts-12345678.js, list-_abcdef-.js, drafts-87654321.css, list-87654321.css',
    );
    expect(filesWith('enquiry')).toBe(
      'later.js, enquiry-12345678.js, list-_abcdef-.js, reader.js, shared.js, list-87654321.css',
    );
  });

  it('count what a room fetches on demand without what is there with the room', () => {
    const lines: string[] = [];
    checkBudgets(build(), BUDGETS, (line) => lines.push(line));
    const filesOf = (room: string) => lines.find((line) => line.startsWith(`parts of the room ${room},`));
    expect(filesOf('drafts')).toContain('(DraftAnswered-12345678.js, SideBySide-12345678.js, reader.js, shared.js)');
    expect(filesOf('enquiry')).toContain('(MachineOutcome-12345678.js, SideBySide-12345678.js, own.js)');
  });

  it('fail the run with their reason, and fail on what is not there', () => {
    const tight = BUDGETS.map((budget): Budget => ({ ...budget, most: 10 }));
    const { failed, notes } = checkBudgets(build(), tight, () => {});
    expect(failed).toBe(BUDGETS.length);
    expect(notes[0]).toContain('it is kept because');
    expect(checkBudgets(join(build(), 'none'), BUDGETS, () => {}).failed).toBe(BUDGETS.length);
  });

  it('weigh every script of the build', () => {
    const folder = build();
    writeFileSync(join(folder, 'around.js'), '');
    expect(checkBudgets(folder, BUDGETS, () => {}).notes).toEqual(['failed: budget: no budget weighs around.js']);
  });
});
