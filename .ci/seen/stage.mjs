// What the checks are played on: the service, a shop of another origin, a browser, and what people do on the workbench.
import { spawn } from 'node:child_process';
import { browser } from '../browser.mjs';

const [, , , port, ...command] = process.argv;
const PORT = Number(port);
/** How long anything may take: what else the machine does shall not count. */
const PATIENCE_MILLISECONDS = 120_000;
export const ORIGIN = `http://127.0.0.1:${PORT}`;
export const PHONE = { width: 390, height: 844 };
export const LAPTOP = { width: 1280, height: 800 };
export const LOCALES = { en: 'en-US', de: 'de-DE', es: 'es-ES', fr: 'fr-FR' };
export const faults = [];

let service;
export async function start() {
  service = spawn(command[0], command.slice(1), { stdio: 'ignore',
    env: { ...process.env, PORT, METRICS_PORT: PORT + 1, HOST: '127.0.0.1', STOP_SECONDS: 1,
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
export const at = (answer, pointer) => pointer.split('/').slice(1).reduce((part, name) => part?.[name], answer);
export const sheetOf = (given, sheet = 'card') => `${ORIGIN}/v1/assessment?sheet=${sheet}&request=${encodeURIComponent(JSON.stringify(given))}`;
/** The link of a case, which opens as a copy. */
export const linkOf = (readings, { question = 'worth', country = 'US' } = {}) => `${ORIGIN}/#/shared/${Buffer.from(JSON.stringify({
  shape: 2, question, country, readings, guesses: {} })).toString('base64url')}`;

export async function end() {
  await browser.close();
  await stop();
}

/** A window of its own; what its pages say in the console counts, and what they are refused unless they wait for that. */
export async function room({ scheme = 'light', size = LAPTOP, refusals = false, locale = 'en-US', touch = false, reducedMotion } = {}) {
  const context = await browser.newContext({ colorScheme: scheme, viewport: size, locale, hasTouch: touch, reducedMotion,
    permissions: ['clipboard-read', 'clipboard-write'] });
  context.setDefaultTimeout(PATIENCE_MILLISECONDS);
  context.on('page', page => watch(page, refusals));
  return context;
}

/** Opens a page in such a window. */
export async function open(url, options = {}) {
  const page = await (await room(options)).newPage();
  await page.goto(url);
  return page;
}

/** What the browser says when a page goes while it fetches the service worker; that the worker comes is shown without a network. */
const GONE = /error occurred when fetching the script/;

function watch(page, refusals) {
  page.on('console', message => {
    const expected = GONE.test(message.text()) || refusals && /Failed to load resource|net::ERR/.test(message.text());
    if (message.type() === 'error' && !expected) { faults.push(`${page.url()}: ${message.text()}`); }
  });
  page.on('response', async response => {
    if (response.status() >= 400 && !refusals) { faults.push(`${response.url()}: ${await response.text().catch(() => '')} for ${response.request().postData()}`); }
  });
  page.on('pageerror', error => faults.push(`${page.url()}: ${error.message}`));
  page.on('request', request => {
    if (![ORIGIN, 'data:', 'blob:'].some(each => request.url().startsWith(each))) { faults.push(`asks ${request.url()}`); }
  });
}

export async function close(page) {
  const cookies = await page.context().cookies();
  if (cookies.length) { faults.push(`${page.url()} sets cookies`); }
  await page.context().close();
}

// ---- the workbench ----

const SOFTENER = [['#f-softener-tankDiameter', '10'], ['#f-softener-tankHeight', '54'], ['#f-softener-control-everyDays', '3']];
const HOME = [['#f-water-hardness', '22'], ['#f-household-people', '5']];
const SIXTY_DAYS = Array.from({ length: 60 }, (day, i) => `${new Date(Date.UTC(2026, 0, 1 + i)).toISOString().slice(0, 10)} ${250 + (i * 37) % 120}`).join('\n');

/** What each question needs for its first answer, as it is typed; the readings of a meter are pasted. */
export const QUESTIONS = {
  worth: { operation: '/v1/assessment', fields: [...HOME, ...SOFTENER] },
  hard: { operation: '/v1/settings-review', fields: [...HOME, ...SOFTENER] },
  fits: { operation: '/v1/softener-sizing', fields: HOME },
  need: { operation: '/v1/hardness-conversion', fields: HOME.slice(0, 1) },
  setup: { operation: '/v1/assessment', fields: [...HOME, ...SOFTENER.slice(0, 2)] },
  readings: { operation: '/v1/backtest', pasted: ['#f-days', SIXTY_DAYS], fields: [...HOME, ...SOFTENER] },
};

/** Opens a question on the front page, as people do. */
export async function asked(question, options = {}) {
  const page = await open(ORIGIN, options);
  await begin(page, question);
  return page;
}

export async function begin(page, question) {
  await page.locator(`.questions a[href="#/ask/${question}"]`).click();
  await page.locator('#f-water-hardness').waitFor();
}

/** Types what the first answer needs. */
export async function answer(page, question) {
  const { pasted, fields } = QUESTIONS[question];
  if (pasted) { await page.fill(...pasted); }
  for (const [selector, text] of fields) { await page.locator(selector).pressSequentially(text); }
  await settled(page);
}

/** Takes the invented household. */
export async function example(page) {
  await page.locator('.readings .intro button').click();
  await settled(page);
}

/** Waits until the answer is that of the readings. */
export const settled = page => page.locator('.result:not(.stale):not(.empty)').waitFor({ state: 'attached' });

/** Goes to the answer where it is a page of its own. */
export async function toAnswer(page) {
  if (page.viewportSize().width < 960) {
    await page.locator('.go button').click();
    await page.locator('.case[data-view=answer]').waitFor();
  }
}

/** Whether a part is wholly on the screen, by its box. */
export async function inSight(page, selector) {
  await page.locator(selector).first().waitFor({ state: 'attached' });
  return page.evaluate(one => { // found and measured at once: the next drawing may put another element in its place
    const element = document.querySelector(one);
    const box = element.getBoundingClientRect();
    return element.checkVisibility() && box.top >= 0 && box.bottom <= innerHeight && box.left >= 0 && box.right <= innerWidth;
  }, selector);
}
/** The part that says the verdict while readings are typed. */
export const verdictOf = page => page.viewportSize().width < 960 ? '.bar .bar-sentence' : '.verdict h2';
