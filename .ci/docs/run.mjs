// Runs every call that the pages show, as they show it: a shell, Python, Node and Java give the same answers, byte for byte.
// Usage: node run.mjs <origin> <directory for what they write>
import assert from 'node:assert/strict';
import { execFile } from 'node:child_process';
import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';

const [origin, folder] = process.argv.slice(2);
const run = promisify(execFile);
const SHOWN = 'localhost:8080';
const HOST = new URL(origin).host;
/** How each language is run: the name of its file, and the command. */
const LANGUAGES = {
  bash: ['call.sh', ['bash']],
  python: ['call.py', ['python3']],
  javascript: ['call.mjs', ['node']],
  java: ['Call.java', ['java', '-Xshare:auto', '-XX:TieredStopAtLevel=1']],
  sheet: ['sheet.sh', ['bash']],
};

/** What a program prints, or else the file that it writes. */
async function answer(language, text, place) {
  const [file, [command, ...flags]] = LANGUAGES[language];
  await mkdir(place, { recursive: true });
  await writeFile(join(place, file), text.replaceAll(SHOWN, HOST));
  const { stdout } = await run(command, [...flags, file], { cwd: place, maxBuffer: 1 << 26, encoding: 'buffer' });
  if (stdout.length > 0) {
    return stdout.toString().trimEnd();
  }
  const written = (await readdir(place)).find(name => name.startsWith('answer'));
  assert.ok(written, `${place}: neither prints nor writes`);
  return (await readFile(join(place, written))).toString('base64');
}

const ENTITIES = { lt: '<', gt: '>', quot: '"', amp: '&' };

async function page(path) {
  const response = await fetch(origin + path);
  assert.equal(response.status, 200, path);
  return response.text();
}

/** The programs of a page, with their language. */
function programs(html) {
  return [...html.matchAll(/<pre [^>]*data-language="(\w+)"><code>([^<]*)<\/code><\/pre>/g)]
    .map(([, language, text]) => ({ language, text: text.replace(/&(?:(\w+)|#x(\w+)|#(\d+));/g,
      (all, name, hex, decimal) => (name ? ENTITIES[name] : String.fromCodePoint(hex ? parseInt(hex, 16) : Number(decimal)))) }));
}

/** Calls beside each other are the same call: each language gives what the shell does. */
async function callsOf(path) {
  const blocks = programs(await page(path));
  let number = 0;
  const groups = [];
  for (const block of blocks) {
    if (block.language === 'bash' || block.language === 'sheet' || block.language === 'formula') {
      groups.push({ place: join(folder, path.replaceAll('/', '_'), String(number++)), path, blocks: [] });
    }
    groups.at(-1).blocks.push(block);
  }
  return groups;
}

const counts = {};

async function check({ path, place, blocks }) {
  let expected;
  for (const { language, text } of blocks) {
    if (language === 'formula') { // a spreadsheet asks the address in quotes
      const address = text.match(/^=WEBSERVICE\("([^"]+)"\)$/)[1];
      assert.equal((await fetch(address.replace(SHOWN, HOST))).status, 200, address);
    } else {
      const given = await answer(language, text, join(place, language));
      assert.ok(given.length > 100, `${path} ${language}: ${given}`);
      assert.ok(!given.startsWith('{"type"') && !given.includes('/problems/'), `${path} ${language}: ${given.slice(0, 300)}`);
      expected ??= given;
      assert.equal(given, expected, `${path}: ${language} gets what the shell gets`);
    }
    counts[language] = (counts[language] ?? 0) + 1;
  }
}

const operations = [...new Set((await page('/docs')).match(/\/docs\/operations\/\w+/g))];
const pages = (await Promise.all(['/docs', ...operations].map(callsOf))).flat();
assert.ok(operations.length >= 16 && pages.length > 60, `${operations.length} operations with ${pages.length} calls`);
// Two processors: two calls at once.
const waiting = [...pages];
await Promise.all([0, 1].map(async () => {
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    await check(next);
  }
}));
for (const language of ['bash', 'python', 'javascript', 'java', 'sheet', 'formula']) {
  assert.ok(counts[language] > 0, `no call in ${language}`);
}
console.log(`${pages.length} calls on ${operations.length + 1} pages, run as ${JSON.stringify(counts)}: all give the same`);
