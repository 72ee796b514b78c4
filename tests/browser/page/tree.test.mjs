// What a screen reader has of every screen: roles, names and states as text, held against what was read through and
// committed (`tests/data/tree`; `UPDATE=1` writes it anew, and the difference is then read). And rules for any screen,
// which nobody can type in.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { storedForOffline, usable } from '../harness.mjs';
import { states } from './states.mjs';
import { begin, goTo, put, settled } from './steps.mjs';
import { tour } from './tour.mjs';

const KEPT = fileURLToPath(new URL('../../data/tree/', import.meta.url));
const update = process.env.UPDATE === '1';
const NOW = new Date(2026, 10, 14, 17, 30);

const CONTROLS = 'button|link|textbox|searchbox|checkbox|radio|combobox|spinbutton|slider|switch';

/** Ids of what is stored, codes of links, and how much room there is differ from run to run. */
const plain = (tree) =>
  tree
    .replace(/(#\/(?:batch|recipe)\/)[\w-]{10,}/g, '$1ID')
    .replace(/\b[\w-]{80,}\b/g, 'CODE')
    .replace(/(Version [\d.]+)-\w+/g, '$1')
    .replace(/localhost:\d+/g, 'HOST')
    .replace(/\d+(?:\.\d+)? (?:[kMG]B)\b/g, 'SO MUCH')
    .replace(/[ \t]+$/gm, '');

/** What is wrong with the screen that is shown, one line each. */
async function wrongs(page, tree) {
  const found = [];
  const lines = tree.split('\n');
  for (const line of lines)
    if (new RegExp(`^\\s*- (?:${CONTROLS})(?! ")`).test(line)) found.push(`no name: ${line.trim()}`);
  const mains = lines.filter((line) => /^\s*- main\b/.test(line)).length;
  const heads = lines.filter((line) => /^\s*- heading\b.*\[level=1\]/.test(line)).length;
  if (mains !== 1) found.push(`${mains} main parts`);
  if (heads !== 1) found.push(`${heads} headings of the first level`);
  // Two of one name lead to one address, or stand in groups of different names.
  const seen = new Map();
  for (const { role, name, within, to } of await controls(page)) {
    const key = `${role} “${name}” in “${within}”`;
    if (seen.has(key) && (seen.get(key) !== to || to === null)) found.push(`two of one name: ${key}`);
    seen.set(key, to);
  }
  return [...found, ...(await loose(page))];
}

/** Buttons and links that are there, with the name of each, that of the group or row around it, and where it leads. */
const controls = (page) =>
  page.evaluate(() => {
    const text = (one) => one?.textContent.replace(/\s+/g, ' ').trim() ?? '';
    const nameOf = (one) =>
      one.getAttribute('aria-label') ??
      (text(document.getElementById(one.getAttribute('aria-labelledby'))) ||
        (one.matches('fieldset') ? text(one.querySelector('legend')) : ''));
    return [...document.querySelectorAll('button, a[href], summary')]
      .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('[aria-hidden=true]'))
      .map((one) => {
        const group = one.closest(
          '[role=group], fieldset, nav, section[aria-label], section[aria-labelledby], aside, .errsum',
        );
        return {
          role: one.localName,
          name: one.getAttribute('aria-label') ?? text(one),
          within: group ? nameOf(group) : '',
          to: one.getAttribute('href'),
        };
      });
  });

/** Errors that belong to no field, and live regions beside the one. */
const loose = (page) =>
  page.evaluate(() => {
    const found = [];
    for (const error of document.querySelectorAll('.field .err')) {
      const of = error.id && document.querySelector(`[aria-describedby~="${error.id}"]`);
      if (!of) found.push(`an error of no field: ${error.textContent.trim()}`);
      else if (of.getAttribute('aria-invalid') !== 'true') found.push(`not told to be wrong: ${of.id}`);
    }
    for (const bad of document.querySelectorAll('[aria-invalid=true]')) {
      const told = (bad.getAttribute('aria-describedby') ?? '').split(' ');
      if (!told.some((id) => document.getElementById(id)?.matches('.err')))
        found.push(`wrong without a word: ${bad.id}`);
    }
    const polite = [...document.querySelectorAll('[role=status], [role=log], [aria-live=polite]')];
    if (polite.length !== 1 || polite[0].id !== 'spoken')
      found.push(`polite live regions: ${polite.map((one) => one.id || one.className).join()}`);
    return found;
  });

test('the tree of every screen is the one that was read through, and keeps the rules', async (t) => {
  const page = await begin(t);
  await page.clock.setFixedTime(NOW);
  // What is due at one time stands by its id, which is chance: here each is after the one before.
  await page.addInitScript(() => {
    let n = 0;
    crypto.getRandomValues = (into) => {
      for (const at of into.keys()) into[at] = 1000 * ++n;
      return into;
    };
  });
  await page.reload();
  await usable(page);
  await storedForOffline(page);
  if (update) {
    rmSync(KEPT, { recursive: true, force: true });
    mkdirSync(KEPT, { recursive: true });
  }
  const all = [];
  const names = new Set();
  await tour(page, async (screen) => {
    await settled(page);
    const name = `${screen.replace(/[^\w]+/g, '-').replace(/^-|-$/g, '')}.txt`;
    assert.ok(!names.has(name), `two stops of the name ${screen}`);
    names.add(name);
    const tree = `${plain(await page.locator('#page').ariaSnapshot())}\n`;
    for (const wrong of await wrongs(page, tree)) all.push(`${screen}: ${wrong}`);
    if (update) writeFileSync(join(KEPT, name), tree);
    else if (readFileSync(join(KEPT, name), 'utf8') !== tree) {
      assert.equal(tree, readFileSync(join(KEPT, name), 'utf8'), screen);
    }
  });
  assert.deepEqual(all, []);
  assert.deepEqual(readdirSync(KEPT).toSorted(), [...names].toSorted());
});

test('the rules hold in every state of a batch', async (t) => {
  const page = await begin(t);
  const stored = Object.entries(states(Date.now()));
  const at = new Date().toISOString();
  await put(
    page,
    stored.map(([, [data]], n) => ({ key: `batch/s${n}`, v: 1, at, data })),
  );
  const all = [];
  for (const [n, [name, [, screens]]] of stored.entries())
    for (const screen of screens) {
      // All of them lie in one store and have one tag, as no batches of a person have.
      if (screen === 'today') continue;
      await goTo(page, `#/batch/s${n}/${screen}`);
      await settled(page);
      const tree = await page.locator('#page').ariaSnapshot();
      for (const wrong of await wrongs(page, tree)) all.push(`${name}, ${screen}: ${wrong}`);
    }
  assert.deepEqual([...new Set(all)], []);
});
