// What goes wrong in a basement: no signal, a slow or failing service, two tabs, a full device, old cases, broken links.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { LAPTOP, ORIGIN, PHONE, QUESTIONS, answer, asked, begin, close, example, open, room, settled, start, stop, toAnswer } from './stage.mjs';

const READINGS = { water: { hardness: { value: 22, unit: 'gpg' } }, household: { people: 5 },
  softener: { resinVolume: { value: 1.5, unit: 'ft3' }, control: { kind: 'clock', everyDays: 3 } } };
const verdict = page => page.locator('.verdict h2').first().textContent();
const caseOf = page => page.evaluate(() => location.hash.split('/')[2]);

/** An answer for other readings is grey, says so, has no action and is not printed; it never comes after a newer one. */
async function stale() {
  const page = await asked('fits');
  await answer(page, 'fits');
  let release;
  const first = new Promise(done => { release = done; });
  let seen = 0;
  await page.route('**/v1/softener-sizing', async route => {
    if (++seen === 1) { await first; }
    await route.continue().catch(() => {});
  });
  await page.fill('#f-water-hardness', '10');
  await page.locator('.result.stale .before').waitFor();
  await page.waitForTimeout(4500);
  assert.ok(await page.locator('.stale .late').evaluate(each => getComputedStyle(each).visibility === 'visible'), 'after four seconds it says that it still calculates');
  assert.equal(await page.locator('.result.stale .primary, .result.stale .sheets').count(), 0, 'an old answer has an action');
  await page.emulateMedia({ media: 'print' });
  assert.equal(await page.locator('.stale .content').isVisible(), false, 'an old answer is printed');
  assert.equal(await page.locator('.stale .unprinted').isVisible(), true);
  await page.emulateMedia({ media: 'screen' });
  await page.fill('#f-water-hardness', '30');
  await settled(page);
  const newest = await page.locator('.result').innerText();
  release();
  await page.waitForTimeout(1500);
  assert.equal(await page.locator('.result').innerText(), newest, 'a late answer took the place of a newer one');
  await close(page);
}

/** Errors: nothing red while typing; on Continue a summary with the focus, and words at the field; the old answer folded. */
async function badValue() {
  const page = await asked('fits', { refusals: true });
  await answer(page, 'fits');
  const before = await verdict(page);
  await page.fill('#f-water-hardness', '99999');
  await page.waitForTimeout(600);
  assert.equal(await page.locator('[aria-invalid=true]').count(), 0, 'it is red while it is typed');
  await page.locator('.go button').click();
  await page.locator('#errors li a').first().waitFor();
  assert.equal(await page.evaluate(() => document.activeElement.id), 'errors');
  assert.ok((await page.locator('#f-water-hardness[aria-invalid=true]').count()) === 1 && (await page.textContent('#f-water-hardness-fault')).length > 10);
  assert.equal(await page.inputValue('#f-water-hardness'), '99999', 'what was typed is kept');
  assert.equal(await page.locator('.result:not(.stale) .verdict').count(), 0, 'the old answer stands plain');
  assert.ok((await page.locator('.result').innerText()).includes(before), 'the old answer is gone');
  await page.locator('#errors li a').first().click();
  await page.waitForFunction(() => document.activeElement.id === 'f-water-hardness');
  await page.fill('#f-water-hardness', '20');
  await settled(page);
  await close(page);
}

/** The service goes and comes back: readings stay, the answer comes by itself. */
async function away() {
  const page = await asked('fits', { refusals: true });
  await answer(page, 'fits');
  await stop();
  await page.fill('#f-household-people', '3');
  await page.locator('.result.stale').waitFor();
  await page.waitForTimeout(1500);
  const hash = await page.evaluate(() => location.hash);
  await start();
  await settled(page);
  assert.equal(await page.inputValue('#f-household-people'), '3');
  assert.equal(await page.evaluate(() => location.hash), hash);
  await close(page);
}

/** Without a signal the pages open, cases are read and edited, and calculations wait and say so. */
async function offline() {
  const context = await room({ refusals: true, size: PHONE });
  const page = await context.newPage();
  await page.goto(ORIGIN);
  await begin(page, 'worth');
  await answer(page, 'worth');
  const kept = await page.evaluate(() => location.hash);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(async () => (await caches.keys()).length === 2);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller);
  await context.setOffline(true);
  for (const question of Object.keys(QUESTIONS)) {
    await page.goto('about:blank');
    await page.goto(`${ORIGIN}/#/ask/${question}`);
    await page.locator('#f-water-hardness').waitFor();
  }
  await page.goto('about:blank');
  await page.goto(ORIGIN + '/' + kept);
  await settled(page); // the answer of the last time
  await page.fill('#f-water-hardness', '18');
  await page.locator('.bar-state').waitFor();
  await page.reload();
  assert.equal(await page.inputValue('#f-water-hardness'), '18', 'a reading is lost by a reload without a signal');
  await page.locator('.result.stale').waitFor({ state: 'attached' });
  await context.setOffline(false);
  await settled(page);
  await close(page);
}

