// Looks at the example shop and every page that /docs leads to, in Chromium: proper HTML, nothing in the console, no request to another host,
// nothing wider than the screen of a phone, contrast and names by WCAG 2.1 AA (axe-core) in both colour schemes; the search works by keys
// alone and without scripts, a button copies a call, and the console sends a request and shows the real answer.
// Usage: node look.mjs <origin> [<directory for screenshots>]
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { browser } from '../browser.mjs';

const [origin, shots] = process.argv.slice(2);
const PHONE = { width: 360, height: 740 };
const DESK = { width: 1280, height: 900 };
const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
// Calendar files shown on pages end folded lines in a blank; versions have a dot.
const html = new HtmlValidate({
  root: true, extends: ['html-validate:recommended'],
  rules: { 'no-trailing-whitespace': 'off', 'valid-id': ['error', { relaxed: true }] },
});
/** Pages of records looked at: all are made by one template. */
const MOST_PARTS = 12;
/** Pages opened at once. */
const AT_ONCE = 4;
const faults = [];
const asked = new Set();

async function open(path, scheme, viewport) {
  const page = await browser.newPage({ colorScheme: scheme, viewport });
  page.on('console', message => faults.push(`${path}: ${message.type()}: ${message.text()}`));
  page.on('pageerror', error => faults.push(`${path}: ${error.message}`));
  // What is still under way when the next page is opened is broken off, which is no fault of a page.
  page.on('requestfailed', request => request.failure().errorText === 'net::ERR_ABORTED'
    || faults.push(`${path}: ${request.url()} ${request.failure().errorText}`));
  page.on('request', request => {
    asked.add(request.url());
    if (!request.url().startsWith(origin + '/') && !request.url().startsWith('data:')) {
      faults.push(`${path}: asks ${request.url()}`);
    }
  });
  page.on('response', response => {
    if (response.status() >= 400) {
      faults.push(`${path}: ${response.url()} is ${response.status()}`);
    }
  });
  await page.goto(origin + path, { waitUntil: /^\/docs\/(try|search)/.test(path) ? 'networkidle' : 'load' });
  return page;
}

async function shot(page, name) {
  if (shots) {
    await page.screenshot({ path: join(shots, `${name}.png`) });
  }
}

async function crawl() {
  const known = ['/docs', '/example-shop'];
  for (let looked = 0; looked < known.length;) {
    const some = known.slice(looked, looked + AT_ONCE);
    await Promise.all(some.map(async path => {
      const links = await look(path);
      for (const link of links.filter(each => each.startsWith(origin + '/'))) {
        const linked = new URL(link).pathname;
        if (/^\/(docs|problems)\b/.test(linked) && !/\.(atom|py|mjs)$/.test(linked) && !known.includes(linked)
          && !(linked.startsWith('/docs/parts/') && known.filter(each => each.startsWith('/docs/parts/')).length >= MOST_PARTS)) {
          known.push(linked);
        }
      }
    }));
    looked += some.length;
  }
  return known;
}

/** Looks at a page, and says where it leads. */
async function look(path) {
  const page = await open(path, 'light', PHONE);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  if (path !== '/docs/try' && width > PHONE.width) {
    faults.push(`${path}: ${width} wide on a screen of ${PHONE.width}`);
  }
  const report = await html.validateString(await (await fetch(origin + path)).text(), path);
  for (const message of report.results.flatMap(result => result.messages)) {
    faults.push(`${path}:${message.line}: ${message.ruleId}: ${message.message}`);
  }
  await shot(page, 'phone' + path.replaceAll('/', '-'));
  const links = await page.$$eval('a[href]', anchors => anchors.map(anchor => anchor.href));
  assert.deepEqual(await page.context().cookies(), [], `${path} sets a cookie`);
  await page.close();
  return links;
}

// The sheet to print is XHTML, which closes void elements.
async function sheet() {
  const request = { water: { hardness: { value: 22, unit: 'gpg' } }, household: { people: 5 },
    softener: { resinVolume: { value: 1.5, unit: 'ft3' }, saltDose: { value: 15, unit: 'lb/ft3' }, control: { kind: 'clock', everyDays: 3 } } };
  const answer = await fetch(`${origin}/v1/assessment?request=${encodeURIComponent(JSON.stringify(request))}`, { headers: { Accept: 'text/html' } });
  assert.ok(answer.ok, 'a link gives the sheet');
  const strict = new HtmlValidate({ root: true, extends: ['html-validate:recommended'],
    rules: { 'void-style': ['error', { style: 'selfclosing' }] } });
  for (const message of (await strict.validateString(await answer.text(), 'sheet')).results.flatMap(result => result.messages)) {
    faults.push(`sheet:${message.line}: ${message.ruleId}: ${message.message}`);
  }
}

