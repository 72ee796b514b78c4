// Batches in the states that a screen has words for, as they are stored: what was ticked, read and logged, hours ago.
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { NOT_HOT, SLOW, finished } from './finished.mjs';

const reckon = fileURLToPath(new URL('../../../target/release/examples/reckon', import.meta.url));
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

const { ok: starters } = JSON.parse(execFileSync(reckon, { input: '{"starters":{}}', encoding: 'utf8' }));
const recipeOf = (tag) => structuredClone(starters.recipes.find((one) => one.tag === tag));

/** Names that are typed by hand: no page has them in its catalogue. */
export const NAMES = [
  'Woodpigeon',
  'Ham mix',
  'Grey dust',
  'a pinch of something',
  'salt, smoke',
  'Less juniper',
  'Grey pink salt',
];

/** Pieces of one size. */
const size = (cut, count, grams, mm, more) => ({
  cut,
  count,
  weight: grams === null ? null : `${grams} g`,
  each: false,
  thickness: mm === null ? null : `${mm} mm`,
  ...more,
});
const DUCKS = starters.demo.pieces;
const BOAR = [size('boar-belly', 1, 1150, 32)];
const HARE = [size('hare-legs', 4, 1200, 40)];
const HAUNCH = [size('fallow-haunch', 2, 2200, 55)];
const STRIPS = [size('venison-strips', 40, 900, 6)];

/**
 * A batch by a starter. `cured`: so many hours ago its cure was on, none: not yet; `steps`: hours ago by their place;
 * `read`: the fridge by hours ago; `lit`: minutes ago, with `fire` as minutes after it, size, °C.
 */
function batch(tag, pieces, { now, cured, steps = {}, read = {}, lit, fire, log, change = () => {}, ...more }) {
  const recipe = recipeOf(tag);
  const green = pieces.reduce((sum, { weight }) => sum + parseFloat(weight ?? '0'), 0);
  const ago = (hours) => now - hours * HOUR;
  const ticks = [];
  if (cured !== undefined) {
    const grams = (share) => `${((green * share) / 100).toFixed(1)} g`;
    const bag = { nitrite: '6.25 %', nitrate: '0 %', step: '0.1 g' };
    ticks.push({ of: 'cure:0', at: ago(cured), weight: grams(0.24), ...bag });
    for (const [at, { share }] of recipe.lines.entries())
      ticks.push({ of: `line:${at}`, at: ago(cured), weight: grams(parseFloat(share.amount)) });
    ticks.push({ of: 'rub', at: ago(cured) }, { of: 'label', at: ago(cured) });
  }
  for (const [at, hours] of Object.entries(steps)) ticks.push({ of: `step:${at}`, at: ago(hours) });
  const fridge = Object.entries(read).map(([hours, one]) =>
    typeof one === 'string' ? { at: ago(Number(hours)), what: 'read', reads: one } : { at: ago(Number(hours)), ...one },
  );
  const data = {
    tag,
    name: recipe.name,
    recipe,
    pieces: structuredClone(pieces),
    premix: false,
    killed: new Date(ago((cured ?? 0) + 30)).toISOString().slice(0, 10),
    ticks,
    closed: false,
    ...(fridge.length && { fridge }),
    ...(lit !== undefined && {
      fire: {
        fan: false,
        cover: 'dry',
        at_risk: false,
        ...log,
        readings: fire.map(([minutes, at, celsius, one], n) => ({
          id: `r${n}`,
          ...(at === null ? {} : { class: at }),
          temperature: `${celsius} °C`,
          at: now - (lit - minutes) * MINUTE,
          ...one,
        })),
      },
    }),
    ...more,
  };
  change(data, ago);
  return data;
}

