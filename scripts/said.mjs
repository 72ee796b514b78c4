// What a module of the page says to a person: the texts in it, by where they stand. Text between tags and in the
// attributes that are read aloud, and strings. Names of things for the program are none: keys, cases, comparisons,
// imports, classes, ids.
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const from = createRequire(fileURLToPath(new URL('../web/package.json', import.meta.url)));
const { parse } = from('acorn');
const { ancestor } = from('acorn-walk');

/** Attributes that a person reads or hears. */
const READ = /\b(?:aria-label|aria-description|aria-roledescription|placeholder|title|alt|label)\s*=\s*$/;
const WORD = /\p{L}{2,}/u;

/** Two words, or one that begins as a sentence does: no key of the program looks like that. */
const isSentence = (text) => /\p{L}{2,}[,;:.]?\s+(\S+\s+)*?\p{L}{2,}/u.test(text) || /^\s*\p{Lu}\p{Ll}/u.test(text);

/**
 * @param {string} source
 * @param {{ all?: boolean }} [options] all: single small words too
 * @returns {{ from: number, to: number, text: string }[]} in order
 */
export function said(source, { all = false } = {}) {
  const found = [];
  const add = (from, to) => {
    const text = source.slice(from, to);
    if (WORD.test(text)) found.push({ from, to, text });
  };
  const tree = parse(source, { ecmaVersion: 'latest', sourceType: 'module' });
  ancestor(tree, {
    Literal(node, _, above) {
      if (typeof node.value !== 'string' || isName(node, above)) return;
      if (all || isSentence(node.value)) add(node.start + 1, node.end - 1);
    },
    TemplateLiteral(node, _, above) {
      const parent = above.at(-2);
      const isMarkup = parent?.type === 'TaggedTemplateExpression' && ['html', 'svg'].includes(parent.tag.name);
      if (!isMarkup && isName(node, above)) return;
      let state = { in: 'text' };
      for (const quasi of node.quasis) {
        if (isMarkup) state = markup(source, quasi, state, add);
        else if (all || isSentence(quasi.value.raw)) add(quasi.start, quasi.end);
      }
    },
  });
  return found.sort((a, b) => a.from - b.from);
}

/** Whether it names something for the program. */
function isName(node, above) {
  const parent = above.at(-2);
  switch (parent?.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'SwitchCase':
    case 'NewExpression':
      return true;
    case 'Property':
      return parent.key === node;
    case 'MemberExpression':
      return parent.property === node;
    case 'AssignmentExpression':
      // `this.name = 'Refused'`
      return parent.left.property?.name === 'name';
    case 'BinaryExpression':
      return /^[!=]==?$|^[<>]=?$|^in$/.test(parent.operator);
    case 'CallExpression': {
      const { callee } = parent;
      const name = callee.property?.name ?? callee.name ?? '';
      return /^(querySelector(All)?|closest|matches|(get|set|has|remove|toggle)Attribute|addEventListener|includes|startsWith|endsWith|split|replace(All)?|icon|get(Element)?(ById)?|dispatchEvent|createElement|matchMedia|postMessage|warn|Error|TypeError|format)$/.test(
        name,
      );
    }
    case 'ArrayExpression': {
      // `['a', 'b'].includes(x)`
      const outer = above.at(-3);
      return outer?.type === 'MemberExpression' && outer.object === parent && !outer.computed;
    }
    default:
      return false;
  }
}

/** Goes through the static part of a template between two values. */
function markup(source, quasi, state, add) {
  let { start: at, end } = quasi;
  const upTo = (ch) => {
    const found = source.indexOf(ch, at);
    return found < 0 || found > end ? end : found;
  };
  while (at < end) {
    if (state.in === 'text') {
      const to = upTo('<');
      add(at, to);
      at = to;
      if (at < end) state = { in: 'tag' };
    } else if (state.in === 'tag') {
      const next = source.slice(at, end).search(/["'>]/);
      if (next < 0) {
        // A value without quotes, or the end of what is static here.
        return state;
      }
      const mark = source[at + next];
      if (mark === '>') state = { in: 'text' };
      else state = { in: 'value', quote: mark, read: READ.test(source.slice(Math.max(quasi.start, at), at + next)) };
      at += next + 1;
    } else {
      const to = upTo(state.quote);
      if (state.read) add(at, to);
      at = to;
      if (at < end) {
        state = { in: 'tag' };
        at += 1;
      }
    }
  }
  return state;
}
