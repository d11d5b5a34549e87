/** What the command line and the demo say. */
export const cli = {
  demo: {
    installing: 'No Chromium found here: installing one with apt-get (about half a minute) ...',
    howToGetBrowser:
      'No Chromium on this machine: install one (Debian: apt-get install chromium; Ubuntu: snap install chromium; ' +
      'Fedora: dnf install chromium; macOS: brew install --cask chromium; Windows: winget install Hibbiki.Chromium), ' +
      'or name one in BEDPLATE_BROWSER.',
  },
} as const;
