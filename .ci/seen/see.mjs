// Uses the workbench and the element as people do, in Chromium: by keyboard, with bad values, from another origin, with the
// service gone and back; axe-core and the layout at three widths, light and dark; numbers against the API's.
// Usage: node see.mjs <directory for screenshots> <command that starts the service...>
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';

const [shots, ...command] = process.argv.slice(2);
const PORT = 18090;
const SHOP_PORT = 18092;
const ORIGIN = `http://127.0.0.1:${PORT}`;
const SHOP = `http://127.0.0.1:${SHOP_PORT}`;
const WIDTHS = [360, 768, 1440];
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const faults = [];
mkdirSync(shots, { recursive: true });

async function start() {
  const child = spawn(command[0], command.slice(1), { stdio: 'ignore',
    env: { ...process.env, PORT, METRICS_PORT: PORT + 1, HOST: '127.0.0.1', CORS_ORIGINS: SHOP, STOP_SECONDS: 1 } });
  for (let i = 0; i < 120; i++) {
    if (await fetch(`${ORIGIN}/health/ready`).then(answer => answer.ok, () => false)) { return child; }
    await new Promise(done => setTimeout(done, 250));
  }
  throw new Error('the service does not start');
}
const stop = child => new Promise(done => { child.on('exit', done); child.kill('SIGTERM'); });
const api = async (path, body) => (await fetch(ORIGIN + path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) })).json();

let service = await start();
const shop = createServer((request, response) => {
  response.setHeader('Content-Type', 'text/html; charset=utf-8');
  response.end(`<!DOCTYPE html><html lang="de"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Erfundener Laden</title>
    <link rel="icon" href="data:,"><script src="${ORIGIN}/element/brinebook.js" defer></script></head><body><main><h1>Erfundener Laden</h1>
    <brinebook-advice lang="de" units="metric" candidates='[{"sku":"Erfunden 12","resinVolume":{"value":12,"unit":"L"}},{"sku":"Erfunden 25","resinVolume":{"value":25,"unit":"L"}},{"sku":"Erfunden 40","resinVolume":{"value":40,"unit":"L"}}]'></brinebook-advice></main></body></html>`);
}).listen(SHOP_PORT, '127.0.0.1');
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });

/** Opens a page in a window of its own; what the console says counts, unless the page waits for refusals. */
async function open(url, { scheme = 'light', width = 1440, refusals = false } = {}) {
  const context = await browser.newContext({ colorScheme: scheme, viewport: { width, height: 900 }, locale: 'en-US', permissions: ['clipboard-read', 'clipboard-write'] });
  const page = await context.newPage();
  page.on('console', message => {
    if (message.type() === 'error' && !(/Failed to load resource/.test(message.text()))) { faults.push(`${url}: ${message.text()}`); }
  });
  page.on('response', async response => {
    if (response.status() >= 400 && !refusals) { faults.push(`${response.url()}: ${await response.text()} for ${response.request().postData()}`); }
  });
  page.on('pageerror', error => faults.push(`${url}: ${error.message}`));
  page.on('request', request => { if (![ORIGIN, SHOP, 'data:', 'blob:'].some(each => request.url().startsWith(each))) { faults.push(`asks ${request.url()}`); } });
  await page.goto(url);
  return page;
}
const settled = page => page.waitForFunction(() => document.querySelector('#summary')?.textContent && !document.body.hasAttribute('aria-busy') && document.querySelectorAll('canvas').length >= 3, null, { timeout: 20000 });
async function changing(page, act) {
  const before = await page.evaluate(() => location.hash);
  await act();
  await page.waitForFunction(hash => location.hash !== hash, before);
  await page.waitForTimeout(350);
  await settled(page);
}
const at = (answer, pointer) => pointer.split('/').slice(1).reduce((part, name) => part[name], answer);

async function keyboard() {
  const page = await open(ORIGIN);
  await settled(page);
  const type = async (id, text) => {
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(wanted => document.activeElement.id === wanted, id)) {
        const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
        assert.equal(outline, 'solid', `${id} shows no focus`);
        await page.keyboard.press('Control+A');
        await page.keyboard.type(text);
        return;
      }
    }
    assert.fail(`${id} is not reached by Tab`);
  };
  await changing(page, async () => {
    for (const [id, text] of [['f-water-hardness', '18'], ['f-water-iron', '0.3'], ['f-household-people', '3'], ['f-softener-resinVolume', '1.25'], ['f-conversion-cost', '300']]) { await type(id, text); }
  });
  const answer = await api('/v1/assessment', await caseOf(page));
  assert.equal(await page.textContent('#summary'), answer.summary);
  assert.equal(await page.evaluate(() => document.activeElement.id), 'f-conversion-cost', 'an answer moved the focus');
  await page.check('[name=units][value=metric]');
  await page.waitForTimeout(400);
  await settled(page);
  assert.equal(await page.inputValue('#f-water-hardness'), '308.125', '18 gpg in mg/L');
  assert.equal(await page.inputValue('#f-softener-tankDiameter'), '0.254', '10 in is 0.254 m');
  await page.check('[name=units][value=us]');
  await page.waitForTimeout(400);
  await settled(page);
  assert.equal(await page.inputValue('#f-water-hardness'), '18');
  await page.click('#link');
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const other = await open(link);
  await settled(other);
  assert.equal(await other.textContent('#summary'), await page.textContent('#summary'), 'the link restores the case');
  await page.click('#curl');
  assert.match(await page.evaluate(() => navigator.clipboard.readText()), /^curl -s 'http.*"value":18/);
  const [saved] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const file = await saved.path();
  assert.deepEqual(JSON.parse(readFileSync(file, 'utf8')), await caseOf(page));
  await other.setInputFiles('#file', { name: 'case.json', mimeType: 'application/json', buffer: readFileSync(new URL('case.json', import.meta.url)) });
  await other.waitForTimeout(400);
  await settled(other);
  assert.equal(await other.inputValue('#f-household-people'), '2', 'the opened case stands in the fields');
  await other.context().close();
  await page.context().close();
}

