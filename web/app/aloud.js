/**
 * What a screen reader is told without being asked: all of it through two regions of the page, one that waits its turn
 * and one that does not. What a screen shows as news has `data-say`; it is told once it is there, and not with every drawing.
 */

/** A verdict that changes with every key is spoken only once the keys rest. */
const REST_MS = 600;
/** Then it is gone, so that nobody who reads through the page comes upon what was said long before. */
const STAYS_MS = 5000;

const REGIONS = { calm: 'spoken', urgent: 'spoken-now' };

/** @typedef {keyof typeof REGIONS} Tone */

export class Aloud {
  /** What is to be said, by what it is about: of one thing only the last. @type {Map<string, { text: string, tone: Tone }>} */
  #next = new Map();
  /** What was said last of what is drawn again and again. @type {Map<string, string>} */
  #said = new Map();
  /** What the screen shows as news. @type {Set<string> | null} */
  #shown = null;
  #timer = 0;
  #clearing = 0;

  /**
   * @param {string} text
   * @param {{ urgent?: boolean, of?: string }} [how] `of`: what it is about, where it is told at every drawing: then it is
   * said when it has changed
   */
  say(text, { urgent = false, of = '' } = {}) {
    if (of && this.#said.get(of) === text) return;
    if (of) this.#said.set(of, text);
    this.#next.set(of || text, { text, tone: urgent ? 'urgent' : 'calm' });
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#speak(), REST_MS);
  }

  /** After a drawing: what is shown as news and was not before. The same with other figures is no news. */
  look() {
    const all = [...document.querySelectorAll('[data-say]')].map((one) => {
      const text = (one.textContent ?? '').replace(/\s+/g, ' ').trim();
      return { text, key: one.getAttribute('data-say') === 'figures' ? text : text.replace(/\d+/g, '#') };
    });
    for (const { text, key } of all) if (this.#shown && text && !this.#shown.has(key)) this.say(text);
    this.#shown = new Set(all.map(({ key }) => key));
  }

  /** What was said of one screen is not true of the next, and what stands on it from the start is no news. */
  rest() {
    clearTimeout(this.#timer);
    this.#next.clear();
    this.#said.clear();
    this.#shown = null;
    this.#clear();
  }

  #speak() {
    for (const tone of /** @type {Tone[]} */ (Object.keys(REGIONS))) {
      const texts = [...this.#next.values()].filter((one) => one.tone === tone).map(({ text }) => text);
      const region = document.getElementById(REGIONS[tone]);
      if (region && texts.length) region.textContent = texts.join(' ');
    }
    this.#next.clear();
    clearTimeout(this.#clearing);
    this.#clearing = setTimeout(() => this.#clear(), STAYS_MS);
  }

  #clear() {
    for (const id of Object.values(REGIONS)) document.getElementById(id)?.replaceChildren();
  }
}
