// The demo batch brought to its end without a tap: cured, smoked through, chilled, packed, with every reading that it takes.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { goTo, put } from './steps.mjs';

const reckon = fileURLToPath(new URL('../../../target/release/examples/reckon', import.meta.url));
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** The times and the readings of one class: up in two hours, down to 20 °C in 90 minutes more and to 3 °C in five hours. */
const COURSE = [
  [0, 3],
  [30, 22],
  [60, 45],
  [90, 62],
  [120, 76],
  [140, 66],
  [210, 19],
  [300, 9],
  [420, 3],
];
/** Taken out at 60 °C and chilled. */
export const NOT_HOT = [
  [0, 3],
  [30, 22],
  [60, 45],
  [121, 60],
  [140, 52],
  [210, 19],
  [300, 9],
  [420, 3],
];
/** Hot enough, and six hours from 45 to 20 °C. */
export const SLOW = [
  [0, 3],
  [30, 22],
  [60, 45],
  [90, 62],
  [120, 76],
  [150, 45],
  [330, 30],
  [450, 20],
];
/** It is taken out when it was read hot. */
const OUT = 122;

/** The batch as it is stored. `course` is what each class was read at: minutes after the start, °C. */
export function finished({ now = Date.now(), course = COURSE } = {}) {
  const { demo } = JSON.parse(execFileSync(reckon, { input: '{"starters":{}}', encoding: 'utf8' })).ok;
  const lit = now - 9 * HOUR;
  const rubbed = lit - 7 * DAY;
  const green = 1480;
  const share = ({ share: { amount } }) => `${((green * parseFloat(amount)) / 100).toFixed(1)} g`;
  const tick = (of, at, more = {}) => ({ of, at, ...more });
  const places = demo.pieces.map((_, place) => place);
  const steps = [lit - 26 * HOUR, lit - 25 * HOUR, lit, lit + 100 * MINUTE, lit + OUT * MINUTE, now - HOUR];
  return {
    ...demo,
    killed: new Date(rubbed - DAY).toISOString().slice(0, 10),
    ticks: [
      tick('cure:0', rubbed - HOUR, { weight: '3.5 g', step: '0.1 g', nitrite: '6.25 %', nitrate: '0 %' }),
      ...demo.recipe.lines.map((line, place) => tick(`line:${place}`, rubbed - HOUR, { weight: share(line) })),
      tick('rub', rubbed),
      tick('label', rubbed),
      ...steps.map((at, place) => tick(`step:${place + 1}`, at)),
      ...places.map((place) => tick(`pull:${place}`, lit + OUT * MINUTE)),
    ],
    fridge: Array.from({ length: 7 }, (_, day) => ({ at: rubbed + day * DAY + HOUR, what: 'read', reads: '3 °C' })),
    fire: {
      fan: true,
      cover: 'dry',
      at_risk: false,
      readings: course.flatMap(([minutes, celsius]) =>
        places.map((place) => ({ class: place, temperature: `${celsius} °C`, at: lit + minutes * MINUTE })),
      ),
    },
  };
}

/** Puts a batch into the page's records, and opens its labels. */
export async function putLabels(page, data, id = 'done') {
  await put(page, [{ key: `batch/${id}`, v: 1, at: new Date().toISOString(), data }]);
  await goTo(page, `#/batch/${id}/labels`);
  await page.locator('.lbl').first().waitFor();
  return id;
}
