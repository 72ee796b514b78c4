/**
 * What can go wrong with the browser's storage, in words for the page.
 */
import { TROUBLE } from '../words/en/storage.js';

/** @typedef {'off' | 'unavailable' | 'blocked' | 'full' | 'newer' | 'cleared' | 'failed'} TroubleKind */

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
    super(TROUBLE[kind], { cause });
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
    // A DataError is none of that: keys are checked before, and on a full disk Chromium calls it so when it cannot write a
    // large record.
    if (error.name === 'DataCloneError') return null;
    return new Trouble(KINDS[error.name] ?? 'failed', error);
  }
  return null;
}
