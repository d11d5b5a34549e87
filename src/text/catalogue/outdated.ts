/** What a page of ours says that has outlived its own program: the browser has put a newer one in its place. */
export const outdatedTexts = {
  heading: 'Bedplate has been updated',
  text: 'This page belongs to the Bedplate from before, which the browser has ended, so nothing here answers any more. What you installed and wrote is kept.',
  panel: 'Close this panel, then press the Bedplate button again: it reads the page anew.',
  workbench: 'Reload this page to go on.',
  reload: 'Reload',
} as const;
