/**
 * The one filled action of a screen, at the thumb. Upright it is pinned at the foot, on its side at the foot of the right
 * half; in a low or narrow window, with large text and on a desk it stands in the flow, straight after the answer. What
 * it leads to is said by the caller: a screen whose answer is a choice or a stop has none.
 */
import { html, nothing } from 'lit-html';
import { onceOnly } from './tick.js';

/**
 * @param {unknown} action a button or a link of the classes `btn main`; nothing where there is none yet
 * @param {unknown} [steps] one row of buttons that change the figure of the action
 */
export function pinned(action, steps = nothing) {
  return action === nothing ? nothing : html`<div class="pin noprint">${steps}${action}</div>`;
}

/** A button for there that ticks something: a second click of a double click is nobody's wish. @param {unknown} label @param {() => unknown} act */
export const tickButton = (label, act) =>
  html`<button type="button" class="btn main" @click=${(/** @type {MouseEvent} */ e) => onceOnly(e) && act()}>
    ${label}
  </button>`;

/** How high a part is while it stays on the screen; 0 where it goes with the rest. @param {string} part */
function staying(part) {
  const element = /** @type {HTMLElement | null} */ (document.querySelector(part));
  const stays = element && ['fixed', 'sticky'].includes(getComputedStyle(element).position);
  return stays ? element.offsetHeight : 0;
}

/** The page pads its foot by what is pinned there, and the focus scrolls clear of it and of the head. */
export function clearPinned() {
  const { style } = document.documentElement;
  const parts = {
    // With large text only what is in doubt stays of it.
    '--head-h': staying('.masthead') || staying('.masthead > .doubt'),
    '--pin-h': staying('.pin'),
    '--bars-h': staying('.bars'),
  };
  for (const [name, height] of Object.entries(parts))
    if (style.getPropertyValue(name) !== `${height}px`) style.setProperty(name, `${height}px`);
}
