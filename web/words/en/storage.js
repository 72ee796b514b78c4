/** What can go wrong with what is stored, and with the page itself. */

/** The browser's storage does not work. @type {Record<import('../../app/trouble.js').TroubleKind, string>} */
export const TROUBLE = {
  off:
    'This browser does not let this page keep anything: cookies and site data are blocked for it. ' +
    'The page works as usual. Allow site data for this page in the browser, then reload; ' +
    'or export the file before you close it.',
  unavailable:
    'This browser keeps nothing for this page: it has no storage here, as in some private windows. ' +
    'The page works as usual. Export the file before you close it.',
  blocked:
    'The records are held by another tab with an older version of this page. ' +
    'Close the other tabs, then press Try again. Until then, export the file before you close this one.',
  full:
    'The device has no room left, so the last changes are not saved. ' +
    'Export the file, make room on the device, then press Try again.',
  newer:
    'This tab is old: a newer version of this page has the records. Reload to get it. ' +
    'Until then nothing new is saved; export the file before you reload if you have typed anything.',
  cleared:
    'What this browser had saved for this page is gone: site data was cleared. What this tab shows is still here. ' +
    'Put it back, or export the file before you close this tab.',
  failed:
    'The browser could not read or save the records. What this tab shows is still here. Press Try again. ' +
    'If that does not help, export the file, then reload the page.',
};

/** Why a record cannot be used: each ends a sentence. */
export const REASONS = {
  noRecord: 'it is not a record',
  name: 'its name is not one that this page uses',
  noDate: 'it has no date',
  nothing: 'it has nothing in it',
  noVersion: 'it has no version',
  newer: 'a newer version of this page wrote it; reload the page to get that version',
  odd: 'it holds what this page never writes',
  older: 'an older version of this page wrote it, and it could not be brought forward',
  form: 'it is damaged',
  unchecked: 'it could not be checked',
  elsewhere: 'it belongs to the browser that made the file',
  twice: 'the file has two records of this name; the first one counts',
};

/** @param {string} reason */
export const refused = (reason) => `It was not saved: ${reason}`;

/** @param {string} reason */
export const unreadable = (reason) =>
  `What is saved under this name cannot be read: ${reason}. It was not changed, and it is in the exported file.`;

/** Another tab has changed the same thing. */
export const OVERTAKEN = {
  back: 'It was changed in another tab since, so it stays as it is now.',
  change: 'It was changed in another tab at the same time. Look at it as it is now, then make the change again.',
};

export const UNFORESEEN = 'The page met something that it does not expect. Reload it, then try again.';
export const UNDONE = 'Undone.';

/** No figure came, and none is left standing. */
export const NO_ANSWER =
  'The figures could not be worked out, and those that stood here have been taken away. ' +
  'What you typed is kept. Change an entry to work it out again; if it fails again, reload the page.';