/** Two tabs of one case: the newer change wins, and the other can be brought back. */
async function twoTabs() {
  const page = await asked('fits');
  await answer(page, 'fits');
  await page.waitForTimeout(300);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await settled(other);
  await other.fill('#f-household-people', '2');
  await page.waitForFunction(() => document.querySelector('#f-household-people').value === '2');
  assert.ok((await page.locator('.notice').textContent()).trim().length > 10, 'the other tab changed it unseen');
  await page.locator('.notice button').click();
  await page.waitForFunction(() => document.querySelector('#f-household-people').value === '5');
  await close(page);
}

/** A device that keeps nothing more says so, and still calculates. */
async function full() {
  const context = await room({});
  await context.addInitScript(() => {
    IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };
  });
  const page = await context.newPage();
  await page.goto(ORIGIN);
  await begin(page, 'fits');
  await answer(page, 'fits');
  await page.locator('[role=alert]').waitFor();
  assert.ok((await page.locator('[role=alert]').textContent()).trim().length > 10);
  await close(page);
}

/** Cases of the first pages, of no shape and of a newer one; links that are broken. */
async function older() {
  const first = await open(`${ORIGIN}/#${Buffer.from(JSON.stringify({ ...READINGS, units: 'us' })).toString('base64url')}`);
  await settled(first);
  assert.equal(await first.inputValue('#f-water-hardness'), '22', 'a link of the first pages');
  await close(first);
  const page = await asked('fits');
  await answer(page, 'fits');
  await page.waitForTimeout(300);
  const put = given => page.evaluate(each => new Promise((done, failed) => {
    const asking = indexedDB.open('brinebook');
    asking.onerror = failed;
    asking.onsuccess = () => {
      const work = asking.result.transaction('cases', 'readwrite');
      work.objectStore('cases').put(each, each.id);
      work.oncomplete = () => { asking.result.close(); done(); };
    };
  }), given);
  await put({ id: 'old', name: 'Old house', question: 'worth', readings: READINGS, changed: '2026-01-01T00:00:00.000Z' });
  await put({ id: 'new', shape: 99, question: 'worth', readings: READINGS, changed: '2026-01-01T00:00:00.000Z' });
  await page.goto(`${ORIGIN}/#/case/old`);
  await page.locator('#f-household-people').waitFor();
  await settled(page);
  assert.equal(await page.inputValue('#f-household-people'), '5');
  for (const broken of ['#/case/new', '#/case/none', '#/shared/%%%', '#/shared/eyJhIjox', '#brokenlink']) {
    await page.goto('about:blank');
    await page.goto(`${ORIGIN}/${broken}`);
    await page.locator('main h1').waitFor();
    assert.equal(await page.locator('form, .result').count(), 0, `${broken} opens as something`);
    assert.ok((await page.locator('main p').first().textContent()).length > 10, broken);
  }
  await close(page);
}

/** A link opens as a copy; nothing but readings leaves the device, and nothing of them in an address. */
async function links() {
  const page = await asked('worth');
  const sent = [];
  page.on('request', request => sent.push([request.url(), request.postData() ?? '']));
  await page.locator('#about > summary').click();
  await page.fill('#name', 'Kitchen of the Example family');
  await page.fill('#notes', 'Key under the mat');
  await answer(page, 'worth');
  await page.locator('.top button').last().click();
  await page.locator('.notice').filter({ hasText: /\S/ }).waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(link.startsWith(`${ORIGIN}/#/shared/`) && !Buffer.from(link.split('/').at(-1), 'base64url').toString().includes('Example'), link);
  const copy = await page.context().newPage();
  copy.on('request', request => sent.push([request.url(), request.postData() ?? '']));
  await copy.goto(link);
  await settled(copy);
  assert.equal(await verdict(copy), await verdict(page), 'the link has the same answer');
  assert.equal(await copy.locator('#f-water-hardness').isDisabled(), true, 'a copy is read-only until it is kept');
  await copy.locator('.note button').first().click();
  await copy.waitForFunction(() => location.hash.startsWith('#/case/'));
  assert.equal(await copy.locator('#f-water-hardness').isDisabled(), false);
  for (const [url, body] of sent) {
    assert.ok(!new URL(url).search.includes('22') && !/Kitchen|mat/.test(decodeURIComponent(url)), `an address holds a case: ${url}`);
    assert.ok(!/Kitchen|under the mat/.test(body), 'a name or note was sent');
  }
  await close(page);
}

