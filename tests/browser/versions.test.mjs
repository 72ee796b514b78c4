// Records as every version of the page wrote them are opened by this one, and nothing of them is lost or set aside.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { host, open, stored, usable, visit } from './harness.mjs';
import { goTo, kept } from './page/steps.mjs';

const folder = fileURLToPath(new URL('../data/records/', import.meta.url));

for (const name of readdirSync(folder)) {
  test(`records as in ${name}`, async (t) => {
    const records = JSON.parse(readFileSync(folder + name, 'utf8'));
    const { address } = await host(t);
    const context = await open(t);
    await stored(context, address, records);

    const page = await visit(context, `${address}#/keep`);
    const of = (start) => records.filter(({ key }) => key.startsWith(start)).length;
    await page.getByText(new RegExp(`and ${of('batch/')} batch(es)?\\b`)).waitFor();
    assert.equal(await page.getByText('Set aside').count(), 0);

    // A change brings the record to the present form, and all that was in it is still there.
    const [first] = records.filter(({ key }) => key.startsWith('batch/'));
    await goTo(page, `#/${first.key}/pieces`);
    await page.getByText('About this batch').click();
    await page.getByLabel('Name', { exact: true }).fill('Sunday ducks');
    await page.getByLabel('Tag', { exact: true }).focus();
    await page.getByRole('heading', { name: 'Sunday ducks' }).waitFor();
    const now = (await kept(page, first.key))[0];
    const things = [...now.data.pieces, ...(now.data.fire?.readings ?? []), ...(now.data.fridge ?? [])];
    assert.equal(new Set(things.map(({ id }) => id)).size, things.length, 'each has an id of its own');
    const bare = JSON.parse(JSON.stringify(now.data, (key, value) => (key === 'id' ? undefined : value)));
    const was = JSON.parse(JSON.stringify(first.data, (key, value) => (key === 'id' ? undefined : value)));
    assert.deepEqual(bare, { ...was, name: 'Sunday ducks' });
    await page.reload();
    await usable(page);
    await page.getByRole('heading', { name: 'Sunday ducks' }).waitFor();
  });
}
