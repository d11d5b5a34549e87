import { readFileSync, writeFileSync } from 'node:fs';
import { ROOT } from '../../steps/root';
import { checkRows, withChecksTable } from './checks-table';
import { filesBelow } from './source-files';

const guide = `${ROOT}/DEVELOPERS.md`;
writeFileSync(
  guide,
  withChecksTable(readFileSync(guide, 'utf8'), checkRows(filesBelow(['src/audit/checks'], ['.ts']))),
);
