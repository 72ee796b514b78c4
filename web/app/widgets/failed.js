/** What stands where a screen cannot be drawn: what is stored can be had as a file all the same. */
import { html } from 'lit-html';
import { FAILED } from '../../words/en/controls.js';
import { download, exportStored } from '../backup.js';

/** @param {string} says what did not happen */
export function failedView(says) {
  return html`<main class="waiting" id="main">
    <h1 tabindex="-1">${says}</h1>
    <p>${FAILED.how}</p>
    <p class="acts">
      <button type="button" class="btn" @click=${() => location.reload()}>${FAILED.reload}</button>
      <button type="button" class="btn" @click=${save}>${FAILED.export}</button>
      <a class="btn" href="#/today">${FAILED.batches}</a>
    </p>
    <p id="failed-says"></p>
  </main>`;
}

async function save() {
  try {
    download(await exportStored());
    tell(FAILED.made);
  } catch (error) {
    console.error(error);
    tell(FAILED.refused);
  }
}

/** In sight, and through the region by which all is told. @param {string} text */
function tell(text) {
  for (const id of ['failed-says', 'spoken']) document.getElementById(id)?.replaceChildren(text);
}
