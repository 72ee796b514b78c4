// Each caution has its published figure, in the person's scale alone, and is spelled as the person spells.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { test } from 'node:test';
import { cautionText } from '../../web/words/en/cautions.js';
import { speakIn } from '../../web/words/degrees.js';

/** Figures of the tables' sources, °C and °F: `crate/tables/cautions.csv` names each. */
const FIGURES = {
  'keep-cold': [
    ['2 to 4', '36 to 40'],
    ['4', '40'],
  ],
  'birds-165': [['73.9', '165']],
  'red-160': [
    ['71.1', '160'],
    ['62.8', '145'],
  ],
  'mince-heat': [
    ['71.1', '160'],
    ['73.9', '165'],
  ],
  'boar-165': [
    ['73.9', '165'],
    ['71.1', '160'],
  ],
  'hare-165': [['73.9', '165']],
  'jerky-heat': [
    ['71.1', '160'],
    ['73.9', '165'],
    ['54 to 60', '130 to 140'],
  ],
  'cool-fast': [
    ['57', '135'],
    ['21', '70'],
    ['5', '41'],
  ],
  'cold-smoke-time': [
    ['32', '90'],
    ['4', '40'],
  ],
  'vacuum-botulism': [['3', '37']],
};

for (const [units, write] of [
  ['metric', (c) => `${c} °C`],
  ['us', (_, f) => `${f} °F`],
]) {
  test(`cautions have their figures, ${units}`, () => {
    speakIn(units);
    for (const [key, figures] of Object.entries(FIGURES)) {
      const left = figures.reduce((text, [c, f]) => {
        assert.ok(text.includes(write(c, f)), `${key}: ${text}`);
        return text.replaceAll(write(c, f), '');
      }, cautionText(key));
      // No other degrees stand in it, of either scale.
      assert.doesNotMatch(left, /°/, key);
    }
  });
}

test('a caution of the label and of mince names what it is for', () => {
  assert.match(cautionText('label-shot'), /shot or bullet lead.*children of 6 and under/);
  assert.match(cautionText('cool-fast'), /within 2 hours.*within 6 hours in all/);
  assert.match(cautionText('vacuum-botulism'), /10 days at most/);
  assert.doesNotMatch(cautionText('mince-heat'), /whole cuts/);
});

test('an American reads American', () => {
  const words = (language) =>
    execFileSync(
      process.execPath,
      [
        '--input-type=module',
        '--eval',
        `Object.defineProperty(globalThis, 'navigator', { value: { language: '${language}' } });
         const { cautionText } = await import('${new URL('../../web/words/en/cautions.js', import.meta.url)}');
         console.log(['brine-once', 'nitrite-locked', 'hare-165', 'mince-heat', 'dress-birds', 'dress-boar'].map(cautionText).join(' '));`,
      ],
      { encoding: 'utf8' },
    );
  const spelled = (text) =>
    text.match(/alumini?um|labell?ed|tulara?emia|Mince|Ground meat|\w+ing board|Wild boar(?: \(.*?\))?/g);
  assert.deepEqual(spelled(words('en-US')), [
    ...['aluminum', 'labeled', 'tularemia', 'Ground meat', 'cutting board', 'Wild boar (feral hog)'],
  ]);
  assert.deepEqual(spelled(words('en-GB')), [
    ...['aluminium', 'labelled', 'tularaemia', 'Mince', 'chopping board', 'Wild boar'],
  ]);
});
