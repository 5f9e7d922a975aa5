// The questions of a visit and after it: a water report, what was measured, a complaint, a start and a saving, on a phone and on a laptop, in two languages, and their sheets.
import assert from 'node:assert/strict';
import { look } from './looks.mjs';
import { LAPTOP, ORIGIN, api, at, close, example, faults, inSight, open, settled, toAnswer, verdictOf } from './stage.mjs';

const SMALL_PHONE = { width: 360, height: 640 };
const VISITS = { report: '/v1/water-report', visit: '/v1/field-measurements' };
const VIEWS = [['phone', SMALL_PHONE, 'en', 'en-US', 'light'], ['laptop', LAPTOP, 'de', 'de-DE', 'dark']];
/** Three screens of a phone. Limit: our own. */
const TALLEST = 2000;
const TABLE = 'Parameter\tResult\tUnit\nCalcium\t96\tmg/L\nMagnesium\t31\tmg/L\nTotal coliform\tAbsent\t\nFoo\t1\tmg/L';

const ask = async (page, question) => {
  await page.goto(`${ORIGIN}/#/`);
  await page.locator(`.at-visit a[href="#/ask/${question}"]`).click();
  await page.locator('.readings .intro button').waitFor();
};

/** Figures as they are answered, with three digits; how sure a cause is in whole percent. */
async function figures(page, answer, name) {
  const read = await page.$$eval('.answer data[data-from]', all => all.map(each => [each.dataset.from, Number(each.value), each.textContent, each.dataset.kind]));
  assert.ok(read.length > 4, `${name}: only ${read.length} numbers`);
  for (const [pointer, value, text, kind] of read) {
    const answered = at(answer, pointer);
    assert.equal(value, typeof answered === 'object' ? answered.value : answered, `${name}: ${pointer}`);
    const shown = Number(text.match(/-?\d[\d.,]*/)[0].replaceAll(',', ''));
    assert.ok(Math.abs(shown - value) <= (kind === 'percent' ? 0.6 : Math.abs(value) * 0.0051), `${name}: ${pointer}: ${text} for ${value}`);
  }
  return read.length;
}

async function examples() {
  let numbers = 0;
  for (const [device, size, language, locale, scheme] of VIEWS) {
    const page = await open(ORIGIN, { size, locale, scheme, touch: device === 'phone' });
    for (const [question, path] of Object.entries(VISITS)) {
      const name = `${question}-${device}-${language}`;
      const requests = [];
      page.on('request', request => { if (request.method() === 'POST' && request.url().startsWith(ORIGIN + path)) { requests.push(request.postDataJSON()); } });
      await ask(page, question);
      await example(page);
      await look(page, name);
      if (!await inSight(page, verdictOf(page))) { faults.push(`${name}: the verdict is out of sight`); }
      await toAnswer(page);
      if (device === 'phone') {
        await look(page, `${name}-answer`);
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        if (height > TALLEST) { faults.push(`${name}: ${height} tall`); }
      } else { continue; }
      const answer = await api(path, requests.at(-1), language);
      if (question === 'visit') { answer.installation = await api('/v1/installation-check', JSON.parse(await (await fetch(`${ORIGIN}/examples/checkInstallation.well-family.request.json`)).text()), language); }
      await page.$$eval('.answer details', all => all.forEach(each => { each.open = true; }));
      numbers += await figures(page, answer, name);
    }
    await close(page);
  }
  return numbers;
}

/** From a pasted table to another question with its water, and from a bucket and a tape to one with its softener. */
async function typed() {
  const page = await open(`${ORIGIN}/#/ask/report`, { size: SMALL_PHONE, touch: true });
  await page.locator('#f-results-0-parameter').selectOption('hardness');
  await page.locator('#f-results-0-value').pressSequentially('22');
  await settled(page);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-results-0-value', 'an answer moved the focus');
  await page.locator('details:has(> #paste-table) > summary').click();
  await page.fill('#paste-table', TABLE);
  await page.locator('.result-row').nth(3).waitFor();
  assert.equal(await page.inputValue('#paste-table'), 'Foo\t1\tmg/L', 'a line that was not understood is lost');
  await settled(page);
  await toAnswer(page);
  await page.locator('.onward .primary').click();
  await page.locator('#f-household-people').waitFor();
  const hardness = Number(await page.inputValue('#f-water-hardness'));
  assert.ok(hardness > 19 && hardness < 24, `the water of the report is ${hardness}`);
  await page.locator('.others').evaluate(element => { element.parentElement.open = true; });
  await page.locator('.others button', { hasText: 'What is really there?' }).click();
  await page.locator('#f-drain-volume').pressSequentially('5');
  await page.locator('#f-drain-seconds').pressSequentially('118 121');
  await settled(page);
  await page.locator('#more-tank > summary').click();
  for (const [name, text] of [['outerDiameter', '10'], ['height', '54'], ['freeboard', '17.5']]) { await page.locator(`#f-resinTank-${name}`).pressSequentially(text); }
  await settled(page);
  await toAnswer(page);
  await page.locator('.onward .primary').click();
  await page.locator('#f-household-people').waitFor();
  const resin = Number(await page.inputValue('#f-softener-resinVolume'));
  assert.ok(resin > 1.4 && resin < 1.6, `the resin measured is ${resin}`);
  await close(page);
}

