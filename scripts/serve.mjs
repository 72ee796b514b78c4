// Serves a folder on this machine only. `node scripts/serve.mjs [folder] [port]`; a port of 0 takes a free one.
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { WAYS } from './packed.mjs';

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** Resolves to the server once it listens; `server.address().port` tells where. */
export function serve(folder, port = 0) {
  const root = resolve(folder);
  const server = createServer(async (request, response) => {
    try {
      const { pathname } = new URL(request.url, 'http://localhost');
      const file = resolve(join(root, decodeURIComponent(pathname.replace(/\/$/, '/index.html'))));
      if (!file.startsWith(root + sep)) throw new Error('outside the folder');
      const { body, coding } = await found(file, request.headers['accept-encoding']);
      response
        .writeHead(200, {
          'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
          vary: 'accept-encoding',
          ...(coding && { 'content-encoding': coding }),
          // What a page cannot say of itself: nobody may show it inside another.
          'content-security-policy': "frame-ancestors 'none'",
          'x-frame-options': 'DENY',
        })
        .end(body);
    } catch {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
    }
  });
  return new Promise((done, failed) => {
    server.once('error', failed).listen(port, 'localhost', () => done(server));
  });
}

/** The file packed as the browser takes it, where it lies packed beside itself. */
async function found(file, accepted = '') {
  const takes = accepted.split(',').map((each) => each.trim().replace(/;q=(1|0?\.\d*[1-9]\d*).*/, ''));
  for (const { coding, ending } of WAYS.filter((way) => takes.includes(way.coding))) {
    const body = await readFile(file + ending).catch(() => null);
    if (body) return { body, coding };
  }
  return { body: await readFile(file) };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const [folder = 'dist', port = '0'] = process.argv.slice(2);
  const server = await serve(folder, Number(port));
  console.log(`Served    http://localhost:${server.address().port}/`);
  console.log(`One file  ${pathToFileURL(resolve(folder, 'cure-reckoner.html')).href}`);
  console.log('Ctrl-C stops the server.');
}
