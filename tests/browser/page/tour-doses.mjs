// What is judged and read as it is typed: doses by every method, and texts that somebody wrote.
import { goTo, settled } from './steps.mjs';

const METHODS = ['rub', 'cover_brine', 'ground', 'pick_up', 'pumped', 'pumped_and_covered'];
/** Where it matters to whom it is served, and on which meat. */
const RULES = ['us-home', 'us-plant', 'eu', 'uk', 'ca'];
/** What went in, and what its bag says: nitrite and nitrate. */
const PUT_IN = [
  ['3.5 g', '6.25', ''],
  ['1 g', '6.25', ''],
  ['3 g', '6.25', ''],
  ['12 g', '6.25', ''],
  ['60 g', '6.25', ''],
  ['1 tsp', '6.25', '4'],
  ['2 tbsp', '6.25', ''],
  ['3.5 g', '0', ''],
  ['3.5 g', '0', '4'],
  ['3.5 g', '90', ''],
  ['much', 'much', 'much'],
  ['0', '150 ppm', '200'],
];

/** Chooses by its value, where it is asked. */
async function choose(page, name, value) {
  const one = page.locator(`[name="${name}"][value="${value}"]`);
  if (await one.count()) await one.evaluate((input) => input.click());
}

/** Types into what is asked, folded or not. */
async function type(page, key, text) {
  const box = page.locator(`#f-${key}`);
  if (!(await box.count())) return;
  await box.evaluate((input, text) => {
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    input.dispatchEvent(new Event('change', { bubbles: true }));
  }, text);
}

async function doses(page, look) {
  await goTo(page, '#/dose');
  await type(page, 'green', '1480 g');
  for (const method of METHODS) {
    await choose(page, 'method', method);
    for (const [key, text] of Object.entries({ take: '10', water: '900 g', thickness: '40 mm', stays: '24 h' }))
      await type(page, key, text);
    for (const eaten of ['cooked', 'hung_for_months']) {
      await choose(page, 'eaten', eaten);
      for (const [amount, nitrite, nitrate] of PUT_IN) {
        await type(page, 'amount', amount);
        await type(page, 'nitrite', nitrite);
        await type(page, 'nitrate', nitrate);
        await look(`dose, ${method}, ${eaten}: ${amount} of ${nitrite} and ${nitrate}`);
      }
    }
  }
  await page.getByRole('button', { name: 'Check it' }).click();
  await look('dose, checked');
  await choose(page, 'eaten', 'cooked');
  await choose(page, 'method', 'rub');
  await choose(page, 'second', 'yes');
  await type(page, 'amount2', '2 g');
  await type(page, 'nitrite2', '6.25');
  await look('dose, two cures');
  for (const measure of await page.locator('[name=measure]').evaluateAll((all) => all.map(({ value }) => value))) {
    await choose(page, 'measure', measure);
    await type(page, 'amount', '1');
    await type(page, 'nitrite', '6.25');
    await look(`dose, measure ${measure}`);
  }
  for (const packet of await page.locator('[name=packet]').evaluateAll((all) => all.map(({ value }) => value))) {
    await choose(page, 'packet', packet);
    await look(`dose, packet ${packet}`);
  }
}

/** As somebody wrote them; a page quotes them, whole, by line and by what it does not understand. */
export const TEXTS = [
  'Kur',
  'Rub for 5 lb meat\n30 g salt\n1 heaping tsp cure no. 1\n1 packet of 25 g cure',
  'For 2 kg venison: 1,200 g water, 100 g salt, 5 g cure #1. Inject 10 %. Smoke at 90 °F for 12 hours.',
  '3 tbsp salt and pepper\na pinch of pink salt\n2 cups brown sugar, packed\n1 c honey\nsome garlic\n2 bay leaves\n1 egg',
  'Brine: 1 gallon water, 2 cups kosher salt, 2 tbsp pink salt or cure no. 2. Leave 3 days at 60 F. Smoke to 120 °F.',
  'For 10 lb of bear: 2 tsp cure no. 1, 3/4 cup salt. Do not cook. Keep in a jar of oil at room temperature.',
  'Für 1 kg Fleisch: 30 g Salz, 5 g Pökelsalz, 2 g Pfeffer, drei Tage in den Kühlschrank legen und dann räuchern.',
  'Pour 1 kg de viande: 30 g de sel, 5 g de sel nitrité, laisser trois jours au frais puis fumer.',
  'För 1 kg kött: 30 g salt och 5 g nitritsalt i tre dagar.',
  '2.2 % salt\n0.25 % cure no. 1\n0.5 % sodium nitrite\nSteps\n1. Rub it in.\n2. Keep cold 3 days.',
  '5 lb duck or 3 lb goose\n1 tsp cure\n2 tsp Prague powder per pound\n1 g saltpetre\n1 tsp sodium nitrite',
  'For 5 lb meat: 40 g cure no. 1, 60 g salt',
  'For 5 lb meat: 1 g cure no. 1, 60 g salt',
  'Salt 30\nSugar 10\nMeat 1000\n25 g sea salt (or 35 of coarse)',
  '15 g ham mix\n30 g curing salt\n1 kg meat\n2 g ascorbate',
  '1 kg meat\n1 l water\n80 g salt\n12 g cure no. 1\ninject 10 % of the meat and cover it with the rest',
  '1 kg meat\n1 l water\n80 g salt\n12 g cure no. 1\na strong brine for 2 hours',
  '2 lb hare\n1 pint water\n1 gill vinegar\n4 fl oz wine vinegar\n1 quart water\n1 dessertspoon honey\n1 T salt\n1 c sugar',
  '1 kg meat\n2 tsp sea salt\n1 tbsp coarse salt\n1 tbsp flake salt\n1 cup brown sugar\n1 cup salt\n3 g E 250\n2 g nitrate',
  '1 kg meat\n1 tsp pepper\n1 tsp mustard\n1 tsp juniper\n1 tsp garlic\n1 tsp ginger\n1 tsp chilli\n1 tsp cinnamon\n1 tsp allspice',
  '1 kg meat\n1 tsp thyme\n1 tsp rosemary\n1 tsp sage\n1 tsp coriander\n1 tsp dill\n1 tsp bay\n1 tsp onion\n1 tsp cloves\n1 tsp wine vinegar',
  'For 2 kg boar: 50 g salt, 5 g cure no. 1. Smoke cold at 20 °C for 2 days. Cook to 60 °C.',
  '7 lb goose\n1 tsp cure no. 1 per pound\n5 % salt\n2 % of the salt sugar\n4 cups water, 3 cups water\nhow much salt you like',
  '99999 kg meat\n1 g cure no. 1\n1,234 g salt for 1,234 g\nsaltpetre',
  '-',
];

