/**
 * A change as an operation: what a person made of what the screen showed, carried onto what is stored by now.
 *
 * `from` is what was shown, `to` what was made of it, `onto` what is stored. What another tab did since stays. Where
 * the two cannot both hold, nothing is changed and `Overtaken` says so. Taking a change back is the same with `from`
 * and `to` turned round; then what another tab has changed since is left as it is.
 */
import { canonical } from './records.js';
import { OVERTAKEN } from '../words/en/storage.js';

/**
 * How a part is carried: `fields` one by one; `list` of things known by a field, or by what they are; `text` a person
 * wrote. What is not named is one thing, taken or left whole.
 * @typedef {{ fields?: Record<string, Shape>, list?: string | null, whole?: boolean, text?: boolean }} Shape
 */

/** @type {Shape} */
const TEXT = { text: true };
/** @type {Shape} */
const BY_VALUE = { list: null, whole: true };

/** @type {Record<string, Shape>} */
export const SHAPES = {
  batch: {
    fields: {
      // The weight of a class and what it is the weight of belong together.
      pieces: { list: 'id', whole: true },
      ticks: { list: 'of' },
      fridge: { list: 'id' },
      fire: { fields: { readings: { list: 'id' }, shares: { list: 'own', whole: true } } },
      after: { fields: { cut: TEXT, taste: TEXT, change: TEXT } },
      notes: TEXT,
    },
  },
  recipe: { fields: { cures: BY_VALUE, lines: BY_VALUE, steps: BY_VALUE, notes: TEXT } },
  settings: {
    fields: { spoons: BY_VALUE, mixes: BY_VALUE, learned: BY_VALUE, smoked: BY_VALUE, house: { fields: {} } },
  },
  stock: { fields: {} },
  meta: {},
};

/** The change cannot be made any more, since another tab has changed the same thing. */
export class Overtaken extends Error {
  /** @param {boolean} back it was to be taken back */
  constructor(back) {
    super(back ? OVERTAKEN.back : OVERTAKEN.change);
    this.name = 'Overtaken';
  }
}

/**
 * @param {Shape} shape
 * @param {any} from
 * @param {any} to
 * @param {any} onto
 * @param {boolean} [back] the change is taken back
 * @returns {any} what shall be stored; undefined for nothing
 */
export function carry(shape, from, to, onto, back = false) {
  if (same(from, to) || same(onto, to)) return onto;
  if (same(onto, from)) return to;
  // Something that is there no more cannot be changed, nor something removed that is not what was seen.
  if (onto === undefined || to === undefined || from === undefined) throw new Overtaken(back);
  const now = part(shape, from, to, onto, back);
  if (back && same(now, onto)) throw new Overtaken(back);
  return now;
}

/**
 * @param {Shape} shape
 * @param {any} from
 * @param {any} to
 * @param {any} onto
 * @param {boolean} back
 * @returns {any}
 */
function part(shape, from, to, onto, back) {
  if (same(from, to) || same(onto, to)) return onto;
  if (shape.fields) return fields(shape.fields, from ?? {}, to ?? {}, onto ?? {}, back);
  if (shape.list !== undefined) return list(shape, from ?? [], to ?? [], onto ?? [], back);
  if (same(onto, from)) return to;
  if (back) return onto;
  if (shape.text) return both(from ?? '', to ?? '', onto ?? '');
  // Of two ways to set a switch or a name the later holds; what has parts that belong together is asked about.
  if ([from, to, onto].some((one) => one !== null && typeof one === 'object')) throw new Overtaken(false);
  return to;
}

/**
 * @param {Record<string, Shape>} shapes
 * @param {any} from
 * @param {any} to
 * @param {any} onto
 * @param {boolean} back
 */
function fields(shapes, from, to, onto, back) {
  const now = { ...onto };
  for (const key of new Set([...Object.keys(from), ...Object.keys(to)])) {
    if (same(from[key], to[key])) continue;
    const value = part(shapes[key] ?? {}, from[key], to[key], onto[key], back);
    if (value === undefined) delete now[key];
    else now[key] = value;
  }
  return now;
}

/**
 * @param {Shape} shape
 * @param {any[]} from
 * @param {any[]} to
 * @param {any[]} onto
 * @param {boolean} back
 */
function list(shape, from, to, onto, back) {
  if (same(onto, from)) return to;
  const [was, will, is] = [from, to, onto].map((things) => named(shape.list ?? null, things));
  const [a, b, now] = /** @type {[Map<string, any>, Map<string, any>, Map<string, any>]} */ ([was, will, is]);
  const stay = [...a.keys()].filter((key) => b.has(key));
  // Turned round here and changed there: nobody can say what is meant.
  if (stay.join('\n') !== [...b.keys()].filter((key) => a.has(key)).join('\n')) throw new Overtaken(back);

  for (const [key, thing] of a) {
    const made = b.get(key);
    if (made !== undefined && same(made, thing)) continue;
    const there = now.get(key);
    if (made === undefined) {
      if (there === undefined) {
        // It was put in the place of another, and that is changed or gone.
        if (shape.list === null && b.size >= a.size) throw new Overtaken(back);
      } else if (!same(there, thing)) throw new Overtaken(back);
      now.delete(key);
    } else {
      if (there === undefined) throw new Overtaken(back);
      if (shape.whole && !same(there, thing) && !same(there, made)) throw new Overtaken(back);
      now.set(key, shape.whole ? made : fields({}, thing, made, there, back));
    }
  }
  const order = [...now.keys()];
  const wanted = [...b.keys()];
  for (const [at, key] of wanted.entries()) {
    if (a.has(key)) continue;
    const there = now.get(key);
    if (there !== undefined && !same(there, b.get(key))) throw new Overtaken(back);
    now.set(key, b.get(key));
    if (there !== undefined) continue;
    const last = wanted.slice(at).every((one) => !a.has(one));
    const before = last ? order.length : order.indexOf(wanted[at - 1] ?? '') + 1;
    order.splice(before, 0, key);
  }
  return order.map((key) => now.get(key));
}

/**
 * Things by their names. Of several with one name each has its number.
 * @param {string | null} field null: a thing is named by what it is
 * @param {any[]} things
 * @returns {Map<string, any>}
 */
function named(field, things) {
  /** @type {Map<string, any>} */
  const found = new Map();
  for (const thing of things) {
    const name = field === null ? canonical(thing) : String(thing[field]);
    let key = name;
    for (let n = 2; found.has(key); n++) key = `${name} ${n}`;
    found.set(key, thing);
  }
  return found;
}

/**
 * Two texts that grew out of one: both are kept.
 * @param {string} from
 * @param {string} to
 * @param {string} onto
 */
function both(from, to, onto) {
  if (from === '' || !to.startsWith(from)) return [onto, to].filter(Boolean).join('\n');
  return onto + (onto.endsWith('\n') || onto === '' ? '' : '\n') + to.slice(from.length).trim();
}

/** @param {any} a @param {any} b */
function same(a, b) {
  return a === b || canonical(a ?? null) === canonical(b ?? null);
}
