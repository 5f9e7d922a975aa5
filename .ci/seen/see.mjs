// Uses workbench, element and sheet as people do, in Chromium, and measures them.
// Usage: node see.mjs <directory for screenshots> <first of three ports> <command that starts the service...>
import assert from 'node:assert/strict';
import { mkdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { kept, languages, looks } from './looks.mjs';
import { numbers } from './numbers.mjs';
import { ORIGIN, close, end, faults, open, settled, start } from './stage.mjs';
import { badValueAndAway, embedded, keyboard } from './use.mjs';

async function sizes() {
  const page = await open('about:blank');
  const parts = [];
  page.on('response', response => { if (/\/$|\/workbench\//.test(new URL(response.url()).pathname)) { parts.push(response.body()); } });
  await page.goto(ORIGIN);
  await settled(page);
  const [ready, answered] = await page.evaluate(() => ['interactive', 'answered'].map(name => Math.round(performance.getEntriesByName(name)[0].startTime)));
  const bytes = (await Promise.all(parts)).reduce((sum, part) => sum + part.length, 0);
  const element = gzipSync(Buffer.from(await (await fetch(`${ORIGIN}/element/brinebook.js`)).arrayBuffer())).length;
  assert.ok(bytes > 50000 && bytes <= 150000, `the workbench has ${bytes} bytes`);
  assert.ok(element <= 15000, `the element has ${element} bytes`);
  await close(page);
  return `workbench ${bytes} bytes, element ${element} bytes gzipped, interactive after ${ready} ms, answer and charts after ${answered} ms`;
}

mkdirSync(process.argv[2], { recursive: true });
try {
  await start();
  await keyboard();
  await badValueAndAway();
  await embedded();
  const lines = [await numbers(), await looks(), await sizes()];
  await languages();
  await kept();
  assert.deepEqual(faults, []);
  lines.forEach(each => console.log(each));
} finally {
  faults.forEach(each => console.error(each));
  await end();
}
