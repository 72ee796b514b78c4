// Every stop of the tours as a reader sees it: its text and a picture at 390 px; what was seen already is left out.
// `node tests/browser/look.mjs FOLDER en-US` (or en-GB), with the names of some tours behind it if not all are wanted:
// `node tests/browser/look.mjs FOLDER en-GB screens,cards`. Wants dist/, and the example `reckon` for states and house.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { host, open, phone, visit } from './harness.mjs';
import { TOURS } from './page/tours.mjs';
import { settled } from './page/steps.mjs';

/** Where each of them is spoken: the rule and whom to call go by the clock's place. */
const ZONES = { 'en-US': 'America/New_York', 'en-GB': 'Europe/London' };

const [folder, locale = 'en-US', names = Object.keys(TOURS).join()] = process.argv.slice(2);
const timezoneId = ZONES[locale];
if (!folder || !timezoneId) {
  console.error(`look: node tests/browser/look.mjs FOLDER ${Object.keys(ZONES).join('|')} [${Object.keys(TOURS)}]`);
  process.exit(2);
}
mkdirSync(folder, { recursive: true });

/** What stands in sight, a line for each block; of a list to choose from the chosen one, of a box what is in it. */
const inSight = (page) =>
  page.evaluate(() => {
    const written = (element) => {
      if (element.matches('.vh, .skip, .sprite, script, style, [hidden]') || !element.checkVisibility()) return '';
      if (element instanceof HTMLSelectElement) return `[${element.selectedOptions[0]?.text ?? ''}]`;
      if (element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type))
        return element.checked ? '(x) ' : '( ) ';
      if (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement) return `[${element.value}]`;
      const inside = [...element.childNodes].map((node) =>
        node instanceof Text ? node.data.replace(/\s+/g, ' ') : node instanceof Element ? written(node) : '',
      );
      return /^inline|contents/.test(getComputedStyle(element).display) ? inside.join('') : `\n${inside.join('')}\n`;
    };
    return written(document.body)
      .split('\n')
      .map((line) => line.trim())
      .filter(Boolean)
      .join('\n');
  });

/** What stays on the screen would cover a line of a picture of the whole page. */
const standing = (page, position) =>
  page.evaluate((position) => {
    for (const bar of document.querySelectorAll('.pin, .masthead, .places')) bar.style.position = position;
  }, position);

const endings = [];
const t = { after: (ending) => endings.push(ending) };
try {
  const { address } = await host(t);
  const seen = new Set();
  const fresh = async (before = () => {}) => {
    const context = await open(t, { ...phone, locale, timezoneId });
    await before(context);
    return visit(context, address);
  };
  for (const name of names.split(',')) {
    const page = await fresh();
    const look = async (screen, more = '', shown = page) => {
      await settled(shown);
      const text = `${await inSight(shown)}\n${more}`;
      if (seen.has(text)) return;
      seen.add(text);
      const stop = `${name}-${String(seen.size).padStart(3, '0')}-${screen}`.replace(/[^\w]+/g, '-').slice(0, 80);
      const head = `${screen}\n${await shown.title()}\n${await shown.evaluate(() => location.hash)}\n`;
      writeFileSync(join(folder, `${stop}.txt`), `${head}\n${text}\n`);
      await standing(shown, 'static');
      await shown.screenshot({ path: join(folder, `${stop}.png`), fullPage: true });
      await standing(shown, '');
    };
    await TOURS[name](page, look, { fresh });
    await page.context().close();
  }
  console.log(`${seen.size} stops in ${folder}`);
} finally {
  for (const end of endings) await end();
}
