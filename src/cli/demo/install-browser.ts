import { cli as texts } from '../../text/catalogue/cli';
import { aptInstall, mayInstall } from './apt';
import { BROWSER_VARIABLE, findBrowser } from './find-browser';
import { FIREFOX_VARIABLE, findFirefox } from './find-firefox';

/** How one kind of browser is found, named and, on Debian and Ubuntu, installed. */
interface Kind {
  find: () => string | null;
  variable: string;
  package: string;
  howToGet: string;
}

const CHROMIUM: Kind = {
  find: findBrowser,
  variable: BROWSER_VARIABLE,
  package: 'chromium',
  howToGet: texts.demo.howToGetBrowser,
};
const FIREFOX: Kind = {
  find: findFirefox,
  variable: FIREFOX_VARIABLE,
  package: 'firefox-esr',
  howToGet: texts.demo.howToGetFirefox,
};

/**
 * The Chromium of this machine; where there is none and this is Debian or Ubuntu with root's rights, one is installed.
 * @param say takes lines of progress.
 * @returns its path, or null after one line that says how to get one.
 */
export function findOrInstallBrowser(say: (line: string) => void): string | null {
  return findOrInstall(CHROMIUM, say);
}

/** The same for Firefox. */
export function findOrInstallFirefox(say: (line: string) => void): string | null {
  return findOrInstall(FIREFOX, say);
}

function findOrInstall(kind: Kind, say: (line: string) => void): string | null {
  const found = kind.find();
  if (found) return found;
  const named = process.env[kind.variable];
  if (named) {
    // Whoever names a browser wants that one, and no other installed.
    say(texts.demo.namedCannotRun(kind.variable, named));
    return null;
  }
  if (mayInstall()) {
    say(texts.demo.installing(kind.package));
    // The fonts are for the pictures: without any, a text is drawn as boxes.
    if (aptInstall(kind.package, 'fonts-dejavu-core')) {
      const installed = kind.find();
      if (installed) return installed;
    }
  }
  say(kind.howToGet);
  return null;
}
