// An ordinary client: writes 20 MB, and only then reads: node writes-first.mjs SERVICE
import assert from 'node:assert/strict';
import { once } from 'node:events';
import { connect } from 'node:net';

const { hostname, port } = new URL(process.argv[2]);
const header = 'water.hardness.value,water.hardness.unit,note\n';
const row = `18.5,gpg,${'x'.repeat(1_000)}\n`;
const rows = Math.ceil(20_000_000 / row.length);
const socket = connect(Number(port), hostname);
socket.pause();
socket.write('POST /v1/bulk/compensateHardness?answer=afterUpload&pass=note HTTP/1.1\r\nHost: a\r\nContent-Type: text/csv\r\n'
  + `Connection: close\r\nContent-Length: ${header.length + rows * row.length}\r\n\r\n${header}`);
for (let i = 0; i < rows; i++) {
  if (!socket.write(row)) await once(socket, 'drain');
}
let answered = 0;
let rest = '';
socket.resume().setEncoding('utf8').on('data', (text) => {
  const lines = (rest + text).split('\n');
  rest = lines.pop();
  answered += lines.filter((line) => /^\d+,200,x/.test(line)).length;
});
await once(socket, 'close');
assert.equal(answered, rows);
console.log(`${rows} rows, ${rows * row.length} bytes written before any was read`);
