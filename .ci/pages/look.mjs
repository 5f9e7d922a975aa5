// Looks at the example shop and every page that /docs leads to, in Chromium: proper HTML, nothing in the console, no request to another host,
// nothing wider than the screen of a phone, and the console sends a request and shows the real answer.
// Usage: node look.mjs <origin> [<directory for screenshots>]
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { browser } from '../browser.mjs';

const [origin, shots] = process.argv.slice(2);
const PHONE = { width: 360, height: 740 };
// Calendar files shown on pages end folded lines in a blank; versions have a dot.
const html = new HtmlValidate({
  root: true, extends: ['html-validate:recommended'],
  rules: { 'no-trailing-whitespace': 'off', 'valid-id': ['error', { relaxed: true }] },
});
/** Pages opened at once: each waits for half a second without a request. */
const AT_ONCE = 4;
const faults = [];
const asked = new Set();

async function open(path, scheme, viewport) {
  const page = await browser.newPage({ colorScheme: scheme, viewport });
  page.on('console', message => faults.push(`${path}: ${message.type()}: ${message.text()}`));
  page.on('pageerror', error => faults.push(`${path}: ${error.message}`));
  page.on('requestfailed', request => faults.push(`${path}: ${request.url()} ${request.failure().errorText}`));
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
  await page.goto(origin + path, { waitUntil: 'networkidle' });
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
        if (/^\/(docs|problems)\b/.test(linked) && !known.includes(linked)) {
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
  const page = await open('/docs/try#/calculation/convertHardness', 'dark', { width: 1280, height: 900 });
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
  assert.ok(asked.has(origin + '/v1/hardness-conversion'), 'the console asked the service');
  await page.close();
}

try {
  const paths = await crawl();
  assert.ok(paths.length > 30, `only ${paths.length} pages`);
  await tryOut();
  await sheet();
  for (const name of shots ? ['/docs', '/docs/operations/compensateHardness', '/docs/sources', '/problems/invalid-request'] : []) {
    for (const scheme of ['light', 'dark']) {
      const page = await open(name, scheme, { width: 1280, height: 900 });
      await shot(page, scheme + name.replaceAll('/', '-'));
      await page.close();
    }
  }
  assert.deepEqual(faults, []);
  console.log(`${paths.length} pages and ${asked.size} addresses, all of ${origin}, and nothing in the console`);
} finally {
  await browser.close();
}
