// Every case is answered once, in its order, under its own number, as the arithmetic says: node check.mjs TABLE LIST
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ROWS, address, hardness } from './cases.mjs';

// Rows of a table, which go on where a quote is open (RFC 4180), as cells.
const cells = (row) => [...row.matchAll(/(?<=^|;)(?:"((?:[^"]|"")*)"|([^;"]*))(?=;|$)/g)]
  .map(([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain);
const rowsOf = (path) => readFileSync(path, 'utf8').match(/(?:"[^"]*"|[^"\r\n])*\r\n/g).map((row) => row.slice(0, -2));

const [head, ...rows] = rowsOf(process.argv[2]);
const names = cells(head);
assert.equal(rows.length, ROWS);
rows.forEach((row, i) => {
  const values = cells(row);
  const cell = (name) => values[names.indexOf(name)];
  assert.equal(cell('line'), String(i + 2));
  assert.equal(cell('No'), `N-${i}`);
  assert.equal(cell('Address\nof the case'), address(i));
  if (hardness(i) < 0) {
    assert.equal(cell('status'), '422');
    assert.match(row, /Hard: Must be from 0 to/);
  } else {
    assert.equal(cell('hardness.tested.value'), String(hardness(i)).replace('.', ','));
    assert.equal(cell('hardness.controllerSetting.value'), String(Math.ceil(hardness(i))), 'rounded up to whole grains');
  }
});

const answers = readFileSync(process.argv[3], 'utf8').split('\n').slice(0, -1).map((line) => JSON.parse(line));
assert.equal(answers.length, ROWS);
answers.forEach(({ line, id, status, answer }, i) => {
  assert.deepEqual([line, id, status], [i + 1, `N-${i}`, hardness(i) < 0 ? 422 : 200]);
  assert.equal(answer?.hardness.controllerSetting.value, hardness(i) < 0 ? undefined : Math.ceil(hardness(i)));
});
console.log(`${ROWS} rows and ${ROWS} lines, in order`);