async function readings(page, look) {
  const box = page.getByLabel('The recipe, in lines or in prose');
  for (const [n, text] of TEXTS.entries()) {
    await goTo(page, '#/read');
    await box.fill(text);
    await look(`read, ${n}`);
    // Each choice that is offered is made once, so that what follows on it is seen.
    for (let asked = 0; asked < 6; asked += 1) {
      const open = page.locator('main [type=radio]:not(:checked)');
      if (!(await open.count())) break;
      await open.nth(asked % (await open.count())).evaluate((input) => input.click());
      await settled(page);
      await look(`read, ${n}, answer ${asked}`);
    }
  }
  for (const cure of ['5 g', '20 g']) {
    await goTo(page, '#/read');
    await box.fill(`Rub for 5 lb meat\n30 g salt\n${cure} cure no. 1`);
    await page.getByRole('button', { name: /^Save/ }).first().waitFor();
    await look(`read, to keep with ${cure}`);
    await page.getByRole('button', { name: /^Save/ }).first().click();
    await settled(page);
    await look(`read, kept with ${cure}`);
  }
}

/** What cannot be read, of every kind of quantity. */
const WRONG = [
  'much',
  '',
  '0',
  '1,480',
  '3 kg 2 lb',
  '-5',
  '99999999999999999999',
  '1e9 kg',
  '12 °C 3',
  '5 parsec',
  '500 %',
  '0.000001 mg',
  'x'.repeat(90),
];

async function quantities(page, look) {
  for (const [at, keys] of [
    ['#/brine', ['meat', 'strength', 'sugar', 'nitrite', 'aim', 'at', 'water', 'length', 'weight']],
    ['#/spoons', ['weights', 'known', 'shows', 'meat', 'nitrite', 'aim']],
    ['#/dose', ['green', 'amount', 'nitrite', 'nitrate', 'thickness', 'stays', 'take', 'water']],
    ['#/how-much', ['weight', 'nitrite']],
    ['#/bag', ['count', 'weight', 'each', 'all']],
  ]) {
    await goTo(page, at);
    await choose(page, 'cure', 'aim');
    for (const wrong of WRONG) {
      for (const key of keys) await type(page, key, wrong);
      await look(`${at}: ${wrong.slice(0, 20)}`);
      const check = page.locator('main form [type=submit]').first();
      if (await check.count()) await check.evaluate((button) => button.click());
      await look(`${at}, pressed: ${wrong.slice(0, 20)}`);
    }
    for (const name of ['vessel', 'cure', 'method'])
      for (const value of await page.locator(`[name=${name}]`).evaluateAll((all) => all.map((one) => one.value))) {
        await choose(page, name, value);
        for (const key of keys) await type(page, key, '2');
        await look(`${at}, ${name} ${value}`);
      }
  }
}

export async function throughDoses(page, look) {
  await doses(page, look);
  await goTo(page, '#/keep');
  for (const rule of RULES) {
    await goTo(page, '#/keep');
    await page
      .locator('[name=profile]')
      .nth(RULES.indexOf(rule) + 1)
      .evaluate((one) => one.click());
    await settled(page);
    await goTo(page, '#/dose');
    for (const method of ['rub', 'pumped']) {
      await choose(page, 'method', method);
      for (const [amount, nitrite, nitrate] of PUT_IN.slice(0, 9)) {
        await type(page, 'amount', amount);
        await type(page, 'nitrite', nitrite);
        await type(page, 'nitrate', nitrate);
        await look(`dose, rule ${rule}, ${method}: ${amount} of ${nitrite} and ${nitrate}`);
      }
    }
  }
  await readings(page, look);
  await quantities(page, look);
}
