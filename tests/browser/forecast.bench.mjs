// How long the log of a fire takes to answer, by pieces and readings. Measures, never fails.
//   scripts/build && node tests/browser/forecast.bench.mjs
import { barePage } from './bare.mjs';
import { open, visit } from './harness.mjs';

const ends = [];
const t = { after: (end) => ends.push(end) };

/** A batch in the fire: each class a little later than the one before, a reading every five minutes. */
function batch(classes, readings) {
  const at = 1_795_600_000_000;
  const pieces = Array.from({ length: classes }, (_, i) => ({
    cut: 'mallard-breast',
    name: `Class ${i}`,
    count: 4,
    weight: '400 g',
    thickness: `${28 + 3 * i} mm`,
  }));
  const log = [];
  for (let n = 0; n < readings; n++) {
    const minute = 5 * n;
    log.push({ temperature: `${(82 + 2 * Math.sin(n)).toFixed(1)} °C`, at: at + minute * 60_000 });
    for (let i = 0; i < classes; i++) {
      const warm = 74 - 70 * Math.exp(-minute / (70 + 8 * i)) + 0.4 * Math.sin(7 * n + i);
      log.push({ class: i, temperature: `${warm.toFixed(1)} °C`, at: at + minute * 60_000 + 1000 * i });
    }
  }
  const recipe = {
    name: 'Trial rub',
    tag: 'TR',
    method: 'rub',
    cures: [{ item: 'cure-1', nitrite: '6.25 %', nitrate: '0 %', aim: '150 ppm' }],
    lines: [{ item: 'salt-sea-fine', share: { of: 'green_weight', amount: '2.2 %' } }],
  };
  const fire = { fan: true, at_risk: false, target: '73.9 °C', readings: log };
  return { batch: { tag: 'TR', name: 'Trial', recipe, pieces, fire }, now: at + 5 * readings * 60_000 };
}

const context = await open(t);
const page = await visit(context, (await barePage(t))['from a host']);
for (const [classes, readings] of [
  [6, 30],
  [3, 30],
  [6, 15],
  [6, 60],
]) {
  const ask = batch(classes, readings);
  const [median, fitted] = await page.evaluate((ask) => {
    const settings = { units: 'metric', scale_step: '0.1 g', profile: 'us-home' };
    const times = [];
    let answer;
    return core.load().then(() => {
      for (let i = 0; i < 15; i++) {
        const begun = performance.now();
        answer = core.ask({ fire_log: { ...ask, settings } });
        times.push(performance.now() - begun);
      }
      if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
      return [times.sort((a, b) => a - b)[7], answer.ok.classes.filter((one) => one.outlook?.window).length];
    });
  }, ask);
  console.log(`${classes} pieces, ${readings} readings each: ${median.toFixed(1)} ms (${fitted} with a window)`);
}
for (const end of ends.reverse()) await end();
