// Random changes from two tabs, many of them at one instant, with kills, reloads and updates in between, against a plain
// list of what a tab was told as kept. `OPERATIONS=10000 SEED=7 node --test tests/browser/model.test.mjs` is the long run,
// `ENGINE=firefox` or `ENGINE=webkit` in front of it another engine.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { setTimeout as pause } from 'node:timers/promises';
import { bareReleases } from './bare.mjs';
import { chance } from './chance.mjs';
import { scratch } from './harness.mjs';
import { ENGINES } from './tabs.mjs';

const SEED = Number(process.env.SEED ?? 1);
/** How many changes each engine makes: all of them a few, or the one that is asked for as many as are asked for. */
const RUNS = process.env.ENGINE
  ? { [process.env.ENGINE]: 300 }
  : { chromium: 300, ...(process.env.OPERATIONS ? {} : { firefox: 60, webkit: 100 }) };
/** After so many rounds the power goes: `KILL_EVERY=5` for a run of many kills. */
const KILL_EVERY = Number(process.env.KILL_EVERY ?? 150);
const RELOAD_EVERY = 40;
/** So often one tab goes over to the other release, while the other one stays on its own. */
const UPDATE_EVERY = 60;

for (const [engine, few] of Object.entries(RUNS)) {
  const operations = Number(process.env.OPERATIONS ?? few);
  test(`${operations} random changes from two tabs lose nothing that was told as kept (${engine}, seed ${SEED})`, (t) =>
    lost(t, engine, operations));
}

/** @param {keyof typeof ENGINES} engine @param {number} operations */
async function lost(t, engine, operations) {
  const profile = scratch(t);
  const pages = await bareReleases(t, ['"this one"', '"the next one"']);
  const releases = pages.map(({ host }) => host);
  const dice = chance(SEED);
  const list = new Kept();
  let { tabs, cut } = await start(t, engine, profile, releases[0]);
  await tabs[0].run(() =>
    shelf.add('batch/one', { name: 'one', pieces: [], ticks: [], fridge: [], fire: { readings: [] } }),
  );
  let made = 0;
  let [kills, reloads, updates] = [0, 0, 0];

  for (let round = 1; made < operations; round++) {
    // Two at once, each in its own tab, or one after the other in any order.
    const pair = tabs.map((_, tab) => list.choose(dice, `${round}-${tab}`));
    const run = (tab) => tabs[tab].run(drive, pair[tab]);
    let told;
    if (cut && round % KILL_EVERY === 0) {
      // The power goes while both are at it: what was not told may be there or not.
      kills++;
      const both = [0, 1].map((tab) => run(tab).catch(() => ({ told: 'nothing' })));
      await pause(dice.below(25));
      await cut();
      told = await Promise.all(both);
      ({ tabs, cut } = await start(t, engine, profile, releases[updates % 2]));
    } else if (dice.next() < 0.7) told = await Promise.all([run(0), run(1)]);
    else told = [await run(0), await run(1)];
    list.heard(pair, told);
    made += 2;
    if (round % RELOAD_EVERY === 0) {
      reloads++;
      const tab = tabs[dice.below(2)];
      await tab.reload();
      await ready(tab);
    }
    if (round % UPDATE_EVERY === 0) {
      updates++;
      const tab = tabs[updates % 2];
      await tab.go(releases[Math.ceil(updates / 2) % 2]);
      await ready(tab);
    }
    if (round % 10 === 0 || made >= operations) {
      const stored = await tabs[dice.below(2)].run(() => read());
      assert.deepEqual(list.differences(stored), [], `after ${made} changes, ${kills} kills, seed ${SEED}`);
      list.seen(stored);
    }
  }
  t.diagnostic(
    `${engine}: ${made} changes, ${list.told.kept} told as kept, ${list.told.refused} refused in words, ${kills} kills, ` +
      `${reloads} reloads, ${updates} updates, 0 lost`,
  );
}

async function start(t, engine, profile, address) {
  const browser = await ENGINES[engine](t, profile);
  for (const tab of browser.tabs) {
    await tab.go(address);
    await ready(tab);
  }
  return browser;
}

/** Waits for the page, and lets it open its records. */
async function ready(tab) {
  while (!(await tab.run(() => document.documentElement.hasAttribute('data-ready')).catch(() => false)))
    await pause(20);
  await tab.run(begin);
}

/** In the page: the records as a screen has them, which follows what other tabs do. */
async function begin() {
  const store = await openStore();
  const settings = { units: 'metric', scale_step: '0.1 g', profile: 'us-home' };
  window.shelf = new Shelf(store, settings);
  await shelf.fill([]);
  store.onChange((keys) => shelf.follow(keys));
  window.undos = [];
  window.read = async () => ({
    batch: await store.get('batch/one'),
    stock: Object.fromEntries((await store.all('stock/')).map(({ key, data }) => [key, data])),
  });
}

