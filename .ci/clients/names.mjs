// Looks at the names of generated clients: each schema of the contract gives a type of its name, and none is made up by the
// generator. Use: node names.mjs CONTRACT FOLDER LANGUAGE...
import assert from 'node:assert/strict';
import {readdirSync, readFileSync} from 'node:fs';
import {basename} from 'node:path';

const [contract, folder, ...languages] = process.argv.slice(2);
const schemas = Object.keys(JSON.parse(readFileSync(contract, 'utf8')).components.schemas);
const plain = name => name.replace(/\.[a-z]+$/, '').replace(/^model_/i, '').replaceAll('_', '').toLowerCase();

for (const language of languages) {
  const files = readdirSync(`${folder}/${language}`, {recursive: true}).map(file => basename(String(file)));
  const names = new Set(files.map(plain));
  assert.deepEqual(schemas.filter(schema => !names.has(schema.toLowerCase())), [], `${language} lacks schemas`);
  assert.deepEqual(files.filter(file => /inline|oneof|anyof|allof|_2\b/i.test(file)), [], `${language} has names that nobody gave`);
}
console.log(`${languages.length} clients have a type for each of ${schemas.length} schemas, and no other`);
