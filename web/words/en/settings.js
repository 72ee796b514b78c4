/** Settings, storage, and what this page is. */

export const TITLE = 'Settings and backup';

export const SET = {
  units: 'Units',
  unitsHint: 'What you typed stays as it was; only what is shown changes.',
  metric: 'Metric',
  us: 'US',
  scale: 'The smallest step your scale shows',
  scaleHint: 'Everything is rounded to it, cure always downward.',
  rule: 'Whose limits judge a dose',
  light: 'Light',
};

export const ASIDE = {
  head: 'Set aside, since they could not be read',
  says: 'Nothing of them is deleted. They go into the exported file, and come back if a later version can read them.',
};

export const STORAGE = {
  head: 'Storage',
  notStored: 'Not saved',
  stored: 'Every change is saved at once.',
  promised: 'The browser has promised not to clear it to make room.',
  mayClear: 'The browser may clear it to make room. Export the file from time to time.',
};

export const ABOUT = {
  head: 'About',
  here: 'Works in this browser. Sends nothing anywhere.',
  figures:
    'Its figures come from published rules, handbooks and tables; the source stands beside each. Your local food rules decide, not this page.',
  newVersion: 'A new version is ready.',
  oneFile: 'This is the one-file edition. A new version is a new file; export first, then import there if it asks.',
  announced: 'New versions show at the top of the page.',
  others:
    'In some browsers other pages opened from a file on this device can read what this one saves. Open no file here that you do not trust, or use the hosted page: no other page can read its records.',
  offline: 'Ready offline: it starts with no signal.',
  online: 'Not ready offline yet: it still needs the network to start.',
  /** @param {string} release */
  version: (release) => `Version ${release}`,
};
