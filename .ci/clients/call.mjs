// Sends every committed example through the generated TypeScript client, compiled, and holds what it read to the committed
// answer. Use: node call.mjs URL FOLDER CLIENT, where the folder holds the contract.
import assert from 'node:assert/strict';
import {readdirSync, readFileSync} from 'node:fs';
import {pathToFileURL} from 'node:url';

const [url, folder, client] = process.argv.slice(2);
const generated = await import(pathToFileURL(`${client}/index.js`).href);
const read = name => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'));
const contract = read('openapi.json');
const configuration = new generated.Configuration({basePath: url});
const calculation = new generated.CalculationApi(configuration);
const schemaOf = content => content['application/json'].schema.$ref.split('/').pop();

let count = 0;
for (const {post} of Object.values(contract.paths)) {
  const files = readdirSync(`${folder}/examples`).filter(name => name.startsWith(`${post?.operationId}.`) && name.endsWith('.request.json'));
  for (const file of post?.requestBody?.content?.['application/json'] ? files : []) {
    const type = schemaOf(post.requestBody.content);
    const name = type[0].toLowerCase() + type.slice(1);
    const answer = await calculation[post.operationId]({[name]: generated[`${type}FromJSON`](read(`examples/${file}`))});
    const written = generated[`${schemaOf(post.responses['200'].content)}ToJSON`](answer);
    same(file, read(`examples/${file.replace('.request.', '.response.')}`), JSON.parse(JSON.stringify(written)));
    count++;
  }
}
const faulty = await calculation.compensateHardness({compensatedHardnessRequest: {}}).catch(e => e.response);
assert.equal(faulty.status, 422);
assert.equal((await faulty.json()).errors[0].pointer, '/water');
assert.equal((await new generated.ServiceApi(configuration).readUnits()).kinds.find(one => one.kind === 'hardness').baseUnit, 'mg/L');
assert.equal(count, readdirSync(`${folder}/examples`).filter(name => name.endsWith('.request.json')).length, 'every example is sent');
console.log(`the generated TypeScript client got ${count} answers as committed`);

/** Whatever was answered was read; the client may add nothing. */
function same(file, expected, actual) {
  assert.deepEqual(actual, expected, file);
}
