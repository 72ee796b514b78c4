/**
 * The second click of a double click, and the second press of Enter, are nobody's wish: the first has done it, and what
 * lies there now is something else.
 */

/** Two sendings within this time, with nothing typed in between, are one. */
const TWICE_MS = 800;

export function guardAgainstTwice() {
  let sent = -TWICE_MS;
  /** @type {EventTarget | null} */
  let form = null;
  let typed = false;
  const stop = (/** @type {Event} */ event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const heard = { capture: true };
  addEventListener(
    'click',
    (event) => {
      // Keys of a pad and steppers are meant to be tapped quickly; they are neither `.btn` nor row.
      const button = event.target instanceof Element ? event.target.closest('button, a') : null;
      // Who typed in between means the second one.
      if (event.detail > 1 && !typed && button?.matches('.btn, .doors button')) return stop(event);
      typed = false;
      // Something else was pressed in between.
      if (!(button instanceof HTMLButtonElement && button.type === 'submit')) form = null;
    },
    heard,
  );
  addEventListener(
    'submit',
    (event) => {
      if (form === event.target && event.timeStamp - sent < TWICE_MS) stop(event);
      [form, sent] = [event.target, event.timeStamp];
    },
    heard,
  );
  addEventListener(
    'keydown',
    (event) => {
      // By the second press the focus lies on what the first has brought.
      if (event.key === 'Enter' && form && event.timeStamp - sent < TWICE_MS) stop(event);
    },
    heard,
  );
  for (const kind of ['input', 'change']) addEventListener(kind, () => ((form = null), (typed = true)), heard);
}
