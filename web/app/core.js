/**
 * The reckoning core, loaded once. Nothing else in the page touches WebAssembly.
 *
 * The core keeps no state between calls, so a failed instance can be thrown away and a fresh one asked again.
 */
import init, { __wbg_reset_state as renew, reckon } from '../../target/glue/cure_reckoner.js';
// The build decides what this is: the address of the file when hosted, its bytes in the single file.
import source from '../../target/glue/core.wasm';
import { NO_ANSWER } from '../words/en/storage.js';

/**
 * What every answer looks like: a result, or the problems that stand in its way.
 * @template T
 * @typedef {{ ok: T, problems?: undefined } | { ok?: undefined, problems: Problem[] }} Answer
 */
/** @typedef {{ code: string, field: string, wrong?: import('./types').Wrong, message: string, choices?: string[] }} Problem */

/** The one problem that comes from here and not from the core. */
export const FAILED = 'reckoning-failed';

let spoiled = false;

/**
 * Loads the core. Await it once before the first `ask`; a second call costs nothing.
 * @returns {Promise<void>}
 */
export async function load() {
  await init({ module_or_path: HOSTED ? fetch(/** @type {string} */ (source)) : source });
}

/**
 * Asks the core and gives its answer at once.
 *
 * After a trap the memory of the instance cannot be trusted, so it is thrown away. The answer is then a problem with
 * the code `reckoning-failed` and no figure in it: whoever draws an answer draws that, and no old number stays.
 * @template [T=any]
 * @param {object} request
 * @returns {Answer<T>}
 */
export function ask(request) {
  try {
    if (spoiled) {
      renew();
      spoiled = false;
    }
    return reckon(request);
  } catch (error) {
    console.error(error);
    spoiled = true;
    return { problems: [failure()] };
  }
}

/** @returns {Problem} */
function failure() {
  return {
    code: FAILED,
    field: '',
    message: NO_ANSWER,
  };
}
