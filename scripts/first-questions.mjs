// What the page asks on a first visit: the lists, the records that it puts in, and all that the first screen may want to
// know. Functions of the core that answer these are loaded first.

/** What is typed at a weight, a thickness and what the bag says: as it should be, and as it should not. */
const TYPED = {
  mass: [
    '1480',
    '1 480 g',
    '7 lb 3 oz',
    '7 lb',
    '2.5 oz',
    '1,8',
    '1.8',
    '3.2 kg',
    '40 g',
    '0',
    '-3',
    '700 lb',
    '1/2 lb',
    'ten',
    '7 lb 3',
    '1.000 g',
    '',
  ],
  printed: ['6.25', '6.25 %', '6,25', '0.5', '0.6', '62.5', '625', '1', '100', '0', '-1', 'pink', ''],
  length: ['25 mm', '45', '1 in', '1 1/8 in', '3 cm', '1.5"', '0', '900 mm', 'thick', ''],
};
const WEIGHTS = [undefined, '40 g', '1480 g', '7 lb', '40 kg', '9000 kg'];
const BAGS = ['6.25 %', '0.5 %', '100 %'];
const NOW = 1_800_000_000_000;
const [HOUR, DAY] = [3_600_000, 86_400_000];
/** Hours in which nobody is about, for as long as a page tells them. */
const NIGHTS = Array.from({ length: 160 }, (_, day) => NOW + (day - 45) * DAY).map((from) => ({
  from,
  to: from + 8 * HOUR,
}));
/** The unit of a field in which none is typed. */
const UNITS = { us: { mass: 'oz', printed: '%', length: 'in' }, metric: { mass: 'g', printed: '%', length: 'mm' } };

/** Asks all of it. @param {(request: object) => any} ask */
export function askAll(ask) {
  const { ok: tables } = ask({ tables: {} });
  const { ok: starters } = ask({ starters: {} });
  const cuts = [undefined, 'own', ...tables.cuts.map(({ key }) => key)];
  for (const recipe of starters.recipes) ask({ check: { recipe } });
  for (const [units, unit] of Object.entries(UNITS)) {
    for (const [kind, texts] of Object.entries(TYPED)) {
      for (const text of texts) ask({ read: { units, fields: [{ key: 'one', kind, unit: unit[kind], text }] } });
    }
    for (const cut of cuts) for (const weight of WEIGHTS) draft({ ...tables.settings, units }, { cut, weight });
    for (const { key: profile } of tables.profiles) {
      for (const scale_step of tables.scale_steps) {
        const settings = { ...tables.settings, units, profile, scale_step };
        ask({ check: { settings } });
        for (const nitrite of BAGS) {
          for (const premix of [false, true]) {
            for (const weight of WEIGHTS)
              draft(settings, { cut: 'boar-belly', weight, nitrite, premix, thickness: '45 mm' });
          }
        }
      }
    }
  }

  function draft(settings, { cut, ...typed }) {
    const { ok } = ask({ draft: { settings, ...(cut && { cut, called: cut }), ...typed } });
    if (!ok?.batch.pieces.length) return;
    const { batch } = ok;
    ask({ check: { batch } });
    ask({ weigh_out: { batch, settings } });
    ask({ cure_clock: { batch, now: NOW, settings, rests: NIGHTS } });
  }
}
