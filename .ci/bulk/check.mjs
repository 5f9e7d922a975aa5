// Every case is answered once, in its order, under its own number, as the arithmetic says: node check.mjs TABLE LIST
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ROWS, hardness } from './cases.mjs';

const lines = (path) => readFileSync(path, 'utf8').split(/\r?\n/).slice(0, -1);

const [head, ...rows] = lines(process.argv[2]);
const names = head.split(';');
assert.equal(rows.length, ROWS);
rows.forEach((row, i) => {
  const cell = (name) => row.split(';')[names.indexOf(name)];
  assert.equal(cell('line'), String(i + 2));
  assert.equal(cell('No'), `N-${i}`);
  if (hardness(i) < 0) {
    assert.equal(cell('status'), '422');
    assert.match(row, /Hard: Must be from 0 to/);
  } else {
    assert.equal(cell('hardness.tested.value'), String(hardness(i)).replace('.', ','));
    assert.equal(cell('hardness.controllerSetting.value'), String(Math.ceil(hardness(i))), 'rounded up to whole grains');
  }
});

const answers = lines(process.argv[3]).map((line) => JSON.parse(line));
assert.equal(answers.length, ROWS);
answers.forEach(({ line, id, status, answer }, i) => {
  assert.deepEqual([line, id, status], [i + 1, `N-${i}`, hardness(i) < 0 ? 422 : 200]);
  assert.equal(answer?.hardness.controllerSetting.value, hardness(i) < 0 ? undefined : Math.ceil(hardness(i)));
});
console.log(`${ROWS} rows and ${ROWS} lines, in order`);
