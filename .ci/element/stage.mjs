// What the checks of the element are played on: the service, a page of a shop of another origin, a browser.
import { spawn } from 'node:child_process';
import { createServer } from 'node:http';
import { browser } from '../browser.mjs';

const [, , , port, ...command] = process.argv;
const PORT = Number(port);
const SHOP_PORT = PORT + 2;
const PATIENCE_MILLISECONDS = 60_000;
export const ORIGIN = `http://127.0.0.1:${PORT}`;
export const SHOP = `http://127.0.0.1:${SHOP_PORT}`;
export const faults = [];

let service;
export async function start() {
  service = spawn(command[0], command.slice(1), { stdio: 'ignore', env: { ...process.env, PORT, METRICS_PORT: PORT + 1,
    HOST: '127.0.0.1', CORS_ORIGINS: SHOP, STOP_SECONDS: 1, CALCULATION_MILLISECONDS: PATIENCE_MILLISECONDS } });
  for (let i = 0; i < 480; i++) {
    if (await fetch(`${ORIGIN}/health/ready`).then(answer => answer.ok, () => false)) { return; }
    await new Promise(done => setTimeout(done, 250));
  }
  throw new Error('the service does not start');
}

/** Goods of invented names, larger and dearer one by one. */
export const goods = (currency, litres = [12, 25, 40, 60]) => litres.map((value, i) => ({ sku: `item-${i + 1}`,
  name: `Invented ${'ABCDEF'[i]} ${value}`, link: `/goods/${i + 1}`, resinVolume: { value, unit: 'L' },
  price: { value: [640, 840, 1140, 1490][i] + 0.5, unit: currency } }));

export const api = async (body, language = 'en') => (await fetch(`${ORIGIN}/v1/softener-sizing`, { method: 'POST',
  headers: { 'Content-Type': 'application/json', 'Accept-Language': language }, body: JSON.stringify(body) })).json();

/** The page of a shop: what it asks for is in its address. It keeps a log of the events. */
const shop = createServer((request, response) => {
  const { attributes = 'lang="en"', list = goods('USD'), css = '', prices } = JSON.parse(new URL(request.url, SHOP).searchParams.get('page') ?? '{}');
  response.setHeader('Content-Type', 'text/html; charset=utf-8');
  response.end(`<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
    <title>Invented shop</title><link rel="icon" href="data:,"><style>html { color-scheme: light dark; } body { margin: 1rem; } ${css}</style>
    <script>
      window.events = [];
      for (const name of ['answer', 'fault', 'height']) { addEventListener('brinebook-' + name, event => events.push([name, event.detail])); }
    </script>
    <script src="${ORIGIN}/element/brinebook.js" defer></script></head><body><main><h1>Invented shop</h1>
    <brinebook-advice ${attributes}><p class="fallback">Ask us by telephone.</p></brinebook-advice></main>
    <script>Object.assign(document.querySelector('brinebook-advice'), ${JSON.stringify({ candidates: list, prices })});</script></body></html>`);
}).listen(SHOP_PORT, '127.0.0.1');

export async function end() {
  await browser.close();
  shop.close();
  await new Promise(done => { service.on('exit', done); service.kill('SIGTERM'); });
}

/** Opens the shop in a window of its own; whatever the page says in the console or asks elsewhere is a fault, unless it is waited for. */
export async function open(page, { scheme = 'light', width = 390, locale = 'en-US', expected = /^$/ } = {}) {
  const context = await browser.newContext({ colorScheme: scheme, viewport: { width, height: width < 500 ? 844 : 800 }, locale });
  context.setDefaultTimeout(PATIENCE_MILLISECONDS);
  await context.addInitScript(patience => { // what else the machine does shall not count: the element waits ten seconds
    const real = window.setTimeout;
    window.setTimeout = (act, delay, ...more) => real(act, delay === 10_000 ? patience : delay, ...more);
  }, PATIENCE_MILLISECONDS);
  const window = await context.newPage();
  window.asked = [];
  window.on('console', message => { if (message.type() === 'error' && !expected.test(message.text())) { faults.push(`${JSON.stringify(page)}: ${message.text()}`); } });
  window.on('pageerror', error => faults.push(`${JSON.stringify(page)}: ${error.message}`));
  window.on('request', request => {
    window.asked.push(`${request.method()} ${request.url()}`);
    if (![ORIGIN, SHOP, 'data:'].some(each => request.url().startsWith(each))) { faults.push(`asks ${request.url()}`); }
  });
  await window.goto(`${SHOP}/?page=${encodeURIComponent(JSON.stringify(page))}`);
  await window.locator('brinebook-advice').evaluate(() => customElements.whenDefined('brinebook-advice'));
  return window;
}

/** Closes a window, which must have kept nothing on the device. */
export async function close(window) {
  const kept = await window.evaluate(() => localStorage.length + sessionStorage.length + document.cookie.length);
  if (kept || (await window.context().cookies()).length) { faults.push(`${window.url()} keeps something on the device`); }
  await window.context().close();
}
