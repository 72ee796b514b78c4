// What the page weighs. `node scripts/sizes.mjs` prints it and fails over budget; other scripts import `sizes`.
import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, gzipSync } from 'node:zlib';

const dist = new URL('../dist/', import.meta.url);

export const BUDGETS = [
  { what: 'everything the page loads, brotli', budget: 180_000, measure: ({ page }) => page.brotli },
  { what: 'the single file', budget: 600_000, measure: ({ single }) => single.raw },
];

/** The size of each file that the page loads, of all of them together, and of the single file. */
export function sizes() {
  const loaded = readdirSync(dist).filter((name) => name !== 'cure-reckoner.html' && name !== 'icons');
  const files = [...loaded, 'icons/icon.svg'].sort().map(measure);
  const page = { name: 'the page', raw: 0, gzip: 0, brotli: 0 };
  for (const file of files) for (const how of ['raw', 'gzip', 'brotli']) page[how] += file[how];
  return { files, page, single: measure('cure-reckoner.html') };
}

function measure(name) {
  const bytes = readFileSync(new URL(name, dist));
  return {
    name,
    raw: bytes.length,
    gzip: gzipSync(bytes, { level: 9 }).length,
    brotli: brotliCompressSync(bytes).length,
  };
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
  const rows = BUDGETS.map(({ what, budget, measure }) => [what, budget, measure(measured)]);
  table([['what, in bytes', 'budget', 'measured'], ...rows]);
  const over = rows.filter(([, budget, bytes]) => bytes > budget);
  for (const [what, budget, bytes] of over) console.error(`Over budget: ${what}: ${bytes} bytes, ${budget} allowed.`);
  process.exitCode = over.length > 0 ? 1 : 0;
}
