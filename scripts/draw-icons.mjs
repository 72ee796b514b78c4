// Renders web/icons/icon.svg into the PNG sizes that the manifest names. Run by hand when the drawing changes.
import { readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

const icons = new URL('../web/icons/', import.meta.url);
const { chromium } = createRequire(new URL('../tests/browser/', import.meta.url))('playwright-core');

const drawing = await readFile(new URL('icon.svg', icons), 'utf8');
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const page = await browser.newPage();

// A maskable icon may lose its rim, so the drawing keeps to the inner circle and the ground fills the square.
await draw('icon-192.png', 192, 1, 'transparent');
await draw('icon-512.png', 512, 1, 'transparent');
await draw('icon-maskable.png', 512, 0.6, '#dde4dd');
await browser.close();

async function draw(name, side, share, ground) {
  await page.setViewportSize({ width: side, height: side });
  await page.setContent(
    `<body style="margin:0;background:${ground};display:grid;place-items:center;height:${side}px">
     <div style="width:${side * share}px;height:${side * share}px">${drawing}</div>`,
  );
  await writeFile(new URL(name, icons), await page.screenshot({ omitBackground: true }));
}