/** In the page: one change, made as the screens make it: by place in what is shown, or from a snapshot of it. */
async function drive({ what, id, value, of }) {
  const batch = shelf.batches.get('one');
  const at = (things) => things.findIndex((one) => one.id === of);
  const edit = (change) => shelf.changeBatch('one', change);
  const ways = {
    'add a class': () =>
      edit((one) => ({ ...one, pieces: [...batch.pieces, { id, cut: 'own', name: value, count: 1 }] })),
    'change a class': () =>
      edit((one) => ({
        ...one,
        pieces: batch.pieces.with(at(batch.pieces), { ...batch.pieces[at(batch.pieces)], name: value }),
      })),
    'remove a class': () => {
      const place = at(batch.pieces);
      const readings = batch.fire.readings.filter((one) => one.class !== place);
      const moved = readings.map((one) => (one.class > place ? { ...one, class: one.class - 1 } : one));
      return edit((one) => ({
        ...one,
        pieces: batch.pieces.toSpliced(place, 1),
        fire: { ...one.fire, readings: moved },
      }));
    },
    read: () => {
      const place = batch.pieces.findIndex((one) => one.id === of);
      const reading = { id, temperature: value, at: 1, ...(place >= 0 && { class: place }) };
      return edit((one) => ({ ...one, fire: { ...one.fire, readings: [...one.fire.readings, reading] } }));
    },
    strike: () =>
      edit((one) => ({
        ...one,
        fire: {
          ...one.fire,
          readings: one.fire.readings.map((r, n) => (n === at(one.fire.readings) ? { ...r, struck: true } : r)),
        },
      })),
    fridge: () =>
      edit((one) => ({ ...one, fridge: [...(batch.fridge ?? []), { id, at: 5, what: 'read', reads: value }] })),
    tick: () => edit((one) => ({ ...one, ticks: [...one.ticks, { of: id, at: 1 }] })),
    untick: () => edit((one) => ({ ...one, ticks: one.ticks.filter((tick) => tick.of !== of) })),
    remark: () => edit((one) => ({ ...one, notes: [batch.notes, value].filter(Boolean).join('\n') })),
    pack: () => shelf.add(`stock/${id}`, { item: 'pack', name: value }),
    give: () => shelf.changeStock(of, (one) => ({ ...one, to: value })),
    undo: () => shelf.takeBack(undos.at(-1).moves),
  };
  const gone = {
    'change a class': () => at(batch.pieces) < 0,
    'remove a class': () => at(batch.pieces) < 0,
    strike: () => at(batch.fire?.readings ?? []) < 0,
    give: () => !shelf.stock.has(of),
    undo: () => undos.length === 0,
  };
  if (gone[what]?.()) return { told: 'not there' };
  try {
    const moves = await ways[what]();
    const undone = what === 'undo' ? undos.pop().id : null;
    if (what !== 'undo') undos.push({ id, moves });
    await shelf.read;
    // A reading of a class that this tab does not see yet is one of the cabinet.
    return { told: 'kept', undone, cabinet: what === 'read' && batch.pieces.every((one) => one.id !== of) };
  } catch (error) {
    if (error.name !== 'Overtaken') throw error;
    if (what === 'undo') undos.pop();
    return { told: 'refused' };
  }
}

/** The plain list: what each change was told to be, and what must be found because of it. */
class Kept {
  told = { kept: 0, refused: 0 };
  /** Things by their ids: whether they must be there (true), must not (false), or nobody can say (null). */
  #things = new Map();
  /** Every change by its id, for Undo. */
  #made = new Map();

  choose(dice, id) {
    const of = (kind) => {
      const all = [...this.#things].filter(([, one]) => one.kind === kind && one.there).map(([name]) => name);
      return all.length ? dice.one(all) : undefined;
    };
    const what = dice.one([
      'add a class',
      'add a class',
      'change a class',
      'remove a class',
      'read',
      'read',
      'read',
      'strike',
      'fridge',
      'tick',
      'untick',
      'remark',
      'pack',
      'pack',
      'give',
      'undo',
    ]);
    const target = {
      'change a class': 'class',
      'remove a class': 'class',
      read: 'class',
      strike: 'reading',
      untick: 'tick',
      give: 'pack',
    }[what];
    // Few enough for one record.
    const classes = [...this.#things.values()].filter((one) => one.kind === 'class' && one.there).length;
    const chosen = what === 'add a class' && classes >= 30 ? 'pack' : what;
    return { what: chosen, id: `x${id}`, value: `v${id}`, of: target && of(target) };
  }

  heard(changes, answers) {
    const touched = changes.map(({ of }) => of);
    for (const [n, change] of changes.entries()) {
      const { told, undone, cabinet } = answers[n];
      if (told === 'kept') this.told.kept++;
      if (told === 'refused') this.told.refused++;
      // Both at one thing at one instant: which came last nobody can say, only that one of them did.
      const both = change.of !== undefined && touched[0] === touched[1];
      if (told === 'kept') this.#apply(cabinet ? { ...change, of: undefined } : change, undone, both);
      else if (told === 'nothing') this.#doubt(change);
    }
  }

  #apply(change, undone, both) {
    const { what, id, value, of } = change;
    const thing = this.#things.get(of);
    const before = thing && { there: thing.there, values: thing.values, struck: thing.struck, to: thing.to };
    this.#made.set(id, { change, before, later: 0 });
    const adds = {
      'add a class': 'class',
      read: 'reading',
      fridge: 'fridge',
      tick: 'tick',
      pack: 'pack',
      remark: 'remark',
    };
    if (adds[what]) {
      this.#things.set(what === 'remark' ? value : id, {
        kind: adds[what],
        there: true,
        values: what === 'tick' ? null : [value],
        of,
      });
      return;
    }
    if (what === 'undo') return this.#undo(undone);
    if (!thing) return;
    if (what === 'change a class') thing.values = both ? null : [value];
    if (what === 'give') thing.to = both ? null : [value];
    if (what === 'strike') thing.struck = both ? null : true;
    if (what === 'untick' || what === 'remove a class') thing.there = false;
    if (what === 'remove a class') {
      for (const one of this.#things.values()) if (one.kind === 'reading' && one.of === of) one.there = false;
    }
  }