async function tryOut() {
  const page = await open('/docs/try?operation=convertHardness', 'dark', DESK);
  await page.waitForSelector('#operations-calculation-convertHardness .execute', { timeout: 60_000 });
  await shot(page, 'try');
  await page.click('#operations-calculation-convertHardness .execute');
  await page.waitForSelector('#operations-calculation-convertHardness .live-responses-table .response', { timeout: 60_000 });
  const shown = await page.$eval('#operations-calculation-convertHardness .live-responses-table .response',
    element => element.innerText);
  await shot(page, 'tried');
  const body = await page.$eval('#operations-calculation-convertHardness textarea.body-param__text', area => area.value);
  const answer = await fetch(origin + '/v1/hardness-conversion',
    { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });
  const { summary } = await answer.json();
  assert.ok(shown.includes('200') && shown.includes(summary), `the console shows ${shown.slice(0, 400)}`);
  assert.ok([...asked].some(url => url.startsWith(origin + '/v1/hardness-conversion')), 'the console asked the service');
  assert.ok(!asked.has(origin + '/openapi.json'), 'the console loads one operation alone');
  await page.close();
}

async function find() {
  const page = await open('/docs/operations/assess', 'light', DESK);
  await page.keyboard.press('/');
  await page.waitForSelector('#query:focus');
  await page.keyboard.type('salt dose');
  await page.waitForSelector('.found a');
  await shot(page, 'found');
  await page.keyboard.press('ArrowDown');
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'saltDose', 'the best comes first');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/docs\/parts\/\w+#saltDose$/);
  await page.close();
  const still = await browser.newPage({ javaScriptEnabled: false });
  await still.goto(origin + '/docs/search');
  await still.click('#everything summary >> text=Every operation');
  assert.ok(await still.isVisible('text="assess"'), 'without scripts there is a list');
  await still.close();
}

async function copy() {
  const page = await open('/docs/operations/convertHardness', 'light', DESK);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.click('details:has-text("Python") summary >> nth=0');
  await page.click('details[open] .copy');
  await page.waitForSelector('.copy:has-text("Copied")');
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  assert.ok(copied.startsWith('import urllib.request'), copied);
  await page.close();
}

const KINDS = ['/docs', '/docs/operations/assess', '/docs/operations/convertHardness', '/docs/operations/convertHardness/calculation',
  '/docs/operations/convertHardness/answers', '/docs/parts/WaterRequest', '/docs/search', '/docs/conventions', '/docs/changelog', '/docs/sources',
  '/docs/try', '/problems', '/problems/invalid-request'];

/** Every kind of page in both colour schemes and on both screens: WCAG 2.1 AA, and a focus that is seen. */
async function judge() {
  for (const path of KINDS) {
    for (const scheme of ['light', 'dark']) {
      const page = await open(path, scheme, scheme === 'light' ? PHONE : DESK);
      await page.evaluate(() => document.querySelectorAll('details').forEach(each => { each.open = true; }));
      // Evaluated, not added as a script: the policy of the pages forbids that.
      await page.evaluate(await readFile(AXE, 'utf8'));
      const found = await page.evaluate(() => axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa'] }));
      found.violations.forEach(each => faults.push(`${path} ${scheme}: ${each.id}: ${each.nodes.slice(0, 2).map(node => node.html)}`));
      for (let stop = 0; stop < 12; stop++) {
        await page.keyboard.press('Tab');
        const hidden = await page.evaluate(() => {
          const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement);
          return outlineStyle === 'none' || outlineWidth === '0px' ? document.activeElement.outerHTML.slice(0, 80) : '';
        });
        if (hidden) {
          faults.push(`${path} ${scheme}: no focus is seen at ${hidden}`);
        }
      }
      await page.close();
    }
  }
}

try {
  const paths = await crawl();
  assert.ok(paths.length > 30, `only ${paths.length} pages`);
  await tryOut();
  await find();
  await copy();
  await judge();
  await sheet();
  for (const name of shots ? KINDS : []) {
    for (const [scheme, screen] of [['light', DESK], ['dark', DESK], ['light', { width: 390, height: 844 }], ['dark', { width: 390, height: 844 }]]) {
      const page = await open(name, scheme, screen);
      await shot(page, `${scheme}-${screen.width}${name.replaceAll('/', '-')}`);
      await page.close();
    }
  }
  assert.deepEqual(faults, []);
  console.log(`${paths.length} pages and ${asked.size} addresses, all of ${origin}, and nothing in the console`);
} finally {
  await browser.close();
}
