// A page in a language that nobody speaks, for a test that speaks plain English.
import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DIALECTS, UNSEEN } from '../../../scripts/pseudo.mjs';

export const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Builds the page in it, into a folder of `target` that is gone when the test is over. */
export function built(t, name) {
  const folder = `target/${name}`;
  execFileSync('node', ['scripts/assemble.mjs', folder, name], { cwd: root });
  t.after(() => rmSync(root + folder, { recursive: true, force: true }));
  return root + folder;
}

/** Finds a text in both forms, whatever unseen stands between its letters. */
function eitherOf(letters) {
  return (wanted) => {
    const source = wanted instanceof RegExp ? wanted.source : wanted.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
    const both = source.replace(/\\.|[^\\]/g, (part) => {
      if (/^[a-z]$/i.test(part)) return `(?:${UNSEEN}(?:${part}|${letters(part)}))`;
      if (/^\\[^bBu]$|^[\s\d“”,:;–-]$/.test(part)) return `(?:${UNSEEN}${part})`;
      return part === '$' ? `${UNSEEN}$` : part;
    });
    return new RegExp(both, wanted instanceof RegExp ? wanted.flags : 'i');
  };
}

/** The page in this dialect as a test sees it that speaks English. */
export function speaking(page, name) {
  const either = eitherOf(DIALECTS[name].letters);
  const whole = (wanted) => new RegExp(`^\\s*${either(wanted).source}${UNSEEN}\\s*$`);
  const options = (given) =>
    given &&
    Object.fromEntries(
      Object.entries(given)
        .map(([key, value]) => {
          if (key === 'hasText' || key === 'name') return [key, given.exact ? whole(value) : either(value)];
          return [key, value];
        })
        .filter(([key]) => key !== 'exact'),
    );
  /** An option is chosen by its text: by its place, since nothing else takes a pattern. */
  const chosen = async (locator, label) => {
    const texts = await locator.locator('option').allTextContents();
    const at = texts.findIndex((text) => whole(label).test(text));
    if (at < 0) throw new Error(`no option ${label} among ${texts.join(', ')}`);
    return { index: at };
  };
  const spoken = (thing) =>
    new Proxy(thing, {
      get(target, key) {
        const value = Reflect.get(target, key, target);
        if (typeof value !== 'function') return value;
        if (key === 'selectOption') {
          return async (wanted, ...more) =>
            target.selectOption(
              typeof wanted?.label === 'string' ? await chosen(target, wanted.label) : wanted,
              ...more,
            );
        }
        return (...given) => {
          if (key === 'getByLabel' || key === 'getByText') {
            given = [given[1]?.exact ? whole(given[0]) : either(given[0])];
          } else if (['getByRole', 'locator', 'filter'].includes(key)) given[1] = options(given[1]);
          const answer = value.apply(target, given);
          const isLocator = answer && typeof answer === 'object' && typeof answer.waitFor === 'function';
          return isLocator ? spoken(answer) : answer;
        };
      },
    });
  return spoken(page);
}
