/** What stands where a screen cannot be drawn: what is stored can be had as a file all the same. */
import { html } from 'lit-html';
import { download, exportStored } from '../backup.js';

/** @param {string} says what did not happen */
export function failedView(says) {
  return html`<main class="waiting" id="main">
    <h1 tabindex="-1">${says}</h1>
    <p>What is kept in this browser is not touched. Reload the page. If that does not help, export the file.</p>
    <p class="acts">
      <button type="button" class="btn" @click=${() => location.reload()}>Reload</button>
      <button type="button" class="btn" @click=${save}>Export the file</button>
      <a class="btn" href="#/today">Batches</a>
    </p>
    <p id="failed-says" role="status"></p>
  </main>`;
}

async function save() {
  const said = /** @type {HTMLElement} */ (document.getElementById('failed-says'));
  try {
    download(await exportStored());
    said.textContent = 'The file is made.';
  } catch (error) {
    console.error(error);
    said.textContent = 'The browser does not give out what it has stored. Close its other tabs, then try again.';
  }
}
