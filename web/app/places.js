/**
 * The ids of what a batch has several of, and how readings and ticks name their size class: by its place in what is
 * stored, by its id while a change is carried from one state of the batch to another.
 */
import { Overtaken } from './merge.js';

/** Lists of a batch whose things have ids, and the letter of those that come from before they had. */
const LISTS = /** @type {const} */ ([
  ['pieces', 'c'],
  ['fridge', 'f'],
]);
const OF_CLASS = /^(draw|rinse|dry|pull|wrap):(.+)$/;

/**
 * The batch with an id on each size class and reading.
 * @param {any} batch
 * @param {(letter: string, place: number) => string} give what to call one that has none yet
 * @returns {any}
 */
export function withIds(batch, give = (letter, place) => letter + place) {
  const now = { ...batch };
  for (const [list, letter] of LISTS) if (Array.isArray(now[list])) now[list] = known(now[list], letter, give);
  if (Array.isArray(now.fire?.readings)) now.fire = { ...now.fire, readings: known(now.fire.readings, 'r', give) };
  return now;
}

/**
 * @param {any[]} things
 * @param {string} letter
 * @param {(letter: string, place: number) => string} give
 */
function known(things, letter, give) {
  return things.map((one, place) =>
    one === null || typeof one !== 'object' || one.id ? one : { ...one, id: give(letter, place) },
  );
}

/**
 * The batch with size classes named by their ids.
 * @param {any} batch
 * @returns {any}
 */
export function unplaced(batch) {
  if (!batch?.pieces) return batch;
  const ids = batch.pieces.map((/** @type {any} */ { id }) => id);
  const idAt = (/** @type {number} */ place) => ids[place] ?? `?${place}`;
  const now = { ...batch };
  if (now.ticks) {
    now.ticks = now.ticks.map((/** @type {any} */ tick) => {
      const [, what, place] = OF_CLASS.exec(tick.of) ?? [];
      return what ? { ...tick, of: `${what}:${idAt(Number(place))}` } : tick;
    });
  }
  if (now.fire) {
    const { shares, readings, ...rest } = now.fire;
    now.fire = {
      ...rest,
      ...(shares && {
        shares: shares.map((/** @type {number[]} */ [own = -1, probe = -1]) => ({
          own: idAt(own),
          probe: idAt(probe),
        })),
      }),
      ...(readings && {
        readings: readings.map((/** @type {any} */ one) =>
          one.class === undefined ? one : { ...one, class: idAt(one.class) },
        ),
      }),
    };
  }
  return now;
}

/**
 * The batch as it is stored. A reading or a tick of a size class that is gone is not dropped without a word.
 * @param {any} batch
 * @param {boolean} back a change is taken back
 * @returns {any}
 */
export function placed(batch, back) {
  if (!batch?.pieces) return batch;
  const places = new Map(batch.pieces.map((/** @type {any} */ { id }, /** @type {number} */ at) => [id, at]));
  const placeOf = (/** @type {string} */ id) => (id.startsWith('?') ? Number(id.slice(1)) : places.get(id));
  const must = (/** @type {string} */ id) => {
    const place = placeOf(id);
    if (place === undefined) throw new Overtaken(back);
    return place;
  };
  const now = { ...batch };
  if (now.ticks) {
    now.ticks = now.ticks.map((/** @type {any} */ tick) => {
      const [, what, id] = OF_CLASS.exec(tick.of) ?? [];
      return what ? { ...tick, of: `${what}:${must(id ?? '')}` } : tick;
    });
  }
  // The log of the refrigerator is in the order of its times, whoever wrote in it.
  if (now.fridge) now.fridge = now.fridge.toSorted((/** @type {any} */ a, /** @type {any} */ b) => a.at - b.at);
  if (now.fire) {
    const { shares, readings, ...rest } = now.fire;
    // Who speaks for a class that is gone is of no account.
    const left = shares?.flatMap((/** @type {any} */ { own, probe }) =>
      placeOf(own) === undefined || placeOf(probe) === undefined ? [] : [[placeOf(own), placeOf(probe)]],
    );
    now.fire = {
      ...rest,
      ...(left && { shares: left }),
      ...(readings && {
        readings: readings.map((/** @type {any} */ one) =>
          one.class === undefined ? one : { ...one, class: must(one.class) },
        ),
      }),
    };
  }
  return now;
}
