// The words for what the core answers of a fire: each published table is told with its source, and what it is not for.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { aboutWords, rowWords } from '../../web/words/en/chill.js';
import { conditionWords, heatWords, noLower, outlookBasis, ruleWords } from '../../web/words/en/fire.js';

const reckon = fileURLToPath(new URL('../../target/release/examples/reckon', import.meta.url));

const MINUTE = 60_000;
const LIT = 1_795_600_000_000;
const read = (of, minute, temperature) => ({ class: of, temperature, at: LIT + minute * MINUTE });

function log(pieces, { units = 'metric', ...fire }) {
  const recipe = {
    name: 'Trial',
    tag: 'TR',
    method: 'rub',
    cures: [{ item: 'cure-1', nitrite: '6.25 %', nitrate: '0 %', aim: '150 ppm' }],
    lines: [{ item: 'salt-sea-fine', share: { of: 'green_weight', amount: '2.2 %' } }],
  };
  const batch = { tag: 'SD', name: 'Trial', recipe, pieces, fire: { fan: true, cover: 'dry', readings: [], ...fire } };
  const settings = { units, scale_step: '0.1 g', profile: 'us-home' };
  const asked = JSON.stringify({ fire_log: { batch, now: LIT + 181 * MINUTE, settings } });
  const { ok, problems } = JSON.parse(execFileSync(reckon, { input: `${asked}\n`, encoding: 'utf8' }));
  assert.ok(ok, JSON.stringify(problems));
  return ok;
}

const piece = (cut, thickness) => ({ cut, count: 8, weight: '900 g', thickness });

test('each published table has its source, its caution and its figures', () => {
  const sheet = log([piece('boar-loin', '30 mm')], {});
  const tables = Object.fromEntries(
    sheet.published.map((one) => [
      one.about.is,
      { ...aboutWords(one), figures: one.rows.map((row) => rowWords(row).join(': ')).join('\n') },
    ]),
  );
  assert.deepEqual(Object.keys(tables), ['jerky', 'vacuum', 'plants', 'history', 'trichinae_heat', 'trichinae_frost']);
  for (const { title, source } of Object.values(tables)) assert.match(source, /published/, title);
  for (const figure of ['71.1 °C', '73.9 °C', '54.4 °C and 60 °C', '0.85; vacuum-packed 0.91'])
    assert.ok(tables.jerky.figures.includes(figure), figure);
  assert.match(tables.vacuum.says, /from 3\.3 °C \(37\.9 °F\) on, with no smell/);
  assert.match(tables.vacuum.figures, /Keep at or below: 3\.3 °C/);
  assert.match(tables.plants.figures, /250 ppm of erythorbate or ascorbate/);
  assert.match(tables.plants.figures, /salt in its water 3\.5 %.*\n.*salt in its water 6 %.*\n.*water activity 0\.92/);
  assert.match(tables.history.says, /14 December 2022/);
  for (const { says } of [tables.trichinae_heat, tables.trichinae_frost])
    assert.match(says, /Never enough for wild boar.* cooked to 73\.9 °C \(165 °F\) everywhere/);
  assert.match(
    ruleWords(sheet.classes[0].rule),
    /73\.9 °C \(165 °F\) all through.*CDC, MMWR 73\(20\), 2024.*\(published\)\.$/,
  );
  // The person's scale first.
  const us = log([piece('boar-loin', '30 mm')], { units: 'us' });
  assert.match(aboutWords(us.published.at(-1)).says, /cooked to 165 °F \(73\.9 °C\) everywhere/);
});

test('who gets no lower temperature is told why; a credit is told on its conditions', () => {
  const asked = (cut, at_risk) => log([piece(cut, '30 mm')], at_risk === undefined ? {} : { at_risk }).classes[0];
  assert.match(noLower(asked('mallard-breast')), /First say who will eat it/);
  assert.match(noLower(asked('boar-loin', false)), /Bear, wild boar and their kin: 73\.9 °C everywhere, no table/);
  const duck = asked('mallard-breast', false);
  assert.equal(noLower(duck), '');
  assert.match(
    conditionWords(duck.credit.conditions),
    /90 % humidity.*every 30 minutes.*1\.1 °C \(2 °F\) is taken off.*Below 60 °C \(140 °F\)/,
  );
});

test('a size that goes by the probe of another is said not to be measured, wherever its time is told', () => {
  const readings = [
    { temperature: '78 °C', at: LIT + MINUTE },
    ...[5, 14, 24, 33, 40, 46, 51].map((degrees, at) => read(0, at * 30, `${degrees} °C`)),
  ];
  const pieces = [piece('mallard-breast', '30 mm'), piece('teal-breast', '18 mm')];
  const teal = log(pieces, { readings, shares: [[1, 0]], at_risk: false }).classes[1];
  assert.match(heatWords(teal), /Not measured: put the probe in before it comes out\.$/);
  assert.match(outlookBasis(teal.outlook.from), /^Not measured: put the probe in.*fitted to 7 readings of /);
});
