/**
 * The second click of a double click, and the second press of Enter, are nobody's wish: the first has done it, and what
 * lies there now is something else.
 */

/** Two sendings within this time, with nothing typed in between, are one. */
const TWICE_MS = 800;
/** A press so soon after the action of the screen has become another one was meant for that before it. */
const FRESH_MS = 500;

const ACTION = '.pin .btn';
/** What the action was when it was last drawn, and on which screen. */
let action = '';
let screen = '';
/** Until then the action is too new to be pressed, and takes no touch. */
let fresh = 0;
let timer = 0;
const FRESH = 'data-fresh';
/** What is being pressed or typed into, while that is under way. @type {Element | null} */
let pressing = null;
/** The last press, and whether it was on the action. */
let last = { at: -Infinity, isAction: false };
/** What follows upon a press, once it is stored. */
const FOLLOWS_MS = 1000;

/**
 * After each drawing: the action of the screen stands at one spot, and what it does there changes once a deed is stored,
 * when its time has come, or by another tab. What was under the thumb by then is not what it was aimed at. What a person
 * changes by a press elsewhere, such as a key of the pad, is known to them.
 */
export function actionDrawn() {
  const now = [...document.querySelectorAll(ACTION)].map((one) => one.textContent?.trim()).join();
  const same = location.hash === screen;
  screen = location.hash;
  if (now === action) return;
  action = now;
  const at = performance.now();
  const own = pressing ? !pressing.closest(ACTION) : !last.isAction && (!same || at - last.at < FOLLOWS_MS);
  fresh = own ? 0 : at + FRESH_MS;
  document.documentElement.toggleAttribute(FRESH, !own);
  clearTimeout(timer);
  timer = setTimeout(() => document.documentElement.removeAttribute(FRESH), FRESH_MS);
}

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
  for (const kind of ['click', 'keydown', 'input', 'change'])
    addEventListener(
      kind,
      ({ target }) => {
        pressing = target instanceof Element ? target : null;
        setTimeout(() => (pressing = null));
      },
      heard,
    );
  addEventListener(
    'click',
    (event) => {
      // Keys of a pad and steppers are meant to be tapped quickly; they are neither `.btn` nor row.
      const button = event.target instanceof Element ? event.target.closest('button, a') : null;
      // Under a thumb that was down already. A key is pressed by who has come to it, and once.
      if (event.detail > 0 && button?.matches(ACTION) && event.timeStamp < fresh) return stop(event);
      last = { at: event.timeStamp, isAction: Boolean(button?.matches(ACTION)) };
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
      if (event.key === 'Enter' && form && event.timeStamp - sent < TWICE_MS) return stop(event);
      // A key that is held down presses once.
      if (event.repeat && ['Enter', ' '].includes(event.key) && isButton(event.target)) stop(event);
    },
    heard,
  );
  for (const kind of ['input', 'change']) addEventListener(kind, () => ((form = null), (typed = true)), heard);
}

/** @param {EventTarget | null} target */
const isButton = (target) => target instanceof Element && target.matches('.btn, a, .doors button');
