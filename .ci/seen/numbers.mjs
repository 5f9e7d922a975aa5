// Ten random cases: the figures on workbench, element and sheet are those that the service answers.
import assert from 'node:assert/strict';
import { ORIGIN, api, at, close, linkOf, open, settled, sheetOf } from './stage.mjs';

const CASES = 10;

/** Random numbers with a fixed seed (Park and Miller, minimal standard). */
let state = 20261125;
const between = (least, most) => least + (state = (state * 48271) % 2147483647) / 2147483647 * (most - least);

function drawn(us) {
  return { water: { hardness: { value: Number(between(5, 30).toFixed(1)), unit: us ? 'gpg' : 'dH' }, iron: { value: Number(between(0, 2).toFixed(2)), unit: 'mg/L' } },
    household: { people: Math.round(between(1, 7)) }, softener: { resinVolume: { value: Number(between(us ? 0.7 : 15, us ? 3 : 80).toFixed(2)), unit: us ? 'ft3' : 'L' },
      saltDose: { value: Math.round(between(us ? 6 : 100, us ? 15 : 240)), unit: us ? 'lb/ft3' : 'g/L' }, control: { kind: 'clock', everyDays: Math.round(between(2, 9)) } },
    retrofit: { cost: { value: Math.round(between(200, 700)), unit: 'USD' } }, units: us ? 'us' : 'metric' };
}

/** Whether a text is a number rounded to some digits, or to cents. */
const near = (text, exact, part) => Math.abs(Number(text.replaceAll(',', '')) - exact) <= Math.max(Math.abs(exact) * part, 0.005);

async function workbench(given, answer) {
  const page = await open(linkOf(given));
  await settled(page);
  const read = await page.$$eval('data[data-from]', all => all.map(each => [each.dataset.from, Number(each.value), each.textContent]));
  assert.ok(read.length >= 20, `only ${read.length} numbers`);
  for (const [pointer, value, text] of read) {
    const answered = at(answer, pointer);
    const exact = typeof answered === 'object' ? answered.value : answered;
    assert.equal(value, exact, pointer);
    assert.ok(near(text, exact, 5e-4), `${pointer}: ${text} for ${exact}`);
  }
  await close(page);
  return read.length;
}

async function sheet(given, answer) {
  const page = await open(sheetOf(given));
  const read = await page.$$eval('[data-at]', all => all.map(each => [each.dataset.at, each.dataset.value, each.textContent]));
  assert.ok(read.length >= 40, `only ${read.length} places`);
  for (const [pointer, exact, text] of read) {
    const answered = at(answer, pointer);
    const value = typeof answered === 'object' ? answered.value : answered;
    const number = text.replace('\u2212', '-').match(/^-?[\d,]*\.?\d+/)?.[0]; // the unit follows in words
    if (typeof value !== 'number') {
      assert.equal(text, value, pointer);
    } else if (exact === undefined) { // a setting, in full
      assert.ok(number ? near(number, value, 5e-4) : value === 0, `${pointer}: ${text} for ${value}`);
    } else { // rounded for people
      assert.equal(Number(exact), value, pointer);
      assert.ok(near(number, value, 0.06) || Math.abs(Number(number.replaceAll(',', '')) - value) <= 0.51, `${pointer}: ${text} for ${value}`);
    }
  }
  await close(page);
  return read.length;
}

async function element({ water, household }) {
  const page = await open(`${ORIGIN}/example-shop`);
  await page.getByLabel('Water hardness').fill(String(water.hardness.value));
  await page.getByLabel('Unit of hardness').selectOption(water.hardness.unit);
  await page.getByLabel('Iron, in mg/L (optional)').fill(String(water.iron.value));
  await page.getByLabel('People in your home').fill(String(household.people));
  await page.getByRole('button').click();
  await page.locator('.choice').waitFor();
  const candidates = JSON.parse(await page.locator('brinebook-advice script').textContent());
  const answer = await api('/v1/softener-sizing', { water, household, candidates, units: 'us' });
  const best = answer.candidates.find(each => each.sku === answer.choice) ?? answer.candidates[0];
  const read = await page.locator('data').evaluateAll(all => all.map(each => [Number(each.value), each.textContent]));
  assert.deepEqual(read.map(([value]) => value),
    [best.daysBetweenRegenerations, best.saltPerYear?.value, best.waterPerYear?.value].filter(each => each !== undefined));
  read.forEach(([value, text]) => assert.ok(near(text, value, 5e-3), `${text} for ${value}`));
  await close(page);
  return read.length;
}

export async function numbers() {
  const compared = [0, 0, 0];
  for (let i = 0; i < CASES; i++) {
    const given = drawn(i % 2 === 0);
    const answer = await api('/v1/assessment', given);
    compared[0] += await workbench(given, answer);
    compared[1] += await sheet(given, answer);
    compared[2] += await element(given);
  }
  return `as the service answers them in ${CASES} cases: ${compared[0]} numbers of the workbench, ${compared[1]} of the sheet, ${compared[2]} of the element`;
}
