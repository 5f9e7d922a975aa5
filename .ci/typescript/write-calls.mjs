// Writes a typed call for each committed example, so that the compiler holds request and answer to the generated types.
// Use: node write-calls.mjs FOLDER >calls.ts, where the folder holds the contract.
import {readdirSync, readFileSync} from 'node:fs';
import {parse} from 'yaml';

const [folder] = process.argv.slice(2);
const read = name => readFileSync(`${folder}/examples/${name}`, 'utf8');
const contract = parse(readFileSync(`${folder}/openapi.yaml`, 'utf8'), {maxAliasCount: -1});
const requests = readdirSync(`${folder}/examples`).filter(name => name.endsWith('.request.json')).sort();

console.log(`import {client, ndjson, sameAnswer, sameLines, seen} from './client.js';`);
for (const [path, {post}] of Object.entries(contract.paths)) {
  const own = requests.filter(name => name.startsWith(`${post?.operationId}.`));
  for (const name of own) {
    console.log(`await sameAnswer('${name}', client.POST('${path}', {body: ${read(name)}}), ${read(answer(name))});`);
  }
  if (own.length > 0) {
    const lines = own.map(name => JSON.stringify(JSON.parse(read(name))) + '\n').join('');
    const answers = own.map((name, i) => ({line: i + 1, status: 200, answer: JSON.parse(read(answer(name)))}));
    console.log(`await sameLines('${post.operationId} in bulk', client.POST('/v1/bulk/{calculator}', {
      params: {path: {calculator: '${post.operationId}'}}, body: ${JSON.stringify(lines)}, ...ndjson,
    }), ${JSON.stringify(answers)});`);
    console.log(`seen.add('${post.operationId}').add('calculateInBulk');`);
  }
}

function answer(request) {
  return request.replace('.request.', '.response.');
}