/** Undo by keyboard and over a reload; a file goes out, and comes back equal byte for byte. */
async function book() {
  const page = await asked('fits');
  await answer(page, 'fits');
  await page.waitForTimeout(2200); // another step
  await page.fill('#f-household-people', '8');
  await settled(page);
  await page.waitForTimeout(300);
  await page.reload();
  await page.locator('#f-household-people').waitFor();
  await page.keyboard.press('Control+z');
  await page.waitForFunction(() => document.querySelector('#f-household-people').value === '5');
  await page.keyboard.press('Control+y');
  await page.waitForFunction(() => document.querySelector('#f-household-people').value === '8');
  await settled(page);
  await page.goto(`${ORIGIN}/#/book`);
  const exported = async () => {
    const saved = page.waitForEvent('download');
    await page.locator('main > .row > button').first().click();
    return readFileSync(await (await saved).path());
  };
  await page.locator('.rows.book li').waitFor();
  const before = await exported();
  const fresh = await open(`${ORIGIN}/#/book`);
  await fresh.setInputFiles('#file', { name: 'brinebook.json', mimeType: 'application/json', buffer: before });
  await fresh.locator('button.primary').click();
  await fresh.locator('.rows.book li').waitFor();
  const saved = fresh.waitForEvent('download');
  await fresh.locator('main > .row > button').first().click();
  assert.deepEqual(readFileSync(await (await saved).path()), before, 'an import is another file');
  await fresh.setInputFiles('#file', { name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('[1]') });
  await fresh.locator('.notice').filter({ hasText: /\S/ }).waitFor();
  await close(fresh);
  await close(page);
}

/** Two cases side by side: what differs comes first. */
async function compared() {
  const context = await room({});
  const ids = [];
  for (const people of ['2', '5']) {
    const page = await context.newPage();
    await page.goto(ORIGIN);
    await begin(page, 'fits');
    await page.fill('#f-water-hardness', '22');
    await page.fill('#f-household-people', people);
    await settled(page);
    await page.waitForTimeout(400);
    ids.push(await caseOf(page));
    await page.close();
  }
  const page = await context.newPage();
  await page.goto(`${ORIGIN}/#/compare/${ids.join('/')}`);
  const table = page.locator('.compared').first();
  await table.waitFor();
  assert.deepEqual(await table.locator('tbody tr').first().locator('td').allTextContents(), ['2', '5']);
  assert.equal(await page.locator('.two .headline').count(), 2);
  await close(page);
}

/** A value that was assumed is one tap from its field, on a phone too. */
async function assumed() {
  for (const size of [PHONE, LAPTOP]) {
    const page = await asked('worth', { size });
    await answer(page, 'worth');
    await toAnswer(page);
    await page.locator('.demand > summary').last().click();
    const change = page.locator('.guesses button').first();
    await change.waitFor();
    await change.click();
    await page.waitForFunction(() => document.activeElement.matches('[data-pointer]') && document.activeElement.checkVisibility());
    await close(page);
  }
}

/** A day that was left empty is not known: the week waits for it, and a date without a number is left out. Then there is one next step. */
async function emptyDays() {
  const page = await asked('worth');
  const sent = [];
  page.on('request', request => { if (request.method() === 'POST') { sent.push(request.postDataJSON()); } });
  await answer(page, 'worth');
  await page.locator('#more-household > summary').click();
  await page.locator('#f-household-use').selectOption('weeklyUse');
  const days = page.locator('.days-use input');
  await days.nth(5).fill('300');
  await days.nth(6).fill('250');
  await page.locator('.days-use + .hint').waitFor();
  await page.waitForTimeout(600);
  assert.equal(sent.filter(each => each.household.weeklyUse).length, 0, 'a week with empty days was sent');
  for (let day = 0; day < 5; day++) { await days.nth(day).fill('0'); }
  await settled(page);
  assert.deepEqual(sent.at(-1).household.weeklyUse.map(({ value }) => value), [0, 0, 0, 0, 0, 300, 250]);
  await page.goto(`${ORIGIN}/#/`);
  await begin(page, 'readings');
  await page.fill('#f-days', '2026-03-01 250\n2026-03-02\n2026-03-03 0\n2026-03-04 310\n2026-03-05 290');
  for (const [selector, text] of QUESTIONS.readings.fields) { await page.locator(selector).pressSequentially(text); }
  await settled(page);
  assert.deepEqual([sent.at(-1).days.values, sent.at(-1).days.missing], [[250, 0, 310, 290], ['2026-03-02']]);
  await page.locator('.verdict .primary').click();
  await page.locator('.demand[open] .lead').waitFor();
  assert.deepEqual(sent.at(-1).household.dailySeries.missing, ['2026-03-02'], 'the next step is asked of other days');
  await close(page);
}