/** Both sheets at the width of a phone. */
async function sheets() {
  for (const [operation, path] of [['readWaterReport', VISITS.report], ['reduceFieldMeasurements', VISITS.visit]]) {
    const request = await (await fetch(`${ORIGIN}/examples/${operation}.well-family.request.json`)).text();
    const page = await open('about:blank', { size: SMALL_PHONE });
    await page.setContent(await (await fetch(ORIGIN + path, { method: 'POST', body: request, headers: { 'Content-Type': 'application/json', Accept: 'text/html', 'Accept-Language': 'de' } })).text());
    await look(page, `sheet-${operation}-phone-de`);
    await close(page);
  }
}

const AFTER = { complaint: ['diagnoseComplaint', '/v1/complaint-diagnosis'], start: ['planCommissioning', '/v1/commissioning-plan'], savings: ['verifySavings', '/v1/savings-verification'] };
const HOME = [['#f-water-hardness', '22'], ['#f-household-people', '5'], ['#f-softener-tankDiameter', '10'], ['#f-softener-tankHeight', '54']];
const fill = async (page, fields) => { for (const [selector, text] of fields) { await page.locator(selector).pressSequentially(text); } };

/** The three questions after a visit, by their examples. */
async function afterwards() {
  let numbers = 0;
  for (const [device, size, language, locale, scheme] of VIEWS) {
    const page = await open(ORIGIN, { size, locale, scheme, touch: device === 'phone' });
    for (const [question, [, path]] of Object.entries(AFTER)) {
      const name = `${question}-${device}-${language}`;
      const requests = [];
      page.on('request', request => { if (request.method() === 'POST' && request.url().startsWith(ORIGIN + path)) { requests.push(request.postDataJSON()); } });
      await ask(page, question);
      await example(page);
      await look(page, name);
      if (!await inSight(page, verdictOf(page))) { faults.push(`${name}: the verdict is out of sight`); }
      if (device !== 'phone') { continue; }
      await toAnswer(page);
      await look(page, `${name}-answer`);
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      if (height > TALLEST) { faults.push(`${name}: ${height} tall`); }
      if (question === 'complaint') { numbers += await figures(page, await api(path, requests.at(-1), language), name); }
    }
    await close(page);
  }
  return numbers;
}

/** The result of the next test is entered beside it and asked about at once; a reading is judged beside its field; a wait is told before there is anything after. */
async function tried() {
  const page = await open(`${ORIGIN}/#/ask/complaint`, { size: LAPTOP });
  await page.locator('.tile', { hasText: 'Always hard' }).click();
  await fill(page, [...HOME, ['#f-softener-control-everyDays', '3']]);
  await settled(page);
  const before = await page.locator('.next-test .lead').textContent();
  await page.locator('.next-test .entry button[type=submit]').click();
  assert.equal(await page.locator('.next-test .lead').textContent(), before, 'nothing was entered, and another test comes');
  const answered = page.waitForResponse(`${ORIGIN}/v1/complaint-diagnosis`);
  for (const choice of await page.locator('.next-test .entry select[data-pointer^="/looks/"]').all()) { await choice.selectOption('false'); }
  for (const [pointer, text] of [['/hardness/raw', '22'], ['/hardness/outlet', '0'], ['/hardness/tap', '9']]) {
    const field = page.locator(`.next-test .entry [data-pointer="${pointer}"]`);
    if (await field.count()) { await field.pressSequentially(text); }
  }
  await page.locator('.next-test .entry button[type=submit]').click();
  const sent = (await answered).request().postDataJSON();
  assert.ok(sent.looks || sent.hardness, 'the result of the test is not sent');
  await settled(page);
  assert.notEqual(await page.locator('.next-test .lead').textContent(), before, 'the same test comes again');
  await page.goto(`${ORIGIN}/#/ask/start`);
  await page.locator('#f-water-hardness').waitFor();
  await fill(page, HOME);
  await settled(page);
  await page.locator('.check .toggle').first().click();
  await page.locator('.outcome.good').waitFor();
  await page.locator('.stages summary').nth(3).click();
  await page.locator('.check input').first().pressSequentially('40');
  await page.locator('.outcome:is(.bad, .again)').first().waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.dataset.pointer), '/checks/refillFlow/value', 'a verdict moved the focus');
  await page.goto(`${ORIGIN}/#/ask/savings`);
  await page.fill('#f-before-from', '2026-01-05');
  await page.fill('#f-before-to', '2026-04-05');
  await page.locator('#f-before-control').selectOption('clock');
  await fill(page, [['#f-before-regenerations', '30'], ['#f-before-saltPerRegeneration', '15']]);
  await settled(page);
  await page.locator('.answer table').waitFor();
  await close(page);
}

export async function onSite() {
  const numbers = await examples();
  await typed();
  await sheets();
  const later = await afterwards();
  await tried();
  return `a report, a visit and what comes after it looked at on a phone and a laptop, ${numbers + later} numbers as the service answers them`;
}
