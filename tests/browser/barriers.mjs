// What stands in somebody's way on a screen, in any engine: all that axe finds, and a page that scrolls sideways. One way
// to it for screens that are gone to, and one for screens that stood in another browser and are shown as they were there.
import assert from 'node:assert/strict';
import axe from 'axe-core';
import { pause } from './harness.mjs';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const ALL = { type: 'tag', values: TAGS };
const COLOURS = { type: 'rule', values: ['color-contrast'] };
/** What is asked in each: names, roles and order are the same in every light; what the eye can tell apart is not. */
export const LIGHTS = { day: ALL, dark: COLOURS, red: COLOURS };

/** What axe finds on the page as it stands, or in another light, one line each. */
export async function violations(page, light) {
  // By the driver, since the page lets no text be made a script.
  if (!(await page.run(() => 'axe' in window))) await page.script(axe.source);
  return page.run(
    async (light, runOnly) => {
      const root = document.documentElement;
      const before = root.dataset.theme;
      if (light) root.dataset.theme = light;
      // What happens to lie under a bar that stays on the screen axe takes for covered, though it scrolls clear of it.
      const bars = [...document.querySelectorAll('.pin, .masthead, .places')];
      for (const bar of bars) bar.style.position = 'static';
      const { violations } = await window.axe.run(document, { runOnly, resultTypes: ['violations'] });
      for (const bar of bars) bar.style.position = '';
      if (before) root.dataset.theme = before;
      else delete root.dataset.theme;
      const lines = ({ id, nodes }) =>
        nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')}: ${failureSummary.replace(/\s+/g, ' ')}`);
      return violations.flatMap(lines);
    },
    light ?? null,
    LIGHTS[light] ?? ALL,
  );
}

/** Waits until the page can be used. */
export async function started(page) {
  const end = Date.now() + 30_000;
  const is = () => document.documentElement.hasAttribute('data-ready') && document.querySelector('h1') !== null;
  // Between two pages there is none to ask.
  while (!(await page.run(is).catch(() => false))) {
    assert.ok(Date.now() < end, 'the page does not start');
    await pause(20);
  }
}

/** Puts records in the place of all there are, and opens the page anew. */
export async function put(page, records) {
  await page.run(
    (records) =>
      new Promise((done) => {
        // What is gone by then belonged to the page before.
        document.documentElement.removeAttribute('data-ready');
        indexedDB.open('cure-reckoner').onsuccess = ({ target: { result: db } }) => {
          const tx = db.transaction('records', 'readwrite');
          tx.objectStore('records').clear();
          for (const record of records) tx.objectStore('records').put(record);
          tx.oncomplete = () => (db.close(), done());
        };
      }),
    records,
  );
  await page.reload();
  await started(page);
}

/**
 * Goes to an address, by way of another where it was there before, presses its choices by their places, and waits until all
 * of it stands there.
 */
export const arrive = (page, hash, { by, presses = [] } = {}) =>
  page.run(
    async (ways, presses) => {
      for (const hash of ways) {
        if (location.hash === hash) continue;
        // The page's own listener came first, so the screen is drawn by then.
        const there = new Promise((done) => addEventListener('hashchange', done, { once: true }));
        location.hash = hash;
        await there;
      }
      for (const place of presses) document.querySelectorAll('.choices button')[place].click();
      let last = null;
      for (let n = 0; n < 600; n += 1) {
        const now = document.body.innerHTML;
        if (now === last && !document.documentElement.hasAttribute('data-saving')) return;
        last = now;
        await new Promise((done) => setTimeout(done, 10));
      }
      throw new Error(`${ways} does not come to rest`);
    },
    by ? [by, hash] : [hash],
    presses,
  );

/** In the page: a screen as it stands, with what was typed and chosen on it. */
export function still() {
  const copy = document.body.cloneNode(true);
  const [from, to] = [document.body, copy].map((body) => [...body.querySelectorAll('input, option, textarea')]);
  for (const [n, one] of from.entries()) {
    if (one.localName === 'textarea') to[n].textContent = one.value;
    else if (one.localName === 'option') to[n].toggleAttribute('selected', one.selected);
    else if (one.matches('[type=checkbox], [type=radio]')) to[n].toggleAttribute('checked', one.checked);
    else if (one.type !== 'file') to[n].setAttribute('value', one.value);
  }
  for (const script of copy.querySelectorAll('script')) script.remove();
  const root = [...document.documentElement.attributes].map(({ name, value }) => [name, value]);
  return { root, title: document.title, body: copy.innerHTML };
}

/** Shows such a screen, on a page that has nothing but the styles. */
export const show = (page, one) =>
  page.run(({ root, title, body }) => {
    for (const [name, value] of root) document.documentElement.setAttribute(name, value);
    document.title = title;
    document.body.innerHTML = body;
  }, one);

/**
 * Unfolds all that is folded; says by how many pixels the page is too wide, before and after, and of what makes it is: each
 * element with those it lies in, what they have besides figures and words, and whether it has text, scrolls, or is small for
 * a finger; the order of the headings; and an id that stands twice.
 */
const measured = (page) =>
  page.run(() => {
    const over = () => document.documentElement.scrollWidth - document.documentElement.clientWidth;
    const before = over();
    for (const fold of document.querySelectorAll('details:not([open])')) fold.open = true;
    const makes = new Set();
    const ids = new Set();
    const number = (text, from) => {
      let sum = from;
      for (let n = 0; n < text.length; n += 1) sum = Math.imul(sum ^ text.charCodeAt(n), 16777619);
      return sum;
    };
    const own = (one) => {
      const has = [...one.attributes].map(({ name, value }) => {
        if (/^(class|role|type|aria-(?!label|desc|controls).*)$/.test(name)) return `${name}=${value}`;
        return /^(aria-.*|alt|title|lang)$/.test(name) ? `${name}=${Boolean(value.trim())}` : name;
      });
      if ([...one.childNodes].some((child) => child instanceof Text && child.data.trim())) has.push('text');
      if (one.scrollHeight > one.clientHeight + 1 && /auto|scroll/.test(getComputedStyle(one).overflow))
        has.push('scrolls');
      const { width, height } = one.getBoundingClientRect();
      if (Math.min(width, height) < 24 && one.matches('a, button, input, select, textarea, summary')) has.push('small');
      return `<${[one.localName, ...has.sort()].join(' ')}`;
    };
    const walk = (one, from) => {
      const path = number(own(one), from);
      makes.add(path);
      if (one.id && ids.has(one.id)) makes.add(number(`twice ${one.id}`, 7));
      ids.add(one.id);
      if (one.localName !== 'svg') for (const child of one.children) walk(child, path);
    };
    walk(document.body, 5);
    const heads = [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(({ localName }) => localName);
    for (const [n, head] of heads.entries()) makes.add(number(`${heads[n - 1]} ${head}`, 3));
    return { over: Math.max(before, over()), makes: [...makes] };
  });

/**
 * Looks at one screen after the other, and keeps what is wrong with each. With `every`, axe is asked at each; else only
 * where something is of a make that stood nowhere before.
 */
export function watch(page, lights, every) {
  const seen = new Set();
  const told = { looks: 0, asked: 0, wrong: [] };
  const look = async (name) => {
    const { over, makes } = await measured(page);
    told.looks += 1;
    if (over > 0) told.wrong.push(`${name}: ${over} px too wide`);
    const before = seen.size;
    for (const one of makes) seen.add(one);
    if (!every && seen.size === before) return;
    told.asked += 1;
    for (const light of lights)
      for (const one of await violations(page, light)) told.wrong.push(`${name}, in ${light}: ${one}`);
  };
  return { told, look };
}
