/** Hands a recipe on: as a square to scan, as a link, on paper. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { answered } from './answer.js';
import { lightNow } from './light.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Link} Link */
/** @typedef {import('../types').Recipe} Recipe */

/** Light modules round a QR code, without which many readers find nothing. */
const QUIET = 4;
export const onFile = location.protocol === 'file:';

export class HandOn {
  #wanted = false;
  #white = false;
  #copied = '';

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /** @param {Recipe} recipe */
  draw(recipe) {
    return html`<section class="block hand-on">
      <h2 id="send" tabindex="-1">Send it</h2>
      ${
        onFile
          ? html`<p class="small">
              This page is a file: hand on the file and the text below, and your friend pastes it there under Recipes.
            </p>`
          : html`<p class="small">
              The whole recipe is in the square and in the link. Where the page has been opened once, they open with no
              signal.
            </p>`
      }
      ${answered(this.app, ask('link', { recipe, base: linkBase() }), (link) => [this.#link(link, recipe), onFile ? nothing : this.#square(link, recipe)])}
    </section>`;
  }

  /** @param {Link} link @param {Recipe} recipe */
  #square({ qr_size, qr_path }, recipe) {
    if (qr_size === 0) {
      return html`<p class="gap">This recipe is too long for a square. Send the link.</p>`;
    }
    const red = lightNow() === 'red';
    const dim = red && !this.#wanted;
    const side = qr_size + 2 * QUIET;
    // On paper it stands whatever the light.
    return html`${
        dim
          ? html`<div class="gap noprint">
              <button type="button" class="btn wide quiet" @click=${() => this.#set({ wanted: true })}>
                Show the square: it is bright
              </button>
            </div>`
          : nothing
      }
      <div class="qrbig ${dim ? 'paper-only' : ''}">
        <svg
          class="qr ${red && this.#white ? 'white' : ''}"
          viewBox="${-QUIET} ${-QUIET} ${side} ${side}"
          role="img"
          aria-label="Square to scan: ${recipe.name}"
        >
          <rect class="paper" x=${-QUIET} y=${-QUIET} width=${side} height=${side} />
          <path d=${qr_path} />
        </svg>
      </div>
      ${
        red && !dim
          ? html`<div class="acts gap noprint">
              <button type="button" class="btn quiet less" @click=${() => this.#set({ wanted: false })}>Hide it</button>
              <button type="button" class="btn quiet less" @click=${() => this.#set({ white: !this.#white })}>
                ${this.#white ? 'Show it red' : 'Show it white'}
              </button>
            </div>`
          : nothing
      }`;
  }

  /** @param {Link} link @param {Recipe} recipe */
  #link({ link }, recipe) {
    return html`<div class="block">
      <h3>${onFile ? 'The recipe as text' : 'Send this link'}</h3>
      <p class="code near" id="link-text" tabindex="0" role="group" aria-label="The link">${link}</p>
      <div class="pair gap noprint">
        <button type="button" class="btn quiet" @click=${() => print()}>Print the card</button>
        ${
          'share' in navigator && !onFile
            ? html`<button type="button" class="btn quiet" @click=${() => this.#share(link, recipe)}>
                Send the link
              </button>`
            : nothing
        }
        <button type="button" class="btn" @click=${() => this.#copy(link)}>
          ${this.#copied === link ? 'Copied. Copy again' : 'Copy the link'}
        </button>
      </div>
    </div>`;
  }

  /** @param {string} link */
  async #copy(link) {
    try {
      await navigator.clipboard.writeText(link);
    } catch {
      // Not allowed here, as in a page from a file in some browsers: the old way.
      const shown = document.getElementById('link-text');
      if (!shown) return;
      getSelection()?.selectAllChildren(shown);
      if (!document.execCommand('copy')) {
        this.app.say('The link is marked. Copy it with the keys of your device.');
        return;
      }
    }
    this.#copied = link;
    this.app.draw();
    this.app.say('The link is copied.');
  }

  /** @param {string} url @param {Recipe} recipe */
  async #share(url, { name }) {
    try {
      await navigator.share({ title: name, url });
    } catch {
      // The person changed their mind, or the device has nobody to send to. The link still stands there.
    }
  }

  /** @param {{ wanted?: boolean, white?: boolean }} part */
  #set({ wanted = this.#wanted, white = this.#white }) {
    this.#wanted = wanted;
    this.#white = white;
    this.app.draw();
  }
}

/** To the square and the link, which stand below the recipe. */
export function toSend() {
  const head = document.getElementById('send');
  head?.focus({ preventScroll: true });
  head?.scrollIntoView();
}

/** Where the link leads: this page. From a file only its name, since a path on this device means nothing on another. */
export function linkBase() {
  const { origin, pathname } = location;
  if (onFile) return decodeURIComponent(pathname.split('/').at(-1) ?? '');
  return origin + pathname.replace(/index\.html$/, '');
}