  /** What a change did is gone; whatever it was done to, the next look says how it stands. */
  #undo(id) {
    const made = this.#made.get(id);
    if (!made) return;
    const { what, value, of } = made.change;
    const own = { 'add a class': id, read: id, fridge: id, tick: id, pack: id, remark: value }[what];
    if (own !== undefined && what !== 'remark') this.#things.get(own).there = false;
    else if (own !== undefined) this.#things.get(own).there = null;
    const thing = this.#things.get(of);
    if (!thing || own !== undefined) return;
    if (what === 'remove a class' || what === 'untick') thing.there = true;
    if (what === 'remove a class') {
      for (const one of this.#things.values()) if (one.kind === 'reading' && one.of === of) one.there = null;
    }
    if (what === 'strike') thing.struck = null;
    if (what === 'change a class') thing.values = null;
    if (what === 'give') thing.to = null;
  }

  #doubt({ what, id, value, of }) {
    const add = {
      'add a class': 'class',
      read: 'reading',
      fridge: 'fridge',
      tick: 'tick',
      pack: 'pack',
      remark: 'remark',
    }[what];
    if (add)
      this.#things.set(what === 'remark' ? value : id, {
        kind: add,
        there: null,
        values: add === 'tick' ? null : [value],
        of,
      });
    for (const [name, one] of this.#things) {
      // The power went during an Undo, or a change of this thing.
      if (name === of || what === 'undo')
        Object.assign(one, {
          there: one.there === true && what !== 'undo' && !/remove|untick/.test(what) ? true : null,
          values: null,
          to: null,
          struck: null,
        });
      if (what === 'remove a class' && one.of === of) one.there = null;
    }
  }

  differences(stored) {
    const wrong = [];
    const say = (name, one, what) => wrong.push(`${one.kind} ${name}: ${what}`);
    for (const [name, one] of this.#things) {
      const found = find(stored, name, one.kind);
      if (one.there === true && !found) say(name, one, 'lost');
      if (one.there === false && found) say(name, one, 'was taken out, and is there');
      if (!found) continue;
      const value = valueOf(found, one.kind);
      if (one.values && !one.values.includes(value)) say(name, one, `is ${value}, told ${one.values}`);
      if (one.to && !one.to.includes(found.to)) say(name, one, `went to ${found.to}, told ${one.to}`);
      if (one.struck && !found.struck) say(name, one, 'is not struck out');
      // A reading stands by the class that it was taken of, wherever that lies by now.
      if (one.kind === 'reading' && one.of && found.class !== undefined) {
        const its = stored.batch.pieces[found.class]?.id;
        if (its !== one.of) say(name, one, `is of ${its}, taken of ${one.of}`);
      }
    }
    return wrong;
  }

  /** What nobody could say is as it is found, from now on. */
  seen(stored) {
    for (const [name, one] of this.#things) {
      const found = find(stored, name, one.kind);
      one.there = Boolean(found);
      one.values = found && one.kind !== 'tick' ? [valueOf(found, one.kind)] : null;
      one.to = found?.to ? [found.to] : null;
      one.struck = found?.struck ?? null;
    }
  }
}

function find({ batch, stock }, name, kind) {
  if (kind === 'class') return batch.pieces.find(({ id }) => id === name);
  if (kind === 'reading') return batch.fire.readings.find(({ id }) => id === name);
  if (kind === 'fridge') return batch.fridge.find(({ id }) => id === name);
  if (kind === 'tick') return batch.ticks.find(({ of }) => of === name);
  if (kind === 'pack') return stock[`stock/${name}`];
  return batch.notes?.split('\n').includes(name) ? { value: name } : undefined;
}

function valueOf(found, kind) {
  return { class: found.name, reading: found.temperature, fridge: found.reads, pack: found.name, remark: found.value }[
    kind
  ];
}
