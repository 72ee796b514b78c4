// What the page says of the facts in tests/data/facts, as one JSON object, in the English of the language that is handed in.
// On its own, since the words ask once where they are.
import { readFileSync } from 'node:fs';

const [language] = process.argv.slice(2);
const american = language === 'en-US';
Object.defineProperty(globalThis, 'navigator', { value: { language } });

const words = (module) => import(new URL(`../../web/words/${module}.js`, import.meta.url).href);
const kept = (name) => JSON.parse(readFileSync(new URL(`../data/facts/${name}.json`, import.meta.url), 'utf8'));
const facts = (name) => kept(name).ok;

const { speakIn } = await words('degrees');
speakIn(american ? 'us' : 'metric');
const clock = await words('en/clock');
const doubts = await words('en/doubts');
const fire = await words('en/fire');
const labels = await words('en/labels');
const { nextWords } = await words('en/next-steps');
const plan = await words('en/plan');
const reading = await words('en/reading');
const verdict = await words('en/verdict');
const weigh = await words('en/weigh');
const { worded } = await words('en/wrong');

/** @param {any} of a verdict */
const dose = (of) => ({
  word: verdict.verdictWord(of),
  says: verdict.verdictSays(of),
  basis: verdict.verdictBasis(of),
  source: verdict.verdictSource(of),
  next: nextWords(of.next).map(({ head, text }) => `${head} ${text}`),
});

const list = (sheet) => ({
  lines: [...sheet.bowl, ...sheet.vessel].map((line) => [
    weigh.lineName(line),
    line.add.text,
    ...(line.why ? [weigh.lineWhy(line.why)] : []),
  ]),
  facts: weigh.sheetFacts(sheet.facts),
  remarks: sheet.remarks.map(weigh.remarkWords),
  verdict: dose(sheet.verdict),
});

const said = {
  'weigh-out': list(facts('weigh-out')),
  'weigh-out-brine': list(facts('weigh-out-brine')),
  'dose-over': dose(facts('dose-over')),
  'cure-clock': facts('cure-clock').notes.map(({ what }) => clock.notedWords(what)),
  'standing-warm': facts('standing-warm').doubts.map((doubt) =>
    doubts.doubtWords(doubt, { pieces: [], ticks: [] }, String),
  ),
  'fire-log': facts('fire-log').classes.map((one) => ({
    state: fire.FIRE_STATES[one.state],
    heat: fire.heatWords(one),
    rule: fire.ruleWords(one.rule),
    notes: one.outlook?.notes.map(fire.outlookNote),
  })),
  labels: facts('labels').papers.map((paper) => ({
    keep: labels.KEEP[paper.keep](paper.until !== null),
    what: labels.meatWords(paper.what),
    by: paper.basis && labels.keptBy(paper.basis),
    facts: paper.facts.map(labels.paperFact),
  })),
  'plan-back': facts('plan-back').batches.map(({ steps, snag, ways }) => ({
    tasks: [...new Set(steps.map(({ task }) => plan.taskWords(task)))],
    snag: snag && plan.snagWords(snag),
    ways: plan.ways(ways),
  })),
  'read-recipe': {
    lines: facts('read-recipe').lines.map(reading.takenFor),
    asks: facts('read-recipe').questions.map((one) => [reading.questionWords(one.ask), reading.offers(one)]),
  },
  'link-cut': kept('link-cut').problems.map((problem) => worded(problem).message),
};

console.log(JSON.stringify(said, null, 2));
