// A browser by the WebDriver protocol (W3C), as far as the tests of the engines need it: WebKit has no other way in.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** The name by which the protocol knows an element. */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';
const KEYS = { Tab: '\uE004', Enter: '\uE007', Space: ' ', ArrowDown: '\uE015' };

/** A screen that nobody looks at. Resolves to its name and to what ends it. */
async function screen() {
  const child = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1400x1200x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const [number] = await new Promise((done, failed) => {
    child.once('error', failed);
    child.stdio[3].once('data', (data) => done(String(data).trim().split('\n')));
  });
  return { display: `:${number}`, end: () => child.kill() };
}

/**
 * How the window's own bar is to look: so small that the window can be as narrow as a phone. Nothing in a page goes by it.
 * Gives the folder, which the browser takes for its user's.
 */
function looks() {
  const folder = mkdtempSync(join(tmpdir(), 'cure-reckoner-'));
  mkdirSync(join(folder, 'gtk-3.0'));
  writeFileSync(
    join(folder, 'gtk-3.0/gtk.css'),
    '* { padding: 0; margin: 0; min-width: 0; min-height: 0; border-width: 0; font-size: 1px; }',
  );
  return folder;
}

/** A port that nothing listens at. */
async function freePort() {
  const server = createServer();
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address();
  await new Promise((done) => server.close(done));
  return port;
}

/** Starts WebKit under its driver; `end` of what comes back ends all of it. */
export async function webkit() {
  const { display, end: dark } = await screen();
  const port = await freePort();
  const config = looks();
  const driver = spawn('WebKitWebDriver', ['-p', String(port)], {
    stdio: 'ignore',
    env: {
      ...process.env,
      DISPLAY: display,
      XDG_CONFIG_HOME: config,
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
      LIBGL_ALWAYS_SOFTWARE: '1',
      LANG: 'en_US.UTF-8',
    },
  });
  const base = `http://127.0.0.1:${port}`;
  for (let n = 0; ; n += 1) {
    const up = await fetch(`${base}/status`).catch(() => null);
    if (up?.ok) break;
    if (n > 100) throw new Error('WebKitWebDriver does not answer');
    await pause(100);
  }
  const { sessionId } = await send(base, 'POST', '/session', {
    capabilities: {
      alwaysMatch: {
        'webkitgtk:browserOptions': {
          binary: '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser',
          args: ['--automation'],
        },
        timeouts: { script: 60_000, pageLoad: 60_000 },
      },
    },
  });
  const session = new Session(`${base}/session/${sessionId}`);
  return Object.assign(session, {
    end: async () => {
      await session.command('DELETE', '').catch(() => {});
      driver.kill();
      dark();
      rmSync(config, { recursive: true, force: true });
    },
  });
}

async function send(base, method, path, body) {
  const response = await fetch(base + path, { method, ...(body && { body: JSON.stringify(body) }) });
  const { value } = await response.json();
  if (!response.ok) throw new Error(`${path}: ${value.error}: ${value.message}`);
  return value;
}

class Session {
  #base;

  constructor(base) {
    this.#base = base;
  }

  command(method, path, body) {
    return send(this.#base, method, path, body);
  }

  go(url) {
    return this.command('POST', '/url', { url });
  }

  reload() {
    return this.command('POST', '/refresh', {});
  }

  /** Runs a function in the page, and waits for what it promises. */
  async run(work, ...args) {
    const script = `const done = arguments[arguments.length - 1];
      Promise.resolve().then(() => (${work})(...[].slice.call(arguments, 0, -1)))
        .then((ok) => done({ ok }), (error) => done({ error: String(error) + error.stack }));`;
    const { ok, error } = await this.command('POST', '/execute/async', { script, args });
    if (error) throw new Error(error);
    return ok;
  }

  /** Runs a whole script in the page. */
  script(text) {
    return this.command('POST', '/execute/sync', { script: text, args: [] });
  }

  async #found(selector) {
    return (await this.command('POST', '/element', { using: 'css selector', value: selector }))[ELEMENT];
  }

  async click(selector) {
    await this.command('POST', `/element/${await this.#found(selector)}/click`, {});
  }

  /** A picture of the window with it in the middle: one of the element alone this driver may leave black. */
  async shot(selector) {
    await this.run(
      (of) =>
        new Promise((done) => {
          document.querySelector(of).scrollIntoView({ block: 'center', behavior: 'instant' });
          requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100)));
        }),
      selector,
    );
    return Buffer.from(await this.command('GET', '/screenshot'), 'base64');
  }

  /** Presses keys one after the other, by name or as a text of one letter. */
  async keys(...all) {
    const actions = all
      .map((key) => KEYS[key] ?? key)
      .flatMap((value) => [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ]);
    await this.command('POST', '/actions', { actions: [{ type: 'key', id: 'keys', actions }] });
  }

  async narrow(width) {
    const before = await this.command('GET', '/window/rect');
    await this.command('POST', '/window/rect', { width, height: 640 });
    while ((await this.run(() => innerWidth)) !== width) await pause(50);
    return () => this.command('POST', '/window/rect', before);
  }
}