/** A softener that is set up has nothing before it: settings in the order of the controller, then the day, and no steps compared. */
async function setUp() {
  const page = await asked('setup');
  await answer(page, 'setup');
  const names = await page.locator('.settings dt').allInnerTexts();
  assert.deepEqual([names[0], names[1], names.at(-1)], ['Hardness', 'Capacity', 'Hour of regeneration']);
  const order = await page.locator('.result h2').evaluateAll(all => all.map(each => each.id).filter(Boolean));
  assert.ok(order.indexOf('result-settings') >= 0 && order.indexOf('result-settings') < order.indexOf('result-day'), order.join(' '));
  assert.equal(await page.locator('#result-steps, .ladder, .change').count(), 0, 'a new softener is compared with none');
  await close(page);
}

/** The example month: each day as the service has it, which ends at what the service says is left; the reserve is the one to set. */
async function exampleMonth() {
  const page = await asked('worth');
  const schedules = [];
  let assessed;
  page.on('response', async response => {
    if (response.url().includes('/v1/regeneration-schedule')) { schedules.push(await response.json()); }
    if (response.url().endsWith('/v1/assessment')) { assessed = await response.json(); }
  });
  await example(page);
  await page.locator('.demand > summary').first().click();
  await page.locator('.demand .drawing .on-line').waitFor();
  assert.equal(schedules.length, 2);
  for (const { firstDate, capacity, policies: [policy, daily] } of schedules) {
    const took = daily.events.map(each => capacity.value - each.capacityThrownAway.value);
    const [steps, other] = await page.evaluate(async ([date, full, each, one]) => {
      const { dailySteps, regenerationsOf } = await import('/workbench/month.js');
      const regenerations = regenerationsOf(one, date);
      const moved = regenerations.map(({ day, left }) => ({ day: day + 1, left }));
      return [dailySteps(full, each, regenerations), dailySteps(full, each, moved)];
    }, [firstDate, capacity.value, took, policy]);
    assert.ok(steps.length > took.length && steps.every(({ left }) => left >= 0 && left <= capacity.value));
    assert.equal(other, null, 'days that do not agree with the service are drawn');
  }
  const { reserve, unit = reserve.unit } = assessed.settings;
  assert.equal((await page.locator('.demand .on-line').textContent()).replaceAll(/\s/g, ' '), `Reserve: ${reserve.value} ${unit}`);
  await close(page);
}

/** A month after the first case one line asks to export; Later is for a month, and after an export nothing asks until something changed. */
async function reminder() {
  const page = await asked('fits');
  await answer(page, 'fits');
  await page.waitForTimeout(300);
  const line = page.locator('.remind');
  const ago = (name, days) => page.evaluate(([key, back]) => localStorage.setItem(`brinebook.${key}`, new Date(Date.now() - back * 86400000).toISOString()), [name, days]);
  const front = async () => { await page.goto('about:blank'); await page.goto(ORIGIN); await page.locator('.recent').waitFor(); };
  await front();
  assert.equal(await line.count(), 0, 'it reminds at once');
  await ago('reminded', 31);
  await front();
  await line.waitFor();
  await line.locator('button').last().click();
  await line.waitFor({ state: 'detached' });
  await front();
  assert.equal(await line.count(), 0, 'later is no month');
  await ago('reminded', 31);
  await front();
  const saved = page.waitForEvent('download');
  await line.locator('button').first().click();
  assert.equal(JSON.parse(readFileSync(await (await saved).path())).cases.length, 1);
  await line.waitFor({ state: 'detached' });
  await ago('reminded', 62);
  await ago('exported', 0);
  await front();
  assert.equal(await line.count(), 0, 'it reminds though nothing was changed since the export');
  await close(page);
}

const TRIALS = { stale, badValue, away, offline, twoTabs, full, older, links, book, compared, assumed, emptyDays, setUp, exampleMonth, reminder };

export async function trouble(only) {
  for (const [name, trial] of Object.entries(TRIALS).filter(([each]) => !only || each === only)) {
    await trial().catch(fault => { throw new Error(`${name}: ${fault.message}`, { cause: fault }); });
  }
  return only ?? `${Object.keys(TRIALS).join(', ')}`;
}
