// Writes 50,000 cases as a table and as a list into a folder: node rows.mjs FOLDER
import { createWriteStream } from 'node:fs';
import { ROWS, hardness } from './cases.mjs';

const table = createWriteStream(`${process.argv[2]}/rows.csv`);
const list = createWriteStream(`${process.argv[2]}/rows.ndjson`);
table.write('No;Hard\r\n');
for (let i = 0; i < ROWS; i++) {
  table.write(`N-${i};${String(hardness(i)).replace('.', ',')}\r\n`);
  list.write(`{"id": "N-${i}", "request": {"water": {"hardness": {"value": ${hardness(i)}, "unit": "gpg"}}}}\n`);
}
table.end();
list.end();
