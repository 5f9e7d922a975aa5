// Opens the contract in viewers that people use, in a headless browser, and measures the processor time of its page until the
// operations are shown; fails above the limit. Use: node open.mjs URL MODULES, where MODULES holds the viewers.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {browser} from '../browser.mjs';

const [service, modules] = process.argv.slice(2);
const MOST_SECONDS = 3;

/** The script of a viewer, and the element that starts it; the console of the service itself has both. */
const viewers = {
  redoc: ['redoc/bundles/redoc.standalone.js', '<redoc spec-url="/openapi.json"></redoc>'],
  rapidoc: ['rapidoc/dist/rapidoc-min.js', '<rapi-doc spec-url="/openapi.json" render-style="view"></rapi-doc>'],
};
const contract = await (await fetch(`${service}/openapi.json`)).json();
const summary = contract.paths['/v1/assessment'].post.summary;

const faults = [];
await measure('swagger-ui', page => page.goto(`${service}/docs/try`));
for (const [name, [script, element]] of Object.entries(viewers)) {
  await measure(name, async page => {
    await page.route(`${service}/viewer`, route => route.fulfill({contentType: 'text/html',
      body: `<!doctype html><title>${name}</title><body>${element}<script src="/viewer.js"></script></body>`}));
    await page.route(`${service}/viewer.js`, route => route.fulfill({contentType: 'text/javascript',
      body: readFileSync(`${modules}/${script}`)}));
    await page.goto(`${service}/viewer`);
  });
}
await browser.close();
assert.deepEqual(faults, []);

async function measure(name, open) {
  const page = await browser.newPage();
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', {timeDomain: 'threadTicks'}); // processor time, not time
  await open(page);
  await page.getByText(summary).first().waitFor({state: 'attached', timeout: 60_000});
  const {metrics} = await session.send('Performance.getMetrics');
  const seconds = metrics.find(metric => metric.name === 'TaskDuration').value;
  console.log(`${name} shows the contract after ${seconds.toFixed(2)} s of processor time`);
  if (!(seconds <= MOST_SECONDS)) {
    faults.push(`${name} takes ${seconds.toFixed(2)} s, more than ${MOST_SECONDS}`);
  }
  await page.close();
}
