/** Where the keyboard stands once what it stood on is gone: never on nothing, and beside where it was. */

/** @param {Element} box */
const stops = (box) =>
  [
    ...box.querySelectorAll(
      ':is(a[href], button, input, select, textarea, summary, h1[tabindex], h2[tabindex]):not(:disabled)',
    ),
  ].filter((one) => one.checkVisibility({ visibilityProperty: true }));

/**
 * Before a drawing; what it gives is called after it. If what had the focus is gone by then, what has come to its place
 * gets it: the next row of a list, or the last one, or what else is in the same part of the screen.
 */
export function holdFocus() {
  const held = document.activeElement;
  if (!held || held === document.body) return () => {};
  const all = stops(document.body);
  /** @type {[Element, number][]} */
  const around = [];
  for (let box = held.parentElement; box && box !== document.body; box = box.parentElement) {
    const part = box;
    around.push([part, all.filter((one) => part.contains(one)).indexOf(held)]);
  }
  return () => {
    // What lies in a fold that was shut is gone too.
    if (held.checkVisibility() || ![held, document.body].includes(document.activeElement ?? held)) return;
    for (const [box, at] of around) {
      if (!box.isConnected || at < 0) continue;
      const now = stops(box);
      const next = now[Math.min(at, now.length - 1)];
      if (next) return /** @type {HTMLElement} */ (next).focus();
    }
    /** @type {HTMLElement | null} */ (document.querySelector('h1'))?.focus();
  };
}

/** Which way each arrow goes: across, down. @type {Record<string, [number, number]>} */
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/**
 * A group of keys is one stop of the Tab key; the arrows go among them, as they lie.
 * @param {KeyboardEvent} event on the group
 */
export function amongKeys(event) {
  const way = ARROWS[event.key];
  const from = event.target instanceof Element ? event.target.closest('button') : null;
  if (!way || !from || !(event.currentTarget instanceof Element)) return;
  event.preventDefault();
  const middle = (/** @type {Element} */ one) => {
    const { left, top, width, height } = one.getBoundingClientRect();
    return [left + width / 2, top + height / 2];
  };
  const [x = 0, y = 0] = middle(from);
  const near = [...event.currentTarget.querySelectorAll('button')]
    .map((button) => {
      const [to = 0, down = 0] = middle(button);
      const ahead = (to - x) * way[0] + (down - y) * way[1];
      const aside = Math.abs(way[0] ? down - y : to - x);
      return { button, ahead, far: ahead + 3 * aside };
    })
    .filter(({ ahead }) => ahead > 1)
    .sort((a, b) => a.far - b.far)[0];
  near?.button.focus();
}
