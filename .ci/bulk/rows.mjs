// Writes 50,000 cases as a table and as a list into a folder: node rows.mjs FOLDER
import { createWriteStream } from 'node:fs';
import { ROWS, address, hardness } from './cases.mjs';

const table = createWriteStream(`${process.argv[2]}/rows.csv`);
const list = createWriteStream(`${process.argv[2]}/rows.ndjson`);
table.write('\uFEFFNo;"Address\nof the case";Hard\r\n');
for (let i = 0; i < ROWS; i++) {
  table.write(`N-${i};"${address(i).replaceAll('"', '""')}";${String(hardness(i)).replace('.', ',')}\r\n`);
  list.write(`{"id": "N-${i}", "request": {"water": {"hardness": {"value": ${hardness(i)}, "unit": "gpg"}}}}\n`);
}
table.end();
list.end();
