/**
 * What can go wrong with the browser's storage, in words for the page.
 */

/** @typedef {'off' | 'unavailable' | 'blocked' | 'full' | 'newer' | 'cleared' | 'failed'} TroubleKind */

/** @type {Record<TroubleKind, string>} */
const WORDS = {
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
    'The device has no room left, so the last changes are not stored. ' +
    'Export the file, make room on the device, then press Try again.',
  newer:
    'This tab is old: a newer version of this page has the records. Reload to get it. ' +
    'Until then nothing new is stored; export the file before you reload if you have typed anything.',
  cleared:
    'What this browser had stored for this page is gone: site data was cleared. What this tab shows is still here. ' +
    'Put it back, or export the file before you close this tab.',
  failed:
    'The browser could not read or store the records. What this tab shows is still here. Press Try again. ' +
    'If that does not help, export the file, then reload the page.',
};

/** The names browsers give to what goes wrong. */
/** @type {Record<string, TroubleKind>} */
const KINDS = {
  QuotaExceededError: 'full',
  VersionError: 'newer',
  SecurityError: 'off',
  NotSupportedError: 'unavailable',
};

/** Storage does not work. `message` says so in plain words and says what to do. */
export class Trouble extends Error {
  /**
   * @param {TroubleKind} kind
   * @param {unknown} [cause]
   */
  constructor(kind, cause) {
    super(WORDS[kind], { cause });
    this.name = 'Trouble';
    this.kind = kind;
  }
}

/**
 * The trouble behind an error, or null when the error is not the storage's fault.
 * @param {unknown} error
 * @returns {Trouble | null}
 */
export function troubleBehind(error) {
  if (error instanceof Trouble) return error;
  if (error instanceof DOMException) {
    // An object that cannot be stored is a fault in the page, and trying again would not mend it.
    if (error.name === 'DataCloneError' || error.name === 'DataError') return null;
    return new Trouble(KINDS[error.name] ?? 'failed', error);
  }
  return null;
}