const caseOf = page => page.evaluate(() => JSON.parse(atob(location.hash.slice(1).replaceAll('-', '+').replaceAll('_', '/'))));

async function badValueAndAway() {
  const page = await open(ORIGIN, { refusals: true });
  await settled(page);
  const before = await page.textContent('#summary');
  await page.fill('#f-water-hardness', 'hard');
  await page.waitForSelector('#f-water-hardness[aria-invalid=true]');
  assert.ok((await page.textContent('#f-water-hardness-fault')).length > 10, 'the fault is told at the field');
  assert.equal(await page.textContent('#summary'), before, 'the last answer stays');
  await page.fill('#f-water-hardness', '20');
  await page.waitForSelector('#f-water-hardness:not([aria-invalid])');
  await settled(page);
  await stop(service);
  await page.fill('#f-water-hardness', '21');
  await page.waitForSelector('#again');
  service = await start();
  await page.click('#again');
  await page.waitForSelector('#again', { state: 'detached' });
  await settled(page);
  assert.equal(await page.textContent('#summary'), (await api('/v1/assessment', await caseOf(page))).summary);
  await page.context().close();
}

async function embedded() {
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
  const answer = await api('/v1/softener-sizing', { water: { hardness: { value: 17.2, unit: 'dH' }, iron: { value: 0.1, unit: 'mg/L' } }, household: { people: 2 },
    candidates: [{ sku: 'Erfunden 12', resinVolume: { value: 12, unit: 'L' } }, { sku: 'Erfunden 25', resinVolume: { value: 25, unit: 'L' } },
      { sku: 'Erfunden 40', resinVolume: { value: 40, unit: 'L' } }], units: 'metric' });
  assert.equal(await page.locator('.choice').textContent(), answer.choice ?? answer.candidates[0].sku);
  const best = answer.candidates.find(each => each.sku === answer.choice) ?? answer.candidates[0];
  assert.deepEqual(await page.locator('data').evaluateAll(all => all.map(each => Number(each.value))),
    [best.daysBetweenRegenerations, best.saltPerYear.value, best.waterPerYear.value]);
  await look(page, 'element');
  await stop(service);
  await page.keyboard.press('Enter');
  await page.getByText('nicht erreichbar').waitFor();
  service = await start();
  await page.getByRole('button', { name: 'Noch einmal versuchen' }).click();
  await page.locator('.choice').waitFor();
  await page.context().close();
}

/** axe-core finds nothing, nothing is wider than the screen, no two fields lie on each other. */
async function look(page, name) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  violations.forEach(each => faults.push(`${name}: ${each.id}: ${each.nodes.slice(0, 3).map(node => node.target + ' ' + node.failureSummary).join(' | ')}`));
  const problems = await page.evaluate(() => {
    const found = [];
    const wide = document.documentElement.scrollWidth;
    if (wide > innerWidth) { found.push(`${wide} wide on ${innerWidth}`); }
    const boxes = [...document.querySelectorAll('input:not([hidden]), select, button, h1, h2, dd, figcaption, .plot')].map(element => [element, element.getBoundingClientRect()]).filter(([, box]) => box.width);
    boxes.forEach(([a, one], i) => boxes.slice(i + 1).forEach(([b, two]) => {
      if (!a.contains(b) && !b.contains(a) && one.left < two.right - 1 && two.left < one.right - 1 && one.top < two.bottom - 1 && two.top < one.bottom - 1) { found.push(`${a.id || a.className || a.tagName} on ${b.id || b.className || b.tagName}`); }
    }));
    return found;
  });
  problems.forEach(each => faults.push(`${name}: ${each}`));
  await page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
}

async function looks() {
  for (const scheme of ['light', 'dark']) {
    for (const width of WIDTHS) {
      const page = await open(ORIGIN, { scheme, width });
      await settled(page);
      await look(page, `workbench-${scheme}-${width}`);
      await page.context().close();
      const goods = await open(`${ORIGIN}/example-shop`, { scheme, width });
      await goods.getByLabel('Water hardness').fill('22');
      await goods.getByLabel('People in your home').fill('4');
      await goods.getByRole('button').click();
      await goods.locator('.choice').waitFor();
      await look(goods, `shop-${scheme}-${width}`);
      await goods.context().close();
    }
  }
}

