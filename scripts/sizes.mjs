// What the page weighs. `node scripts/sizes.mjs` prints it beside its budget and fails above its ceiling; other scripts
// import `sizes`.
import { readdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isPacked } from './packed.mjs';

const dist = new URL('../dist/', import.meta.url);

// The budget is what is aimed at. The ceiling is what it weighed when last accepted and a little more, so that nobody
// adds to it without a word; where it is above the budget, DEVELOPERS.md says why. Lower it whenever it can be.
export const BUDGETS = [
  { what: 'everything the page loads, brotli', budget: 300_000, ceiling: 583_300, measure: ({ page }) => page.brotli },
  {
    what: 'what its first screen waits for, brotli',
    budget: 300_000,
    ceiling: 389_100,
    measure: ({ page, files }) => page.brotli - files.find(({ name }) => name.startsWith('rest.')).brotli,
  },
  { what: 'the single file', budget: 500_000, ceiling: 567_000, measure: ({ single }) => single.raw },
];

/** The size of each file that the page loads, of all of them together, and of the single file. */
export function sizes() {
  const loaded = readdirSync(dist).filter(
    (name) => !['cure-reckoner.html', 'icons', 'licences.txt'].includes(name) && !isPacked(name),
  );
  const files = [...loaded, 'icons/icon.svg'].sort().map(measure);
  const page = { name: 'the page', raw: 0, gzip: 0, brotli: 0 };
  for (const file of files) for (const how of ['raw', 'gzip', 'brotli']) page[how] += file[how];
  return { files, page, single: measure('cure-reckoner.html') };
}

/** What a file weighs as it is and as a host sends it. */
function measure(name) {
  const [raw, gzip, brotli] = ['', '.gz', '.br'].map((ending) => statSync(new URL(name + ending, dist)).size);
  return { name, raw, gzip, brotli };
}

/** Prints rows of cells, the first column to the left and the others to the right. */
export function table(rows) {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => String(row[column]).length)));
  for (const row of rows) {
    console.log(row.map((cell, at) => String(cell)[at ? 'padStart' : 'padEnd'](widths[at])).join('   '));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const measured = sizes();
  const rows = BUDGETS.map((row) => ({ ...row, bytes: row.measure(measured) }));
  table([
    ['what, in bytes', 'measured', 'budget', 'ceiling'],
    ...rows.map(({ what, bytes, budget, ceiling }) => [what, bytes, budget, ceiling]),
  ]);
  for (const { what, bytes, budget, ceiling } of rows) {
    if (bytes > budget) console.log(`Over budget by ${bytes - budget} bytes: ${what}.`);
    if (bytes > ceiling) console.error(`Above the ceiling: ${what}: ${bytes} bytes, ${ceiling} allowed.`);
  }
  process.exitCode = rows.some(({ bytes, ceiling }) => bytes > ceiling) ? 1 : 0;
}
