// What is on the pages of a PDF, read by a library that had no part in printing it.
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM = 25.4 / 72;
const home = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** Each page's size in mm, its words, and its picture in `dpi` dots to the inch as RGBA. */
export async function read(pdf, dpi) {
  const document = await getDocument({
    data: new Uint8Array(pdf),
    standardFontDataUrl: join(home, 'standard_fonts/'),
    verbosity: 0,
  }).promise;
  const pages = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const [left, bottom, right, top] = page.view;
    pages.push({
      size: [right - left, top - bottom].map((pt) => Math.round(pt * MM)),
      words: items.map(({ str, hasEOL }) => str + (hasEOL ? '\n' : '')).join(''),
      picture: await drawn(document, page, dpi),
    });
  }
  await document.destroy();
  return pages;
}

async function drawn({ canvasFactory }, page, dpi) {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const { canvas, context } = canvasFactory.create(Math.round(viewport.width), Math.round(viewport.height));
  await page.render({ canvas, canvasContext: context, viewport }).promise;
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  return { data: Buffer.from(data.buffer), width, height };
}