/** The three that the README shows. */
async function kept() {
  const bench = await open(ORIGIN, { width: 1000 });
  await settled(bench);
  await bench.screenshot({ path: join(shots, 'kept-workbench.png'), clip: { x: 0, y: 0, width: 1000, height: 760 } });
  await bench.context().close();
  const charts = await open(ORIGIN, { width: 1000, scheme: 'dark' });
  await settled(charts);
  await charts.locator('#h-saves').evaluate(element => element.scrollIntoView());
  await charts.screenshot({ path: join(shots, 'kept-charts.png'), clip: { x: 0, y: 0, width: 1000, height: 760 } });
  await charts.context().close();
  const element = await open(SHOP, { width: 480 });
  await element.getByLabel('Wasserhärte', { exact: true }).fill('17,2');
  await element.getByLabel('Personen im Haushalt').fill('2');
  await element.getByRole('button').click();
  await element.locator('.choice').waitFor();
  await element.screenshot({ path: join(shots, 'kept-element.png'), clip: { x: 0, y: 0, width: 480, height: 760 } });
  await element.context().close();
}

/** Numbers drawn by a generator with a fixed seed (Park and Miller, minimal standard). */
async function numbers() {
  let state = 20261125;
  const between = (least, most) => least + (state = (state * 48271) % 2147483647) / 2147483647 * (most - least);
  let compared = 0;
  for (let i = 0; i < 10; i++) {
    const us = i % 2 === 0;
    const given = { water: { hardness: { value: Number(between(5, 30).toFixed(1)), unit: us ? 'gpg' : 'dH' }, iron: { value: Number(between(0, 2).toFixed(2)), unit: 'mg/L' } },
      household: { people: Math.round(between(1, 7)) }, softener: { resinVolume: { value: Number(between(us ? 0.7 : 15, us ? 3 : 80).toFixed(2)), unit: us ? 'ft3' : 'L' },
        saltDose: { value: Math.round(between(us ? 6 : 100, us ? 15 : 240)), unit: us ? 'lb/ft3' : 'g/L' }, control: { kind: 'clock', everyDays: Math.round(between(2, 9)) } },
      conversion: { cost: { value: Math.round(between(200, 700)), unit: 'USD' } }, units: us ? 'us' : 'metric' };
    const answer = await api('/v1/assessment', given);
    const page = await open(`${ORIGIN}/#${Buffer.from(JSON.stringify(given)).toString('base64url')}`);
    await settled(page);
    const read = await page.$$eval('data[data-from]', all => all.map(each => [each.dataset.from, Number(each.value), each.textContent]));
    assert.ok(read.length >= 20, `only ${read.length} numbers`);
    for (const [pointer, value, text] of read) {
      const told = at(answer, pointer);
      const exact = typeof told === 'object' ? told.value : told;
      assert.equal(value, exact, pointer);
      assert.ok(Math.abs(Number(text.replaceAll(',', '')) - exact) <= Math.max(Math.abs(exact) * 5e-4, 0.005), `${pointer}: ${text} for ${exact}`);
      compared++;
    }
    await page.context().close();
  }
  return compared;
}

async function sizes() {
  const page = await open('about:blank');
  const parts = [];
  page.on('response', response => { if (/\/$|\/workbench\//.test(new URL(response.url()).pathname)) { parts.push(response.body()); } });
  await page.goto(ORIGIN);
  await settled(page);
  const ready = await page.evaluate(() => performance.getEntriesByName('interactive')[0].startTime);
  const answered = await page.evaluate(() => performance.getEntriesByName('answered')[0].startTime);
  const bytes = (await Promise.all(parts)).reduce((sum, part) => sum + part.length, 0);
  const element = gzipSync(Buffer.from(await (await fetch(`${ORIGIN}/element/brinebook.js`)).arrayBuffer())).length;
  assert.ok(bytes > 50000 && bytes <= 150000, `the workbench has ${bytes} bytes`);
  assert.ok(element <= 15000, `the element has ${element} bytes`);
  assert.ok(ready < 1000, `interactive after ${ready} ms`);
  assert.deepEqual(await page.context().cookies(), []);
  await page.context().close();
  return `workbench ${bytes} bytes, element ${element} bytes gzipped, interactive after ${Math.round(ready)} ms, answer and charts after ${Math.round(answered)} ms`;
}

try {
  await keyboard();
  await badValueAndAway();
  await embedded();
  const compared = await numbers();
  await looks();
  await kept();
  const measured = await sizes();
  assert.deepEqual(faults, []);
  console.log(`${compared} numbers on the page as the service answers them; ${measured}`);
} finally {
  faults.forEach(each => console.error(each));
  await browser.close();
  shop.close();
  await stop(service);
}
