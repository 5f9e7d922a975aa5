// What the checks are played on: the service, a shop of another origin, a browser.
import { spawn } from 'node:child_process';
import { createServer } from 'node:http';
import { browser } from '../browser.mjs';

const [, , , port, ...command] = process.argv;
const PORT = Number(port);
const SHOP_PORT = PORT + 2;
/** How long anything may take: what else the machine does shall not count. */
const PATIENCE_MILLISECONDS = 120_000;
export const ORIGIN = `http://127.0.0.1:${PORT}`;
export const SHOP = `http://127.0.0.1:${SHOP_PORT}`;
export const GOODS = [12, 25, 40].map(litres => ({ sku: `Erfunden ${litres}`, resinVolume: { value: litres, unit: 'L' } }));
export const faults = [];

let service;
export async function start() {
  service = spawn(command[0], command.slice(1), { stdio: 'ignore',
    env: { ...process.env, PORT, METRICS_PORT: PORT + 1, HOST: '127.0.0.1', CORS_ORIGINS: SHOP, STOP_SECONDS: 1,
      CALCULATION_MILLISECONDS: PATIENCE_MILLISECONDS } });
  for (let i = 0; i < 480; i++) {
    if (await fetch(`${ORIGIN}/health/ready`).then(answer => answer.ok, () => false)) { return; }
    await new Promise(done => setTimeout(done, 250));
  }
  throw new Error('the service does not start');
}
export const stop = () => new Promise(done => { service.on('exit', done); service.kill('SIGTERM'); });

export const api = async (path, body, language = 'en') => (await fetch(ORIGIN + path, { method: 'POST',
  headers: { 'Content-Type': 'application/json', 'Accept-Language': language }, body: JSON.stringify(body) })).json();
export const at = (answer, pointer) => pointer.split('/').slice(1).reduce((part, name) => part[name], answer);
export const linkOf = given => `${ORIGIN}/#${Buffer.from(JSON.stringify(given)).toString('base64url')}`;
export const sheetOf = given => `${ORIGIN}/v1/assessment?request=${encodeURIComponent(JSON.stringify(given))}`;

const shop = createServer((request, response) => {
  response.setHeader('Content-Type', 'text/html; charset=utf-8');
  response.end(`<!DOCTYPE html><html lang="de"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Erfundener Laden</title>
    <link rel="icon" href="data:,"><script src="${ORIGIN}/element/brinebook.js" defer></script></head><body><main><h1>Erfundener Laden</h1>
    <brinebook-advice lang="de" units="metric" candidates='${JSON.stringify(GOODS)}'></brinebook-advice></main></body></html>`);
}).listen(SHOP_PORT, '127.0.0.1');

export async function end() {
  await browser.close();
  shop.close();
  await stop();
}

/** Opens a page in a window of its own; what it says in the console counts, and what it is refused unless it waits for that. */
export async function open(url, { scheme = 'light', width = 1440, refusals = false, locale = 'en-US' } = {}) {
  const context = await browser.newContext({ colorScheme: scheme, viewport: { width, height: 900 }, locale,
    permissions: ['clipboard-read', 'clipboard-write'] });
  context.setDefaultTimeout(PATIENCE_MILLISECONDS);
  context.on('page', page => watch(page, refusals));
  const page = await context.newPage();
  await page.goto(url);
  return page;
}

function watch(page, refusals) {
  page.on('console', message => {
    if (message.type() === 'error' && !(refusals && /Failed to load resource/.test(message.text()))) { faults.push(`${page.url()}: ${message.text()}`); }
  });
  page.on('response', async response => {
    if (response.status() >= 400 && !refusals) { faults.push(`${response.url()}: ${await response.text()} for ${response.request().postData()}`); }
  });
  page.on('pageerror', error => faults.push(`${page.url()}: ${error.message}`));
  page.on('request', request => {
    if (![ORIGIN, SHOP, 'data:', 'blob:'].some(each => request.url().startsWith(each))) { faults.push(`asks ${request.url()}`); }
  });
}

export async function close(page) {
  const cookies = await page.context().cookies();
  if (cookies.length) { faults.push(`${page.url()} sets cookies`); }
  await page.context().close();
}

/** Waits until the workbench shows the answer and its charts. */
export const settled = page => page.waitForFunction(() => document.querySelector('#summary')?.textContent
  && !document.body.hasAttribute('aria-busy') && document.querySelectorAll('canvas').length >= 3);

/** The case in the address. */
export const caseOf = page => page.evaluate(() => JSON.parse(atob(location.hash.slice(1).replaceAll('-', '+').replaceAll('_', '/'))));
