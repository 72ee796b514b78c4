// The single file alone: its script, style and core lie packed in the page; this unpacks and starts them. The page's
// policy knows the digest of script and style, so nothing else can run.
import { SAVE_FIRST } from '../words/en/unpack.js';
import { bytesOf } from './latin.js';
import { unlzma } from './unlzma.js';

const packed = /** @type {HTMLElement} */ (document.getElementById('packed'));
// A host may say that it is of another character set, against what the file says of itself.
if (document.characterSet === 'windows-1252') start();
else /** @type {HTMLElement} */ (document.querySelector('.waiting')).textContent = SAVE_FIRST;

function start() {
  const bytes = unlzma(bytesOf(packed.textContent));
  const [script = 0, style = 0] = (packed.dataset.ends ?? '').split(' ').map(Number);
  const text = (/** @type {number} */ from, /** @type {number} */ to) =>
    new TextDecoder().decode(bytes.subarray(from, to));
  globalThis.core = bytes.subarray(style);

  const asIs = { createScript: (/** @type {string} */ code) => code };
  const trusted = /** @type {any} */ (globalThis).trustedTypes?.createPolicy('cure-reckoner', asIs) ?? asIs;
  const look = document.createElement('style');
  look.textContent = text(script, style);
  /** @type {HTMLElement} */ (document.querySelector('style')).replaceWith(look);
  const code = document.createElement('script');
  code.type = 'module';
  code.textContent = trusted.createScript(text(0, script));
  packed.replaceWith(code);
}
