import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../steps/root';
import { mustPass, type Tried, tryFile, workshop } from './try-mutants';

// `npm run mutants [-- PATH [MOST]]`: changes the sources of a room (src/claims and src/audit/checks without one), a line
// at a time and in a copy, and tells which changes no unit test notices. Some make no difference to anybody; the others
// are tests that are missing.

const [path, most = '10'] = process.argv.slice(2);
const files = path?.endsWith('.ts') ? [path] : (path ? [path] : ['src/claims', 'src/audit/checks']).flatMap(below);

function below(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !/types|words|triggers/.test(name))
    .sort()
    .map((name) => `${folder}/${name}`);
}

const { root, close } = workshop();
const tried: Tried[] = [];
try {
  mustPass(root);
  for (const file of files) {
    tried.push(
      ...tryFile(root, file, Number(most), ({ mutant, noticed }) => {
        if (!noticed) console.log(`${file}:${mutant.line}: ${mutant.change}`);
      }),
    );
  }
} finally {
  close();
}
const noticed = tried.filter((one) => one.noticed).length;
console.log(`\n${noticed} of ${tried.length} changes were noticed`);
