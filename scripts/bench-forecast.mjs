// How long the log of a fire takes to answer, by pieces and readings, and against a fit of the same model in Python.
import { execFileSync } from 'node:child_process';

/** A batch in the fire: each class a little later than the one before, a reading every five minutes. */
function asked(classes, readings, settings) {
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
  const batch = { tag: 'TR', name: 'Trial', recipe, pieces, fire };
  return { fire_log: { batch, now: at + 5 * readings * 60_000, settings } };
}

/**
 * @param {(request: object, rounds: number) => Promise<{ median: number, p95: number }>} timed
 * @param {(request: object) => Promise<any>} reckon
 */
export async function forecastRows(timed, reckon, settings) {
  const times = async (cases) => {
    const found = [];
    for (const [classes, readings] of cases) found.push(await timed(asked(classes, readings, settings), 15));
    return found;
  };
  const [whole, ...byReadings] = await times([
    [6, 30],
    [6, 15],
    [6, 60],
    [6, 120],
  ]);
  const byPieces = await times([
    [1, 30],
    [2, 30],
    [3, 30],
  ]);
  const list = (all) => all.map(({ median }) => `${median.toFixed(1)} ms`).join(', ');
  const rows = [
    ['a forecast for 6 pieces with 30 readings each, median', '50 ms', `${whole.median.toFixed(1)} ms`],
    ['the same with 15, 30, 60, 120 readings', 'linear', list([byReadings[0], whole, ...byReadings.slice(1)])],
    ['the same for 1, 2, 3, 6 pieces', 'linear', list([...byPieces, whole])],
  ];
  const request = asked(6, 30, settings);
  const peer = python(request);
  if (peer) {
    const { ok } = await reckon(request);
    const away = ok.classes.map(({ outlook }, i) => Math.abs(outlook.window[1] - peer.ends[i]) / 60_000);
    rows.push([
      `scipy fitting the same model; their ends at most ${Math.max(...away).toFixed(1)} min apart`,
      'for comparison',
      `${peer.ms.toFixed(0)} ms over ${whole.median.toFixed(1)} ms: ${Math.round(peer.ms / whole.median)} times`,
    ]);
  }
  return rows;
}

/** The Python of the environment, or the one of `PYTHON`; nothing without scipy. */
function python(request) {
  try {
    const script = new URL('bench-forecast.py', import.meta.url).pathname;
    const said = execFileSync(process.env.PYTHON ?? 'python3', [script], {
      encoding: 'utf8',
      input: JSON.stringify(request),
    });
    return said.trim() ? JSON.parse(said) : null;
  } catch {
    return null;
  }
}
