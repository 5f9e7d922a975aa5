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

const LINES = 5_000, BYTES = 8_000_000, ATTEMPTS = 10; // of one request; failures one after the other
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

// The answers to a piece from one of its lines on, asked again after a break until there is one to the last line.
async function* answered(address, key, mediaType, lines, start, last) {
  const headers = { 'Content-Type': mediaType, Accept: mediaType, ...(key ? { Authorization: `Bearer ${key}` } : {}) };
  for (let attempt = 0; start <= last;) {
    let pause = Math.min(60, 2 ** attempt);
    try {
      const url = `${address}${address.includes('?') ? '&' : '?'}answer=afterUpload&from=${start}`;
      const answer = await fetch(url, { method: 'POST', headers, body: lines.join('') });
      if (!answer.ok) {
        if (answer.status !== 429 && answer.status !== 503) throw new Refused(`${answer.status} ${await answer.text()}`);
        pause = Number(answer.headers.get('Retry-After')) || pause;
      } else {
        for await (const line of linesOf(answer.body)) {
          const number = line.match(NUMBER);
          if (!line.endsWith('\n') || (number && line.includes(BUSY))) break;
          yield [number ? Number(number[2]) : 1, line];
          start = (number ? Number(number[2]) : 1) + 1;
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

// The lines of a file behind its first ones, some at a time, each with the number of its first line.
async function* pieces(path, header, skip) {
  let piece = [], number = 0, size = 0;
  for await (const line of linesOf(createReadStream(path))) {
    number++;
    if (number <= skip) continue;
    piece.push(line.endsWith('\n') ? line : line + '\n');
    size += line.length;
    if (piece.length === LINES || size > BYTES) {
      yield [number - piece.length + 1, header.concat(piece)];
      piece = [];
      size = 0;
    }
  }
  if (piece.length) yield [number - piece.length + 1, header.concat(piece)];
}

// The number of the last line that OUT answers; what is not a whole line is cut off.
async function already(out) {
  let last = 0, whole = 0;
  for await (const line of linesOf(out.createReadStream({ start: 0, autoClose: false }))) {
    if (!line.endsWith('\n')) break;
    whole += Buffer.byteLength(line);
    const number = line.match(NUMBER);
    last = number ? Number(number[2]) : 1;
  }
  await out.truncate(whole);
  return last;
}

async function firstLine(path) {
  for await (const line of linesOf(createReadStream(path))) return line;
  return '';
}

async function main(address, source, target, key) {
  if (/[?&](mode=check|only=)/.test(address)) {
    throw new Refused('a dry run and faulty rows alone have no answer to every line: send them with another client');
  }
  const table = source.endsWith('.csv');
  const header = table ? [await firstLine(source)] : [];
  const out = await open(target, 'a+');
  let done = await already(out);
  for await (const [first, lines] of pieces(source, header, Math.max(done, header.length))) {
    const before = first - 1 - header.length; // lines of the file in front of the piece
    const start = table && done === 0 ? 1 : 1 + header.length;
    const last = lines.findLastIndex((line) => line.trim()) + 1;
    let text = '';
    for await (const [number, line] of answered(address, key, table ? 'text/csv' : 'application/x-ndjson', lines, start, last)) {
      text += line.replace(NUMBER, (at, name) => (name ?? '') + (number + before));
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
