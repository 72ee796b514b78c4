// The single file alone: its script lies packed in the page; this unpacks and starts it. The page's policy knows the
// digest of what comes out, so nothing else can run.
{
  const packed = /** @type {HTMLElement} */ (document.getElementById('packed'));
  const bytes = Uint8Array.from(atob(packed.textContent), (letter) => letter.charCodeAt(0));
  const text = new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).text();
  const asIs = { createScript: (/** @type {string} */ code) => code };
  const trusted = /** @type {any} */ (globalThis).trustedTypes?.createPolicy('cure-reckoner', asIs) ?? asIs;
  text.then((code) => {
    const script = document.createElement('script');
    script.type = 'module';
    script.textContent = trusted.createScript(code);
    packed.replaceWith(script);
  });
}
