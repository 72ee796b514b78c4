/** When each size class may come out of the cure: a row for each, and what the three times mean. */
import { html, nothing } from 'lit-html';
import { about } from '../words/time.js';

/** @param {import('../types').Window[]} windows @param {number} now */
export function windowTable(windows, now) {
  if (windows.length === 0) return nothing;
  return html`<div class="windows">
    <table class="tbl times">
      <caption class="vh">
        When each size class may be rinsed
      </caption>
      <thead>
        <tr>
          <th scope="col"><span class="vh">Size class</span></th>
          <th scope="col">Earliest</th>
          <th scope="col">9 in 10</th>
          <th scope="col">Latest</th>
        </tr>
      </thead>
      <tbody>
        ${windows.map(
          ({ name, earliest, surely, latest }) =>
            html`<tr>
              <th scope="row">${name}</th>
              ${[earliest, surely, latest].map((at) => html`<td>${about(at, now)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="small near">
      Earliest: as likely through as not. 9 in 10: so many are through by then. Latest: longer brings nothing more. A
      weighed dose sets no latest by salt, since it only evens out; raw meat does, by how it keeps: cold all the time,
      and look and smell before you go on.
    </p>
  </div>`;
}
