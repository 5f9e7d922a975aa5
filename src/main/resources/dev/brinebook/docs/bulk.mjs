// SPDX-License-Identifier: Apache-2.0
// Sends a table (.csv) or a list (.ndjson) of any length, writes the answers beside it, and continues after any break.
//
//     node bulk.mjs ADDRESS IN OUT [KEY]
//
// ADDRESS is that of a list, with its parameters, such as
// http://localhost:8080/v1/bulk/compensateHardness?unknownColumns=pass. Started again with the same OUT, it continues.
import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';

const ROWS = 5_000, BYTES = 8_000_000, ATTEMPTS = 10; // of one request; failures one after the other
const LONGEST = 65_536; // bytes of a row
const CELL = '(?:"[^"]*(?:""[^"]*)*"[ \\r]*|[^",;\\t\\n][^,;\\t\\n]*)?';
const WHOLE = new RegExp(`^\uFEFF?(?:${CELL}[,;\\t])*${CELL}\\n?$`);
const NUMBER = /^(\{"line":)?(\d+)/;
const BUSY = '/problems/overloaded';

// Whole lines of a stream of bytes, each with its line feed; the last one perhaps without.
async function* linesOf(stream) {
  let rest = Buffer.alloc(0);
  for await (const bytes of stream) {
    rest = Buffer.concat([rest, bytes]);
    let start = 0;
    for (let end = rest.indexOf(10); end >= 0; end = rest.indexOf(10, start)) {
      yield rest.toString('utf8', start, end + 1);
      start = end + 1;
    }
    rest = rest.subarray(start);
  }
  if (rest.length) yield rest.toString('utf8');
}

// Rows of a table, which go on where a quote is open; of a list, lines. If a quote is not closed within the longest row, its first
// line alone is a row: so the service counts too.
async function* rows(lines, table, longest) {
  const ahead = [];
  const readAhead = async () => {
    const { value, done } = await lines.next();
    if (!done) ahead.push(value);
  };
  try {
    for (await readAhead(); ahead.length; ahead.length || await readAhead()) {
      let row = ahead[0], used = 1, whole = !table || WHOLE.test(row);
      while (!whole && Buffer.byteLength(row) <= longest) {
        if (used === ahead.length) await readAhead();
        if (used === ahead.length) break;
        row += ahead[used++];
        whole = ahead[used - 1].includes('"') && Buffer.byteLength(row.replace(/\n$/, '')) <= longest && WHOLE.test(row);
      }
      yield ahead.splice(0, whole ? used : 1).join('');
    }
  } finally {
    await lines.return();
  }
}

// Whole rows or lines of answers, each with the number of what it answers; the header row answers the first.
async function* answersOf(stream, table) {
  for await (const row of rows(linesOf(stream), table, Infinity)) {
    if (!row.endsWith('\n') || (table && !WHOLE.test(row))) return;
    const number = row.match(NUMBER);
    yield [number ? Number(number[2]) : 1, row];
  }
}

// The answers to a piece from one of its rows on, asked again after a break until there is one to the last row.
async function* answered(address, key, mediaType, piece, start, last) {
  const headers = { 'Content-Type': mediaType, Accept: mediaType, ...(key ? { Authorization: `Bearer ${key}` } : {}) };
  for (let attempt = 0; start <= last;) {
    let pause = Math.min(60, 2 ** attempt);
    try {
      const url = `${address}${address.includes('?') ? '&' : '?'}answer=afterUpload&from=${start}`;
      const answer = await fetch(url, { method: 'POST', headers, body: piece.join('') });
      if (!answer.ok) {
        if (answer.status !== 429 && answer.status !== 503) throw new Refused(`${answer.status} ${await answer.text()}`);
        pause = Number(answer.headers.get('Retry-After')) || pause;
      } else {
        for await (const [number, row] of answersOf(answer.body, mediaType === 'text/csv')) {
          if (NUMBER.test(row) && row.includes(BUSY)) break;
          yield [number, row];
          start = number + 1;
          attempt = 0;
        }
      }
    } catch (broken) {
      if (broken instanceof Refused) throw broken;
      console.error(`broken off: ${broken.message}`);
    }
    if (start <= last) {
      attempt++;
      if (attempt > ATTEMPTS) throw new Refused(`gave up after ${ATTEMPTS} attempts; start again to continue`);
      await sleep(pause * 1000);
    }
  }
}

class Refused extends Error {}

// The rows behind a header, some at a time, each time with the number of the first.
async function* pieces(source, header, skip) {
  let piece = [], number = header.length, size = 0;
  for await (const row of source) {
    number++;
    if (number <= skip) continue;
    piece.push(row.endsWith('\n') ? row : row + '\n');
    size += row.length;
    if (piece.length === ROWS || size > BYTES) {
      yield [number - piece.length + 1, header.concat(piece)];
      piece = [];
      size = 0;
    }
  }
  if (piece.length) yield [number - piece.length + 1, header.concat(piece)];
}

// The number of the last row that OUT answers; what is not a whole answer is cut off.
async function already(out, table) {
  let last = 0, whole = 0;
  for await (const [number, row] of answersOf(out.createReadStream({ start: 0, autoClose: false }), table)) {
    whole += Buffer.byteLength(row);
    last = number;
  }
  await out.truncate(whole);
  return last;
}

async function main(address, source, target, key) {
  if (/[?&](mode=check|only=)/.test(address)) {
    throw new Refused('a dry run and faulty rows alone have no answer to every line: send them with another client');
  }
  const table = source.endsWith('.csv');
  const sent = rows(linesOf(createReadStream(source)), table, LONGEST);
  const header = table ? [(await sent.next()).value ?? ''] : [];
  const out = await open(target, 'a+');
  let done = await already(out, table);
  for await (const [first, piece] of pieces(sent, header, done)) {
    const before = first - 1 - header.length; // rows of the file in front of the piece
    const start = table && done === 0 ? 1 : 1 + header.length;
    const last = piece.findLastIndex((row) => row.trim()) + 1;
    let text = '';
    for await (const [number, row] of answered(address, key, table ? 'text/csv' : 'application/x-ndjson', piece, start, last)) {
      text += row.replace(NUMBER, (at, name) => (name ?? '') + (number + before));
      done = number + before;
      if (text.length > 65_536) {
        await out.appendFile(text);
        text = '';
      }
    }
    await out.appendFile(text);
  }
  await out.close();
}

const given = process.argv.slice(2);
if (given.length !== 3 && given.length !== 4) {
  console.error('node bulk.mjs ADDRESS IN OUT [KEY]');
  process.exit(2);
}
main(...given).catch((failed) => {
  console.error(failed instanceof Refused ? failed.message : failed);
  process.exit(1);
});
