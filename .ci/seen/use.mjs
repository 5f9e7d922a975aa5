// Uses the pages as people do: by keyboard alone, with bad values, with the service gone and back, from another origin.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { GOODS, ORIGIN, SHOP, api, caseOf, close, open, settled, start, stop } from './stage.mjs';

/** Goes on by Tab until what has the focus is of a selector. */
async function reach(page, selector) {
  for (let i = 0; i < 150; i++) {
    if (await page.evaluate(wanted => document.activeElement.matches(wanted), selector)) { return; }
    await page.keyboard.press('Tab');
  }
  assert.fail(`${selector} is not reached by Tab`);
}

/** Does what changes the case, and waits for its answer. */
async function changing(page, act) {
  const before = await page.evaluate(() => location.hash);
  await act();
  await page.waitForFunction(hash => location.hash !== hash, before);
  await page.waitForTimeout(350);
  await settled(page);
}

/** A case from the first field to the printed sheet, without a mouse. */
export async function keyboard() {
  const page = await open(ORIGIN);
  await settled(page);
  const press = async (selector, key) => { await reach(page, selector); await page.keyboard.press(key); };
  const type = async (selector, text) => { await press(selector, 'Control+A'); await page.keyboard.type(text); };
  const value = id => page.inputValue(id);
  await changing(page, async () => {
    await type('#f-water-hardness', '18');
    await type('#f-water-iron', '0.3');
    await press('#f-water-supply', 'p');
    await type('#f-household-people', '3');
    await type('#f-softener-resinVolume', '1.25');
    await press('#f-softener-control-kind', 'ArrowDown');
    await type('#f-retrofit-cost', '300');
  });
  const answer = await api('/v1/assessment', await caseOf(page));
  assert.equal((await caseOf(page)).softener.control.kind, 'meteredDelayed', 'a choice by arrow');
  assert.equal(await page.textContent('#summary'), answer.summary);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-retrofit-cost', 'an answer moved the focus');
  await changing(page, () => press('[name=units]', 'ArrowRight'));
  assert.equal(await value('#f-water-hardness'), '308.125', '18 gpg in mg/L');
  assert.equal(await value('#f-softener-tankDiameter'), '0.254', '10 in is 0.254 m');
  await changing(page, () => press('[name=units]', 'ArrowLeft'));
  assert.equal(await value('#f-water-hardness'), '18');
  const given = await caseOf(page);

  const copied = async () => { await page.waitForFunction(() => document.querySelector('#done').textContent); return page.evaluate(() => navigator.clipboard.readText()); };
  await press('#link', 'Enter');
  const other = await open(await copied());
  await settled(other);
  assert.equal(await other.textContent('#summary'), await page.textContent('#summary'), 'the link restores the case');
  await other.setInputFiles('#file', { name: 'case.json', mimeType: 'application/json', buffer: readFileSync(new URL('case.json', import.meta.url)) });
  await other.waitForTimeout(400);
  await settled(other);
  assert.equal(await other.inputValue('#f-household-people'), '2', 'the opened case is in the fields');
  await close(other);

  await press('#curl', 'Enter');
  await page.waitForTimeout(100);
  assert.match(await copied(), /^curl -s 'http.*"value":18/);
  const saved = page.waitForEvent('download');
  await press('#save', 'Enter');
  assert.deepEqual(JSON.parse(readFileSync(await (await saved).path(), 'utf8')), given);
  const chosen = page.waitForEvent('filechooser');
  await press('#open', 'Enter');
  await chosen;
  const window = page.waitForEvent('popup');
  await press('#sheet', 'Enter');
  const sheet = await window;
  assert.equal(await sheet.textContent('[data-at="/summary"]'), await page.textContent('#summary'), 'the sheet is that of the case');
  await sheet.close();
  const typeset = page.waitForEvent('download');
  await press('#pdf', 'Enter');
  assert.equal(readFileSync(await (await typeset).path(), 'latin1').slice(0, 5), '%PDF-');
  await close(page);
}

export async function badValueAndAway() {
  const page = await open(ORIGIN, { refusals: true });
  await settled(page);
  const before = await page.textContent('#summary');
  await page.fill('#f-water-hardness', 'hard');
  await page.waitForSelector('#f-water-hardness[aria-invalid=true]');
  assert.ok((await page.textContent('#f-water-hardness-fault')).length > 10, 'the fault is shown at the field');
  assert.equal(await page.textContent('#summary'), before, 'the last answer stays');
  await page.fill('#f-water-hardness', '20');
  await page.waitForSelector('#f-water-hardness:not([aria-invalid])');
  await settled(page);
  await stop();
  await page.fill('#f-water-hardness', '21');
  await page.waitForSelector('#again');
  await start();
  await page.click('#again');
  await page.waitForSelector('#again', { state: 'detached' });
  await settled(page);
  assert.equal(await page.textContent('#summary'), (await api('/v1/assessment', await caseOf(page))).summary);
  await close(page);
}

/** The element on a page of another origin, by keyboard. */
export async function embedded() {
  const page = await open(SHOP, { refusals: true });
  await page.getByLabel('Wasserhärte', { exact: true }).focus();
  for (const [key, text] of [[null, '17,2'], ['Tab', null], ['Tab', '0,1'], ['Tab', '-1'], ['Enter', null]]) {
    if (key) { await page.keyboard.press(key); }
    if (text) { await page.keyboard.type(text); }
  }
  await page.locator('#people[aria-invalid=true]').waitFor();
  assert.ok((await page.locator('#people-fault').textContent()).length > 10);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('2');
  await page.keyboard.press('Enter');
  await page.locator('.choice').waitFor();
  const answer = await api('/v1/softener-sizing', { water: { hardness: { value: 17.2, unit: 'dH' }, iron: { value: 0.1, unit: 'mg/L' } },
    household: { people: 2 }, candidates: GOODS, units: 'metric' });
  assert.equal(await page.locator('.choice').textContent(), answer.choice ?? answer.candidates[0].sku);
  await stop();
  await page.keyboard.press('Enter');
  await page.getByText('nicht erreichbar').waitFor();
  await start();
  await page.getByRole('button', { name: 'Noch einmal versuchen' }).click();
  await page.locator('.choice').waitFor();
  await close(page);
}
