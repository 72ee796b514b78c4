/** This far from the edge of the screen, in px. */
const CLEAR = 24;

/**
 * On a wide screen the picture stays in sight while the card scrolls. One that is taller than the screen first scrolls
 * to its end, so that nothing in it is out of reach.
 */
export function stick() {
  for (const plate of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll('.stick'))) {
    plate.style.setProperty('--stick-top', `${Math.min(CLEAR, innerHeight - plate.offsetHeight - CLEAR)}px`);
  }
}
