// Every stop of the tour as a reader sees it: its text and a picture at 390 px.
// `node tests/browser/look.mjs FOLDER en-US` (or en-GB). Wants dist/.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { host, open, phone, visit } from './harness.mjs';
import { tour } from './page/tour.mjs';
import { settled } from './page/steps.mjs';

/** Where each of them is spoken: the rule and whom to call go by the clock's place. */
const ZONES = { 'en-US': 'America/New_York', 'en-GB': 'Europe/London' };

const [folder, locale = 'en-US'] = process.argv.slice(2);
const timezoneId = ZONES[locale];
if (!folder || !timezoneId) {
  console.error(`look: node tests/browser/look.mjs FOLDER ${Object.keys(ZONES).join('|')}`);
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
  const page = await visit(await open(t, { ...phone, locale, timezoneId }), address);
  let stops = 0;
  await tour(page, async (name) => {
    await settled(page);
    const file = join(folder, `${String((stops += 1)).padStart(3, '0')}-${name.replace(/[^\w]+/g, '-')}`);
    const head = `${name}\n${await page.title()}\n${await page.evaluate(() => location.hash)}\n`;
    writeFileSync(`${file}.txt`, `${head}\n${await inSight(page)}\n`);
    await standing(page, 'static');
    await page.screenshot({ path: `${file}.png`, fullPage: true });
    await standing(page, '');
  });
  console.log(`${stops} stops in ${folder}`);
} finally {
  for (const end of endings) await end();
}
