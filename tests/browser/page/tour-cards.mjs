// Every card for when something went wrong, by every answer to its end.
import { goTo } from './steps.mjs';

/** The cards, and by each the answers given so far; one screen for each question and each end. */
export async function throughCards(page, look) {
  await goTo(page, '#/cards');
  await look('cards');
  const keys = await page.locator('.doors a').evaluateAll((all) => all.map((one) => one.hash.split('/').pop()));
  for (const key of keys.filter((one) => one && one !== 'dose')) {
    // A question that was seen is not gone through again: what follows on it does not go by how one came there.
    const seen = new Set();
    const ways = [[]];
    for (let way = ways.pop(); way; way = ways.pop()) {
      await goTo(page, '#/more');
      await goTo(page, `#/cards/${key}`);
      for (const answer of way) await press(page, answer);
      await look(`card ${key}: ${way.join(', ')}`);
      const question = await asked(page);
      if (question === null || seen.has(question.says)) continue;
      seen.add(question.says);
      for (let answer = 0; answer < question.answers; answer += 1) ways.push([...way, answer]);
    }
  }
}

const asked = (page) =>
  page.evaluate(() => {
    const answers = document.querySelectorAll('.choices button').length;
    return answers ? { says: document.querySelector('#question').textContent, answers } : null;
  });

/** By the script: a hand would have to wait, lest it be taken for a slip. */
const press = (page, answer) =>
  page.evaluate((answer) => document.querySelectorAll('.choices button')[answer].click(), answer);
