/**
 * The reckoning core, loaded once. Nothing else in the page touches WebAssembly.
 *
 * It comes in two parts, so that a first visit has its first answer before all is there: what the first screen asks,
 * and the rest. A question that wants the rest before it has come fails like any other that failed.
 *
 * The core keeps no state between calls, so a failed instance can be thrown away and a fresh one asked again.
 */
import init, { __wbg_reset_state as renew, initSync as present, reckon } from '../../target/glue/cure_reckoner.js';
// The build decides what these are: the addresses of the files when hosted; in the single file the bytes of the whole,
// and nothing.
import first from '../../target/glue/first.wasm';
import rest from '../../target/glue/rest.wasm';
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
/** @type {WebAssembly.Module | null} */
let restModule = null;
/** @type {Promise<void> | null} */
let coming = null;

/**
 * Loads what the first screen asks. Await it once before the first `ask`; a second call costs nothing.
 * @returns {Promise<void>}
 */
export async function load() {
  await init({ module_or_path: HOSTED ? fetch(/** @type {string} */ (first)) : first });
}

/** Whether every question can be asked. */
export const isWhole = () => !rest || restModule !== null;

/**
 * Loads the rest too: behind the first part on a first visit, beside it where both are at hand.
 * @returns {Promise<void>} rejects where it cannot be had; the next call tries again
 */
export function whole() {
  coming ??= loadRest().catch((error) => {
    coming = null;
    throw error;
  });
  return coming;
}

async function loadRest() {
  if (!rest) return load();
  if (!navigator.serviceWorker?.controller) await load();
  const module = await (HOSTED
    ? fetched(/** @type {string} */ (rest))
    : WebAssembly.compile(/** @type {any} */ (rest)));
  await load();
  restModule = module;
  if (!spoiled) join();
}

/** @param {string} address */
async function fetched(address) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`The core is not whole: ${response.status}`);
  // A host that does not know the type of the file gets it compiled all the same.
  const other = response.clone();
  return WebAssembly.compileStreaming(response).catch(async () => WebAssembly.compile(await other.arrayBuffer()));
}

/** Puts the functions of the rest into the table of the present instance, from where the first part calls them. */
function join() {
  // The glue gives the exports of its present instance to whoever asks for one.
  const exports = /** @type {any} */ (present)();
  if (restModule) new WebAssembly.Instance(restModule, { first: exports });
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
      join();
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
