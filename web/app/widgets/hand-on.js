/** Hands a recipe on: as a square to scan, as a link, on paper. */
import { html, nothing } from 'lit-html';
import { ask } from '../ask.js';
import { answered } from './answer.js';
import { lightNow } from './light.js';
import { SEND } from '../../words/en/send.js';

/** @typedef {import('../app.js').App} App */
/** @typedef {import('../types').Link} Link */
/** @typedef {import('../types').Recipe} Recipe */

/** Light modules round a QR code, without which many readers find nothing. */
const QUIET = 4;
export const onFile = location.protocol === 'file:';
const canShare = 'share' in navigator && !onFile;

export class HandOn {
  #wanted = false;
  #white = false;
  #copied = '';

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /** One touch: to whom the device offers, or else into the clipboard. @param {Recipe} recipe */
  button(recipe) {
    const { link } = ask('link', { recipe, base: linkBase() }).ok ?? {};
    if (!link) return nothing;
    const send = () => (canShare ? this.#share(link, recipe) : this.#copy(link));
    return html`<button type="button" class="btn less" @click=${send}>
      ${canShare ? SEND.share : this.#copied === link ? SEND.again : onFile ? SEND.copyText : SEND.copy}
    </button>`;
  }

  /** @param {Recipe} recipe */
  draw(recipe) {
    return html`<section class="block hand-on">
      <h2 id="send" tabindex="-1">${SEND.head}</h2>
      ${onFile ? html`<p class="small">${SEND.file}</p>` : html`<p class="small">${SEND.hosted}</p>`}
      ${answered(this.app, ask('link', { recipe, base: linkBase() }), (link) => [this.#link(link, recipe), onFile ? nothing : this.#square(link, recipe)])}
    </section>`;
  }

  /** @param {Link} link @param {Recipe} recipe */
  #square({ qr_size, qr_path }, recipe) {
    if (qr_size === 0) {
      return html`<p class="gap">${SEND.tooLong}</p>`;
    }
    const red = lightNow() === 'red';
    const dim = red && !this.#wanted;
    const side = qr_size + 2 * QUIET;
    // On paper it stands whatever the light.
    return html`${
        dim
          ? html`<div class="gap noprint">
              <button type="button" class="btn wide quiet" @click=${() => this.#set({ wanted: true })}>
                ${SEND.show}
              </button>
            </div>`
          : nothing
      }
      <div class="qrbig ${dim ? 'paper-only' : ''}">
        <svg
          class="qr ${red && this.#white ? 'white' : ''}"
          viewBox="${-QUIET} ${-QUIET} ${side} ${side}"
          role="img"
          aria-label=${SEND.scan(recipe.name)}
        >
          <rect class="paper" x=${-QUIET} y=${-QUIET} width=${side} height=${side} />
          <path d=${qr_path} />
        </svg>
      </div>
      ${
        red && !dim
          ? html`<div class="acts gap noprint">
              <button type="button" class="btn quiet less" @click=${() => this.#set({ wanted: false })}>
                ${SEND.hide}
              </button>
              <button type="button" class="btn quiet less" @click=${() => this.#set({ white: !this.#white })}>
                ${this.#white ? SEND.red : SEND.white}
              </button>
            </div>`
          : nothing
      }`;
  }

  /** @param {Link} link @param {Recipe} recipe */
  #link({ link }, recipe) {
    return html`<div class="block" role="group" aria-label=${SEND.asLink}>
      <h3>${onFile ? SEND.asText : SEND.asLink}</h3>
      <p class="code near" id="link-text" tabindex="0" role="group" aria-label=${SEND.link}>${link}</p>
      <div class="pair gap noprint">
        <button type="button" class="btn quiet" @click=${() => print()}>${SEND.print}</button>
        ${
          canShare
            ? html`<button type="button" class="btn quiet" @click=${() => this.#share(link, recipe)}>
                ${SEND.share}
              </button>`
            : nothing
        }
        <button type="button" class="btn" @click=${() => this.#copy(link)}>
          ${this.#copied === link ? SEND.again : SEND.copy}
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
        this.app.say(SEND.marked);
        return;
      }
    }
    this.#copied = link;
    this.app.draw();
    this.app.say(SEND.copied);
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
