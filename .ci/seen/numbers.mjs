// Ten random cases: the figures on workbench and sheets are those that the service answers.
import assert from 'node:assert/strict';
import { ORIGIN, api, at, close, linkOf, open, settled, sheetOf } from './stage.mjs';

const CASES = 10;
const ASKED = { worth: 'retrofit', hard: 'retrofit', fits: null };

/** Random numbers with a fixed seed (Park and Miller, minimal standard). */
let state = 20261125;
const between = (least, most) => least + (state = (state * 48271) % 2147483647) / 2147483647 * (most - least);

function drawn(us) {
  return { water: { hardness: { value: Number(between(5, 30).toFixed(1)), unit: us ? 'gpg' : 'dH' }, iron: { value: Number(between(0, 2).toFixed(2)), unit: 'mg/L' } },
    household: { people: Math.round(between(1, 7)), ...(us ? {} : { country: 'europeanUnion' }) }, softener: { resinVolume: { value: Number(between(us ? 0.7 : 15, us ? 3 : 80).toFixed(2)), unit: us ? 'ft3' : 'L' },
      saltDose: { value: Math.round(between(us ? 6 : 100, us ? 15 : 240)), unit: us ? 'lb/ft3' : 'g/L' }, control: { kind: 'clock', everyDays: Math.round(between(2, 9)) } },
    retrofit: { cost: { value: Math.round(between(200, 700)), unit: us ? 'USD' : 'EUR' } }, units: us ? 'us' : 'metric' };
}

/** Whether a text is a number rounded to some digits, or to cents. */
const near = (text, exact, part) => Math.abs(Number(text.replaceAll(',', '')) - exact) <= Math.max(Math.abs(exact) * part, 0.005);

/** How far a figure that is rounded for people may be from the exact one, by its kind: half a step, a whole one where it is rounded up or down. */
const STEPS = { hardDays: 0.5, saltYear: 5, waterYear: 50, money: 2.5, water: 5, days: 0.25, dose: 0.25, resin: 0.125, capacity: 100, setting: 0, settingDays: 0, settingMinutes: 0 };
const METRIC_STEPS = { ...STEPS, saltYear: 0.5, dose: 0.5, resin: 0.5, waterYear: 50 };

function isShown(text, exact, kind, metric) {
  if (kind === 'hour') { return text.length > 0; }
  const number = Number(text.replaceAll(',', '').match(/-?\d*\.?\d+/)[0]);
  const step = (metric ? METRIC_STEPS : STEPS)[kind];
  assert.notEqual(step, undefined, `no step for ${kind}`);
  const value = kind === 'waterYear' && /m³/.test(text) ? exact / 1000 : exact;
  const room = kind === 'waterYear' && /m³/.test(text) ? 0.05 : step;
  return Math.abs(number - value) <= room + Math.abs(value) * 1e-5;
}

async function workbench(given, question, metric) {
  const page = await open('about:blank');
  const requests = [];
  page.on('request', request => { if (request.method() === 'POST' && request.url().startsWith(`${ORIGIN}/v1/`)) { requests.push(request); } });
  const { units, ...readings } = given;
  await page.goto(linkOf(readings, { question, country: metric ? 'EU' : 'US' }));
  await settled(page);
  const request = requests.at(-1);
  const answer = await api(new URL(request.url()).pathname, request.postDataJSON());
  assert.deepEqual(request.postDataJSON().water, given.water, 'it asks about other water');
  const said = await page.locator('.verdict h2').innerText();
  const sentence = question === 'fits' && answer.verdict.step === 'replace' ? answer.why : answer.verdict.sentence;
  assert.ok(said.length > 10 && sentence.replace(/\s+/g, ' ').startsWith(said.replace(/\s+/g, ' ')), `${said} is not ${sentence}`);
  const read = await page.$$eval('.answer data[data-from]', all => all.map(each => [each.dataset.from, Number(each.value), each.textContent, each.dataset.kind]));
  assert.ok(read.length >= 4, `only ${read.length} numbers`);
  for (const [pointer, value, text, kind] of read) {
    const answered = at(answer, pointer);
    assert.equal(value, typeof answered === 'object' ? answered.value : answered, pointer);
    assert.ok(isShown(text, value, kind, metric), `${pointer}: ${text} for ${value} as ${kind}`);
  }
  await close(page);
  return read.length;
}

async function sheet(given, answer, name) {
  const page = await open(sheetOf(given, name));
  const read = await page.$$eval('[data-at]', all => all.map(each => [each.dataset.at, each.dataset.value, each.textContent]));
  assert.ok(read.length >= 1, `only ${read.length} places`);
  for (const [pointer, exact, text] of read.flatMap(([places, exact, text]) => places.split(' ').map(place => [place, exact, text]))) {
    const answered = at(answer, pointer);
    const value = typeof answered === 'object' ? answered.value : answered;
    const shown = [...text.replaceAll('\u2212', '-').matchAll(/-?\d[\d,]*(?:\.\d+)?/g)].map(([number]) => number); // in a sentence others stand beside it
    if (typeof value !== 'number') {
      assert.equal(text, value, pointer);
    } else { // rounded for people
      if (exact !== undefined) { assert.equal(Number(exact), value, pointer); }
      const size = Math.abs(value); // a sentence says more or less in words
      if (size < 2.5 && /\b(no|none)\b/i.test(text)) { continue; } // nothing, in words
      const counted = [size]; // the number itself, or what a sentence counts in its place
      if (/every|day/.test(text) && size > 0) { counted.push(365 / size); }
      if (/\bbag|^\d+$/.test(text)) { counted.push(Math.ceil(size / (answered.unit === 'lb' ? 40 : 25))); }
      if (/ of 20 /.test(text)) { counted.push(size / 5); }
      if (/m³/.test(text) && answered.unit === 'L') { counted.push(size / 1000); } // water of a year
      const numbers = shown.map(number => Math.abs(Number(number.replaceAll(',', ''))));
      assert.ok(counted.some(each => numbers.some(number => Math.abs(number - each) <= Math.max(0.51, 0.06 * each))), `${pointer}: ${text} for ${value}`);
    }
  }
  await close(page);
  return read.length;
}

export async function numbers() {
  const compared = [0, 0];
  const questions = Object.keys(ASKED);
  for (let i = 0; i < CASES; i++) {
    const given = drawn(i % 2 === 0);
    const answer = await api('/v1/assessment', given);
    compared[0] += await workbench(given, questions[i % questions.length], i % 2 === 1);
    for (const name of ['letter', 'card', 'checklist']) { compared[1] += await sheet(given, answer, name); }
  }
  return `as the service answers them in ${CASES} cases: ${compared[0]} numbers of the workbench, ${compared[1]} of the sheets`;
}
