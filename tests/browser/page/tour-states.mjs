// Every state of a batch that has words of its own, on the screens that say them.
import { states } from './states.mjs';
import { goTo, put } from './steps.mjs';

/** All of them lie in the store at once; each is opened by its address. */
export async function throughStates(page, look) {
  const all = Object.entries(states(Date.now()));
  const at = new Date().toISOString();
  await put(
    page,
    all.map(([, [data]], n) => ({ key: `batch/s${n}`, v: 1, at, data })),
  );
  for (const [n, [name, [, screens]]] of all.entries()) {
    for (const screen of screens) {
      if (screen === 'today') continue;
      await goTo(page, `#/batch/s${n}/${screen}`);
      await page.locator('main :is(.leaf, .plate)').first().waitFor();
      await look(`${name}: ${screen}`);
      if (screen !== 'labels') continue;
      for (const label of ['Finished packs', 'Gift tag']) {
        await page.getByLabel(label, { exact: true }).check();
        await look(`${name}: ${label}`);
      }
    }
  }
  for (const at of ['#/today', '#/past', '#/away', '#/stock']) {
    await goTo(page, at);
    await look(`all states: ${at}`);
  }
}