/** Over the fire since `lit` minutes: cured, rinsed, dried; the smoke is lit. */
const over = (now, lit, fire, log, more = {}) =>
  batch('SD', DUCKS, {
    now,
    cured: 80,
    read: { 79: '3 °C', 50: '3 °C', [lit / 60 + 26]: '3 °C' },
    steps: { 1: lit / 60 + 25, 2: lit / 60 + 24, 3: lit / 60 },
    lit,
    fire,
    log,
    ...more,
  });
/** All of them out so many hours ago. */
const out = (hours) => ({
  change: ({ ticks }, ago) => [0, 1, 2].forEach((at) => ticks.push({ of: `pull:${at}`, at: ago(hours) })),
});
const WARM = [
  [0, null, 85],
  [1, 0, 4],
  [2, 1, 4],
  [2, 2, 4],
  [30, 0, 22],
  [31, 1, 24],
  [32, 2, 33],
  [60, 0, 38],
  [61, 1, 42],
  [62, 2, 52],
];
/** A last reading that is odd. */
const odd = (now, reading) => over(now, 95, [...WARM, reading]);
/** One size of one meat over the fire. */
const alone = (now, tag, pieces, steps, lit, fire, log, more) =>
  batch(tag, pieces, {
    now,
    cured: 200,
    read: { 199: '3 °C', 100: '3 °C', 30: '3 °C' },
    steps,
    lit,
    fire,
    log,
    ...more,
  });
const UP = [
  [0, null, 100],
  [1, 0, 4],
  [40, 0, 30],
  [80, 0, 52],
  [120, 0, 66],
];
const CURED = { now: 0, cured: 30 };

/** A brine of which a share goes in: what is in it is a share of the brine. */
function into(recipe, take) {
  recipe.take = take;
  for (const { item, share } of recipe.lines) if (item !== 'water') share.of = 'brine';
}

/** Ways in which the times of a batch that is in its cure cannot be right, or hardly. */
function oddTimes(now) {
  const day = (hours) => new Date(now + hours * HOUR).toISOString().slice(0, 10);
  const killed = (hours) => ({ change: (data) => (data.killed = day(hours)) });
  const ticked = (of, hours) => ({ change: ({ ticks }, ago) => ticks.push({ of, at: ago(hours) }) });
  return {
    'a rub before the kill': killed(0),
    'a kill to come': killed(72),
    'a kill long ago': killed(-24 * 60),
    'a rub to come': { cured: -5 },
    'a rinse before the rub': { steps: { 1: 40 } },
    'a turn before the rub': ticked('turn:0:0', 40),
    'a size taken out before the rub': ticked('draw:0', 40),
    'an end before the rub': ticked('end', 40),
    'a fridge to come': { read: { '-3': '3 °C' } },
  };
}

/** Cured, rinsed and dried; the smoke that is next cooks nothing. */
export const coldSmoke = (now) =>
  batch('SD', DUCKS, {
    now,
    cured: 80,
    read: { 79: '3 °C', 50: '3 °C', 26: '3 °C' },
    steps: { 1: 26, 2: 25 },
    change: ({ recipe }) => {
      const at = recipe.steps.findIndex(({ do: act }) => act === 'smoke');
      recipe.steps[at] = { do: 'smoke', lasts: '6 h', at: '20 °C' };
    },
  });

