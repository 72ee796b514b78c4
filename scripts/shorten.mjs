// Shortens the page's script after esbuild, which leaves the names inside objects as they are: a text that is looked up
// by its name alone (`PUT.give`) becomes a variable, or goes where nobody asks for it. An object that is looked up by a
// fact's key keeps its keys. Names come again from function to function, so that it packs better too.
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const { minify } = createRequire(fileURLToPath(new URL('../web/package.json', import.meta.url)))('terser');

/**
 * @param {string} script a module
 * @param {import('terser').FormatOptions} [format]
 * @returns {Promise<string>} the same, shorter
 */
export async function shorten(script, format) {
  const { code } = await minify(script, {
    ecma: 2022,
    module: true,
    // What is inlined in one round is found unused in the next.
    compress: { passes: 3 },
    format: { comments: false, ...format },
  });
  return code;
}
