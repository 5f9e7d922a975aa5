// Uses workbench and sheets as people do, in Chromium, and measures them.
// Usage: node see.mjs <directory for screenshots> <first of three ports> <command that starts the service...>
import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { colours } from './colours.mjs';
import { kept, looks } from './looks.mjs';
import { numbers } from './numbers.mjs';
import { effort, everywhere } from './questions.mjs';
import { ORIGIN, PHONE, close, end, faults, open, start } from './stage.mjs';
import { trouble } from './trouble.mjs';
import { enlarged, keyboard } from './use.mjs';
import { onSite } from './visit.mjs';

/** Bytes that the first view and the first question may take. How soon it can be used is said and not judged: machines differ. */
const MOST_BYTES = 150_000;
const TRIES = 5;

/** One first visit on a phone whose processor is slowed four times. */
async function visit() {
  const page = await open('about:blank', { size: PHONE });
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  let bytes = 0;
  session.on('Network.loadingFinished', ({ encodedDataLength }) => { bytes += encodedDataLength; });
  await page.addInitScript(() => {
    globalThis.shift = 0;
    new PerformanceObserver(list => list.getEntries().forEach(each => { globalThis.shift += each.hadRecentInput ? 0 : each.value; })).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(ORIGIN);
  await page.locator('.questions').waitFor();
  await page.waitForFunction(() => performance.getEntriesByName('interactive').length);
  const [drawn, ready] = await page.evaluate(() => ['questions', 'interactive'].map(name => Math.round(performance.getEntriesByName(name)[0].startTime)));
  const first = await page.evaluate(until => performance.getEntries().filter(each => each.transferSize && each.responseEnd <= until).reduce((sum, each) => sum + each.transferSize, 0), drawn);
  const whole = await page.evaluate(until => performance.getEntries().filter(each => each.transferSize && each.responseEnd <= until).reduce((sum, each) => sum + each.transferSize, 0), ready);
  const clicked = await page.evaluate(() => performance.now());
  await page.locator('.questions a').first().click();
  await page.locator('#f-water-hardness').waitFor();
  const field = await page.evaluate(then => Math.round(performance.now() - then), clicked);
  const shift = await page.evaluate(() => globalThis.shift);
  await close(page);
  return { first, whole, bytes, drawn, ready, field, shift };
}

async function sizes() {
  const visits = [];
  for (let i = 0; i < TRIES; i++) { visits.push(await visit()); }
  const most = name => Math.max(...visits.map(each => each[name]));
  const least = name => Math.min(...visits.map(each => each[name]));
  assert.ok(most('first') > 10_000 && most('bytes') <= MOST_BYTES, `the first view has ${most('first')} bytes, with a question ${most('bytes')}`);
  assert.ok(most('shift') <= 0.02, `the page shifts by ${most('shift')}`);
  return `first view ${most('first')} bytes as sent, the whole workbench ${most('whole')}, with a question ${most('bytes')}, its questions there after ${least('drawn')} ms, the whole after`
    + ` ${least('ready')} ms, the first field ${least('field')} ms after a tap, at a quarter of the speed, layout shift ${most('shift').toFixed(3)}`;
}

const PARTS = { keyboard, trouble, enlarged, effort, everywhere, onSite, numbers, looks, colours, sizes, kept };
/** Parts to try alone, as in SEEN=looks,trouble:offline; else all. */
const wanted = process.env.SEEN?.split(',') ?? Object.keys(PARTS);

mkdirSync(process.argv[2], { recursive: true });
try {
  await start();
  for (const name of wanted) {
    const began = Date.now();
    const [part, only] = name.split(':');
    const line = await PARTS[part](only);
    console.log(`${name} (${Math.round((Date.now() - began) / 1000)} s)${line ? `: ${line}` : ''}`);
  }
  assert.deepEqual(faults, []);
} finally {
  faults.forEach(each => console.error(each));
  await end();
}