/** Each by its name: the batch as it is at `now`, and the screens that say something of it. */
export function states(now) {
  const cured = (tag, pieces, how = {}) => batch(tag, pieces, { ...CURED, now, ...how });
  const done = (how) => finished({ now, ...how });
  const fire = ['fire'];
  const all = ['pieces', 'weigh', 'cure', 'fire', 'pack', 'labels'];
  return {
    // Times that cannot be right.
    ...Object.fromEntries(
      Object.entries(oddTimes(now)).map(([name, how]) => [name, [cured('SD', DUCKS, how), ['cure']]]),
    ),
    // Before the cure.
    'no pieces': [batch('SD', [], { now }), all],
    'pieces without weight': [
      batch(
        'SD',
        DUCKS.map((one) => ({ ...one, weight: null, about: true })),
        { now },
      ),
      all,
    ],
    'pieces nobody knows': [batch('SD', [size('own', 3, null, null, { name: 'Woodpigeon' })], { now }), all],
    'no thickness': [batch('SD', [size('duck-breast', 3, 500, null)], { now, cured: 20 }), all],
    'bags apart': [
      batch(
        'SD',
        DUCKS.map((one, bag) => ({ ...one, bag })),
        { now },
      ),
      ['pieces', 'weigh'],
    ],
    'boar to weigh': [batch('BB', BOAR, { now }), ['pieces', 'weigh']],
    'hare to weigh': [batch('MH', HARE, { now }), ['pieces', 'weigh']],
    'strips to weigh': [batch('CJ', STRIPS, { now }), ['pieces', 'weigh']],
    'thawed, bone in': [
      batch(
        'FH',
        HAUNCH.map((one) => ({ ...one, thawed: true, bone_in: true })),
        { now },
      ),
      all,
    ],
    'cold smoke': [coldSmoke(now), fire],
    'an unread line that names a cure': [
      batch('SD', DUCKS, { now, change: ({ recipe }) => (recipe.unread = [NAMES[6]]) }),
      ['weigh'],
    ],
    'bear, unread line': [
      batch('FH', [size('bear-roast', 1, 1500, 60)], {
        now,
        change: ({ recipe }) => (recipe.unread = [NAMES[3]]),
      }),
      ['pieces', 'weigh', 'labels'],
    ],
    ...Object.fromEntries(
      ['ground', 'pumped', 'pumped_and_covered', 'pick_up'].map((method) => [
        method,
        [
          batch('FH', method === 'ground' ? BOAR : HAUNCH, {
            now,
            change: ({ recipe }) => {
              recipe.method = method;
              if (method === 'ground') recipe.lines = recipeOf('SD').lines;
              else into(recipe, '10 %');
            },
          }),
          ['weigh', 'cure', 'labels'],
        ],
      ]),
    ),
    'pumped belly': [
      batch('BB', BOAR, {
        now,
        change: ({ recipe }) => {
          Object.assign(recipe, recipeOf('FH'), { method: 'pumped' });
          into(recipe, '12 %');
        },
      }),
      ['weigh', 'labels'],
    ],
    'no cure': [batch('SD', DUCKS, { now, change: ({ recipe }) => (recipe.cures = []) }), ['weigh', 'labels', 'cure']],
    'second cure, nitrate': [
      batch('BB', BOAR, {
        now,
        change: ({ recipe }) => {
          recipe.cures = [{ item: 'cure-2', nitrite: '6.25 %', nitrate: '4 %', aim: '150 ppm', follows: true }];
        },
      }),
      ['weigh', 'labels'],
    ],
    'hung for months': [
      cured('FH', HAUNCH, {
        change: ({ recipe }) => {
          Object.assign(recipe, recipeOf('BB'), { eaten: 'hung_for_months', steps: recipe.steps.slice(0, 3) });
          recipe.cures[0] = { item: 'cure-2', nitrite: '6.25 %', nitrate: '4 %', aim: '150 ppm', follows: true };
        },
      }),
      all,
    ],
    'bird to be eaten raw': [
      cured('SD', DUCKS, {
        change: ({ recipe }) => Object.assign(recipe, { eaten: 'hung_for_months', steps: recipe.steps.slice(0, 3) }),
      }),
      all,
    ],
    'a line that may hold cure': [
      cured('SD', DUCKS, {
        change: ({ recipe }) =>
          recipe.lines.push({ item: 'own', name: 'Grey dust', share: { of: 'green_weight', amount: '0.1 %' } }),
      }),
      all,
    ],
    'a line that holds cure': [
      cured('SD', DUCKS, {
        change: ({ recipe }) =>
          recipe.lines.push({
            item: 'own',
            name: 'Ham mix',
            agent: 'yes',
            share: { of: 'green_weight', amount: '0.1 %' },
          }),
      }),
      all,
    ],
    // What went in.
    ...Object.fromEntries(
      [
        ['too much', { amount: '2 tbsp' }],
        ['much too much', { amount: '60 g' }],
        ['too little', { amount: '1 g' }],
        ['a spoon', { amount: '1 tsp' }],
        ['nobody knows the strength', { amount: '3.5 g', nitrite: null }],
        ['a salt without nitrite', { amount: '3.5 g', nitrite: '0 %' }],
        ['pure nitrite', { amount: '3.5 g', nitrite: '90 %' }],
      ].map(([name, put_in]) => [
        `put in: ${name}`,
        [cured('SD', DUCKS, { put_in: { nitrite: '6.25 %', step: '0.1 g', ...put_in } }), ['weigh', 'cure', 'labels']],
      ]),
    ),
    'no cure ticked': [
      cured('SD', DUCKS, { change: (data) => (data.ticks = data.ticks.filter(({ of }) => of !== 'cure:0')) }),
      all,
    ],
    // In the cure.
    'in the cure': [cured('SD', DUCKS, { read: { 29: '3 °C', 5: '3 °C' } }), all],
    'in the cure, by the recipe': [cured('SD', DUCKS, { read: { 29: '3 °C', 2: '3 °C' }, by: 'recipe' }), ['cure']],
    'in the cure, no hours': [
      cured('MH', HARE, {
        read: { 29: '3 °C' },
        change: ({ recipe }) => (recipe.steps[0] = { do: 'cure', at: '3 °C' }),
      }),
      ['cure', 'labels'],
    ],
    'boar in the cure': [
      cured('BB', [size('boar-belly', 1, 3150, 90)], { read: { 29: '3 °C', 1: '3 °C' } }),
      ['cure', 'labels'],
    ],
    'ground in the cure': [
      cured('SD', [size('duck-breast', 1, 1000, 40)], { change: ({ recipe }) => (recipe.method = 'ground') }),
      ['cure', 'fire'],
    ],
    'thick, the rinse is early': [
      cured('SD', [size('goose-breast', 2, 1600, 70)], { read: { 29: '3 °C' }, by: 'recipe' }),
      ['cure'],
    ],
    'longer than planned': [cured('SD', DUCKS, { cured: 150, read: { 149: '3 °C', 60: '3 °C', 1: '3 °C' } }), all],
    'far too long': [cured('SD', DUCKS, { cured: 900, read: { 899: '3 °C', 400: '3 °C', 1: '3 °C' } }), all],
    'into the fridge late': [
      cured('SD', DUCKS, { change: ({ ticks }, ago) => ticks.push({ of: 'fridge', at: ago(20) }) }),
      ['cure', 'fire'],
    ],
    'on for long, and in no fridge yet': [cured('SD', DUCKS, { cured: 9 }), ['cure', 'weigh']],
    'out of the cure early': [cured('SD', DUCKS, { read: { 29: '3 °C' }, steps: { 1: 20, 2: 19 } }), ['cure', 'fire']],
    'two readings as one': [over(now, 95, [...WARM, [63, 0, 39]]), fire],
    'cooked to too little': [
      batch('SD', DUCKS, {
        now,
        change: ({ recipe }) => recipe.steps.filter((step) => step.until).forEach((step) => (step.until = '60 °C')),
      }),
      fire,
    ],
    'in the cure, by the clock': [
      cured('SD', [size('goose-breast', 2, 1600, 70)], { read: { 29: '3 °C' }, by: 'clock' }),
      ['cure'],
    ],
    'in a strong brine for a while': [
      cured('FH', HAUNCH, {
        read: { 29: '3 °C' },
        change: ({ recipe }) => {
          recipe.method = 'pick_up';
          into(recipe, '10 %');
        },
      }),
      ['cure'],
    ],
    'hot enough, still in': [over(now, 140, [...WARM, [120, 0, 76], [121, 1, 76], [122, 2, 76]]), fire],
    'two odd readings': [over(now, 95, [...WARM, [70, 0, 230], [71, 1, 250]]), fire],
    'out of the heat, and cold at once': [
      over(now, 140, [...WARM, [120, 0, 76], [121, 1, 76], [122, 2, 76], [127, 0, 3]], {}, out(0.25)),
      ['fire', 'pack'],
    ],
    'warm a little': [cured('SD', DUCKS, { read: { 29: '3 °C', 4: '8 °C', 3: '3 °C' } }), ['cure', 'labels']],
    'warm now': [cured('SD', DUCKS, { read: { 29: '3 °C', 1: '3 °C', 0.5: '9 °C' } }), all],
    'warm and not read before': [cured('SD', DUCKS, { read: { 29: '3 °C', 0.5: '9 °C' } }), ['cure', 'today']],
    'too warm': [cured('SD', DUCKS, { read: { 29: '3 °C', 20: '9 °C', 10: '3 °C' } }), all],
    'a fridge reading hardly right': [
      cured('SD', DUCKS, { read: { 29: '3 °C', 2: '38 °C' } }),
      ['pieces', 'cure', 'labels', 'today'],
    ],
    'nobody saw the cold': [cured('SD', DUCKS, { cured: 26 * 24 }), ['cure', 'today']],
    'teal out first': [
      cured('SD', DUCKS, { change: ({ ticks }, ago) => ticks.push({ of: 'draw:2', at: ago(1) }) }),
      ['cure', 'fire'],
    ],
    'boar in cold smoke': [
      alone(
        now,
        'BB',
        BOAR,
        { 1: 40, 2: 30, 3: 10 },
        undefined,
        [],
        {},
        {
          change: ({ recipe }) => Object.assign(recipe.steps[3], { at: '22 °C', until: undefined, note: '' }),
        },
      ),
      ['labels'],
    ],
    frozen: [cured('SD', DUCKS, { read: { 29: '3 °C', 10: { what: 'frozen' } } }), all],
    'thawed again': [
      cured('SD', DUCKS, { read: { 29: '3 °C', 20: { what: 'frozen' }, 6: { what: 'thawed', reads: '3 °C' } } }),
      all,
    ],
    'power out': [cured('SD', DUCKS, { read: { 29: '3 °C', 8: { what: 'power_off' } } }), all],
    'power out and back': [
      cured('SD', DUCKS, { read: { 29: '3 °C', 8: { what: 'power_off' }, 5: { what: 'power_on', reads: '6 °C' } } }),
      all,
    ],
    'power back, not read': [
      cured('SD', DUCKS, { read: { 29: '3 °C', 9: { what: 'power_off' }, 2: { what: 'power_on' } } }),
      ['cure', 'labels'],
    ],
    'cured in the warm': [
      cured('SD', DUCKS, { change: ({ recipe }) => (recipe.steps[0].at = '10 °C') }),
      ['weigh', 'cure', 'labels'],
    ],
    'rinsed, drying': [cured('SD', DUCKS, { cured: 60, read: { 59: '3 °C', 30: '3 °C' }, steps: { 1: 6, 2: 5 } }), all],
    'a step passed over': [cured('SD', DUCKS, { cured: 60, read: { 59: '3 °C', 30: '3 °C' }, steps: { 2: 5 } }), all],
    soaked: [
      cured('SD', DUCKS, {
        cured: 60,
        read: { 59: '3 °C', 30: '3 °C' },
        steps: { 1: 2 },
        change: ({ recipe }) => recipe.steps.splice(1, 1, { do: 'soak', lasts: '4 h', at: '3 °C' }),
      }),
      ['cure', 'fire'],
    ],
    // Over the fire.
    'fire, nothing read': [over(now, 10, []), ['fire', 'pack']],
    'fire, nothing read in time': [over(now, 150, []), ['fire', 'pack']],
    'fire, on its way': [over(now, 95, [...WARM, [90, 2, 64], [92, 0, 48], [93, 1, 53]]), fire],
    'fire, no smoker read': [
      over(
        now,
        95,
        WARM.filter(([, at]) => at !== null),
      ),
      fire,
    ],
    'fire, someone at risk': [over(now, 95, WARM, { at_risk: true }), fire],
    'fire, nobody asked': [over(now, 95, WARM, { at_risk: undefined }), fire],
    'fire, one probe': [
      over(
        now,
        95,
        WARM.filter(([, at]) => at !== 2),
        { shares: [[2, 0]] },
      ),
      fire,
    ],
    'fire, hung with another': [
      over(now, 95, [WARM[0], ...WARM.filter(([, at]) => at === 1)], { shares: [[2, 0]] }),
      fire,
    ],
    'fire, to be wrapped': [over(now, 95, WARM, { wrap_at: '60 °C', cover: 'pan' }), fire],
    'fire, wrap now': [over(now, 95, [...WARM, [90, 0, 50]], { wrap_at: '45 °C' }), fire],
    'fire, wrapped': [
      over(
        now,
        95,
        [...WARM, [94, 0, 52]],
        { wrap_at: '45 °C' },
        {
          change: ({ ticks }, ago) => ticks.push({ of: 'wrap:0', at: ago(0.3) }, { of: 'pan', at: ago(0.2) }),
        },
      ),
      fire,
    ],
    'fire, odd: boiling': [odd(now, [80, 0, 104]), fire],
    'fire, odd: above the smoker': [odd(now, [80, 0, 92]), fire],
    'fire, odd: colder': [odd(now, [80, 0, 21]), fire],
    'fire, odd: too fast': [odd(now, [63, 0, 68]), fire],
    'fire, odd: to come': [odd(now, [140, 0, 45]), fire],
    'fire, odd: earlier': [odd(now, [50, 0, 33]), fire],
    'fire, one struck': [over(now, 95, [...WARM, [80, 0, 104, { struck: true }], [81, 0, 45, { sure: true }]]), fire],
    'fire, hot': [over(now, 125, [...WARM, [120, 0, 75], [121, 1, 76], [122, 2, 76]]), fire],
    'fire, hot and then colder': [over(now, 140, [...WARM, [120, 2, 75], [135, 2, 66]]), fire],
    'fire, by the table': [
      over(
        now,
        180,
        [
          ...WARM,
          [100, 0, 62],
          [120, 0, 66],
          [125, 0, 67],
          [130, 0, 68],
          [140, 0, 69],
          [150, 0, 69],
          [160, 0, 69],
          [170, 0, 69],
          [178, 0, 69],
        ],
        { target: '66 °C' },
      ),
      fire,
    ],
    'fire, the stall': [
      over(now, 200, [
        ...WARM,
        [90, 0, 55],
        [110, 0, 61],
        [130, 0, 62],
        [150, 0, 62],
        [170, 0, 62.5],
        [190, 0, 62.5],
        [191, null, 85],
      ]),
      fire,
    ],
    'fire, too cold': [
      over(
        now,
        95,
        WARM.map(([minutes, at, celsius]) => [minutes, at, at === null ? 55 : celsius]),
      ),
      fire,
    ],
    'fire out': [
      over(now, 130, [
        ...WARM,
        [90, null, 70],
        [100, null, 55],
        [110, null, 40],
        [120, null, 32],
        [121, 0, 41],
        [122, 2, 50],
      ]),
      fire,
    ],
    'fire, slow': [over(now, 400, [...WARM.slice(0, 4), [60, 0, 15], [180, 0, 28], [300, 0, 40], [390, 0, 48]]), fire],
    'fire, first read late': [
      over(now, 200, [
        [0, null, 85],
        [190, 0, 45],
        [191, 1, 50],
        [192, 2, 58],
      ]),
      ['fire', 'labels'],
    ],
    'fire, still in its cure': [over(now, 60, WARM.slice(0, 7), {}, { steps: {} }), ['fire', 'cure', 'today']],
    'fire, red game, chosen': [
      alone(now, 'FH', HAUNCH, { 1: 28, 2: 27, 3: 3 }, 180, [...UP, [170, 0, 63.5], [178, 0, 64]], {
        target: '62.8 °C',
      }),
      ['fire', 'pack'],
    ],
    'fire, red game at risk': [alone(now, 'FH', HAUNCH, { 1: 28, 2: 27, 3: 3 }, 180, UP, { at_risk: true }), fire],
    'fire, boar': [alone(now, 'BB', BOAR, { 1: 28, 2: 27, 3: 3 }, 180, UP), ['fire', 'pack']],
    'fire, hare': [alone(now, 'MH', HARE, { 1: 28, 2: 27, 3: 3 }, 180, [...UP, [170, 0, 80]]), ['fire', 'pack']],
    'fire, own meat': [
      alone(now, 'SD', [size('own', 3, 500, 30, { name: 'Woodpigeon' })], { 1: 28, 2: 27, 3: 3 }, 180, UP),
      ['fire', 'pack'],
    ],
    'strips, dried first': [
      alone(
        now,
        'CJ',
        STRIPS,
        { 1: 8, 2: 7 },
        480,
        [
          [0, null, 70],
          [5, 0, 10],
          [300, 0, 55],
        ],
        {},
      ),
      ['fire', 'pack', 'labels'],
    ],
    'strips, hot': [
      alone(
        now,
        'CJ',
        STRIPS,
        { 1: 8 },
        480,
        [
          [0, null, 135],
          [5, 0, 10],
          [15, 0, 50],
          [25, 0, 73],
        ],
        {},
      ),
      ['fire', 'pack', 'labels'],
    ],
    // Out of the fire.
    'all out, chilling': [
      over(now, 150, [...WARM, [120, 0, 75], [121, 1, 76], [122, 2, 76], [145, 2, 40]], {}, out(0.45)),
      ['fire', 'pack', 'labels', 'today'],
    ],
    'out, and not read since': [
      over(now, 400, [...WARM, [120, 0, 75], [121, 1, 76], [122, 2, 76]], {}, out(4.6)),
      ['fire', 'pack', 'labels', 'today'],
    ],
    'out too early': [
      over(now, 150, [...WARM, [120, 0, 60], [121, 1, 62], [122, 2, 76]], {}, out(0.45)),
      ['fire', 'pack', 'labels'],
    ],
    done: [done(), all],
    'done, weighed': [{ ...done(), fire: { ...done().fire, out: '1184 g' } }, ['pack', 'fire']],
    'done, weighed wrong': [{ ...done(), fire: { ...done().fire, out: '9 kg' } }, ['pack']],
    'done long ago': [done({ now: now - 60 * 24 * HOUR }), ['pack', 'labels', 'today']],
    'done, not hot': [
      done({
        course: NOT_HOT,
      }),
      ['fire', 'pack', 'labels'],
    ],
    'done, cooled slowly': [
      done({
        course: SLOW,
      }),
      ['fire', 'pack', 'labels'],
    ],
    'all ticked': [
      { ...done(), ticks: [...done().ticks, { of: 'step:7', at: now - 1000 }, { of: 'label:pack', at: now - 900 }] },
      ['pack', 'today'],
    ],
    'put away': [
      { ...done(), closed: true, after: { out: '1190 g', taste: 'salt, smoke', cut: 'even', change: 'Less juniper' } },
      all,
    ],
    'thrown out': [{ ...done(), closed: true, thrown_out: now - HOUR }, all],
  };
}
